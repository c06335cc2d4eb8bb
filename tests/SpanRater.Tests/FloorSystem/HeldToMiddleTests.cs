namespace SpanRater.Tests.FloorSystem;

/// <summary>Vehicles held to the middle of the roadway, and a deck of fewer lanes than fit: distances from the truss in feet, by hand.</summary>
public class HeldToMiddleTests
{
    private const double Foot = 0.3048;

    // Trusses 22 ft apart; the middle of the roadway 1 ft to the right: wheels 9 and 15 ft from the left truss, 7 and 13 ft from the right one.
    [Theory]
    [InlineData(20, 0, 0.5, 0.5)]
    [InlineData(20, 1, (13 + 7) / 44.0, (15 + 9) / 44.0)]
    [InlineData(9, 0, 0.5, 0.5)]
    public void Share_HeldToMiddle_IsOfOneVehicleOnTheMiddle(double roadway, double offset, double left, double right)
    {
        var found = Assert.IsType<ShareOutcome.Found>(LeverRule.Share(Deck(roadway, offset) with { VehiclesHeldToMiddle = true }, 6 * Foot, null, _ => 1.2));

        LateralShare onLeft = Assert.Single(found.OnLeft), onRight = Assert.Single(found.OnRight);
        Assert.Equal(1.2 * left, onLeft.Value, 1e-9);
        Assert.Equal(1.2 * right, onRight.Value, 1e-9);
        Assert.Equal((roadway - 6) / 2 * Foot, onLeft.WheelToKerb, 1e-9);
    }

    [Fact]
    public void Share_HeldToMiddleWhereItDoesNotFit_IsStillTooWide() =>
        Assert.IsType<ShareOutcome.TooWide>(LeverRule.Share(Deck(7.5, 0) with { VehiclesHeldToMiddle = true }, 6 * Foot, null, _ => 1));

    [Fact]
    public void LaneShare_HeldToMiddle_StandsOnTheMiddle()
    {
        var found = Assert.IsType<ShareOutcome.Found>(LeverRule.LaneShare(Deck(20, 0) with { VehiclesHeldToMiddle = true }, null, _ => 1));

        Assert.Equal(0.5, Assert.Single(found.OnLeft).Value, 1e-9);
        Assert.Equal(11 * Foot, Assert.Single(found.OnLeft[0].Strips).Middle, 1e-9);
    }

    [Fact]
    public void Share_OfADeckWithOneLane_IsOfOneVehicleAtTheKerb()
    {
        var found = Assert.IsType<ShareOutcome.Found>(LeverRule.Share(Deck(20, 0) with { MostLanes = 1 }, 6 * Foot, null, _ => 1));

        Assert.Equal((19 + 13) / 44.0, Assert.Single(found.OnLeft).Value, 1e-9);
        Assert.Null(LeverRule.Pair(Deck(20, 0) with { MostLanes = 1 }, 0, 6 * Foot, 6 * Foot, 1));
        Assert.NotNull(LeverRule.Pair(Deck(20, 0), 0, 6 * Foot, 6 * Foot, 1));
    }

    private static Deck Deck(double roadway, double offset) =>
        new() { TrussSpacing = 22 * Foot, Roadway = roadway * Foot, RoadwayOffset = offset * Foot };
}
