using System.Globalization;

namespace SpanRater.Files;

/// <summary>Stress ranges that recorded trucks bring to members of known area, and the effective range.</summary>
internal static class TrafficFatigueSection
{
    /// <summary>The effective range of a member: the cube root of the mean of the cubes [Pa]; null where its ranges are not counted.</summary>
    /// <param name="tally">What was counted.</param>
    /// <param name="stress">The member.</param>
    public static double? Effective(TrafficTally tally, TrafficStress stress) =>
        stress.Channel is { } channel && tally.Trucks > 0 ? stress.StressOf(Math.Cbrt(tally.Cubes(channel) / tally.Trucks)) : null;

    /// <summary>Whether dead load and a truck of the record, with the allowance of fatigue, ever pull the member: else no range counts.</summary>
    /// <param name="tally">What was counted.</param>
    /// <param name="stress">The member.</param>
    public static bool ComesUnderTension(TrafficTally tally, TrafficStress stress)
    {
        double pull = tally.Plan.Effects.Where(e => e.Member == stress.Member && e.Sense == Sense.Tension).Select(e => tally.Most(e.Channel)).DefaultIfEmpty(0).Max();
        return stress.Dead + (stress.Share * (1 + FatigueNote.Impact) * pull) > 1e-3;
    }

    /// <summary>The section.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="units">The units to show.</param>
    public static IReadOnlyList<ResultBlock> Of(TrafficReading reading, DisplayUnits units)
    {
        TrafficTally tally = reading.Tally;
        Truss truss = tally.Plan.Bridge.Truss;
        TrafficStress[] counted = [.. tally.Plan.Stresses.Where(s => s.Channel is not null && ComesUnderTension(tally, s)).OrderByDescending(s => Effective(tally, s)).GroupBy(s => s.Member).Select(g => g.First())];
        string[] without =
        [
            .. tally.Plan.Stresses.SelectMany(s => s.Obstacles.Select(o => (Name: truss.Members[s.Member].Name, Why: FatigueWording.Of(o, truss, units)))).Distinct()
                .GroupBy(w => w.Why).Select(g => $"{string.Join(", ", g.Select(w => w.Name).Distinct())}: {g.Key}"),
        ];
        string[] pressed = [.. tally.Plan.Stresses.Where(s => s.Channel is not null && !ComesUnderTension(tally, s)).Select(s => truss.Members[s.Member].Name).Distinct()];
        return
        [
            new ResultBlock.Heading("Stress ranges"),
            .. counted.Length == 0 ? Array.Empty<ResultBlock>() :
            [
                new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Greatest less least of each crossing on one truss, dynamic allowance of fatigue {FatigueNote.Impact:0.00}, over the least area, net where holes are. The effective range, the cube root of the mean of the cubes of all trucks counted (Miner's rule; {TrafficClauses.EffectiveRange.CitationWithMark}), stands for the traffic in N = A/Δσ³ as spanrater fatigue uses it; --member tells one member's ranges. Of the two trusses that with the larger range is shown.")),
                new ResultBlock.Grid(new ResultTable(
                    [new("member"), new("truss"), new("effective", Quantity.Stress), new("largest", Quantity.Stress), new("area", Quantity.Area), new("of"), new("cycles a truck", Quantity.Number, 0)],
                    [
                        .. counted.Select(s => (IReadOnlyList<object?>)
                        [
                            truss.Members[s.Member].Name, TrussOf(s, tally.Plan), Effective(tally, s), s.StressOf(tally.Most(s.Channel!.Value)), s.Area,
                            $"{(s.IsNet ? "net" : "gross")}{(s.Place is null ? "" : $", {s.Place}")}", (double)s.CyclesAPassage,
                        ]),
                    ])),
            ],
            .. pressed.Length > 0 ? [new ResultBlock.Paragraph($"Always in compression, so that no range counts: {string.Join(", ", pressed)}.")] : Array.Empty<ResultBlock>(),
            .. without.Length > 0 ? [new ResultBlock.Items("No stress ranges:", without)] : Array.Empty<ResultBlock>(),
            new ResultBlock.Paragraph($"{FatigueWording.Indication} {FatigueWording.NoCategory}", Strong: true),
        ];
    }

    private static string TrussOf(TrafficStress shown, TrafficPlan plan) =>
        shown.Truss is not { } truss ? ""
        : plan.Stresses.Any(s => s.Member == shown.Member && s.Truss != truss && (s.Share, s.Area) == (shown.Share, shown.Area)) ? "each"
        : plan.Bridge.Deck.TrussNames[truss];
}
