namespace SpanRater;

/// <summary>The share of one vehicle, or of several abreast, that one truss carries.</summary>
/// <param name="Value">Vehicles' worth of load on the truss, presence factor included [-].</param>
/// <param name="Lanes">Lanes loaded; 0 where the share was given.</param>
/// <param name="Presence">Presence factor in it [-].</param>
/// <param name="Wheels">Distance of each wheel line from the truss [m]; empty where the share was given.</param>
/// <param name="WheelToKerb">Distance of the nearest wheel line from the kerb [m].</param>
public sealed record LateralShare(double Value, int Lanes, double Presence, IReadOnlyList<double> Wheels, double WheelToKerb);

/// <summary>The shares of the trusses, or why there are none.</summary>
public abstract record ShareOutcome
{
    private ShareOutcome()
    {
    }

    /// <summary>Each truss's share.</summary>
    /// <param name="Left">The left truss, looking along the span.</param>
    /// <param name="Right">The right truss.</param>
    public sealed record Found(LateralShare Left, LateralShare Right) : ShareOutcome
    {
        /// <summary>True when both trusses carry the same.</summary>
        public bool Alike => Math.Abs(Left.Value - Right.Value) <= 1e-12 * Math.Abs(Left.Value);
    }

    /// <summary>What the lever rule needs is not given.</summary>
    /// <param name="TrussSpacing">True where the spacing of the trusses is missing.</param>
    /// <param name="Roadway">True where the width of the roadway is missing.</param>
    public sealed record NotGiven(bool TrussSpacing, bool Roadway) : ShareOutcome;

    /// <summary>The lever rule is for two trusses.</summary>
    /// <param name="Trusses">Number of trusses.</param>
    public sealed record NotTwoTrusses(int Trusses) : ShareOutcome;

    /// <summary>The vehicle does not fit between the kerbs.</summary>
    /// <param name="Needed">Width it needs [m].</param>
    /// <param name="Roadway">Width there is [m].</param>
    public sealed record TooWide(double Needed, double Roadway) : ShareOutcome;

    /// <summary>A wheel line would stand outside the trusses, where the lever rule does not hold.</summary>
    /// <param name="FromFarTruss">Distance of the wheel line from the farther truss [m].</param>
    /// <param name="TrussSpacing">Distance between the trusses [m].</param>
    public sealed record WheelOutside(double FromFarTruss, double TrussSpacing) : ShareOutcome;
}
