using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>Which row governs, and in what order rows are read.</summary>
public class GoverningTests
{
    [Fact]
    public void Governing_LegalTruck_IsTheLowestRow()
    {
        // All members have 400 kN; the hanger carries the whole of every load.
        BridgeRating rating = Rate(Of(40), "LRFR", OneAxle(VehicleClass.Legal));

        Assert.Equal(Hanger, rating.Governing!.Order);
        Assert.Equal(350 / (1.45 * 133), rating.Governing.Factor!.Value, 1e-12);
        Assert.Null(rating.GoverningInventory);
    }

    [Fact]
    public void Governing_DesignLoadAlone_FallsBackToItsOperatingRow()
    {
        BridgeRating rating = Rate(Of(40), "LRFR", OneAxle(VehicleClass.Design));

        Assert.Equal("operating", rating.Governing!.Level.Name);
        Assert.Equal(350 / (1.35 * 133), rating.Governing.Factor!.Value, 1e-12);
        Assert.Equal(350 / (1.75 * 133), rating.GoverningInventory!.Factor!.Value, 1e-12);
    }

    [Fact]
    public void Governing_DesignLoadBesideALegalTruck_IsTheLegalTruck()
    {
        // The design vehicle weighs twice as much and rates lower, but stands for others that are rated themselves.
        Vehicle heavy = OneAxle(VehicleClass.Design) with { Name = "heavy", Train = new AxleTrain([200_000], []) };

        BridgeRating rating = Rate(Of(40), "LRFR", heavy, OneAxle(VehicleClass.Legal));

        Assert.Equal("one axle", rating.Governing!.Vehicle.Name);
        Assert.Equal("heavy", rating.GoverningInventory!.Vehicle.Name);
    }

    [Fact]
    public void Governing_ByLoadFactors_IsTheLowestOperatingRow()
    {
        BridgeRating rating = Rate(Of(40), "LFR", OneAxle(VehicleClass.Design));

        Assert.Equal("operating", rating.Governing!.Level.Name);
        Assert.Equal("inventory", rating.GoverningInventory!.Level.Name);
        Assert.Equal(2.17 / 1.3, rating.Governing.Factor!.Value / rating.GoverningInventory.Factor!.Value, 12);
    }

    [Fact]
    public void Governing_NothingRated_IsNone()
    {
        BridgeRating rating = Rate(Of(40, capacities: []), "LRFR", OneAxle(VehicleClass.Legal));

        Assert.Null(rating.Governing);
        Assert.All(rating.LowestByMember(), Assert.Null);
        Assert.Equal(5, rating.NotRated.Count());
    }

    [Fact]
    public void Governing_DeadLoadExceeds_IsThatRow()
    {
        BridgeRating rating = Rate(Of(400), "LRFR", OneAxle(VehicleClass.Legal));

        Assert.Equal(RatingStatus.DeadExceeds, rating.Governing!.Status);
        Assert.Equal(Hanger, rating.Governing.Order);
    }

    [Fact]
    public void Rows_OfEveryKind_StandInTheOrderInWhichTheyAreRead()
    {
        // The hanger alone has a capacity: it is rated, the pressed rafters and pulled chords are not, the rest is not loaded.
        BridgeRating rating = Rate(
            Of(40, capacities: new() { [GivenCapacity.Tension] = 400 }), "LFR", OneAxle(VehicleClass.Legal));

        RatingStatus[] expected =
        [
            RatingStatus.Rated, RatingStatus.Rated,
            .. Enumerable.Repeat(RatingStatus.NotRated, 8),
            .. Enumerable.Repeat(RatingStatus.NotLoaded, 10),
        ];
        Assert.Equal(expected, rating.MemberRows.Select(r => r.Status));
        Assert.Equal(["operating", "inventory"], rating.MemberRows.Take(2).Select(r => r.Level.Name));
    }

    [Fact]
    public void Rows_ThatMayGovern_RiseFromTheLowestFactor()
    {
        BridgeRating rating = Rate(Of(40), "LRFR", OneAxle(VehicleClass.Legal), OneAxle(VehicleClass.Design) with { Name = "design" });

        double[] governs = [.. rating.MemberRows.Where(rating.MayGovern).Select(r => r.Factor!.Value)];
        Assert.Equal(5, governs.Length);
        Assert.Equal(governs.Order(), governs);
        Assert.All(rating.MemberRows.Take(5), row => Assert.Equal("legal", row.Level.Name));

        double[] others = [.. rating.MemberRows.Skip(5).Take(10).Select(r => r.Factor!.Value)];
        Assert.Equal(others.Order(), others);
    }

    [Fact]
    public void LowestByMember_TwoTrucks_TakesTheWorseOfEachMember()
    {
        Vehicle heavy = OneAxle(VehicleClass.Legal) with { Name = "heavy", Train = new AxleTrain([200_000], []) };

        BridgeRating rating = Rate(Of(40), "LRFR", OneAxle(VehicleClass.Legal), heavy);

        Assert.All(rating.LowestByMember(), row => Assert.Equal("heavy", row!.Vehicle.Name));
    }
}
