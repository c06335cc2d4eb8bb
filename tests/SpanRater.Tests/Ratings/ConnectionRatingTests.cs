using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Ratings;

/// <summary>Connections by hand: statics of the packed pin, and against the vehicle at every position that counts.</summary>
public sealed class ConnectionRatingTests : IDisposable
{
    private const double Kip = 4448.2216152605, Inch = 0.0254;

    // Type 3 over the two panels of 12 ft: 17 kip at L1 and 17 kip 4 ft away; share 16/28 with presence 1.2.
    private const double Reaction = 17 + (17 * 8 / 12.0), Share = 1.2 * 16 / 28.0;

    private readonly BridgeOnDisk folder = PinnedKingPost.Make();

    public void Dispose() => folder.Dispose();

    // Half of the pin: the chords pull apart by H = R/2 × 12/8 each, their bars 1 in apart; hanger up and floor down, 1 in apart. All go with the one reaction.
    [Fact]
    public void Pin_OfTheKingPost_HasTheMomentOfItsPacking()
    {
        PartRow row = Row("pin", PartEffect.Moment, "ASR");
        double chord = Reaction * 0.75 / 2, hanger = Reaction / 2, moment = double.Hypot(chord, hanger) * 16 / 28;
        Assert.Equal(moment, row.Live!.Value / (Kip * Inch), 1e-4);
        Assert.Equal(0.90 * 30 * Math.PI * 8 / 32, row.Capacity!.Value / (Kip * Inch), 1e-6);
        double dead = Math.Sqrt(Math.Pow(2 * 0.75 / 2, 2) + 1);
        Assert.Equal(dead, row.DeadComponents / (Kip * Inch), 1e-4);
    }

    // The same moment and the shear that acts beside it use the pin up at the factor.
    [Fact]
    public void Pin_ByLrfr_IsUsedUpByMomentAndShearAtItsFactor()
    {
        PartRow row = Row("pin", PartEffect.Moment, "LRFR");
        double reduced = 0.90, fy = 30, d = 2, factored = row.Factor!.Value * 1.3 * 1.33;
        double moment = (1.25 * row.DeadComponents) + (1.5 * row.DeadWearing) + (factored * row.Live!.Value);
        double vertical = ((1.25 * 2) + (1.5 * 0.5) + (factored * Reaction * Share)) / 2, chord = vertical * 0.75;
        double sum = (6 * moment / (Kip * Inch) / reduced / (d * d * d * fy)) + Math.Pow(2.2 * Math.Max(vertical, chord) / reduced / (d * d * fy), 3);
        Assert.InRange(sum, 0.95 - 0.002, 0.95 + 1e-9);
    }

    [Fact]
    public void Pin_WithItsPackingFromTheOtherEnd_IsTheSame()
    {
        BridgeOnDisk hollis = BridgeOnDisk.OfSample("hollis-fork");
        using (hollis)
        {
            double Factor() => Rate(hollis, "Type 3", "ASR").PartRows.First(r => r.Name == "pin U1" && r.ActsAs == PartEffect.Moment).Factor!.Value;
            double forward = Factor();
            string[] lines = [.. File.ReadAllLines(hollis.PathOf("packing.csv"))];
            string[] bars = [.. lines.Where(l => l.StartsWith("pin U1", StringComparison.Ordinal))];

            // A gap stands before its bar: turned about, it belongs to the bar on its other side.
            string[] turned = [.. Enumerable.Range(0, bars.Length).Select(i => bars.Length - 1 - i).Select(i => string.Join(',', bars[i].Split(',')[..3]) + "," + (i == bars.Length - 1 ? "" : bars[i + 1].Split(',')[3]))];
            hollis.Write("packing.csv", string.Join('\n', [.. lines.Where(l => !l.StartsWith("pin U1", StringComparison.Ordinal)), .. turned]) + "\n");
            Assert.Equal(forward, Factor(), 1e-6);
        }
    }

    // One bar of each beside another: forces balance, but they would turn the pin, so that shares by thickness cannot be what the bars carry.
    [Fact]
    public void Pin_WithAllBarsOnOneSide_IsNotRated()
    {
        folder.Write("packing.csv", "pin,bar,thickness [in],gap [in]\npin,L0L1,1,\npin,L1L2,1,0\npin,L1U1,1,0.5\npin,floor,1,0.25\n");
        PartRow row = Rate(folder, "Type 3", "ASR").PartRows.First(r => r.Name == "pin");
        Assert.Equal(RatingStatus.NotRated, row.Status);
        Assert.IsType<MissingDatum.PackingOutOfBalance>(((NotRatedReason.PartLacks)row.Reason!).Lacking.Single());
    }

    // The upper hanger 1/16 in off: bars of 1/2 in and the floor's of 1 in are 1.0625 in apart there, 1 in at the other end, and whichever end is counted from, the larger moment counts.
    [Theory]
    [InlineData("0.25", "0.3125")]
    [InlineData("0.3125", "0.25")]
    public void Pin_MeasuredALittleAskew_HasTheLargerMomentOfItsEnds(string first, string last)
    {
        folder.Write("packing.csv", PinnedKingPost.Packing.Replace("floor,1,0.25", $"floor,1,{first}", StringComparison.Ordinal).Replace("L1U1,0.5,0.25", $"L1U1,0.5,{last}", StringComparison.Ordinal));
        double chord = Reaction * 0.75 / 2, hanger = Reaction / 2, moment = double.Hypot(chord, hanger * 1.0625) * 16 / 28;
        Assert.Equal(moment, Row("pin", PartEffect.Moment, "ASR").Live!.Value / (Kip * Inch), 1e-4);
    }

    // At the factor the total moment is nowhere above the capacity, at no position of the vehicle; and at one it is that.
    [Theory]
    [InlineData("pin U1", "Type 3")]
    [InlineData("pin U1", "Type 3S2")]
    [InlineData("pin L1", "EV3")]
    public void Pin_AtItsFactor_IsReachedAndNowhereExceeded(string name, string vehicleName)
    {
        using BridgeOnDisk hollis = BridgeOnDisk.OfSample("hollis-fork");
        BridgeRating rating = Rate(hollis, vehicleName, "ASR");
        PartRow row = rating.PartRows.First(r => r.Name == name && r.ActsAs == PartEffect.Moment && r.Level.Name == "operating");
        var forces = new PinForces((PinConnection)rating.Bridge.Connections.Single(c => c.Name == name), rating.Bridge, rating.Crossing);
        double scale = row.Factor!.Value * row.Level.LiveFactor!.Value * 0.625 * (1 + row.Impact!.Value), most = 0;
        var vehicle = (Vehicle)row.Vehicle;
        foreach (int way in (int[])[1, -1])
        {
            for (double front = -30; front < 60; front += 0.02)
            {
                double[] stations = Stations(vehicle.Train, front, way);
                for (int bar = 1; bar < forces.Pin.Packing.Count - 1; bar++)
                {
                    (double x, double y) = (Total(0, bar), Total(Math.PI / 2, bar));
                    most = Math.Max(most, double.Hypot(x, y));
                }

                double Total(double angle, int bar)
                {
                    (InfluenceLine line, double dc, double dw) = forces.Moment(bar, false, angle);
                    return dc + dw + (scale * stations.Select((s, i) => vehicle.Train.Loads[i] * line.OrdinateAt(s)).Sum());
                }
            }
        }

        Assert.InRange(most, row.Capacity!.Value * 0.995, row.Capacity.Value * (1 + 1e-6));
    }

    [Fact]
    public void HeadsRivetsAndGussets_AreByHand()
    {
        Assert.Equal(0.95 * 30 * 2 * (5 - 2.0625) * 0.5 / 1.35 * 0.90, Row("heads", PartEffect.Force, "LRFR").Capacity!.Value / Kip, 1e-6);
        Assert.Equal(18 * 8 * Math.PI * 0.75 * 0.75 / 4 * 0.90, Row("rivets", PartEffect.Force, "LRFR", Sense.Compression).Capacity!.Value / Kip, 1e-6);

        // Whitmore: 4 in between the lines and 2 × 9 in × tan 30°; two plates of 1/4 in left; Lmid 6 in: Pe = 3.29 E/(L/t)² A.
        double width = 4 + (18 * Math.Tan(Math.PI / 6)), area = width * 0.5, pe = Math.PI * Math.PI * 29_000 * area / Math.Pow(0.5 * 6 * Math.Sqrt(12) / 0.25, 2), po = 30 * area;
        PartRow pressed = Row("gusset", PartEffect.Force, "LRFR", Sense.Compression);
        Assert.Equal(0.75 * po * Math.Pow(0.658, po / pe) * 0.90, pressed.Capacity!.Value / Kip, 1e-6);
        var pulled = ConnectionRule.LoadAndResistance.Gusset((GussetConnection)((ConnectionResistance)pressed.Resistance!).Connection, ((MetalMaterial)pressed.Resistance.Material!).Strength!, 200e9, Sense.Tension);
        double block = 9 + 1.5, across = (4 - 0.8125) * 0.5, net = 2 * (block - (3.5 * 0.8125)) * 0.5;
        Assert.Equal(0.95 * 30 * area, pulled.Single(s => s.Mode == ConnectionMode.WhitmoreYield).Value / Kip, 1e-6);
        Assert.Equal(0.80 * 60 * (width - (2 * 0.8125)) * 0.5, pulled.Single(s => s.Mode == ConnectionMode.WhitmoreRupture).Value / Kip, 1e-6);
        Assert.Equal(0.80 * (Math.Min(0.58 * 60 * net, 0.58 * 30 * 2 * block * 0.5) + (60 * across)), pulled.Single(s => s.Mode == ConnectionMode.BlockShear).Value / Kip, 1e-6);
        Assert.Equal(Math.Min(0.58 * 0.88 * 30 * 20 * 0.75, 0.80 * 0.58 * 60 * 16 * 0.75) * 0.90, ConnectionRule.LoadAndResistance.Plane(new GussetShear("p", 0, 0, [0], 2, 0.375 * Inch, 20 * Inch, 4 * Inch), ((MetalMaterial)pressed.Resistance.Material!).Strength!).Min(s => s.Value) / Kip * 0.90, 1e-6);
    }

    // What depends on which rods act is not rated, and named.
    [Fact]
    public void Pin_WhereRodsDecide_IsNotRated()
    {
        using BridgeOnDisk hollis = BridgeOnDisk.OfSample("hollis-fork");
        hollis.Append("connections.csv", "pin L2,pin,L2,pins of 1897,2.25,,\n").Append("packing.csv", "pin L2,L1L2,1.5,\npin L2,L2L3,1.75,0.1\npin L2,U1L2,1.5,0.1\npin L2,L2U3,1,0.1\npin L2,L2U2,1,0.1\npin L2,floor,1,0.1\n");
        PartRow row = Rate(hollis, "Type 3", "ASR").PartRows.First(r => r.Name == "pin L2");
        Assert.Equal(RatingStatus.NotRated, row.Status);
        Assert.Equal("L2L3, L2U3, L2U2", ((MissingDatum.RodsDecide)((NotRatedReason.PartLacks)row.Reason!).Lacking.Single()).Members);
    }

    private static double[] Stations(AxleTrain train, double front, int way)
    {
        double at = front;
        var stations = new List<double> { at };
        foreach (AxleGap gap in train.Gaps)
        {
            at -= way * gap.Least;
            stations.Add(at);
        }

        return [.. stations];
    }

    private static BridgeRating Rate(BridgeOnDisk folder, string vehicle, string method)
    {
        BridgeReading reading = BridgeFolder.Read(folder.Folder, []);
        return BridgeRater.Rate(reading.Bridge!, RatingMethod.Find(method)!, [reading.Catalogue.Find(vehicle)!]).TryGet(out BridgeRating? rating, out _) ? rating : throw new InvalidOperationException("It is a truss.");
    }

    private PartRow Row(string name, PartEffect effect, string method, Sense? sense = null) =>
        Rate(folder, "Type 3", method).PartRows.First(r => r.Name == name && r.ActsAs == effect && (sense is null || r.InSense == sense) && r.Level.Name != "inventory");
}
