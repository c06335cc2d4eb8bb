namespace SpanRater;

/// <summary>How the parts of a built-up column are held together.</summary>
public enum BuiltUpConnection
{
    /// <summary>Riveted, or bolted snug.</summary>
    Riveted,

    /// <summary>Welded, or bolted tight.</summary>
    Welded,
}

/// <summary>Columns of several parts that are stitched to each other. Source: AASHTO LRFD 6.9.4.3.1, from memory.</summary>
public static class BuiltUpColumn
{
    /// <summary>Slenderness of a part between connectors over that of the whole, at most [-].</summary>
    public const double MostOfPart = 0.75;

    /// <summary>Slenderness to enter a column curve with, about the axis on which the parts slide along each other [-].</summary>
    /// <param name="whole">Slenderness KL/r of the whole as one piece [-].</param>
    /// <param name="pitch">Distance a of the connectors [m].</param>
    /// <param name="partRadius">Radius of gyration of one part: the least one; where welded, about its axis parallel to that of buckling [m].</param>
    /// <param name="connection">How the parts are held.</param>
    /// <param name="separation">Distance h between the centroids of the parts, asked for where welded [m].</param>
    public static double Slenderness(double whole, double pitch, double partRadius, BuiltUpConnection connection, double? separation = null)
    {
        Checked.Positive(whole, nameof(whole));
        Checked.Positive(pitch, nameof(pitch));
        Checked.Positive(partRadius, nameof(partRadius));
        double part = pitch / partRadius, share = 1;
        if (connection == BuiltUpConnection.Welded)
        {
            double alpha = (separation ?? throw new ArgumentNullException(nameof(separation))) / (2 * partRadius);
            Checked.Positive(alpha, nameof(separation));
            share = 0.82 * alpha * alpha / (1 + (alpha * alpha));
        }

        return Math.Sqrt((whole * whole) + (share * part * part));
    }

    /// <summary>Whether a part is more slender between its connectors than the rule for the whole allows for.</summary>
    /// <param name="whole">Slenderness of the whole [-].</param>
    /// <param name="pitch">Distance of the connectors [m].</param>
    /// <param name="partRadius">Least radius of gyration of one part [m].</param>
    public static bool PartIsTooSlender(double whole, double pitch, double partRadius)
    {
        Checked.Positive(whole, nameof(whole));
        Checked.Positive(pitch, nameof(pitch));
        Checked.Positive(partRadius, nameof(partRadius));
        return pitch / partRadius > MostOfPart * whole;
    }

    /// <summary>Elastic critical force of a column that gives way in shear [N]: Pe/(1 + f Pe). Source: Timoshenko and Gere, Theory of Elastic Stability, ch. 2, from memory.</summary>
    /// <param name="elasticForce">Euler's force of the whole as one piece [N].</param>
    /// <param name="shearFlexibility">Shear angle per shear force [1/N].</param>
    public static double ElasticForce(double elasticForce, double shearFlexibility)
    {
        Checked.Positive(elasticForce, nameof(elasticForce));
        Checked.NotNegative(shearFlexibility, nameof(shearFlexibility));
        return elasticForce / (1 + (shearFlexibility * elasticForce));
    }

    /// <summary>Force at which the legs buckle between their lacing points, all of them together [N].</summary>
    /// <param name="modulus">Modulus of elasticity [Pa].</param>
    /// <param name="area">Area of all legs [m²].</param>
    /// <param name="freeLength">Length of a leg between its lacing points, missing lacing counted [m].</param>
    /// <param name="legRadius">Least radius of gyration of one leg [m].</param>
    public static double ElasticForceOfLegs(double modulus, double area, double freeLength, double legRadius)
    {
        Checked.Positive(freeLength, nameof(freeLength));
        Checked.Positive(legRadius, nameof(legRadius));
        return ElasticBuckling.Force(modulus, area, freeLength / legRadius);
    }
}

/// <summary>Battens that join two legs. Source: Timoshenko and Gere, Theory of Elastic Stability, ch. 2, from memory; shear of the battens themselves left out.</summary>
/// <param name="Pitch">Distance a of the battens along the member [m].</param>
/// <param name="Separation">Distance b between the centroids of the legs [m].</param>
/// <param name="BattenInertia">Moment of inertia of the battens at one place, all planes together [m⁴].</param>
/// <param name="LegInertia">Moment of inertia of one leg about its axis parallel to that of buckling [m⁴].</param>
public sealed record Battens(double Pitch, double Separation, double BattenInertia, double LegInertia)
{
    /// <summary>Shear angle per shear force [1/N].</summary>
    /// <param name="modulus">Modulus of elasticity [Pa].</param>
    public double ShearFlexibility(double modulus)
    {
        Checked.Positive(modulus, nameof(modulus));
        Checked.Positive(Pitch, nameof(Pitch));
        Checked.Positive(Separation, nameof(Separation));
        Checked.Positive(BattenInertia, nameof(BattenInertia));
        Checked.Positive(LegInertia, nameof(LegInertia));
        return ((Pitch * Separation / (12 * BattenInertia)) + (Pitch * Pitch / (24 * LegInertia))) / modulus;
    }
}
