using SpanRater.Files;
using SpanRater.Tests.CommandLine;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>The samples with rods, read from their folders, and what their anchors are asked of.</summary>
internal static class RodAnchors
{
    public static Bridge Read(string sample)
    {
        BridgeReading reading = BridgeFolder.Read(Repository.Sample(sample), []);
        Assert.DoesNotContain(reading.Findings.All, f => f.Severity == FindingSeverity.Error);
        return reading.Bridge!;
    }

    public static TrussCrossing Crossing(Bridge bridge)
    {
        Assert.True(TrussCrossing.Of(bridge).TryGet(out TrussCrossing? crossing, out Refusal? refusal), $"{refusal}");
        return crossing;
    }

    /// <summary>Force of a member under the whole dead load [kip].</summary>
    public static double Dead(Bridge bridge, string member)
    {
        Assert.True(SolvableTruss.Of(bridge.Truss).TryGet(out SolvableTruss? system, out Refusal? refusal), $"{refusal}");
        Assert.True(system.Solve(bridge.DeadLoad!).TryGet(out ForceSolution? solution, out refusal), $"{refusal}");
        return solution.MemberForces[bridge.Truss.FindMember(member)!.Value] / Kip;
    }

    /// <summary>The peaks of a member with the dead load on.</summary>
    public static PeakPair Roll(Bridge bridge, string member, Vehicle vehicle, double scale = 1)
    {
        Assert.True(Crossing(bridge).Roll(vehicle, scale).TryGet(out IReadOnlyList<PeakPair>? peaks, out Refusal? refusal), $"{refusal}");
        return peaks[bridge.Truss.FindMember(member)!.Value];
    }

    /// <summary>The peaks on the lines that hold while the counters are slack: influence values, not forces that occur.</summary>
    public static PeakPair RollOnMains(Bridge bridge, string member, AxleTrain train)
    {
        Truss truss = bridge.Truss;
        int[] counters = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].Role == "counter")];
        InfluenceLines lines = RodTruss.Of(truss).Value!.Lines(counters).Value!;
        return new RollingPlan(truss.Stations, train).PeaksOf(lines.Members[truss.FindMember(member)!.Value].Line);
    }
}
