using System.Globalization;

namespace SpanRater.Files;

/// <summary>The largest effect in so many years, by the largest of each day or week; refused where the record is too short.</summary>
/// <param name="reading">The reading.</param>
/// <param name="years">The return period [years]; null where none is asked for.</param>
internal sealed class TrafficExtremes(TrafficReading reading, double? years)
{
    /// <summary>Confidence of the interval [-].</summary>
    public const double Confidence = 0.95;

    private const string NotAsked = "Not extrapolated: say --years with the return period; none is assumed.";

    private readonly BlockMaxima blocks = new(reading.Tally);

    /// <summary>The return period [years]; null where none is asked for.</summary>
    public double? Years => years;

    /// <summary>Blocks, days or weeks.</summary>
    public BlockMaxima Blocks => blocks;

    /// <summary>Why there is no extrapolation; null where there is one.</summary>
    public string? WhyNot =>
        years is null ? NotAsked
        : blocks.Count < GumbelFit.FewestBlocks
            ? $"Not extrapolated: the record has {blocks.Count} day{(blocks.Count == 1 ? "" : "s")} with trucks between its first and its last, which may be cut short; at least {GumbelFit.FewestBlocks} are asked for."
            : null;

    /// <summary>The fit of an effect; null where there is none, or all blocks are alike.</summary>
    /// <param name="effect">The effect.</param>
    public GumbelFit? FitOf(TrafficEffect effect) => WhyNot is null ? GumbelFit.Of(blocks.Of(effect.Channel)) : null;

    /// <summary>Blocks in the return period [-].</summary>
    public double Period => years!.Value * blocks.BlocksAYear;

    /// <summary>Blocks whose largest value of an effect a truck marked as unlikely brought.</summary>
    /// <param name="effect">The effect.</param>
    public int UnlikelyOf(TrafficEffect effect) => blocks.UnlikelyOf(effect.Channel);

    /// <summary>Whether the record holds more than what it is extrapolated to, over a time longer than its own: the distribution does not fit.</summary>
    /// <param name="effect">The effect.</param>
    public bool IsAbove(TrafficEffect effect) => FitOf(effect) is { } fit && Period > blocks.Count && reading.Tally.Most(effect.Channel) > fit.ReturnLevel(Period);

    /// <summary>The section.</summary>
    /// <param name="shown">The effects that are printed, in their order.</param>
    /// <param name="brought">All that trucks brought anything to.</param>
    /// <param name="units">The units to show.</param>
    public IReadOnlyList<ResultBlock> Section(IReadOnlyList<TrafficEffect> shown, IReadOnlyList<TrafficEffect> brought, DisplayUnits units)
    {
        var heading = new ResultBlock.Heading("Extrapolated largest effects");
        if (WhyNot is { } why)
        {
            return [heading, new ResultBlock.Paragraph(why)];
        }

        TrafficTally tally = reading.Tally;
        string block = blocks.ByWeek ? "week" : "day";
        var rows = shown.Select(e => (Effect: e, Fit: FitOf(e))).Where(r => r.Fit is not null).ToArray();
        string[] without = [.. brought.Where(e => FitOf(e) is null).Select(e => TrafficWording.Name(e, tally.Plan.Bridge))];
        int most = brought.Select(UnlikelyOf).DefaultIfEmpty(0).Max();
        string[] above = [.. brought.Where(IsAbove).Select(e => TrafficWording.Name(e, tally.Plan.Bridge))];
        return
        [
            heading,
            new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"The largest of each of {blocks.Count} whole {block}s, fitted by a Gumbel distribution (maximum likelihood), and what one {block} in {Period:#,0} exceeds: once in {years:0.##} years on average. Interval: {Confidence:0%}, by the asymptotic covariance of the estimates (Johnson, Kotz and Balakrishnan, vol. 2, ch. 22; Coles, ch. 3; from memory). The return period is {years!.Value * FatigueTraffic.DaysAYear / blocks.DaysInAll:#,0.#} times as long as the record.{(shown.Count < brought.Count ? $" The {shown.Count} rows of the table above; --all prints every one." : "")}")),
            new ResultBlock.Paragraph($"It holds if {block}s are alike and traffic stays as it was: growth, seasons, permits, and what never crossed in the record are not in it, nor is the doubt whether the distribution fits so far out.", Strong: true),
            .. most > 0 ? [new ResultBlock.Paragraph($"Trucks marked as unlikely brought up to {most} of the {blocks.Count} values that are fitted for an effect: a wrong record moves every level here. Check their rows, take out what is wrong, and run again.", Strong: true)] : Array.Empty<ResultBlock>(),
            .. above.Length > 0 ? [new ResultBlock.Paragraph($"The record itself holds more than the level told for {string.Join(", ", above)}: the distribution does not fit there. Take no level below the largest, and look at the truck that brought it.", Strong: true)] : Array.Empty<ResultBlock>(),
            new ResultBlock.Grid(new ResultTable(
                [new("part"), new("in"), new("truss"), new("largest"), new("location"), new("scale"), new(string.Create(CultureInfo.InvariantCulture, $"once in {years:0.##} years")), new("low"), new("high"), new("with impact")],
                [
                    .. rows.Select(r =>
                    {
                        (TrafficEffect e, GumbelFit fit) = (r.Effect, r.Fit!);
                        (double low, double high) = fit.Interval(Period, Confidence);
                        string In(double value) => TrafficWording.Show(value, PartWords.QuantityOf(e.Acts), units, 1);
                        return (IReadOnlyList<object?>)
                        [
                            e.Name + (e.At.Length > 0 ? $" at {e.At}" : ""), e.Sense is { } sense ? Words.Of(sense) : PartWords.InWords(e.Acts), TrafficWording.TrussOf(e, tally.Plan),
                            In(e.Factor * tally.Most(e.Channel)), In(e.Factor * fit.Location), In(e.Factor * fit.Scale), In(e.Factor * fit.ReturnLevel(Period)), In(e.Factor * low), In(e.Factor * high), In(e.WithImpact * fit.ReturnLevel(Period)),
                        ];
                    }),
                ])),
            .. without.Length > 0 ? [new ResultBlock.Paragraph($"Not fitted, since every {block} is alike: {string.Join(", ", without)}.")] : Array.Empty<ResultBlock>(),
        ];
    }
}
