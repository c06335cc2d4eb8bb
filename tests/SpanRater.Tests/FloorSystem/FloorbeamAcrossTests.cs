namespace SpanRater.Tests;

/// <summary>Placements across a floorbeam, by hand.</summary>
public class FloorbeamAcrossTests
{
    private const double Foot = 0.3048;
    private static readonly Deck Deck = new() { TrussSpacing = 20 * Foot, Roadway = 18 * Foot };

    // One vehicle, 6 ft gauge, free to stand anywhere about the middle: two loads ½, (L − d/2)² / 4L = 17²/80 ft.
    // Two abreast, 16 ft with 2 ft less than 2 ft to each kerb: from 2 ft with 1 ft at the kerb, wheels at 2, 8, 12, 18 ft: 0.5 (8 + 2 ...).
    [Fact]
    public void Wheels_OnTwoLanes_AreThoseByHand()
    {
        var found = Assert.IsType<AcrossOutcome.Found>(FloorbeamAcross.Wheels(Deck, 6 * Foot, null, _ => 1));

        Assert.Equal(2, found.ByLanes.Count);
        Assert.Equal(17.0 * 17 / 80, found.ByLanes[0].Moment / Foot, 1e-9);
        Assert.Equal(8.5, Math.Min(found.ByLanes[0].Section, (20 * Foot) - found.ByLanes[0].Section) / Foot, 1e-9);

        // Symmetric: reaction 1, moment at the wheel at 8 ft is 8 − 0.5 × 6 = 5 ft.
        Assert.Equal(5, found.ByLanes[1].Moment / Foot, 1e-9);
    }

    // Two strips of 9 ft over 18 ft of 20: reaction 1, at midspan 10 − 4.5 = 5.5 less half of 9 ft: 1 × 10 − 1 × 4.5.
    [Fact]
    public void Strips_OnTwoLanes_AreThoseByHand()
    {
        var found = Assert.IsType<AcrossOutcome.Found>(FloorbeamAcross.Strips(Deck, null, _ => 1));

        Assert.Equal(3.75, found.ByLanes[0].Moment / Foot, 1e-9);
        Assert.Equal(5.5, found.ByLanes[1].Moment / Foot, 1e-9);
    }

    [Fact]
    public void Crowd_OnTheWholeRoadway_IsThatByHand() =>
        Assert.Equal(18 * 5.5 / 2 * 1.0, FloorbeamAcross.Crowd(Deck, null)!.Moment / Foot / Foot, 1e-9);

    [Fact]
    public void MostOfPair_OfAlikeVehicles_IsThatOfTwoAbreast()
    {
        (double own, double other, AcrossPlacement placement) = FloorbeamAcross.MostOfPair(Deck, 6 * Foot, 6 * Foot, 1, 1, 1)!.Value;

        Assert.Equal(5, placement.Moment / Foot, 1e-9);
        Assert.Equal(5, (own + other) / Foot, 1e-9);
    }

    [Fact]
    public void Wheels_OfTheMirroredRoadway_AreMirrored()
    {
        Deck wide = new() { TrussSpacing = 9, Roadway = 7, RoadwayOffset = 0.7 };
        var one = Assert.IsType<AcrossOutcome.Found>(FloorbeamAcross.Wheels(wide, 1.8, null, _ => 1));
        var other = Assert.IsType<AcrossOutcome.Found>(FloorbeamAcross.Wheels(wide with { RoadwayOffset = -0.7 }, 1.8, null, _ => 1));

        Assert.Equal(one.ByLanes.Select(p => Math.Round(p.Moment, 9)), other.ByLanes.Select(p => Math.Round(p.Moment, 9)));
    }
}
