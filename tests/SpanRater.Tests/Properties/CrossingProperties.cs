using CsCheck;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests;

/// <summary>The search for recorded traffic held against its plain twin and against the search for ratings.</summary>
public class CrossingProperties
{
    /// <summary>Part of the train's weight times the line's greatest ordinate.</summary>
    private const double Equal = 1e-12;

    private const int Bridges = 500;
    private const int TrainsOnASample = 40;

    [Fact]
    public void Cross_RandomBridges_MatchesThePlainTwin() => SeededCases.Check(RandomCrossings.All(), Bridges, c =>
    {
        (double[] greatest, double[] least) = PlainSearch.Cross(c.Stations, c.Lines, c.Loads, c.Gaps);
        AssertEqual(c.Stations, c.Lines, c.Loads, c.Gaps, greatest, least);
    });

    // The search for ratings takes no gap of zero.
    [Fact]
    public void Cross_RandomBridges_MatchesTheSearchForRatings() => SeededCases.Check(RandomCrossings.All(), Bridges, c =>
    {
        double[] gaps = [.. c.Gaps.Select(g => g == 0 ? 1.1 : g)];
        AssertMatchesPlan(c.Stations, c.Lines, c.Loads, gaps);
    });

    [Theory]
    [InlineData("garrow-landing")]
    [InlineData("tansy-weir")]
    [InlineData("hollis-fork")]
    [InlineData("wrenfield-ferry")]
    [InlineData("mossback-lane")]
    [InlineData("mossback-lane/variants/b-king-post")]
    public void Cross_MembersAndReactionsOfASample_MatchesTwinAndSearchForRatings(string sample)
    {
        Bridge bridge = BridgeFolder.Read(Repository.Sample(sample), []).Bridge!;
        InfluenceLines effects = TrussCrossing.Of(bridge).Value!.Lines;
        InfluenceLine[] lines = [.. effects.Members.Concat(effects.Reactions).Select(e => e.Line)];
        double[] stations = [.. bridge.Truss.Stations];
        SeededCases.Check(RandomTrains.For(stations, 0), TrainsOnASample, train =>
        {
            double[] loads = [.. train.Loads], gaps = [.. train.Gaps.Select(g => g.Least)];
            AssertMatchesPlan(stations, lines, loads, gaps);
            (double[] greatest, double[] least) = PlainSearch.Cross(stations, lines, loads, gaps);
            AssertEqual(stations, lines, loads, gaps, greatest, least);
        });
    }

    private static void AssertMatchesPlan(double[] stations, InfluenceLine[] lines, double[] loads, double[] gaps)
    {
        var plan = new RollingPlan(stations, new AxleTrain(loads, [.. gaps.Select(AxleGap.Fixed)]));
        PeakPair[] peaks = [.. lines.Select(plan.PeaksOf)];
        AssertEqual(stations, lines, loads, gaps, [.. peaks.Select(p => p.Tension?.Force ?? 0)], [.. peaks.Select(p => p.Compression?.Force ?? 0)]);
    }

    private static void AssertEqual(double[] stations, InfluenceLine[] lines, double[] loads, double[] gaps, double[] greatest, double[] least)
    {
        double[] most = new double[lines.Length], lowest = new double[lines.Length];
        new CrossingSearch(CrossedLines.Of(stations, lines)).Cross(loads, gaps, most, lowest);
        for (int i = 0; i < lines.Length; i++)
        {
            double equal = Equal * loads.Sum() * lines[i].Ordinates.Max(Math.Abs);
            Assert.InRange(most[i], greatest[i] - equal, greatest[i] + equal);
            Assert.InRange(lowest[i], least[i] - equal, least[i] + equal);
        }
    }
}
