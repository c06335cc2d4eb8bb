using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.Vehicles;

/// <summary>
/// The legal loads with a lane: AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), Fig. D6A-4 and D6A-5, from memory: 0.75 of
/// Type 3-3 with 0.2 klf, and two of those trucks 30 ft apart. The effects are worked by hand.
/// </summary>
public class LaneTypeLegalLoadTests
{
    // Axles of 14, 14, 16, 12, 12, 12 kip stand 0, 4, 20, 35, 39, 54 ft from the support, rear axle first:
    // 80 - (14 x 4 + 16 x 20 + 12 x 35 + 12 x 39 + 12 x 54)/240 = 80 - 1912/240 = 72.0333; the other way round
    // 80 - (12 x 15 + 12 x 19 + 16 x 34 + 14 x 50 + 14 x 54)/240 = 69.9667. The lane gives 0.2 x 240/2 = 24.
    [Fact]
    public void EndReaction_Of240Feet_IsTheHandValue()
    {
        (double kips, LiveEffect worst) = PublishedLoadings.EndReaction(240, PublishedLoadings.Shipped("Lane-type legal load"));

        Assert.Equal((0.75 * (80 - (1912.0 / 240))) + 24, kips, 1e-9);
        Assert.Equal(78.025, kips, 1e-9);
        Assert.Equal(0.75 * 80 * Kip, Assert.IsType<LivePart.Axles>(worst.Parts[0]).Vehicle.Train.Weight, 1e-6);
    }

    // The second truck begins 30 ft behind the last axle of the first, 84 ft from the support. Rear axles first, all of it runs
    // 84 ft on: 160 - (2 x 1912 + 80 x 84)/240 = 160 - 10544/240.
    [Fact]
    public void EndReaction_OfTwoTrucks_IsTheHandValue() =>
        Assert.Equal(
            (0.75 * (160 - (10544.0 / 240))) + 24,
            PublishedLoadings.EndReaction(240, PublishedLoadings.Shipped("Lane-type legal load, two trucks")).Kips,
            1e-9);

    [Theory]
    [InlineData(200.0, false)]
    [InlineData(200.5, true)]
    public void BelongsTo_ADeckOfSuchLength_IsAboveTwoHundredFeetOnly(double spanInFeet, bool belongs)
    {
        Truss truss = ParallelChordTruss.Pratt(10, spanInFeet * Foot / 10, 20 * Foot).Truss;

        Assert.Equal(belongs, PublishedLoadings.Shipped("Lane-type legal load").BelongsTo(truss));
        Assert.False(PublishedLoadings.Shipped("Lane-type legal load, two trucks").BelongsTo(truss));
    }
}
