namespace SpanRater;

/// <summary>A single angle in compression as a member of a planar truss, connected by one leg at both ends. Source: AASHTO LRFD 6.9.4.4, from memory.</summary>
public static class SingleAngle
{
    /// <summary>Largest ratio of the legs where the shorter one is connected [-].</summary>
    public const double LargestLegRatio = 1.7;

    /// <summary>Slenderness to enter a column curve with, equal legs or connected by the longer leg [-].</summary>
    /// <param name="length">Length L between the connections [m].</param>
    /// <param name="radius">Radius of gyration about the axis parallel to the connected leg [m].</param>
    public static double Slenderness(double length, double radius)
    {
        Checked.Positive(length, nameof(length));
        Checked.Positive(radius, nameof(radius));
        double plain = length / radius;
        return plain <= 80 ? 72 + (0.75 * plain) : 32 + (1.25 * plain);
    }

    /// <summary>Slenderness to enter a column curve with, connected by the shorter leg [-].</summary>
    /// <param name="length">Length L between the connections [m].</param>
    /// <param name="radius">Radius of gyration about the axis parallel to the connected leg [m].</param>
    /// <param name="leastRadius">Least radius of gyration [m].</param>
    /// <param name="legRatio">Longer leg over shorter leg, 1 to 1.7 [-].</param>
    public static double SlendernessByShorterLeg(double length, double radius, double leastRadius, double legRatio)
    {
        Checked.Positive(leastRadius, nameof(leastRadius));
        if (!(legRatio >= 1 && legRatio < LargestLegRatio))
        {
            throw new ArgumentOutOfRangeException(nameof(legRatio), legRatio, "The rule holds for legs from 1 to below 1.7.");
        }

        return Math.Max(Slenderness(length, radius) + (4 * ((legRatio * legRatio) - 1)), 0.95 * length / leastRadius);
    }
}
