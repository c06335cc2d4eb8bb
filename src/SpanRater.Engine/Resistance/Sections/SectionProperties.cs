namespace SpanRater;

/// <summary>
/// Area, centroid, second moments and extents of a section. x runs across the member out of the plane of the truss, y in that plane at
/// right angles to the member. Second moments are about axes through the centroid. Immutable.
/// </summary>
/// <param name="Area">Area [m²].</param>
/// <param name="X">x of the centroid [m].</param>
/// <param name="Y">y of the centroid [m].</param>
/// <param name="Ix">Second moment about the x axis through the centroid, ∫y² dA [m⁴].</param>
/// <param name="Iy">Second moment about the y axis through the centroid, ∫x² dA [m⁴].</param>
/// <param name="Ixy">Product of inertia about the centroid, ∫xy dA [m⁴].</param>
/// <param name="Left">Smallest x of the section [m].</param>
/// <param name="Right">Largest x [m].</param>
/// <param name="Bottom">Smallest y [m].</param>
/// <param name="Top">Largest y [m].</param>
public sealed record SectionProperties(double Area, double X, double Y, double Ix, double Iy, double Ixy, double Left, double Right, double Bottom, double Top)
{
    /// <summary>Radius of gyration about the x axis: for buckling in the plane of the truss [m].</summary>
    public double Rx => Math.Sqrt(Ix / Area);

    /// <summary>Radius of gyration about the y axis: for buckling out of the plane of the truss [m].</summary>
    public double Ry => Math.Sqrt(Iy / Area);

    /// <summary>Least radius of gyration about any axis, rz of single angles [m].</summary>
    public double LeastRadius => Math.Sqrt(Math.Max(0, LeastMoment) / Area);

    /// <summary>Larger principal second moment [m⁴].</summary>
    public double LargestMoment => ((Ix + Iy) / 2) + HalfSpread;

    /// <summary>Smaller principal second moment [m⁴].</summary>
    public double LeastMoment => ((Ix + Iy) / 2) - HalfSpread;

    /// <summary>Angle from the x axis to the axis of the largest second moment, counterclockwise, above −90 and up to 90 [deg].</summary>
    public double PrincipalAngle => -Math.Atan2(2 * Ixy, Ix - Iy) * 90 / Math.PI;

    /// <summary>Section modulus at the top fibre, bending about the x axis [m³].</summary>
    public double TopModulus => Ix / (Top - Y);

    /// <summary>Section modulus at the bottom fibre, bending about the x axis [m³].</summary>
    public double BottomModulus => Ix / (Y - Bottom);

    /// <summary>Section modulus at the left fibre, bending about the y axis [m³].</summary>
    public double LeftModulus => Iy / (X - Left);

    /// <summary>Section modulus at the right fibre, bending about the y axis [m³].</summary>
    public double RightModulus => Iy / (Right - X);

    private double HalfSpread => double.Hypot((Ix - Iy) / 2, Ixy);

    /// <summary>The same section somewhere else.</summary>
    /// <param name="right">Movement to the right [m].</param>
    /// <param name="up">Movement up [m].</param>
    public SectionProperties Moved(double right, double up) => this with
    {
        X = X + right,
        Y = Y + up,
        Left = Left + right,
        Right = Right + right,
        Bottom = Bottom + up,
        Top = Top + up,
    };

    /// <summary>The section mirrored left to right in the y axis of its coordinates.</summary>
    public SectionProperties Mirrored() => this with { X = -X, Ixy = -Ixy, Left = -Right, Right = -Left };

    /// <summary>The section turned by a quarter, counterclockwise, about the origin of its coordinates.</summary>
    public SectionProperties QuarterTurned() =>
        new(Area, -Y, X, Iy, Ix, -Ixy, -Top, -Bottom, Left, Right);

    /// <summary>Sections together, by the parallel-axis theorem.</summary>
    /// <param name="parts">The sections, at least one, in the same coordinates.</param>
    /// <exception cref="ArgumentException">There is no section, or no area.</exception>
    public static SectionProperties Together(IReadOnlyCollection<SectionProperties> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double area = parts.Sum(p => p.Area);
        if (!(area > 0))
        {
            throw new ArgumentException($"Sections together need an area above 0 m²; it is {area}.", nameof(parts));
        }

        double x = parts.Sum(p => p.Area * p.X) / area, y = parts.Sum(p => p.Area * p.Y) / area;
        return new SectionProperties(
            area, x, y,
            parts.Sum(p => p.Ix + (p.Area * (p.Y - y) * (p.Y - y))),
            parts.Sum(p => p.Iy + (p.Area * (p.X - x) * (p.X - x))),
            parts.Sum(p => p.Ixy + (p.Area * (p.X - x) * (p.Y - y))),
            parts.Min(p => p.Left), parts.Max(p => p.Right), parts.Min(p => p.Bottom), parts.Max(p => p.Top));
    }
}
