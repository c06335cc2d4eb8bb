namespace SpanRater.Files;

/// <summary>Says which of the members that only pull act.</summary>
public static class RodWording
{
    /// <summary>What a table of axles says of the dead load where the vehicle changes which rods pull.</summary>
    public const string DeadChange = "change in the dead load's force, other rods pulling";

    /// <summary>The acting and the slack ones, a sentence each.</summary>
    /// <param name="rods">What they do under a load.</param>
    /// <param name="truss">The truss.</param>
    public static IEnumerable<string> Of(RodState rods, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(rods);
        ArgumentNullException.ThrowIfNull(truss);
        yield return $"Of the members that only pull, these act: {Names(rods.Acting, truss)}. Slack: {Names(rods.Slack, truss)}. "
            + $"Found among {rods.SetsExamined} set{(rods.SetsExamined == 1 ? "" : "s")} of acting rods, without initial tension or misfit; it holds for this load and no other.";
    }

    /// <summary>The set of rods for which influence lines hold.</summary>
    /// <param name="slack">The slack ones.</param>
    /// <param name="truss">The truss.</param>
    public static string OfLines(IReadOnlyList<int> slack, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(slack);
        ArgumentNullException.ThrowIfNull(truss);
        IReadOnlyList<int> acting = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].TensionOnly && !slack.Contains(m))];
        return $"Lines for one set of acting rods: {Names(acting, truss)} act; slack: {Names(slack, truss)}. They hold as long as dead and live load together keep just this set acting, and forces of different sets do not add up.";
    }

    /// <summary>How a vehicle was rolled over a truss with rods.</summary>
    /// <param name="slackUnderDead">Members of crossed pairs that are slack under the dead load.</param>
    /// <param name="truss">The truss.</param>
    public static string OfRolling(IReadOnlyList<int> slackUnderDead, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(slackUnderDead);
        ArgumentNullException.ThrowIfNull(truss);
        return "Some members only pull, so that effects do not add up: the vehicle is rolled with the dead load (DC + DW, unfactored) on, and the force is that of both less that of the dead load alone. "
            + $"Peaks are sought wherever an axle stands on a panel point or a rod is just at zero. Slack under the dead load alone: {Names(slackUnderDead, truss)}.";
    }

    /// <summary>Which rods are slack at a peak.</summary>
    /// <param name="slack">Members of crossed pairs that are slack there.</param>
    /// <param name="truss">The truss.</param>
    public static string AtPeak(IReadOnlyList<int> slack, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(slack);
        ArgumentNullException.ThrowIfNull(truss);
        return $"Slack there: {Names(slack, truss)}.";
    }

    private static string Names(IReadOnlyList<int> members, Truss truss) =>
        members.Count == 0 ? "none" : string.Join(", ", members.Select(m => truss.Members[m].Name));
}
