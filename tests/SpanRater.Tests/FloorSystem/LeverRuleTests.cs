namespace SpanRater.Tests.FloorSystem;

public class LeverRuleTests
{
    private const double Foot = 0.3048;

    // AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.2.3.2, from memory: under 18 ft one lane, 18 to 24 ft two,
    // above that whole lanes of 12 ft.
    [Theory]
    [InlineData(17.99, 1)]
    [InlineData(18, 2)]
    [InlineData(24, 2)]
    [InlineData(24.01, 2)]
    [InlineData(35.99, 2)]
    [InlineData(36, 3)]
    [InlineData(48, 4)]
    public void LanesOn_Roadway_FollowsItsWidth(double roadwayInFeet, int lanes) =>
        Assert.Equal(lanes, LeverRule.LanesOn(roadwayInFeet * Foot));

    [Fact]
    public void Share_OneLane_PutsTheWheelsNextToTheKerb()
    {
        // Kerb 1 ft from the truss, wheels 3 and 9 ft from it: (15 + 9) / (2 x 18).
        LateralShare share = Found(DeckOf(18, 16)).Left;

        Assert.Equal(24 / 36.0, share.Value, 1e-12);
        Assert.Equal(1, share.Lanes);
        Assert.Equal(1, share.Presence);
        Assert.Equal([3 * Foot, 9 * Foot], share.Wheels, (a, b) => Math.Abs(a - b) < 1e-12);
        Assert.Equal(2 * Foot, share.WheelToKerb);
    }

    [Fact]
    public void Share_TwoLanes_KeepsFourFeetBetweenTheVehicles()
    {
        // Wheels 3, 9, 13 and 19 ft from the truss: (19 + 13 + 9 + 3) / (2 x 22).
        LateralShare share = Found(DeckOf(22, 20)).Left;

        Assert.Equal(1, share.Value, 1e-12);
        Assert.Equal(2, share.Lanes);
        Assert.Equal([3 * Foot, 9 * Foot, 13 * Foot, 19 * Foot], share.Wheels, (a, b) => Math.Abs(a - b) < 1e-12);
    }

    [Fact]
    public void Share_PresenceFavoursOneLane_LoadsOneLane()
    {
        // One lane (19 + 13) / 44 = 0.727 with 1.20, two lanes 1.00 with 0.85.
        var found = Assert.IsType<ShareOutcome.Found>(
            LeverRule.Share(DeckOf(22, 20), Vehicle.StandardGauge, null, lanes => lanes == 1 ? 1.20 : 0.85));

        Assert.Equal(1.20 * 32 / 44, found.Left.Value, 1e-12);
        Assert.Equal(1, found.Left.Lanes);
        Assert.Equal(1.20, found.Left.Presence);
    }

    [Fact]
    public void Share_LanesHeldToOne_LoadsOneLane()
    {
        var found = Assert.IsType<ShareOutcome.Found>(LeverRule.Share(DeckOf(22, 20), Vehicle.StandardGauge, 1, _ => 1));

        Assert.Equal(32 / 44.0, found.Left.Value, 1e-12);
    }

    [Fact]
    public void Share_RoadwayTooNarrowForTwoFeet_TakesOneFootToTheKerb()
    {
        // 9 ft holds 6 ft of gauge with 1 ft each side, not with 2. Kerb 2.5 ft from the truss, wheels 3.5 and 9.5 ft.
        LateralShare share = Found(DeckOf(14, 9)).Left;

        Assert.Equal(1 * Foot, share.WheelToKerb);
        Assert.Equal((10.5 + 4.5) / 28, share.Value, 1e-12);
    }

    [Fact]
    public void Share_KerbDistanceGivenBelowOneFoot_IsNotEnlarged()
    {
        LateralShare share = Found(DeckOf(14, 9) with { WheelToKerb = 0.5 * Foot }).Left;

        Assert.Equal(0.5 * Foot, share.WheelToKerb);
        Assert.Equal((11 + 5) / 28.0, share.Value, 1e-12);
    }

    [Fact]
    public void Share_RoadwayNarrowerThanTheVehicle_SaysWhatItNeeds()
    {
        var tooWide = Assert.IsType<ShareOutcome.TooWide>(Share(DeckOf(14, 7.5)));

        Assert.Equal(8 * Foot, tooWide.Needed, 1e-12);
        Assert.Equal(7.5 * Foot, tooWide.Roadway, 1e-12);
    }

    [Fact]
    public void Share_RoadwayExactlyWideEnough_Fits() => Assert.Equal(1 * Foot, Found(DeckOf(14, 8)).Left.WheelToKerb);

    [Fact]
    public void Share_WheelBeyondTheTruss_IsRefused()
    {
        // Kerb 3 ft outside the truss: the wheel stands 1 ft outside it, 15 ft from the other truss.
        var outside = Assert.IsType<ShareOutcome.WheelOutside>(Share(DeckOf(14, 20)));

        Assert.Equal(15 * Foot, outside.FromFarTruss, 1e-12);
        Assert.Equal(14 * Foot, outside.TrussSpacing, 1e-12);
    }

    [Fact]
    public void Share_RoadwayOffCentre_LoadsTheNearerTrussMore()
    {
        // 1 ft to the right: kerbs 3 ft from the left truss and 1 ft from the right one.
        ShareOutcome.Found found = Found(DeckOf(18, 14) with { RoadwayOffset = 1 * Foot });

        Assert.Equal((13 + 7) / 36.0, found.Left.Value, 1e-12);
        Assert.Equal((15 + 9) / 36.0, found.Right.Value, 1e-12);
        Assert.False(found.Alike);
    }

    [Fact]
    public void Share_RoadwayInTheMiddle_IsAlike() => Assert.True(Found(DeckOf(18, 14)).Alike);

    [Fact]
    public void Share_Given_IsTakenAsItStands()
    {
        var found = Assert.IsType<ShareOutcome.Found>(
            LeverRule.Share(DeckOf(18, 14) with { TrussShare = 0.8 }, Vehicle.StandardGauge, null, _ => 1.2));

        Assert.Equal(0.8, found.Left.Value);
        Assert.Equal(0.8, found.Right.Value);
        Assert.Equal(0, found.Left.Lanes);
        Assert.Empty(found.Left.Wheels);
    }

    [Fact]
    public void Share_NoSpacing_IsRefused() => Assert.Equal(new ShareOutcome.NotGiven(TrussSpacing: true, Roadway: false), Share(new Deck { Roadway = 4 }));

    [Fact]
    public void Share_NoRoadway_IsRefused() => Assert.Equal(new ShareOutcome.NotGiven(TrussSpacing: false, Roadway: true), Share(new Deck { TrussSpacing = 5 }));

    [Fact]
    public void Share_NeitherGiven_NamesBoth() => Assert.Equal(new ShareOutcome.NotGiven(TrussSpacing: true, Roadway: true), Share(new Deck()));

    [Fact]
    public void Share_ThreeTrusses_IsRefused() =>
        Assert.Equal(3, Assert.IsType<ShareOutcome.NotTwoTrusses>(Share(DeckOf(18, 14) with { Trusses = 3 })).Trusses);

    // Each vehicle takes 6 ft, 4 ft stay between them and at least 1 ft to each kerb.
    [Theory]
    [InlineData(7.9, 0)]
    [InlineData(8, 1)]
    [InlineData(17.9, 1)]
    [InlineData(18, 2)]
    [InlineData(28, 3)]
    public void MostAbreast_Roadway_CountsTheVehiclesThatFit(double roadwayInFeet, int vehicles) =>
        Assert.Equal(vehicles, LeverRule.MostAbreast(DeckOf(40, roadwayInFeet), Vehicle.StandardGauge));

    private static Deck DeckOf(double spacingInFeet, double roadwayInFeet) =>
        new() { TrussSpacing = spacingInFeet * Foot, Roadway = roadwayInFeet * Foot };

    private static ShareOutcome Share(Deck deck) => LeverRule.Share(deck, Vehicle.StandardGauge, null, _ => 1);

    private static ShareOutcome.Found Found(Deck deck) => Assert.IsType<ShareOutcome.Found>(Share(deck));
}
