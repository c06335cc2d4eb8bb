using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The invented Wrenfield Ferry bridge: Parker truss of 160 ft in eight panels of 20 ft, counters in the two middle panels,
/// dead load 0.70 kip a foot of truss. Our own regression anchors, computed independently by an elimination solver, not
/// published. Tolerance: half of the last digit.
/// </summary>
public class WrenfieldFerryTests
{
    private const double Tolerance = 0.005 + 1e-9;

    private static readonly Bridge Bridge = RodAnchors.Read("wrenfield-ferry");

    private static readonly Vehicle Type3 = PublishedVehicles.Shipped("Type 3");

    [Theory]
    [InlineData("L3L4", 70.00)]
    [InlineData("U3U4", -72.35)]
    [InlineData("U4L4", 7.23)]
    [InlineData("U3L4", 4.07)]
    public void Force_DeadLoad_IsTheAnchor(string member, double kips)
    {
        string name = Bridge.Truss.FindMember(member) is null ? "L4U4" : member;
        Assert.Equal(kips, RodAnchors.Dead(Bridge, name), Tolerance);
    }

    // Reaction 49 kip beside the half panel over it; moments about U3, 30 ft up, and about L4.
    [Fact]
    public void Force_DeadLoadInTheChords_IsTheMomentOverTheArm()
    {
        Assert.Equal(((49 * 60) - (14 * (40 + 20))) / 30.0, RodAnchors.Dead(Bridge, "L3L4"), 1e-6);

        // U3U4 rises 1 ft in 20: its arm about L4 is 31 ft times the cosine.
        double cosine = 20 / Math.Sqrt((20 * 20) + 1), moment = (49 * 80) - (14 * (60 + 40 + 20));
        Assert.Equal(-moment / (31 * cosine), RodAnchors.Dead(Bridge, "U3U4"), 1e-6);
    }

    [Theory]
    [InlineData(Sense.Tension, 23.74)]
    [InlineData(Sense.Compression, -22.29)]
    public void Lines_OfTheMainsUnderType3_GiveTheAnchor(Sense sense, double kips) =>
        Assert.Equal(kips, RodAnchors.RollOnMains(Bridge, "U3L4", Type3.Train).Of(sense)!.Force / Kip, Tolerance);

    [Theory]
    [InlineData(14, -83.98)]
    [InlineData(30, -75.71)]
    public void Lines_OfTheMainsUnderHs20_GiveTheAnchor(double rearSpacing, double kips)
    {
        var train = new AxleTrain([8 * Kip, 32 * Kip, 32 * Kip], [AxleGap.Fixed(14 * Foot), AxleGap.Fixed(rearSpacing * Foot)]);
        Assert.Equal(kips, RodAnchors.RollOnMains(Bridge, "U3U4", train).Compression!.Force / Kip, Tolerance);
    }

    [Fact]
    public void Lines_OfTheMainsUnderHs20WithAnyRearSpacing_TakeTheShortest()
    {
        Peak peak = RodAnchors.RollOnMains(Bridge, "U3U4", PublishedVehicles.Train("HS20")).Compression!;
        Assert.Equal(-83.98, peak.Force / Kip, Tolerance);
        Assert.Equal(14 * Foot, peak.Gaps[1], 1e-9);
    }

    // 0.667 of the truck with 28.7 % impact: 13.07 - 18.99 x 0.667 x 1.287, and no counter in the third panel.
    [Fact]
    public void Roll_TheShareOfOneTrussWithImpact_IsRefusedWhereTheEyebarsWouldBePressed()
    {
        Outcome<IReadOnlyList<PeakPair>> roll = RodAnchors.Crossing(Bridge).Roll(Type3, 0.667 * 1.287);

        var refusal = Assert.IsType<Refusal.UncarriedCompression>(roll.Refusal);
        Assert.Contains(refusal.Member, (string[])["U2L3", "U6L5"]);
        Assert.Equal(-3.2, refusal.Force / Kip, 0.05);
        Assert.Equal(13.07, RodAnchors.Dead(Bridge, "U2L3"), Tolerance);
        Assert.Equal(-18.99, RodAnchors.RollOnMains(Bridge, "U2L3", Type3.Train).Compression!.Force / Kip, Tolerance);
    }

    [Fact]
    public void Rate_LegalVehicles_IsWithheldForEachWithTheEyebarsNamed()
    {
        Vehicle[] vehicles = [Type3, PublishedVehicles.Shipped("Type 3S2"), PublishedVehicles.Shipped("Type 3-3")];
        Assert.True(BridgeRater.Rate(Bridge, Bridge.Rating.Method!, vehicles).TryGet(out BridgeRating? rating, out Refusal? refused), $"{refused}");

        Assert.Equal(vehicles, rating.Withheld.Select(w => w.Vehicle).Order(Comparer<LiveLoad>.Create((a, b) => Array.IndexOf(vehicles, a) - Array.IndexOf(vehicles, b))));
        Assert.All(rating.Withheld, w => Assert.Equal("U2L3", w.Reason.Member));
        Assert.All(rating.Withheld, w => Assert.InRange(w.Reason.Factor, 0, 1));
        Assert.Null(rating.Governing);
        Assert.DoesNotContain(rating.MemberRows, r => r.Status == RatingStatus.Rated);
    }
}
