namespace SpanRater;

/// <summary>The two ways in which the ground holds a joint.</summary>
public enum SupportKind
{
    /// <summary>Holds the joint in x and y: two reaction components.</summary>
    Pin,

    /// <summary>Holds the joint along its normal only: one reaction component.</summary>
    Roller,
}

/// <summary>How the ground holds a joint. Immutable; two supports are equal when kind and normal are.</summary>
public sealed record Support
{
    private Support(SupportKind kind, double normalDegrees)
    {
        Kind = kind;
        NormalDegrees = normalDegrees;
        (NormalX, NormalY) = UnitVector(normalDegrees);
    }

    /// <summary>A pin: it holds x and y.</summary>
    public static Support Pin { get; } = new(SupportKind.Pin, 90);

    /// <summary>Whether the joint is held in both directions or along a normal only.</summary>
    public SupportKind Kind { get; }

    /// <summary>Direction of a roller's normal, anticlockwise from +x [deg]; 90 is straight up. Without meaning for a pin.</summary>
    public double NormalDegrees { get; }

    /// <summary>x-component of a roller's unit normal [-].</summary>
    public double NormalX { get; }

    /// <summary>y-component of a roller's unit normal [-].</summary>
    public double NormalY { get; }

    /// <summary>Number of reaction components: 2 for a pin, 1 for a roller.</summary>
    public int ReactionCount => Kind == SupportKind.Pin ? 2 : 1;

    /// <summary>A roller that holds the joint along its normal.</summary>
    /// <param name="normalDegrees">Direction of the normal, anticlockwise from +x [deg]; 90 is straight up.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not a finite number.</exception>
    public static Support Roller(double normalDegrees = 90)
    {
        if (!double.IsFinite(normalDegrees))
        {
            throw new ArgumentOutOfRangeException(nameof(normalDegrees), normalDegrees, "A roller's normal must be a finite angle in degrees.");
        }

        return new Support(SupportKind.Roller, normalDegrees);
    }

    // Multiples of 90 degrees are exact: cos(90 deg) must not leave 6e-17 in the matrix.
    private static (double X, double Y) UnitVector(double degrees)
    {
        double turned = degrees - (360 * Math.Floor(degrees / 360));
        return turned switch
        {
            0 => (1, 0),
            90 => (0, 1),
            180 => (-1, 0),
            270 => (0, -1),
            _ => (Math.Cos(turned * Math.PI / 180), Math.Sin(turned * Math.PI / 180)),
        };
    }
}
