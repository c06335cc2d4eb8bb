namespace SpanRater;

/// <summary>A strip of the roadway, by the distances of its edges from the truss considered.</summary>
/// <param name="From">Nearer edge [m].</param>
/// <param name="To">Farther edge [m].</param>
public readonly record struct LateralStrip(double From, double To)
{
    /// <summary>Width [m].</summary>
    public double Width => To - From;

    /// <summary>Middle [m].</summary>
    public double Middle => (From + To) / 2;
}

/// <summary>The share of one vehicle, or of several abreast, that one truss carries.</summary>
/// <param name="Value">Vehicles' worth of load on the truss, presence factor included [-].</param>
/// <param name="Lanes">Lanes loaded; 0 where the share was given.</param>
/// <param name="Presence">Presence factor in it [-].</param>
/// <param name="Wheels">Distance of each wheel line from the truss [m]; empty where the share was given, and of a lane load.</param>
/// <param name="WheelToKerb">Distance of the nearest wheel line from the kerb [m].</param>
public sealed record LateralShare(double Value, int Lanes, double Presence, IReadOnlyList<double> Wheels, double WheelToKerb)
{
    /// <summary>The strips that a lane load covers, one a lane; empty of a vehicle, and where the share was given.</summary>
    public IReadOnlyList<LateralStrip> Strips { get; init; } = [];
}

/// <summary>The shares of the trusses, or why there are none.</summary>
public abstract record ShareOutcome
{
    private ShareOutcome()
    {
    }

    /// <summary>Each truss's share, for one vehicle and for each number abreast.</summary>
    /// <param name="OnLeft">The left truss, looking along the span: one vehicle, two abreast and so on.</param>
    /// <param name="OnRight">The right truss, the same.</param>
    public sealed record Found(IReadOnlyList<LateralShare> OnLeft, IReadOnlyList<LateralShare> OnRight) : ShareOutcome
    {
        /// <summary>The largest share of the left truss; of equal ones that of fewer vehicles.</summary>
        public LateralShare Left { get; } = OnLeft.MaxBy(s => s.Value)!;

        /// <summary>The largest share of the right truss; of equal ones that of fewer vehicles.</summary>
        public LateralShare Right { get; } = OnRight.MaxBy(s => s.Value)!;

        /// <summary>True when both trusses carry the same.</summary>
        public bool Alike => OnLeft.Zip(OnRight).All(p => Math.Abs(p.First.Value - p.Second.Value) <= 1e-12 * Math.Abs(p.First.Value));
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
