namespace SpanRater;

/// <summary>Lacing bars that join two legs. Source: Timoshenko and Gere, Theory of Elastic Stability, ch. 2, from memory.</summary>
/// <param name="Pitch">Length a along the member that one bar covers [m].</param>
/// <param name="Separation">Distance b across the member between the lines of its rivets [m].</param>
/// <param name="BarArea">Area of one bar [m²].</param>
/// <param name="Planes">Planes of lacing, one or two.</param>
/// <param name="IsDouble">Whether two bars cross in each pitch.</param>
public sealed record Lacing(double Pitch, double Separation, double BarArea, int Planes, bool IsDouble)
{
    /// <summary>Shear across the member that lacing is to carry, as part of the compression [-]. Common practice.</summary>
    public const double ShearOfCompression = 0.025;

    /// <summary>Effective length of a bar that is riveted to another where they cross, over its length [-]. Common practice.</summary>
    public const double CrossedBar = 0.7;

    /// <summary>Length d of one bar [m].</summary>
    public double BarLength => Math.Sqrt((Pitch * Pitch) + (Separation * Separation));

    /// <summary>Length of one bar as a column [m].</summary>
    public double EffectiveBarLength => IsDouble ? CrossedBar * BarLength : BarLength;

    /// <summary>Bars that a cut across the member goes through.</summary>
    public int BarsCut => Planes * (IsDouble ? 2 : 1);

    /// <summary>Shear angle per shear force [1/N]: d³/(a b² E Ad), Ad the area of all bars that a cut goes through.</summary>
    /// <param name="modulus">Modulus of elasticity [Pa].</param>
    public double ShearFlexibility(double modulus)
    {
        Check();
        Checked.Positive(modulus, nameof(modulus));
        return Math.Pow(BarLength, 3) / (Pitch * Separation * Separation * modulus * BarArea * BarsCut);
    }

    /// <summary>Length of a leg between its lacing points [m]: two pitches in single lacing and one in double, and one more for each bar, or crossed pair, missing in a row.</summary>
    /// <param name="missingInRow">Bars, or crossed pairs, missing or loose next to each other.</param>
    public double FreeLength(int missingInRow)
    {
        Check();
        ArgumentOutOfRangeException.ThrowIfNegative(missingInRow);
        return Pitch * ((IsDouble ? 1 : 2) + missingInRow);
    }

    /// <summary>Force in one bar, tension or compression [N], from 2.5 % of the compression as a shear.</summary>
    /// <param name="compression">Compression of the member, positive [N].</param>
    public double BarForce(double compression)
    {
        Check();
        Checked.NotNegative(compression, nameof(compression));
        return ShearOfCompression * compression * BarLength / (Separation * BarsCut);
    }

    private void Check()
    {
        Checked.Positive(Pitch, nameof(Pitch));
        Checked.Positive(Separation, nameof(Separation));
        Checked.Positive(BarArea, nameof(BarArea));
        ArgumentOutOfRangeException.ThrowIfLessThan(Planes, 1);
    }
}
