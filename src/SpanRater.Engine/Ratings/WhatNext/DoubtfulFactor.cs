namespace SpanRater;

/// <summary>The factor of a row as the doubts of its member's readings leave it.</summary>
/// <param name="Row">The row.</param>
/// <param name="Low">With every reading off by its doubt to the bad side [-].</param>
/// <param name="Likely">As read [-].</param>
/// <param name="High">With every reading off by its doubt to the good side; no more than as built remains [-].</param>
/// <param name="ChanceBelowOne">Part of the samples in which the factor is below 1 [-].</param>
public sealed record DoubtfulFactor(MemberRow Row, double Low, double Likely, double High, double ChanceBelowOne)
{
    /// <summary>Samples drawn for each row.</summary>
    public const int Samples = 5_000;

    /// <summary>Standard deviations in a doubt: about 19 of 20 readings are within it.</summary>
    public const double DeviationsInDoubt = 2;

    /// <summary>Seed of the samples, so that the same input gives the same numbers.</summary>
    public const int Seed = 1908;

    /// <summary>Standard error of the chance by the sampling alone [-].</summary>
    public double StandardError => Math.Sqrt(ChanceBelowOne * (1 - ChanceBelowOne) / Samples);

    /// <summary>The readings that have a doubt; at least one.</summary>
    public IReadOnlyList<Reading> Readings { get; private init; } = [];

    /// <summary>The capacity at which the factor is 1 [N]; null where none makes it so.</summary>
    public double? NeededCapacity { get; private init; }

    /// <summary>The capacities drawn; null where no capacity would make the factor 1.</summary>
    public DrawnCapacities? Drawn { get; private init; }

    /// <summary>The chance without drawing; null where more than one reading has a doubt.</summary>
    public ChanceByTheCurve? ByTheCurve { get; private init; }

    /// <summary>What the member carries with every reading at its worst; null where nothing is left or no rule holds any more.</summary>
    public MemberResistance? ResistanceAtWorst { get; private init; }

    /// <summary>What the member carries with every reading at its best.</summary>
    public MemberResistance? ResistanceAtBest { get; private init; }

    /// <summary>
    /// The factor with the doubts of its readings; null where no reading has a doubt. Each reading is drawn for itself from a normal
    /// distribution about its value, held between nothing and as built.
    /// </summary>
    internal static DoubtfulFactor? Of(RowCase row)
    {
        Reading[] readings = [.. Reading.Of(row.Make.Section).Where(r => r.Doubt > 0)];
        if (readings.Length == 0)
        {
            return null;
        }

        MemberMake? worst = row.With(readings.Select(r => (r, r.AtWorst))), best = row.With(readings.Select(r => (r, r.AtBest)));
        double? needed = row.NeededCapacity();
        DrawnCapacities? drawn = needed is { } capacity ? DrawnCapacities.Of(capacity, row, readings) : null;
        return new DoubtfulFactor(
            row.Row,
            worst is null ? 0 : row.FactorOf(worst),
            row.Row.Factor!.Value,
            best is null ? 0 : row.FactorOf(best),
            drawn is null ? 1 : drawn.Below / (double)Samples)
        {
            Readings = readings,
            NeededCapacity = needed,
            Drawn = drawn,
            ByTheCurve = needed is { } one && readings is [var only] ? ChanceByTheCurve.Of(one, row, only) : null,
            ResistanceAtWorst = worst is null ? null : row.ResistanceOf(worst),
            ResistanceAtBest = best is null ? null : row.ResistanceOf(best),
        };
    }
}
