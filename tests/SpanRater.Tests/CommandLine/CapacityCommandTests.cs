using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>capacity</c> says, on a king post whose rafters are two C8x11.5 with a 12 x 1/4 in plate, laced below.</summary>
public sealed class CapacityCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = LacedKingPost.Make();

    public void Dispose() => bridge.Dispose();

    // In the plane of the truss: A 9.76 in², centroid 1.268 in above the channels' middle, Ix 100.6 in⁴, rx 3.21 in; K 0.875 on 14.422 ft is
    // 47.2, Pe = π² 29000 A/47.2², Po = 30 A; 0.95 × 0.658^(Po/Pe) Po; condition not given and riveted 0.85 × 0.90, held at 0.85.
    [Fact]
    public void Capacity_OfARafter_IsThatByHand()
    {
        const double A = (2 * 3.38) + 3, Centroid = 3 * 4.125 / A, Ix = (2 * 32.6) + (2 * 3.38 * Centroid * Centroid) + (12 * 0.25 * 0.25 * 0.25 / 12) + (3 * (4.125 - Centroid) * (4.125 - Centroid));
        double slenderness = 0.875 * 12 * Math.Sqrt((12 * 12) + (8 * 8)) / Math.Sqrt(Ix / A), elastic = Math.PI * Math.PI * 29_000 * A / (slenderness * slenderness);
        double expected = 0.85 * 0.95 * Math.Pow(0.658, 30 * A / elastic) * 30 * A;

        JsonElement rafter = Row("L0U1", "compression");
        Assert.Equal("buckling in plane", rafter.GetProperty("mode").GetString());
        Assert.Equal(expected, rafter.GetProperty("asFound").GetDouble() / 4.4482216152605, 0.005 * expected);
        Assert.Equal(slenderness, rafter.GetProperty("slenderness").GetDouble(), 0.1);
    }

    [Fact]
    public void Capacity_WithLoss_StandsBesideThatAsBuilt()
    {
        bridge.Write("findings.csv", "member,truss,place,part,what,dimension,remaining [in]\nL0U1,both,foot,plate,remaining,thickness,0.125\n");
        Run run = Run.Of("capacity", bridge.Folder, "--member", "L0U1");
        Assert.Equal(0, run.Status);
        Assert.Contains("as found [kip]", run.Output, StringComparison.Ordinal);
        Assert.Contains(", foot", run.Output, StringComparison.Ordinal);
        JsonElement row = Row("L0U1", "tension");

        // 30 ksi × 0.95 × 0.85 on 9.76 and on 8.26 in²; loss of the plate on both faces moves the centroid, which costs a little more.
        Assert.Equal(30 * 0.95 * 0.85 * 9.76, row.GetProperty("asBuilt").GetDouble() / 4.4482216152605, 0.1);
        Assert.InRange(row.GetProperty("asFound").GetDouble() / 4.4482216152605, 0.6 * 30 * 0.95 * 0.85 * 8.26, 30 * 0.95 * 0.85 * 8.26);
    }

    [Fact]
    public void Capacity_WithNothingGiven_SaysWhatIsMissing()
    {
        bridge.Replace("members.csv", "hanger,,,,,,,40", "hanger,,,,,,,");
        Run run = Run.Of("capacity", bridge.Folder);
        Assert.Contains("  - L1U1 in tension: column \"tension capacity\" of members.csv is blank, and no section is named\n", run.Output, StringComparison.Ordinal);
        Assert.Equal(0, run.Status);
    }

    [Fact]
    public void Capacity_WithoutAMethod_IsRefused()
    {
        bridge.Replace("bridge.toml", "method = \"LRFR\"\n", "");
        Run run = Run.Of("capacity", bridge.Folder);
        Assert.Equal((1, "bridge.toml:8:1: the rating method is missing: write method = \"LRFR\", \"LFR\", \"ASR\" or \"partial factors\" under [rating].\n"), (run.Status, run.Error));
    }

    private JsonElement Row(string member, string sense)
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("capacity", bridge.Folder, "--format", "json").Output);
        return json.RootElement.GetProperty("capacities").EnumerateArray().First(r => r.GetProperty("member").GetString() == member && r.GetProperty("sense").GetString() == sense).Clone();
    }
}
