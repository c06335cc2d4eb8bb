namespace SpanRater;

/// <summary>One solid timber as a beam. Source: National Design Specification (2018), 3.3.3, 3.4.3, 3.10 and App. D, from memory.</summary>
public static class TimberBeam
{
    /// <summary>Factors of sideways buckling: E of FbE, and the part in CL [-].</summary>
    public const double EulerFactor = 1.20, Straight = 1.9, Curve = 0.95;

    /// <summary>Largest slenderness RB of the rule [-].</summary>
    public const double MostSlender = 50;

    /// <summary>Bending.</summary>
    /// <param name="design">Its stresses.</param>
    /// <param name="width">Width [m].</param>
    /// <param name="depth">Depth [m].</param>
    /// <param name="unbraced">Distance between the points that hold its compressed side [m]; 0 where it is held all along.</param>
    public static TimberBeamStrength Bending(TimberDesign design, double width, double depth, double unbraced)
    {
        ArgumentNullException.ThrowIfNull(design);
        Checked.Positive(width, nameof(width));
        Checked.Positive(depth, nameof(depth));
        Checked.NotNegative(unbraced, nameof(unbraced));
        double slenderness = depth <= width || unbraced == 0 ? 0 : Math.Sqrt(Effective(unbraced, depth) * depth / (width * width));
        double plain = design.BendingFactors.Aggregate(design.Bending.Value, (v, f) => v * f.Value);
        double stability = slenderness == 0 ? 1 : Stability(EulerFactor * design.LeastModulus.Value / (slenderness * slenderness) / plain);
        return new TimberBeamStrength(BeamMode.TimberBending, width * depth * depth / 6, design.Bending, stability, [.. design.BendingFactors, .. design.LevelFactors], slenderness == 0 ? [BeamClauses.TimberBending] : [BeamClauses.TimberBending, BeamClauses.TimberStability])
        {
            Width = width,
            Depth = depth,
            Slenderness = slenderness,
        };
    }

    /// <summary>Shear along the grain, at the end or over a notched or tapered bearing.</summary>
    /// <param name="design">Its stresses.</param>
    /// <param name="width">Width [m].</param>
    /// <param name="depth">Whole depth [m].</param>
    /// <param name="atEnd">Depth over the bearing, at most the whole depth [m]; null for all of it.</param>
    /// <param name="isTapered">Whether it is cut away along a taper.</param>
    /// <param name="soundDepth">Whole depth as built, which a notch is measured against: what has rotted away since makes no notch shallower [m].</param>
    public static TimberBeamStrength Shear(TimberDesign design, double width, double depth, double? atEnd, bool isTapered, double? soundDepth = null)
    {
        ArgumentNullException.ThrowIfNull(design);
        Checked.Positive(width, nameof(width));
        Checked.Positive(depth, nameof(depth));
        double left = Math.Min(atEnd ?? depth, depth);
        Checked.Positive(left, nameof(atEnd));
        double whole = Math.Max(depth, soundDepth ?? depth);
        bool isNotched = atEnd < whole && !isTapered;
        return new TimberBeamStrength(BeamMode.TimberShear, 2 * width * left / 3, design.Shear, isNotched ? left * left / (whole * whole) : 1, [.. design.ShearFactors, .. design.LevelFactors], isNotched ? [BeamClauses.TimberShear, BeamClauses.Notch] : left < depth ? [BeamClauses.TimberShear, BeamClauses.Taper] : [BeamClauses.TimberShear])
        {
            Width = width,
            Depth = left,
        };
    }

    /// <summary>Pressure across the grain on the bearing at its end, where nothing is added for a short bearing.</summary>
    /// <param name="design">Its stresses.</param>
    /// <param name="width">Width [m].</param>
    /// <param name="length">Length of the bearing along it [m].</param>
    public static TimberBeamStrength Bearing(TimberDesign design, double width, double length)
    {
        ArgumentNullException.ThrowIfNull(design);
        Checked.Positive(width, nameof(width));
        Checked.Positive(length, nameof(length));
        return new TimberBeamStrength(BeamMode.AcrossGrain, width * length, design.CompressionAcross, 1, [.. design.AcrossFactors, .. design.LevelFactors], [BeamClauses.TimberBearing]) { Width = width, Depth = length };
    }

    /// <summary>Effective length of a beam held so far apart [m].</summary>
    /// <param name="unbraced">Distance between the points that hold it [m].</param>
    /// <param name="depth">Depth [m].</param>
    public static double Effective(double unbraced, double depth) => unbraced / depth < 7 ? 2.06 * unbraced : (1.63 * unbraced) + (3 * depth);

    /// <summary>Factor CL of stability from FbE/Fb* [-], written so that nothing cancels where the ratio is large.</summary>
    /// <param name="ratio">FbE/Fb*, positive [-].</param>
    public static double Stability(double ratio)
    {
        Checked.Positive(ratio, nameof(ratio));
        double half = (1 + ratio) / Straight;
        return ratio / Curve / (half + Math.Sqrt((half * half) - (ratio / Curve)));
    }
}
