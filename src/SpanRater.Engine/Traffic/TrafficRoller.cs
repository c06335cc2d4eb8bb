namespace SpanRater;

/// <summary>Rolls recorded trucks over a bridge, one after another, and counts what they bring. Not for several threads at once: each has its own.</summary>
public sealed class TrafficRoller
{
    private readonly CrossingSearch deck;
    private readonly CrossingSearch[] spans;
    private readonly double[] greatest;
    private readonly double[] least;
    private readonly double[] sections = new double[CountedSpan.Sections.Count];
    private readonly double[] relieving = new double[CountedSpan.Sections.Count];
    private readonly double[] values;
    private readonly int[] lineOf;
    private readonly CrossingValue[] kindOf;

    /// <summary>A roller with an empty tally.</summary>
    /// <param name="plan">What is counted.</param>
    public TrafficRoller(TrafficPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Tally = new TrafficTally(plan);
        deck = new CrossingSearch(plan.DeckLines);
        spans = [.. plan.SpanLines.Select(l => new CrossingSearch(l))];
        greatest = new double[plan.Lines];
        least = new double[plan.Lines];
        values = new double[plan.Channels.Count];
        lineOf = [.. plan.Channels.Select(c => c.Line)];
        kindOf = [.. plan.Channels.Select(c => c.Value)];
    }

    /// <summary>What was counted so far.</summary>
    public TrafficTally Tally { get; }

    /// <summary>Rolls one truck over in both directions and counts it.</summary>
    /// <param name="loads">Axle loads from the front axle back, positive; at least one [N].</param>
    /// <param name="gaps">Distance of each axle from the one ahead, positive; one less than the loads [m].</param>
    /// <param name="day">Day number of its crossing.</param>
    /// <param name="row">What its record is found by.</param>
    /// <param name="isUnlikely">Whether it is marked as unlikely.</param>
    public void Roll(ReadOnlySpan<double> loads, ReadOnlySpan<double> gaps, int day, int row, bool isUnlikely = false)
    {
        int along = greatest.Length - spans.Length;
        if (along > 0)
        {
            deck.Cross(loads, gaps, greatest.AsSpan(0, along), least.AsSpan(0, along));
        }

        for (int s = 0; s < spans.Length; s++)
        {
            spans[s].Cross(loads, gaps, sections, relieving);
            double worst = 0;
            foreach (double moment in sections)
            {
                worst = Math.Max(worst, moment);
            }

            greatest[along + s] = worst;
        }

        double gross = 0;
        foreach (double load in loads)
        {
            gross += load;
        }

        for (int c = 0; c < values.Length; c++)
        {
            int line = lineOf[c];
            values[c] = kindOf[c] switch
            {
                CrossingValue.Greatest => greatest[line],
                CrossingValue.Least => -least[line],
                _ => greatest[line] - least[line],
            };
        }

        Tally.Count(values, gross, day, row, isUnlikely);
    }
}
