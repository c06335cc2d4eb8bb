using CsCheck;

namespace SpanRater.Tests;

/// <summary>The share of one truss over random decks: mirrored decks, and placements tried at random.</summary>
public class LateralShareProperties
{
    private const int Cases = 400;
    private const double Tolerance = 1e-12;

    private static readonly Gen<(Deck Deck, double Gauge)> Decks =
        from spacing in Gen.Double[2, 20]
        from width in Gen.Double[0.5, 1.05]
        from offset in Gen.Double[-0.2, 0.2]
        from wheelToKerb in Gen.Double[0.05, 0.9]
        from gauge in Gen.Double[1, 2.6]
        select (new Deck { TrussSpacing = spacing, Roadway = spacing * width, RoadwayOffset = spacing * offset * (1.05 - width), WheelToKerb = wheelToKerb }, gauge);

    [Fact]
    public void Share_OfTheMirroredRoadway_IsTheOtherTrusss()
    {
        int found = 0;
        SeededCases.Check(Decks, Cases, deck =>
        {
            ShareOutcome one = Share(deck.Deck, deck.Gauge), other = Share(deck.Deck with { RoadwayOffset = -deck.Deck.RoadwayOffset }, deck.Gauge);
            if (one is not ShareOutcome.Found here)
            {
                Assert.Equal(one, other);
                return;
            }

            var mirrored = Assert.IsType<ShareOutcome.Found>(other);
            Same(here.OnLeft, mirrored.OnRight);
            Same(here.OnRight, mirrored.OnLeft);
            found++;
        });
        Assert.True(found > Cases / 2, $"{found}");
    }

    // Vehicles strewn over the roadway with the clearances that the rule keeps: whatever their places, the truss carries no more.
    [Fact]
    public void Share_OfVehiclesStrewnAcross_IsNeverMore() =>
        SeededCases.Check(from deck in Decks from places in Gen.Double[0, 1].Array[12] select (deck, places), Cases, random =>
        {
            (Deck deck, double gauge) = random.deck;
            if (Share(deck, gauge) is not ShareOutcome.Found found)
            {
                return;
            }

            double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value;
            foreach ((IReadOnlyList<LateralShare> shares, double offset) in ((IReadOnlyList<LateralShare>, double)[])[(found.OnLeft, deck.RoadwayOffset), (found.OnRight, -deck.RoadwayOffset)])
            {
                foreach (LateralShare share in shares)
                {
                    // Room left over is dealt out at random before, between and behind the vehicles.
                    double free = roadway - (2 * share.WheelToKerb) - (share.Lanes * gauge) - ((share.Lanes - 1) * LeverRule.BetweenVehicles);
                    double[] cuts = [.. random.places.Take(share.Lanes).Order()];
                    double kerb = ((spacing - roadway) / 2) + offset;
                    double reaction = Enumerable.Range(0, share.Lanes).Sum(v =>
                    {
                        double wheel = kerb + share.WheelToKerb + (Math.Max(0, free) * cuts[v]) + (v * (gauge + LeverRule.BetweenVehicles));
                        return 1 - ((wheel + (gauge / 2)) / spacing);
                    });
                    Assert.True(reaction * share.Presence <= share.Value + Tolerance, $"{reaction} of {share}");
                }
            }
        });

    private static ShareOutcome Share(Deck deck, double gauge) => LeverRule.Share(deck, gauge, null, RatingMethod.All[0].Presence);

    private static void Same(IReadOnlyList<LateralShare> one, IReadOnlyList<LateralShare> other)
    {
        Assert.Equal(one.Count, other.Count);
        Assert.All(one.Zip(other), pair =>
        {
            Assert.Equal(pair.First.Value, pair.Second.Value, Tolerance);
            Assert.Equal((pair.First.Lanes, pair.First.Presence, pair.First.WheelToKerb), (pair.Second.Lanes, pair.Second.Presence, pair.Second.WheelToKerb));
            Assert.All(pair.First.Wheels.Zip(pair.Second.Wheels), w => Assert.Equal(w.First, w.Second, Tolerance));
        });
    }
}
