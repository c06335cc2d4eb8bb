using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Ratings;

/// <summary>The floor of a small bridge by hand: statics of simple beams, Fy S, the lever rule and the published divisor of a plank deck.</summary>
public sealed class FloorRatingTests : IDisposable
{
    private const double Kip = 4448.2216152605, Foot = 0.3048, KipFoot = Kip * Foot;

    private readonly BridgeOnDisk folder = FlooredKingPost.Make();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Stringer_InBending_IsTheAbsoluteMaximumTimesSOverDivisor()
    {
        PartRow row = Row("stringers", PartEffect.Moment);

        // Two axles of 17 kip 4 ft apart on 12 ft: P (2 L - g)^2 / (8 L); LRFD Table 4.6.2.2.2a-1, planks: S/6.7, presence in it.
        double whole = 17 * 20 * 20 / 96.0, section = ((5 * 1728) - (4.65 * Math.Pow(10.912, 3))) / 12 / 6;
        double own = ((2 * 5 * 0.544) + (0.35 * 10.912)) * 490 / 144 / 1000;
        Assert.Equal(whole * 2 / 6.7, row.Live!.Value / KipFoot, 1e-6);
        Assert.Equal(section * 30 / 12, row.Capacity!.Value / KipFoot, 1e-6);
        Assert.Equal((own + 0.030) * 144 / 8, row.DeadComponents / KipFoot, 1e-6);
        Assert.Equal(0.020 * 144 / 8, row.DeadWearing / KipFoot, 1e-6);
        double expected = ((section * 2.5) - (1.25 * (own + 0.030) * 18) - (1.5 * 0.020 * 18)) / (1.3 * 1.33 * whole * 2 / 6.7);
        Assert.Equal(expected, row.Factor!.Value, 1e-6);
    }

    [Fact]
    public void Stringer_InShear_TakesTheAxleOverTheSupportByTheLeverRule()
    {
        PartRow row = Row("stringers", PartEffect.Shear);

        // 17 kip over the support and 17 kip 4 ft from it; stringers 2 ft apart take one wheel line whole, half a vehicle.
        Assert.Equal((17 * 0.5 * 1.2) + (17 * 8 / 12.0 * 2 / 6.7), row.Live!.Value / Kip, 1e-6);
    }

    [Fact]
    public void Floorbeam_InBending_HasItsWheelsAsNearTheMiddleAsTheKerbLetsThem()
    {
        PartRow row = Row("floorbeam", PartEffect.Moment);

        // One 17 kip axle on the floorbeam, the other 4 ft away. Wheels at 5 and 11 ft of 14: x (11 - x)/14 is largest at 5.5 ft, where the other wheel would be nearer to the kerb than 2 ft.
        double reaction = 17 + (17 * 8 / 12.0), arm = 5 * 6 / 14.0;
        Assert.Equal(reaction * arm * 1.2, row.Live!.Value / KipFoot, 1e-6);
        double stringer = ((2 * 5 * 0.544) + (0.35 * 10.912)) * 490 / 144 / 1000, own = ((2 * 6 * 0.691) + (0.46 * 16.618)) * 490 / 144 / 1000;
        double spread = (0.015 * 12) + (7 * stringer);
        Assert.Equal((spread * 6 * 7) - (spread * 6 * 3) + (own * 14 * 14 / 8) + (0.020 * 12 * 1), row.DeadComponents / KipFoot, 1e-6);
        Assert.Equal(0.010 * 12 * 24, row.DeadWearing / KipFoot, 1e-6);
        double section = ((6 * 5832) - (5.54 * Math.Pow(16.618, 3))) / 12 / 9;
        Assert.Equal(section * 30 / 12, row.Capacity!.Value / KipFoot, 1e-6);
        Assert.Equal("L1", row.At);
    }

    [Fact]
    public void Hanger_CarriesTheLeverRuleShareOfTheReaction()
    {
        PartRow row = Row("hangers", PartEffect.Force);
        double reaction = 17 + (17 * 8 / 12.0), share = 1.2 * (11 + 5) / 28.0;
        Assert.Equal(reaction * share, row.Live!.Value / Kip, 1e-6);
        Assert.Equal(0.95 * 30 * 2 * 0.85, row.Capacity!.Value / Kip, 1e-6);
        Assert.Equal(Sense.Tension, row.InSense);
    }

    // The sheet's items are the same load by the same statics, and a hanger has the beam that hangs from it.
    [Theory]
    [InlineData("floorbeam", PartEffect.Moment)]
    [InlineData("floorbeam", PartEffect.Shear)]
    [InlineData("hangers", PartEffect.Force)]
    [InlineData("stringers", PartEffect.Moment)]
    public void DeadLoad_IsTheSumOfItsItems_EachByAnotherRoute(string part, PartEffect effect)
    {
        PartRow row = Row(part, effect);
        FloorDead dead = row.Dead!;
        Assert.Equal(row.DeadComponents + row.DeadWearing, dead.Items.Sum(i => i.Effect), 1e-9 * row.DeadComponents);
        Assert.All(dead.Items.Where(i => i.What != FloorWeight.Kerbs), item =>
        {
            // A thousand small weights on the span, by the simple beam's influence lines; the moment at its middle, since all is symmetrical.
            const int Pieces = 1000;
            double length = item.To - item.From, l = dead.Span, each = item.Load * length / Pieces;
            double Line(double x) => effect == PartEffect.Moment ? Math.Min(x, l - x) / 2 : 1 - (x / l);
            double sum = Enumerable.Range(0, Pieces).Sum(i => each * Line(item.From + (length * (i + 0.5) / Pieces)));
            Assert.Equal(sum, item.Effect, 1e-5 * sum);
        });
    }

    // The contact of a wheel goes by its load: a vehicle made lighter by the factor just passes, and one made heavier than in proportion does not.
    [Theory]
    [InlineData(PartEffect.Moment, 0.9)]
    [InlineData(PartEffect.Moment, 4)]
    [InlineData(PartEffect.Shear, 0.9)]
    [InlineData(PartEffect.Shear, 4)]
    public void Planks_UnderAVehicleTimesItsFactor_HaveAFactorOfOne(PartEffect effect, double heavier)
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        var vehicle = (Vehicle)reading.Catalogue.Find("Type 3")!;
        PartRow Planks(double times) => Rate(reading.Bridge!, vehicle with { Train = vehicle.Train.Times(times) }, "LRFR").PartRows.First(r => r.Part == PartKind.Deck && r.ActsAs == effect);

        PartRow row = Planks(heavier);
        Assert.Equal(1, Planks(heavier * row.Passes!.Value).Factor!.Value, 1e-9);
        Assert.Equal(row.Passes.Value * heavier, Planks(1).Passes!.Value, 1e-9);
        double inProportion = (row.Capacity!.Value - row.FactoredDead) / (row.Level.LiveFactor!.Value * row.Live!.Value * (1 + row.Impact!.Value));
        if (row.Factor < 1)
        {
            Assert.Equal(row.Passes, row.Factor);
            Assert.Equal(row.Factor.Value, row.FactorWith(row.Capacity.Value)!.Value, 1e-12);
            Assert.True(row.Factor < inProportion);
        }
        else
        {
            Assert.Equal(inProportion, row.Factor!.Value, 1e-12);
        }
    }

    // By hand: an end of the floorbeam takes half of 12 ft of deck, stringers and itself; the case of the truss, made lighter than that, is told.
    [Fact]
    public void FloorHeavierThanTheCaseOfTheTruss_IsTold()
    {
        double floor = Row("floorbeam", PartEffect.Shear).DeadComponents;
        folder.Write("loads.csv", "case,joint,up [kip]\nDC,L1,-2\n");
        Assert.Equal(new Stamp.FloorOutweighsTruss("L1", floor, 2 * Kip), Assert.Single(RatingOf("Type 3").Stamps.OfType<Stamp.FloorOutweighsTruss>()));
        folder.Write("loads.csv", "case,joint,up [kip]\nDC,L1,-3.1\n");
        Assert.DoesNotContain(RatingOf("Type 3").Stamps, s => s is Stamp.FloorOutweighsTruss);
    }

    // Floorbeams weigh on hangers and stringers on both: where their weight is not known, no lighter bridge is rated in their place.
    [Theory]
    [InlineData("stringers,stringer,,stringer,iron", "stringers,stringer,,,", "floorbeam", "hangers")]
    [InlineData("floorbeam,floorbeam,,floorbeam,iron", "floorbeam,floorbeam,,,", "hangers", "hangers")]
    public void BeamsWithoutAWeight_LeaveWhatCarriesThemUnrated(string row, string blank, string first, string second)
    {
        folder.Replace("floor.csv", row, blank);
        Assert.All((string[])[first, second], name => Assert.All(RatingOf("Type 3").PartRows.Where(r => r.Name == name), r =>
        {
            Assert.Null(r.Factor);
            Assert.Contains(((NotRatedReason.PartLacks)r.Reason!).Lacking, m => m is MissingDatum.BeamWeight);
        }));
        string top = Run.Of("rate", folder.Folder).Output;
        Assert.Matches("Given, and not rated for want of data or a rule: .*floorbeam hangers", top);
        Assert.Contains("weigh is not known, and that comes onto it", top, StringComparison.Ordinal);
    }

    // Loaded length of LFR and ASR: a stringer and a floorbeam by their own span, a hanger by the two panels.
    [Theory]
    [InlineData("stringers", PartEffect.Moment, 12)]
    [InlineData("floorbeam", PartEffect.Moment, 14)]
    [InlineData("hangers", PartEffect.Force, 24)]
    public void Part_UnderLfr_TakesImpactByItsOwnLength(string part, PartEffect effect, double feet)
    {
        PartRow row = Row(part, effect, "LFR");
        Assert.Equal(feet, row.LoadedLength!.Value / Foot, 1e-9);
        Assert.Equal(Math.Min(0.30, 50 / (feet + 125)), row.Impact!.Value, 1e-12);
    }

    [Fact]
    public void Vehicle_ChangedOnce_ChangesTrussAndFloorAlike()
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        var vehicle = (Vehicle)reading.Catalogue.Find("Type 3")!;
        BridgeRating before = Rate(reading.Bridge!, vehicle, "LRFR"), after = Rate(reading.Bridge!, vehicle with { Train = vehicle.Train.Times(2) }, "LRFR");

        // A wheel's contact on the planks grows with it, so that the deck does not go by its weight alone.
        Assert.All(before.Rows.Where(r => r.Factor > 0 && r.Part != PartKind.Deck), row => Assert.Equal(row.Factor!.Value / 2, after.Rows.Single(r => r.IsOfSameEffect(row) && r.Level == row.Level).Factor!.Value, 1e-9));
        Assert.Contains(before.Rows, r => r is MemberRow { Factor: > 0 });
        Assert.Contains(before.Rows, r => r is PartRow { Factor: > 0 });
    }

    [Fact]
    public void Rating_WithAFloor_NamesWhatGovernsTheBridgeAndTheTruss()
    {
        folder.Replace("floor.csv", "hanger,iron,,1,L1", "hanger,iron,,1,L1").Replace("sections.csv", "square bar,2,1", "square bar,2,0.5");
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        BridgeRating rating = Rate(reading.Bridge!, reading.Catalogue.Find("Type 3")!, "LRFR");
        Assert.Equal((PartKind.Hanger, "hangers"), (rating.Governing!.Part, rating.Governing.Name));
        Assert.Equal(rating.MemberRows.Where(r => r.Factor is not null).Min(r => r.Factor), rating.GoverningMember!.Factor);
        Assert.Equal(rating.Rows.Where(r => r.Factor is not null).Min(r => r.Factor), rating.Governing.Factor);
    }

    // The middle of the roadway moved by so much to one side and to the other: mirror images.
    [Theory]
    [InlineData("0.5 ft")]
    [InlineData("1 ft")]
    public void Floorbeam_WithTheRoadwayOffToEitherSide_IsTheSame(string offset)
    {
        string toml = File.ReadAllText(folder.PathOf("bridge.toml"));
        double Factor(string sign)
        {
            folder.Write("bridge.toml", toml.Replace("roadway = \"12 ft\"", $"roadway = \"12 ft\"\nroadway_offset = \"{sign}{offset}\"", StringComparison.Ordinal));
            return Row("floorbeam", PartEffect.Moment).Factor!.Value;
        }

        Assert.Equal(Factor(""), Factor("-"), 1e-12);
    }

    private static BridgeRating Rate(Bridge bridge, LiveLoad vehicle, string method) =>
        BridgeRater.Rate(bridge, RatingMethod.Find(method)!, [vehicle]).TryGet(out BridgeRating? rating, out _) ? rating : throw new InvalidOperationException("It is a truss.");

    private BridgeRating RatingOf(string vehicle)
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        return Rate(reading.Bridge!, reading.Catalogue.Find(vehicle)!, "LRFR");
    }

    private PartRow Row(string part, PartEffect effect, string method = "LRFR")
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        return Rate(reading.Bridge!, reading.Catalogue.Find("Type 3")!, method).PartRows.First(r => r.Name == part && r.ActsAs == effect);
    }
}
