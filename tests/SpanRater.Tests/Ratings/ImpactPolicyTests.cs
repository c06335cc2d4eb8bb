using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>
/// Where the dynamic allowance comes from: timber, crowds and lane loads take none whatever the bridge gives; crawl speed; the
/// riding surface by AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), Table C6A.4.4.3-1, from memory.
/// </summary>
public class ImpactPolicyTests
{
    private const double Tolerance = 1e-9;

    private static readonly RatingSettings AtCrawl = new() { CrawlSpeed = "a flagman" }, Given = new() { Impact = 0.2 };

    [Theory]
    [InlineData("LRFR")]
    [InlineData("LFR")]
    public void Impact_AtCrawlSpeed_IsNoneAndIsTold(string method)
    {
        BridgeRating rating = Rate(Of(40) with { Rating = AtCrawl }, method, OneAxle(VehicleClass.Legal));

        Assert.All(rating.MemberRows.Where(r => r.Factor is not null), r => Assert.Equal(new AppliedImpact(0, ImpactReason.AtCrawl), r.Effect!.Parts[0].Impact));
        Assert.Contains(new Stamp.CrawlSpeed("a flagman"), rating.Stamps);
    }

    [Theory]
    [InlineData("top chord", RidingSurface.Smooth, 0.10)]
    [InlineData("Bottom Chord", RidingSurface.MinorDeviations, 0.20)]
    [InlineData("diagonal", RidingSurface.Smooth, 0.10)]
    [InlineData("end post", RidingSurface.Smooth, 0.10)]
    [InlineData("end post", RidingSurface.Rough, 0.33)]
    [InlineData("hanger", RidingSurface.Smooth, 0.33)]
    [InlineData("vertical", RidingSurface.Smooth, 0.33)]
    [InlineData("sub-diagonal", RidingSurface.Smooth, 0.33)]
    [InlineData("", RidingSurface.Smooth, 0.33)]
    public void Impact_BySurface_CountsForMembersAlongTheSpan(string role, RidingSurface surface, double impact)
    {
        Bridge bridge = WithRole(Of(40), Rafter, role) with { Rating = new RatingSettings { Surface = surface } };

        MemberRow row = RafterRow(Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal)), "legal");

        Assert.Equal(impact, row.Impact!.Value);
        Assert.Equal((400 - (1.25 * 25)) / (1.45 * 62.5 * (1 + impact)), row.Factor!.Value, Tolerance);
    }

    [Theory]
    [InlineData("LRFR", VehicleClass.Design, "operating", 0.33)]
    [InlineData("LFR", VehicleClass.Legal, "operating", ImpactOf120Feet)]
    [InlineData("LRFR", VehicleClass.Emergency, "emergency", 0.10)]
    [InlineData("LRFR", VehicleClass.Farm, "legal", 0.10)]
    public void Impact_BySurface_IsForNoDesignLoadAndNoOtherMethod(string method, VehicleClass vehicleClass, string level, double impact)
    {
        Bridge bridge = WithRole(Of(40), Rafter, "end post") with { Rating = new RatingSettings { Surface = RidingSurface.Smooth } };

        Assert.Equal(impact, RafterRow(Rate(bridge, method, OneAxle(vehicleClass)), level).Impact!.Value, Tolerance);
    }

    [Theory]
    [InlineData(20.0, 0.33)]
    [InlineData(20.1, 0.10)]
    public void Impact_BySurface_IsForDecksOfMoreThanFortyFeet(double panelInFeet, double impact)
    {
        Bridge bridge = WithRole(Of(40), Rafter, "end post") with { Rating = new RatingSettings { Surface = RidingSurface.Smooth } };
        double scale = panelInFeet / 60;
        Truss small = Truss.Create([.. bridge.Truss.Joints.Select(j => j with { X = scale * j.X, Y = scale * j.Y })], bridge.Truss.Members).Truss!;

        Assert.Equal(impact, RafterRow(Rate(bridge with { Truss = small }, "LRFR", OneAxle(VehicleClass.Legal)), "legal").Impact!.Value);
    }

    [Theory]
    [InlineData("LRFR")]
    [InlineData("LFR")]
    [InlineData("ASR")]
    public void Impact_OnTimber_IsNoneWhateverIsGiven(string method)
    {
        foreach (RatingSettings settings in (RatingSettings[])[new(), AtCrawl, Given, new() { Surface = RidingSurface.Rough }])
        {
            Bridge bridge = WithMember(Of(40), Rafter, m => m with { IsTimber = true }) with { Rating = settings };

            BridgeRating rating = Rate(bridge, method, OneAxle(VehicleClass.Legal));

            AppliedImpact onTimber = rating.MemberRows.First(r => r.MemberIndex == Rafter && r.Factor is not null).Effect!.Parts[0].Impact;
            Assert.Equal(new AppliedImpact(0, ImpactReason.NoneOnTimber), onTimber);
            Assert.Equal(settings.CrawlSpeed is null, rating.MemberRows.First(r => r.MemberIndex == Hanger && r.Factor is not null).Impact > 0);
            Assert.Contains(new Stamp.NoImpactOnTimber(), rating.Stamps);
        }
    }

    // A lane load that takes impact, as of H and HS, takes none on timber.
    [Fact]
    public void Impact_OfALaneThatTakesImpactOnTimber_IsNone()
    {
        Bridge bridge = WithMember(Of(40), Hanger, m => m with { IsTimber = true });

        SharedEffect effect = HangerRow(Rate(bridge, "LFR", Lane(takesImpact: true)), "operating").Effect!;

        Assert.All(effect.Parts, p => Assert.Equal(new AppliedImpact(0, ImpactReason.NoneOnTimber), p.Impact));
    }

    [Theory]
    [InlineData(false, 0)]
    [InlineData(true, 0.2)]
    public void Impact_Given_IsForLanesThatTakeImpactOnly(bool takesImpact, double impact)
    {
        MemberRow row = HangerRow(Rate(Of(40) with { Rating = Given }, "LRFR", Lane(takesImpact)), "operating");

        Assert.Equal(impact, row.Impact!.Value);
    }

    [Theory]
    [InlineData(VehicleClass.Crowd, "operating")]
    [InlineData(VehicleClass.Farm, "legal")]
    public void Impact_Given_IsNotForCrowds(VehicleClass vehicleClass, string level)
    {
        var crowd = new Crowd("people", vehicleClass, new ConstantPressure(4_000, "made up"), null, "made up");
        Bridge bridge = Of(40) with { Rating = Given, Deck = new Deck { TrussSpacing = 18 * Foot, Roadway = 14 * Foot } };

        BridgeRating rating = Rate(bridge, "LRFR", crowd);

        Assert.Equal(0, HangerRow(rating, level).Impact!.Value);
        Assert.Contains(new Stamp.NoImpact(VehicleClass.Crowd), rating.Stamps);
    }

    private static Loading Lane(bool takesImpact) =>
        new("lane", VehicleClass.Design, [], new LaneLoad(new ConstantLineLoad(2_000, "made up"), PointOnOthers: 80_000, TakesImpact: takesImpact), "made up");

    private static MemberRow RafterRow(BridgeRating rating, string level) =>
        rating.MemberRows.Single(r => r.MemberIndex == Rafter && r.Level.Name == level && r.Sense == Sense.Compression);
}
