using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Ratings;

/// <summary>
/// A trussed floorbeam of a small bridge by hand. The push V of the post closes the gap between the beam's deflection in its middle, by the formulas of handbooks (P (3 L² x − 4 x³)/48 EI; from
/// memory), and that of the rod with the pressed beam, (a/2d)² (L/EA + 2 a/(cos³θ ErAr)) V: another way than the program's.
/// </summary>
public sealed class TrussedRatingTests : IDisposable
{
    private const double Kip = 4448.2216152605, Foot = 0.3048, KipFoot = Kip * Foot;

    // In kip and feet: 10 x 12 in of 1,600 ksi; two rods of 1 1/4 in of 29,000 ksi, 1.5 ft below, over 14 ft.
    private const double Span = 14, Half = 7, Drop = 1.5, Bending = 1600 * 1440 / 144.0, Axial = 1600 * 120, Rods = 29000 * 2 * Math.PI * 1.25 * 1.25 / 4;

    private readonly BridgeOnDisk folder = TrussedKingPost.Make();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Rod_CarriesWhatClosesTheGapOverThePost()
    {
        PartRow row = Row(PartEffect.Force);

        // Wheels at 4 and 10 ft, alike about the middle; presence 1.2 of one lane; impact 0.33 though the beam is of timber.
        double reaction = 17 + (17 * 8 / 12.0), live = 1.2 * reaction * RodOf(4);
        double stringer = ((2 * 5 * 0.544) + (0.35 * 10.912)) * 490 / 144 / 1000, own = 120 / 144.0 * 50 / 1000;
        double components = (((0.015 * 12) + (7 * stringer * 12 / 12)) * RodOver(1)) + (own * RodOver(0)) + (2 * 0.020 * 12 * RodOf(1)), wearing = 0.010 * 12 * RodOver(1);
        double capacity = 0.95 * 30 * 2 * Math.PI * 1.25 * 1.25 / 4 * 0.85;
        Assert.Equal(live, row.Live!.Value / Kip, 1e-4);
        Assert.Equal(components, row.DeadComponents / Kip, 1e-6);
        Assert.Equal(wearing, row.DeadWearing / Kip, 1e-6);
        Assert.Equal(capacity, row.Capacity!.Value / Kip, 1e-6);
        Assert.Equal(0.33, row.Impact!.Value, 1e-12);
        Assert.Equal((capacity - (1.25 * components) - (1.5 * wearing)) / (1.3 * 1.33 * live), row.Factor!.Value, 1e-4);
        Assert.Equal(Sense.Tension, row.InSense);
    }

    // Every section and place of the vehicle in steps of 0.02 ft, moment and compression together.
    [Fact]
    public void Beam_TakesTheWorstSectionAndPlaceOfBoth()
    {
        PartRow row = Row(PartEffect.Moment);
        var both = Assert.IsType<TrussedResistance>(row.Resistance);
        double arm = 2 * (both.Bending.Value / KipFoot) / (both.Column.Value / Kip), worst = 0;
        for (double wheel = 3; wheel <= 5.0001; wheel += 0.02)
        {
            for (double at = 0.02; at < Span; at += 0.02)
            {
                (double moment, double press) = ((MomentAt(at, wheel) + MomentAt(at, wheel + 6)) / 2, (PressOf(wheel) + PressOf(wheel + 6)) / 2);
                worst = Math.Max(worst, Math.Max(moment, -moment * both.HoggingCounts) + (arm * press));
            }
        }

        double reaction = 17 + (17 * 8 / 12.0);
        Assert.Equal(1.2 * reaction * worst, row.Live!.Value / KipFoot, 0.002 * row.Live.Value / KipFoot);
        Assert.Equal((row.Capacity!.Value - (1.25 * row.DeadComponents) - (1.5 * row.DeadWearing)) / (1.3 * row.Live.Value), row.Factor!.Value, 1e-9);
        Assert.Equal(0, row.Impact);
        Assert.True(row.Factor < Row(PartEffect.Shear).Factor);
    }

    [Fact]
    public void Beam_OverARodAsGoodAsNone_BendsAsThePlainOne()
    {
        folder.Replace("sections.csv", "round bar,2,,,,,1.25", "round bar,1,,,,,0.05");
        double thin = Row(PartEffect.Moment).Factor!.Value;
        folder.Replace("floor.csv", TrussedKingPost.Trussed, "floorbeam,floorbeam,,sill,wood,,,L1,2,6,,,,,,,");
        PartRow plain = Row(PartEffect.Moment);

        // The plain one adds up the largest moments of different sections, the other those of one.
        Assert.InRange(thin, plain.Factor!.Value, 1.06 * plain.Factor.Value);
    }

    // The middle of the roadway moved by so much to one side and to the other: mirror images.
    [Theory]
    [InlineData(PartEffect.Moment)]
    [InlineData(PartEffect.Shear)]
    [InlineData(PartEffect.Force)]
    public void Rating_WithTheRoadwayOffToEitherSide_IsTheSame(PartEffect effect)
    {
        string toml = File.ReadAllText(folder.PathOf("bridge.toml"));
        double Factor(string offset)
        {
            folder.Write("bridge.toml", toml.Replace("roadway = \"12 ft\"", $"roadway = \"12 ft\"\nroadway_offset = \"{offset}\"", StringComparison.Ordinal));
            return Row(effect).Factor!.Value;
        }

        Assert.Equal(Factor("0.7 ft"), Factor("-0.7 ft"), 1e-6);
    }

    // A stiff rod makes a steel beam hog over its post: a lower flange that nothing holds is weaker than one held all along.
    [Fact]
    public void Beam_WhoseLowerFlangeNothingHolds_IsWeakerWhereItHogs()
    {
        double Counts(string below)
        {
            folder.Write("floor.csv", TrussedKingPost.Floor).Replace("floor.csv", "sill,wood,,,L1,2,6,,rods,iron,1,18,,", $"floorbeam,iron,,,L1,0,,,rods,iron,1,18,,{below}");
            return Assert.IsType<TrussedResistance>(Row(PartEffect.Moment).Resistance).HoggingCounts;
        }

        Assert.True(Counts("") > 1.05);
        Assert.Equal(Counts(""), Counts("14"), 1e-12);
        Assert.Equal(1, Counts("0"), 1e-12);
    }

    [Fact]
    public void Vehicle_OfTwiceTheWeight_HasHalfTheFactor()
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        var vehicle = (Vehicle)reading.Catalogue.Find("Type 3")!;
        BridgeRating before = Rate(reading.Bridge!, vehicle), after = Rate(reading.Bridge!, vehicle with { Train = vehicle.Train.Times(2) });
        PartRow[] rows = [.. before.PartRows.Where(r => r.Name == "floorbeam" && r.Factor is not null)];
        Assert.Equal(4, rows.Length);
        Assert.All(rows, row => Assert.Equal(row.Factor!.Value / 2, after.PartRows.Single(r => r.IsOfSameEffect(row)).Factor!.Value, 1e-9));
    }

    [Fact]
    public void Emergency_WithALegalVehicleBeside_LeavesWhatThatTakes()
    {
        folder.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"18 ft\"").Replace("bridge.toml", "truss_spacing = \"14 ft\"", "truss_spacing = \"20 ft\"")
            .Replace("materials.toml", "yield = \"30 ksi\"\nultimate = \"60 ksi\"", "yield = \"90 ksi\"\nultimate = \"120 ksi\"");
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        BridgeRater.Rate(reading.Bridge!, RatingMethod.Find("LRFR")!, [reading.Catalogue.Find("EV3")!, reading.Catalogue.Find("Type 3")!]).TryGet(out BridgeRating? rating, out _);
        PartRow rod = rating!.PartRows.Single(r => r is { Name: "floorbeam", ActsAs: PartEffect.Force, Beside: not null });

        // Both 6 ft wide on 18 ft: wheels at 2, 8, 12 and 18 ft of 20 and no play, presence 1; emergency 1.3, legal 1.3, impact 0.33; EV3 on the floorbeam: 31 and 31 kip 4 ft apart.
        double share = (Push(2, 20) + Push(8, 20)) / 2 * 10 / (2 * Drop) / (10 / Math.Sqrt(100 + (Drop * Drop)));
        double own = (31 + (31 * 8 / 12.0)) * share, other = (17 + (17 * 8 / 12.0)) * share;
        Assert.Equal(own, rod.Live!.Value / Kip, 1e-6);
        Assert.Equal((rod.Capacity!.Value - rod.FactoredDead - (1.3 * 1.33 * other * Kip)) / (1.3 * 1.33 * own * Kip), rod.Factor!.Value, 1e-6);
        Assert.True(rod.Factor > 0.1);
        Assert.All(rating.PartRows.Where(r => r.Beside is not null), r => Assert.True(r.Factor >= 0 && r.Live > 0));
    }

    private static double Push(double x, double span = Span)
    {
        double near = Math.Min(x, span - x), half = span / 2, slant = Math.Sqrt((half * half) + (Drop * Drop)), cosine = half / slant;
        double gap = near * ((3 * span * span) - (4 * near * near)) / (48 * Bending);
        double gives = (span * span * span / (48 * Bending)) + (half * half / (4 * Drop * Drop) * ((span / Axial) + (2 * half / (cosine * cosine * cosine * Rods))));
        return gap / gives;
    }

    private static double PressOf(double x) => Push(x) * Half / (2 * Drop);

    private static double RodOf(double x) => PressOf(x) * Math.Sqrt((Half * Half) + (Drop * Drop)) / Half;

    // An even load of 1 from so far from one truss to so far from the other: the deflections summed in closed form.
    private static double RodOver(double from)
    {
        double Sum(double x) => (1.5 * Span * Span * x * x) - (x * x * x * x);
        return 2 * RodOf(Half) * (Sum(Half) - Sum(from)) / (Span * Span * Span);
    }

    private static double MomentAt(double at, double x) => (Math.Min(at, x) * (Span - Math.Max(at, x)) / Span) - (Push(x) / 2 * Math.Min(at, Span - at));

    private static BridgeRating Rate(Bridge bridge, LiveLoad vehicle) =>
        BridgeRater.Rate(bridge, RatingMethod.Find("LRFR")!, [vehicle]).TryGet(out BridgeRating? rating, out _) ? rating : throw new InvalidOperationException("It is a truss.");

    private PartRow Row(PartEffect effect)
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        return Rate(reading.Bridge!, reading.Catalogue.Find("Type 3")!).PartRows.First(r => r.Name == "floorbeam" && r.ActsAs == effect);
    }
}
