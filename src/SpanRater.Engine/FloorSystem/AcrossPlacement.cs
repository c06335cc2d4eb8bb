namespace SpanRater;

/// <summary>What stands across the roadway where a floorbeam that spans simply between two trusses bends most.</summary>
/// <param name="Moment">Its largest bending moment for each unit that one vehicle or lane brings to it, presence factor included [m].</param>
/// <param name="Section">Where, from the left truss [m].</param>
/// <param name="Wheels">Distance of each wheel line from the left truss [m]; empty of a lane load and of a crowd.</param>
/// <param name="Lanes">Lanes loaded; 0 of a crowd.</param>
/// <param name="Presence">Presence factor in the moment [-].</param>
public sealed record AcrossPlacement(double Moment, double Section, IReadOnlyList<double> Wheels, int Lanes, double Presence)
{
    /// <summary>The strips that a lane load or a crowd covers, by the distances of their edges from the left truss; empty of vehicles.</summary>
    public IReadOnlyList<LateralStrip> Strips { get; init; } = [];
}

/// <summary>The placements across a floorbeam, or why there are none.</summary>
public abstract record AcrossOutcome
{
    private AcrossOutcome()
    {
    }

    /// <summary>The worst placement of one lane, of two and so on.</summary>
    /// <param name="ByLanes">One for each number of lanes.</param>
    public sealed record Found(IReadOnlyList<AcrossPlacement> ByLanes) : AcrossOutcome
    {
        /// <summary>The worst of them; of equal ones that of fewer lanes.</summary>
        public AcrossPlacement Most { get; } = ByLanes.MaxBy(p => p.Moment)!;
    }

    /// <summary>There is none.</summary>
    /// <param name="Why">Why, as the lever rule tells it.</param>
    public sealed record None(ShareOutcome Why) : AcrossOutcome;
}
