namespace SpanRater;

/// <summary>A floorbeam with the two posts that hold the top chords of a pony truss. Source: AASHTO LRFD Guide Specifications for Pedestrian Bridges (2009), 7.1.2, from memory.</summary>
/// <param name="Modulus">Modulus of elasticity [Pa].</param>
/// <param name="PostHeight">Height h of the chord's centroid above that of the floorbeam [m].</param>
/// <param name="PostInertia">Moment of inertia Ic of a post for bending across the bridge [m⁴].</param>
/// <param name="BeamLength">Length b of the floorbeam between the trusses [m].</param>
/// <param name="BeamInertia">Moment of inertia Ib of the floorbeam [m⁴].</param>
/// <param name="KneeHeight">Height up to which a knee or gusset holds the post stiff, less than h; 0 without one [m].</param>
public sealed record PonyFrame(double Modulus, double PostHeight, double PostInertia, double BeamLength, double BeamInertia, double KneeHeight = 0)
{
    /// <summary>Force on both chords, inward or outward together, that moves each by one unit [N/m].</summary>
    public double Stiffness
    {
        get
        {
            Checked.Positive(Modulus, nameof(Modulus));
            Checked.Positive(PostHeight, nameof(PostHeight));
            Checked.Positive(PostInertia, nameof(PostInertia));
            Checked.Positive(BeamLength, nameof(BeamLength));
            Checked.Positive(BeamInertia, nameof(BeamInertia));
            Checked.NotNegative(KneeHeight, nameof(KneeHeight));
            double free = PostHeight - KneeHeight;
            Checked.Positive(free, nameof(KneeHeight));
            return Modulus / ((free * free * free / (3 * PostInertia)) + (PostHeight * PostHeight * BeamLength / (2 * BeamInertia)));
        }
    }
}

/// <summary>
/// The top chord of a pony truss: a long bar under the same compression throughout, on springs of the same stiffness at its panel points. Out of plane its
/// elastic critical force goes into the column curve of the method; it is no capacity.
/// </summary>
/// <param name="Modulus">Modulus of elasticity [Pa].</param>
/// <param name="Inertia">Moment of inertia of the chord for bending across the bridge [m⁴].</param>
/// <param name="PanelLength">Distance d of the frames [m].</param>
/// <param name="FrameStiffness">Stiffness C of a frame, of the softest one where they differ [N/m].</param>
public sealed record PonyChord(double Modulus, double Inertia, double PanelLength, double FrameStiffness)
{
    /// <summary>Least K for which the springs may be taken as spread evenly along the chord [-].</summary>
    public const double LeastFactor = 1.3;

    /// <summary>Critical force of one panel, held at both its ends: π² E I/d² [N].</summary>
    public double PanelForce => Math.PI * Math.PI * Modulus * Inertia / (PanelLength * PanelLength);

    /// <summary>Engesser's critical force 2 √(C E I/d) [N].</summary>
    public double EngesserForce
    {
        get
        {
            Checked.Positive(Modulus, nameof(Modulus));
            Checked.Positive(Inertia, nameof(Inertia));
            Checked.Positive(PanelLength, nameof(PanelLength));
            Checked.Positive(FrameStiffness, nameof(FrameStiffness));
            return 2 * Math.Sqrt(FrameStiffness * Modulus * Inertia / PanelLength);
        }
    }

    /// <summary>Effective length over panel length by Engesser's force, never below 1 [-].</summary>
    public double EffectiveLengthFactor => Math.Max(1, Math.Sqrt(PanelForce / EngesserForce));

    /// <summary>Elastic critical force [N]; null where Engesser's formula does not hold.</summary>
    public double? ElasticForce => Missing is null ? EngesserForce : null;

    /// <summary>What is missing: the table of the guide, where the frames are too stiff for Engesser's formula.</summary>
    public MissingDatum? Missing => EffectiveLengthFactor >= LeastFactor ? null : new MissingDatum.PonyTable(EffectiveLengthFactor);

    /// <summary>
    /// A force that the chord reaches in any case, within the 2 % by which springs at single points are softer than springs spread evenly [N]: Engesser's where it
    /// holds, else the one for K = 1.3, since a stiffer frame never lowers the critical force.
    /// </summary>
    public double LeastElasticForce => Math.Min(EngesserForce, PanelForce / (LeastFactor * LeastFactor));

    /// <summary>Elastic critical force for a K that the user has read in the guide [N].</summary>
    /// <param name="factor">K, at least 1 [-].</param>
    public double ElasticForceFor(double factor)
    {
        if (!(factor >= 1 && double.IsFinite(factor)))
        {
            throw new ArgumentOutOfRangeException(nameof(factor), factor, "K is at least 1: a panel point held fast.");
        }

        return PanelForce / (factor * factor);
    }

    /// <summary>Force across the bridge at the top of each post that it must hold [N].</summary>
    /// <param name="compression">Compression of the chord, positive [N].</param>
    /// <param name="factor">K, at least 1 [-].</param>
    public static double PostForce(double compression, double factor)
    {
        Checked.NotNegative(compression, nameof(compression));
        ArgumentOutOfRangeException.ThrowIfLessThan(factor, 1);
        return Math.Max(0.01 / factor, 0.003) * compression;
    }
}
