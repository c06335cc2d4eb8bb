namespace SpanRater.Tests;

/// <summary>How lane loads, crowds and two different vehicles stand across a deck, by hand.</summary>
public class LaneShareTests
{
    private const double Foot = 0.3048, Tolerance = 1e-12;

    private static readonly Func<int, double> Presence = lanes => lanes == 1 ? 1.2 : 1;

    // 14 ft of roadway between trusses 18 ft apart: a lane 10 ft wide from 2 to 12 ft, its middle 7 ft from the truss.
    [Fact]
    public void LaneShare_OneLane_StandsAtTheKerb()
    {
        LateralShare share = Assert.Single(Lanes(18, 14).OnLeft);

        Assert.Equal(1.2 * 11 / 18, share.Value, Tolerance);
        Assert.Equal(2 * Foot, Assert.Single(share.Strips).From, Tolerance);
    }

    // 9 ft of roadway has no room for 10.
    [Fact]
    public void LaneShare_ANarrowRoadway_IsCoveredWhole()
    {
        LateralShare share = Assert.Single(Lanes(16, 9).OnLeft);

        Assert.Equal(1.2 * 0.5, share.Value, Tolerance);
        Assert.Equal(9 * Foot, Assert.Single(share.Strips).Width, Tolerance);
    }

    // 24 ft in 28: lanes from 2 to 12 and from 12 to 22 ft, (21 + 11)/28 of two.
    [Fact]
    public void LaneShare_TwoLanes_StandEdgeToEdge()
    {
        ShareOutcome.Found shares = Lanes(28, 24);

        Assert.Equal(1.2 * 21 / 28, shares.OnLeft[0].Value, Tolerance);
        Assert.Equal(32.0 / 28, shares.OnLeft[1].Value, Tolerance);
        Assert.Equal(2, shares.OnLeft[1].Lanes);
    }

    // From 18 ft up a roadway has two lanes of half its width, in which the lane loads have 9 ft each: two of them share evenly.
    [Theory]
    [InlineData(18)]
    [InlineData(19)]
    public void LaneShare_TwoLanesOfLessThanTenFeet_AreLoadedBoth(double roadway)
    {
        ShareOutcome.Found shares = Lanes(20, roadway);

        Assert.Equal(2, shares.OnLeft.Count);
        Assert.Equal(1, shares.OnLeft[1].Value, Tolerance);
        Assert.Equal(roadway / 2 * Foot, shares.OnLeft[1].Strips[0].Width, Tolerance);
        Assert.Equal(10 * Foot, shares.OnLeft[0].Strips[0].Width, Tolerance);
    }

    [Fact]
    public void LaneShare_OneLaneAtMost_IsOne() =>
        Assert.Single(Assert.IsType<ShareOutcome.Found>(LeverRule.LaneShare(Of(28, 24), 1, Presence)).OnLeft);

    // 1 ft to the right: the left kerb stands 3 ft from its truss and the right one 1 ft.
    [Fact]
    public void LaneShare_RoadwayToTheRight_LoadsTheRightTrussMore()
    {
        var shares = Assert.IsType<ShareOutcome.Found>(LeverRule.LaneShare(Of(18, 14) with { RoadwayOffset = Foot }, null, Presence));

        Assert.Equal(1.2 * 10 / 18, shares.Left.Value, Tolerance);
        Assert.Equal(1.2 * 12 / 18, shares.Right.Value, Tolerance);
        Assert.False(shares.Alike);
    }

    // From 2 to 16 ft: 14 ft wide with its middle 9 ft away; 5 ft of it from 2 to 7 ft: 5 x 13.5/18.
    [Theory]
    [InlineData(null, 14 * 9 / 18.0)]
    [InlineData(5.0, 5 * 13.5 / 18)]
    [InlineData(40.0, 14 * 9 / 18.0)]
    public void CrowdOn_ADeck_StandsFromTheKerb(double? width, double carried) =>
        Assert.Equal(carried * Foot, LeverRule.CrowdOn(Of(18, 14), 0, width * Foot)!.Width, Tolerance);

    // The roadway ends 1 ft beyond the right truss, where a crowd would lift the left one: it stands on 0 to 12 ft, one half of it.
    [Fact]
    public void CrowdOn_ADeckThatOverhangs_LeavesOutWhatRelieves()
    {
        CrowdShare crowd = LeverRule.CrowdOn(Of(12, 13) with { RoadwayOffset = 0.5 * Foot }, 0, null)!;

        Assert.Equal(12 * Foot, crowd.Strip.To, Tolerance);
        Assert.Equal(6 * Foot, crowd.Width, Tolerance);
    }

    // 20 ft in 22: wheels 3 and 9 ft from the truss, then 13 and 19.
    [Fact]
    public void Pair_OfSixFeetEach_IsSharedByItsWheels()
    {
        (LateralShare near, LateralShare far) = LeverRule.Pair(Of(22, 20), 0, 6 * Foot, 6 * Foot, 1)!.Value;

        Assert.Equal(32 / 44.0, near.Value, Tolerance);
        Assert.Equal(12 / 44.0, far.Value, Tolerance);
    }

    // 8 and 6 ft with 4 between need 18 ft and 1 ft to each kerb: wheels 2 and 10, then 14 and 20 ft from the truss.
    [Fact]
    public void Pair_ThatJustFits_StandsOneFootFromTheKerbs()
    {
        (LateralShare near, LateralShare far) = LeverRule.Pair(Of(22, 20), 0, 8 * Foot, 6 * Foot, 1)!.Value;

        Assert.Equal((20 + 12) / 44.0, near.Value, Tolerance);
        Assert.Equal((8 + 2) / 44.0, far.Value, Tolerance);
        Assert.Equal(Foot, near.WheelToKerb, Tolerance);
    }

    [Theory]
    [InlineData(22, 20, 8.5, 6)]
    [InlineData(22, 17, 6, 3)]
    public void Pair_WithoutRoom_IsNone(double spacing, double roadway, double near, double far) =>
        Assert.Null(LeverRule.Pair(Of(spacing, roadway), 0, near * Foot, far * Foot, 1));

    private static Deck Of(double spacing, double roadway) => new() { TrussSpacing = spacing * Foot, Roadway = roadway * Foot };

    private static ShareOutcome.Found Lanes(double spacing, double roadway) =>
        Assert.IsType<ShareOutcome.Found>(LeverRule.LaneShare(Of(spacing, roadway), null, Presence));
}
