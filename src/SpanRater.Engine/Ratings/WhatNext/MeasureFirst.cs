namespace SpanRater;

/// <summary>A reading worth taking again, and what its doubt may cost.</summary>
/// <param name="Row">The lowest row of its member.</param>
/// <param name="Reading">The reading.</param>
/// <param name="AtWorst">The factor with this reading off by its doubt to the bad side [-].</param>
/// <param name="ResistanceAtWorst">What the member carries then; null where nothing is left or no rule holds any more.</param>
public sealed record DoubtfulReading(MemberRow Row, Reading Reading, double AtWorst, MemberResistance? ResistanceAtWorst)
{
    /// <summary>What the factor loses with the doubt, not negative [-].</summary>
    public double Loss => Math.Max(0, Row.Factor!.Value - AtWorst);

    /// <summary>What the factor loses per length of doubt [1/m].</summary>
    public double Sensitivity => Loss / Reading.Doubt;

    /// <summary>
    /// How urgent it is: sensitivity × doubt × how low the factor is, as the growth of the use 1/RF that the load makes of the room: loss/(RF × RF at worst).
    /// Without bound where nothing is left [-].
    /// </summary>
    public double Urgency => Loss == 0 ? 0 : AtWorst > 0 ? Loss / (Row.Factor!.Value * AtWorst) : double.PositiveInfinity;
}

/// <summary>
/// What to measure next: readings by what their doubts may cost, factors with their doubts, and what must remain. Each member of each truss is
/// looked at by its lowest row; members whose capacity is given take no part.
/// </summary>
public sealed class MeasureFirst
{
    private MeasureFirst(BridgeRating rating)
    {
        Rating = rating;
        IReadOnlyList<RowCase> cases = RowCase.Lowest(rating);
        Readings =
        [
            .. cases.SelectMany(c => Reading.Of(c.Make.Section).Where(r => r.Doubt > 0).Select(r => new DoubtfulReading(c.Row, r, c.FactorWith([(r, r.AtWorst)]), c.With([(r, r.AtWorst)]) is { } worst ? c.ResistanceOf(worst) : null)))
                .OrderByDescending(r => Math.Round(r.Urgency, 9)),
        ];
        Factors = [.. cases.Select(DoubtfulFactor.Of).OfType<DoubtfulFactor>()];
        Needed = [.. cases.SelectMany(NeededDimension.Of)];
        NotMeasured = [.. cases.Where(c => Reading.Of(c.Make.Section).Count == 0).Select(c => c.Row)];
    }

    /// <summary>The rating.</summary>
    public BridgeRating Rating { get; }

    /// <summary>Readings with a doubt, the most urgent first.</summary>
    public IReadOnlyList<DoubtfulReading> Readings { get; }

    /// <summary>Rows whose members have readings with doubts, the lowest first.</summary>
    public IReadOnlyList<DoubtfulFactor> Factors { get; }

    /// <summary>What must remain of each dimension of each member, the member with the lowest factor first.</summary>
    public IReadOnlyList<NeededDimension> Needed { get; }

    /// <summary>The lowest row of each member that nothing was measured on, the lowest first.</summary>
    public IReadOnlyList<MemberRow> NotMeasured { get; }

    /// <summary>What to measure next.</summary>
    /// <param name="rating">The rating.</param>
    public static MeasureFirst Of(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return new MeasureFirst(rating);
    }
}
