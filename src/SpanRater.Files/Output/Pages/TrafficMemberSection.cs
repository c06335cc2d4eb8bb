namespace SpanRater.Files;

/// <summary>One member in full: crossings by level, and by stress range.</summary>
internal static class TrafficMemberSection
{
    /// <summary>Levels that a table is parted into, at most.</summary>
    private const int Levels = 12;

    /// <summary>Crossings by level: bins joined to at most twelve levels; each with its lower and upper edge, as values of the channel, and its crossings.</summary>
    /// <param name="tally">What was counted.</param>
    /// <param name="channel">The channel.</param>
    public static IEnumerable<(double From, double To, long Crossings)> LevelsOf(TrafficTally tally, int channel)
    {
        IReadOnlyList<long> bins = tally.Histogram(channel);
        int joined = Math.Max(1, (bins.Count + Levels - 1) / Levels);
        double width = tally.Plan.Channels[channel].BinWidth;
        for (int b = 0; b < bins.Count; b += joined)
        {
            yield return (b * width, (b + joined) * width, bins.Skip(b).Take(joined).Sum());
        }
    }

    /// <summary>The section.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="member">Position of the member.</param>
    /// <param name="units">The units to show.</param>
    public static IReadOnlyList<ResultBlock> Of(TrafficReading reading, int member, DisplayUnits units)
    {
        TrafficTally tally = reading.Tally;
        TrafficPlan plan = tally.Plan;
        string name = plan.Bridge.Truss.Members[member].Name;
        var blocks = new List<ResultBlock> { new ResultBlock.Heading($"{name} in full") };
        foreach (TrafficEffect effect in plan.Effects.Where(e => e.Member == member && tally.Most(e.Channel) > 0))
        {
            blocks.Add(new ResultBlock.Paragraph($"{TrafficWording.Name(effect, plan.Bridge)}: largest {TrafficWording.Show(effect.Factor * tally.Most(effect.Channel), Quantity.Force, units)} without impact, {TrafficWording.Of(tally.MostRecord(effect.Channel)!, reading, units)}."));
            blocks.Add(Grid(tally, effect.Channel, value => effect.Factor * value, Quantity.Force));
        }

        foreach (TrafficStress stress in plan.Stresses.Where(s => s.Member == member && s.Channel is not null))
        {
            blocks.Add(new ResultBlock.Paragraph($"Stress ranges{(stress.Truss is { } t ? $", {plan.Bridge.Deck.TrussNames[t]} truss" : "")}: effective {TrafficWording.Show(TrafficFatigueSection.Effective(tally, stress)!.Value, Quantity.Stress, units)}."));
            blocks.Add(Grid(tally, stress.Channel!.Value, value => stress.StressOf(value)!.Value, Quantity.Stress));
        }

        if (blocks.Count == 1)
        {
            blocks.Add(new ResultBlock.Paragraph($"No truck brings a force to {name} that is counted."));
        }

        return blocks;
    }

    private static ResultBlock.Grid Grid(TrafficTally tally, int channel, Func<double, double> shown, Quantity quantity) => new(new ResultTable(
        [new("from", quantity), new("to", quantity), new("crossings"), new("%")],
        [.. LevelsOf(tally, channel).Select(l => (IReadOnlyList<object?>)[shown(l.From), shown(l.To), TrafficWording.Whole(l.Crossings), TrafficWording.Share(l.Crossings, tally.Trucks)])]));
}
