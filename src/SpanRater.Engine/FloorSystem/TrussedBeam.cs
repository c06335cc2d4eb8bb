namespace SpanRater;

/// <summary>
/// A beam stiffened from below by a rod over one post in the middle, or over two alike on both sides of it. The rod is fastened at the beam's axis over its ends; posts are rigid and pinned, so that the
/// structure is redundant once: the redundant is the rod's level pull H, which presses the beam, and with y the rod's depth below the axis the moment is M = M0 − H y. By virtual work
/// H = ∫ M0 y dx / EI / (∫ y² dx / EI + L/EA + (2 a/cos³θ + s)/ErAr). All lines are cubic between ends, posts and section: exact.
/// Shear deformation of the beam and the yield of posts and seats are left out. Derived from statics.
/// </summary>
public sealed class TrussedBeam
{
    private readonly double perWork;

    /// <summary>A trussed beam.</summary>
    /// <param name="span">Span [m].</param>
    /// <param name="posts">Posts: 1 or 2.</param>
    /// <param name="postSpacing">Distance of two posts, the same from both ends [m]; 0 of one.</param>
    /// <param name="drop">Rod below the beam's axis at the posts [m].</param>
    /// <param name="bending">Stiffness EI of the beam [N·m²].</param>
    /// <param name="axial">Stiffness EA of the beam [N].</param>
    /// <param name="rod">Stiffness EA of the rod or rods [N].</param>
    public TrussedBeam(double span, int posts, double postSpacing, double drop, double bending, double axial, double rod)
    {
        Checked.Positive(span, nameof(span));
        Checked.Positive(drop, nameof(drop));
        Checked.Positive(bending, nameof(bending));
        Checked.Positive(axial, nameof(axial));
        Checked.Positive(rod, nameof(rod));
        ArgumentOutOfRangeException.ThrowIfLessThan(posts, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(posts, 2);
        if (posts == 1 ? postSpacing != 0 : !(postSpacing > 0 && postSpacing < span))
        {
            throw new ArgumentOutOfRangeException(nameof(postSpacing), postSpacing, "Two posts stand within the span, one in its middle.");
        }

        (Span, Posts, PostSpacing, Drop) = (span, posts, postSpacing, drop);
        (BendingStiffness, AxialStiffness, RodStiffness) = (bending, axial, rod);
        EndField = (span - postSpacing) / 2;
        double cosine = EndField / Math.Sqrt((EndField * EndField) + (drop * drop));
        Cosine = cosine;
        double work = DepthSquared / bending;
        perWork = 1 / (bending * (work + (span / axial) + (((2 * EndField / (cosine * cosine * cosine)) + postSpacing) / rod)));
    }

    /// <summary>Span [m].</summary>
    public double Span { get; }

    /// <summary>Number of posts.</summary>
    public int Posts { get; }

    /// <summary>Distance of two posts [m]; 0 of one.</summary>
    public double PostSpacing { get; }

    /// <summary>Rod below the axis at the posts [m].</summary>
    public double Drop { get; }

    /// <summary>From an end to the nearer post [m].</summary>
    public double EndField { get; }

    /// <summary>Cosine of the rod's slope [-].</summary>
    public double Cosine { get; }

    /// <summary>EI of the beam [N·m²].</summary>
    public double BendingStiffness { get; }

    /// <summary>EA of the beam [N].</summary>
    public double AxialStiffness { get; }

    /// <summary>EA of the rod or rods [N].</summary>
    public double RodStiffness { get; }

    /// <summary>The square of the rod's depth over the whole span, ∫ y² dx [m³].</summary>
    public double DepthSquared => ((2 * EndField / 3) + PostSpacing) * Drop * Drop;

    /// <summary>The moment of the simple beam times the rod's depth over the whole span, ∫ M0 y dx, per load [m³].</summary>
    /// <param name="x">Where the load stands [m].</param>
    public double MomentTimesDepth(double x) => Compression(x) / perWork;

    /// <summary>How the rod falls beside a section, from left to right [-].</summary>
    /// <param name="section">Where [m].</param>
    /// <param name="isRight">Whether just right of the section, not left of it.</param>
    public double Slope(double section, bool isRight) => Beside(section, isRight) is var at && at < EndField ? Steepness : at > Span - EndField ? -Steepness : 0;

    private double Steepness => Drop / EndField;

    /// <summary>Depth of the rod below the axis [m].</summary>
    /// <param name="x">Where [m].</param>
    public double Depth(double x) => Math.Min(Drop, Steepness * Math.Min(x, Span - x));

    /// <summary>Compression of the beam, and level pull of the rod, per load.</summary>
    /// <param name="x">Where the load stands [m].</param>
    public double Compression(double x)
    {
        // The deflection under the load y, times EI: its second derivative is −y, and it is level in the middle.
        double near = Math.Clamp(Math.Min(x, Span - x), 0, Span / 2), within = Math.Min(near, EndField), past = near - within;
        double start = Drop * (EndField + PostSpacing) / 2;
        double atPost = (start * within) - (Steepness * within * within * within / 6);
        return perWork * (atPost + (past * (start - (Drop * EndField / 2))) - (Drop * past * past / 2));
    }

    /// <summary>Tension of the sloping rod per load, where it is largest.</summary>
    /// <param name="x">Where the load stands [m].</param>
    public double Rod(double x) => Compression(x) / Cosine;

    /// <summary>Push of each post on the beam per load.</summary>
    /// <param name="x">Where the load stands [m].</param>
    public double Post(double x) => (Posts == 1 ? 2 : 1) * Steepness * Compression(x);

    /// <summary>Reaction at the left end per load: that of a simple beam, since the rod is fastened to the beam.</summary>
    /// <param name="x">Where the load stands [m].</param>
    public double LeftReaction(double x) => (Span - x) / Span;

    /// <summary>Moment of the beam per load [m].</summary>
    /// <param name="section">Where [m].</param>
    /// <param name="x">Where the load stands [m].</param>
    public double Moment(double section, double x) =>
        (Math.Min(section, x) * (Span - Math.Max(section, x)) / Span) - (Depth(section) * Compression(x));

    /// <summary>Shear of the beam per load, up on the left positive.</summary>
    /// <param name="section">Where [m].</param>
    /// <param name="isRight">Whether just right of the section, not left of it: the two differ at a post, and under a load.</param>
    /// <param name="x">Where the load stands [m].</param>
    public double Shear(double section, bool isRight, double x) =>
        LeftReaction(x) - (x < Beside(section, isRight) ? 1 : 0) - (Slope(section, isRight) * Compression(x));

    /// <summary>Line of the rod's tension.</summary>
    public AcrossLine RodLine => LineOf(0, Rod);

    /// <summary>Line of moment and compression together: ± the moment, and an arm times the compression [m].</summary>
    /// <param name="section">Where [m].</param>
    /// <param name="isHogging">Whether a moment that presses the lower side counts as positive, not one that presses the top.</param>
    /// <param name="times">Number that the moment is taken by: where the two sides differ in strength [-].</param>
    /// <param name="arm">Moment that counts as much as a unit of compression [m].</param>
    public AcrossLine MomentLine(double section, bool isHogging, double times, double arm) =>
        LineOf(section, x => ((isHogging ? -times : times) * Moment(section, x)) + (arm * Compression(x))) with { Pressing = Compression, IsHogging = isHogging };

    /// <summary>Line of a shear.</summary>
    /// <param name="section">Where: an end, or a post [m].</param>
    /// <param name="isRight">Whether right of it.</param>
    /// <param name="isUp">Whether up on the left counts as positive.</param>
    public AcrossLine ShearLine(double section, bool isRight, bool isUp) => LineOf(section, x => (isUp ? 1 : -1) * Shear(section, isRight, x));

    private double Beside(double section, bool isRight) => section + ((isRight ? 1e-9 : -1e-9) * Span);

    private AcrossLine LineOf(double section, Func<double, double> ordinate) =>
        new(section, [.. ((double[])[0, EndField, Span - EndField, section, Span]).Distinct().Order()], ordinate);
}
