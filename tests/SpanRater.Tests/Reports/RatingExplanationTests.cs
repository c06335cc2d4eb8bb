using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>explain: every number of a rating factor opened, and the sum followed as with a pocket calculator.</summary>
public sealed partial class RatingExplanationTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Explain_GoverningMember_PrintsTheSumThatRateHas()
    {
        string output = Run.Of("explain", Repository.Sample("garrow-landing"), "--member", "M2U3", "--vehicle", "EV3", "--sense", "compression").Output;
        Assert.Contains("Compression, emergency level, upstream truss: RF = 0.98", output, StringComparison.Ordinal);
        Assert.Contains("  - γDC = 1.25: it adds to the sense rated", output, StringComparison.Ordinal);
        Assert.Contains("RF = (85.994 − 1.25·15.832 − 1.50·3.958) / (1.30·35.341·(1 + 0.330)) = 60.267 / 61.104 = 0.986", output, StringComparison.Ordinal);
        Assert.Contains("An aid for qualified people, not a posting order", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_GivenCapacity_NamesItsColumn() =>
        Assert.Contains(
            "  - C = 40.000 kip: column \"tension capacity\" of members.csv, resistance, condition and system factors in it",
            Run.Of("explain", bridge.Folder, "--member", "L1U1", "--vehicle", "Type 3", "--sense", "tension").Output,
            StringComparison.Ordinal);

    [Theory]
    [InlineData("garrow-landing", "M2U3", "EV3")]
    [InlineData("garrow-landing", "U3U4", "Type 3S2")]
    [InlineData("tansy-weir", "L1U1", "EN service vehicle")]
    [InlineData("tansy-weir", "L2U3", "Mower and trailer")]
    public void Explain_PrintedSum_IsFollowedByAPocketCalculator(string sample, string member, string vehicle)
    {
        string output = Run.Of("explain", Repository.Sample(sample), "--member", member, "--vehicle", vehicle).Output;
        MatchCollection sums = Sum().Matches(output.Replace('−', '-'));
        Assert.NotEmpty(sums);
        Assert.All(sums, sum =>
        {
            double N(string group) => double.Parse(sum.Groups[group].Value, CultureInfo.InvariantCulture);
            double room = N("c") - (N("gdc") * N("dc")) - (N("gdw") * N("dw"));
            double live = N("gll") * N("ll") * (1 + N("im"));
            Assert.Equal(room, N("room"), 0.006);
            Assert.Equal(live, N("live"), 0.006);
            Assert.Equal(room / live, N("rf"), 0.006);
        });
    }

    [Fact]
    public void Explain_Axles_AddUpToTheLiveForce()
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("explain", Repository.Sample("garrow-landing"), "--member", "M2U3", "--vehicle", "EV3", "--format", "json").Output);
        foreach (JsonElement row in json.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("live").ValueKind == JsonValueKind.Number))
        {
            double axles = row.GetProperty("position").GetProperty("axles").EnumerateArray().Sum(a => a.GetProperty("load").GetDouble() * a.GetProperty("ordinate").GetDouble());
            double spacing = 22 * 0.3048, share = row.GetProperty("presence").GetDouble() * row.GetProperty("wheels").EnumerateArray().Sum(w => (spacing - w.GetDouble()) / (2 * spacing));
            Assert.Equal(share, row.GetProperty("share").GetDouble(), 9);
            Assert.Equal(axles * share, row.GetProperty("live").GetDouble(), 9);
        }
    }

    [Theory]
    [InlineData("U2L3")]
    [InlineData("L3L4")]
    public void Explain_WithheldRating_WorksTheForcesAtWhichTheRodGoesSlack(string member)
    {
        string output = Run.Of("explain", Repository.Sample("wrenfield-ferry"), "--member", member, "--vehicle", "Type 3").Output;
        Assert.Contains("Why U2L3 limits this, inventory level: slack at 0.369 of the vehicle", output, StringComparison.Ordinal);
        Assert.Contains("The front axle stands at 21.00 ft, driving to the left.", output, StringComparison.Ordinal);
        Assert.Contains("    (1.00·13.067 + 1.30·0.000) / (2.17·12.662·(1 + 0.287)) = 13.067 / 35.364 = 0.369", output, StringComparison.Ordinal);
        Assert.Contains("    (1.00·13.067 + 1.30·0.000) / (1.30·12.662·(1 + 0.287)) = 13.067 / 21.186 = 0.616", output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("explain", Repository.Sample("wrenfield-ferry"), "--member", member, "--vehicle", "Type 3", "--format", "json").Output);
        foreach (JsonElement row in json.RootElement.GetProperty("ratings").EnumerateArray())
        {
            // At that part of the vehicle the factored dead and live forces of the rod come to nothing together.
            JsonElement slack = row.GetProperty("goesSlack");
            double Of(string name) => slack.GetProperty(name).GetDouble();
            double axles = slack.GetProperty("position").GetProperty("axles").EnumerateArray().Sum(a => a.GetProperty("load").GetDouble() * a.GetProperty("ordinate").GetDouble());
            double dead = (Of("componentsFactor") * Of("deadComponents")) + (Of("wearingFactor") * Of("deadWearing"));
            Assert.Equal("U2L3", slack.GetProperty("member").GetString());
            Assert.Equal(0, dead + axles, 6);
            Assert.Equal(axles, Of("factor") * row.GetProperty("liveFactor").GetDouble() * Of("live") * (1 + Of("impact")), 9);
        }
    }

    [Fact]
    public void Explain_TrussWithRods_ShowsTheTotalAtTheFactor()
    {
        string output = Run.Of("explain", Repository.Sample("hollis-fork"), "--member", "L2U3", "--vehicle", "Type 3", "--sense", "tension").Output;
        Assert.Contains("RF is found by making the vehicle on this truss heavier, from nothing, until dead load and vehicle together, factors in both, first bring L2U3 to its capacity C.", output, StringComparison.Ordinal);
        Assert.Contains("Slack then: U2L3, L4U3.", output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("explain", Repository.Sample("hollis-fork"), "--member", "L2U3", "--vehicle", "Type 3", "--sense", "tension", "--format", "json").Output);
        foreach (JsonElement row in json.RootElement.GetProperty("ratings").EnumerateArray())
        {
            JsonElement at = row.GetProperty("positionAtFactor");
            double weight = at.GetProperty("axles").EnumerateArray().Sum(a => a.GetProperty("load").GetDouble()) / (50 * 4.4482216152605);
            Assert.Equal(row.GetProperty("factor").GetDouble(), weight / (row.GetProperty("liveFactor").GetDouble() * row.GetProperty("share").GetDouble() * (1 + row.GetProperty("impact").GetDouble())), 9);
        }
    }

    [Fact]
    public void Explain_TrussWithRods_SaysInPlainWordsWhatIsAddedToWhat()
    {
        string output = Run.Of("explain", Repository.Sample("hollis-fork"), "--member", "L2U3", "--vehicle", "Type 3", "--sense", "tension").Output;
        Assert.Contains("case DC of the take-off; the rods counted are those that pull under the dead load alone", output, StringComparison.Ordinal);
        Assert.Contains("LL = 5.32 kip tension: what dead load and vehicle bring together, less what the dead load brings alone. The truss carries 0.6250 of every axle, and the table has these loads. The front axle stands at 13.00 ft, driving to the left:", output, StringComparison.Ordinal);
        Assert.Contains("That is so when 0.9561 of every axle stands on this truss, the front axle at 13.00 ft", output, StringComparison.Ordinal);
        Assert.Contains("change in the dead load's force, other rods pulling", output, StringComparison.Ordinal);
    }

    // HS20 on top chord U3U4 by hand: 78.286 kip × 1.33 = 104.12 of the truck; of the lane (0.64 × 86.7857 + 18 × 1.20536) × 1.33 = 102.73.
    [Fact]
    public void Explain_ALoadingOfTwoWays_TellsTheOneThatDoesNotGovern()
    {
        string output = Run.Of("explain", Repository.Sample("garrow-landing"), "--member", "U3U4", "--vehicle", "HS20 truck or lane", "--sense", "compression").Output;
        Assert.Contains("The lane load of 0.64 klf with its 18.00 kip would bring 102.73 kip compression to this truss with impact, less than the 104.12 kip compression of HS20: it does not govern here.", output, StringComparison.Ordinal);
        output = Run.Of("explain", Repository.Sample("garrow-landing"), "--member", "U3U4", "--vehicle", "HL-93", "--sense", "compression").Output;
        Assert.Contains("HL-93 tandem with the lane load of 0.64 klf would bring 133.92 kip compression to this truss with impact, less than the 159.66 kip compression of HL-93 truck with the lane load of 0.64 klf: it does not govern here.", output, StringComparison.Ordinal);
        Assert.DoesNotContain("does not govern", Run.Of("explain", Repository.Sample("garrow-landing"), "--member", "U3U4", "--vehicle", "EV3").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_TwoVehiclesAlike_SaysTheyBringTheSame()
    {
        bridge.Write("vehicles.toml", "[[loading]]\nname = \"Either\"\nclass = \"legal\"\nvehicles = [\"Type 3\", \"Type 3\"]\n");
        Assert.Contains("Type 3 would bring the same to this truss, ", Run.Of("explain", bridge.Folder, "--member", "L1U1", "--vehicle", "Either", "--sense", "tension").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_RodInCompression_SaysThatItGoesSlack() =>
        Assert.Contains(
            "L2U3 only pulls: it goes slack instead of pressing, and has no compression rating.",
            Run.Of("explain", Repository.Sample("hollis-fork"), "--member", "L2U3", "--vehicle", "Type 3", "--sense", "compression").Output,
            StringComparison.Ordinal);

    [Fact]
    public void Explain_WithheldVehicle_SaysWhyAndEndsWithThree()
    {
        Run run = Run.Of("explain", Repository.Sample("wrenfield-ferry"), "--member", "U3U4", "--vehicle", "Type 3");
        Assert.Equal(3, run.Status);
        Assert.Contains("Withheld: uncarried compression in U2L3", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_MissingCapacity_NamesTheColumn()
    {
        Run run = Run.Of("explain", bridge.Folder, "--member", "L1U1", "--vehicle", "HL-93 truck");
        Assert.Equal(3, run.Status);
        Assert.Contains("Not rated: its standard form has a lane load as well, and the truck alone would flatter: rate \"HL-93\" instead", run.Output, StringComparison.Ordinal);
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,hanger,,");
        run = Run.Of("explain", bridge.Folder, "--member", "L1U1", "--vehicle", "Type 3", "--sense", "tension");
        Assert.Contains("C is not given: column \"tension capacity\" of members.csv is blank", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Explain_DeadLoadAboveTheCapacity_SaysSo()
    {
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,hanger,1,");
        string output = Run.Of("explain", bridge.Folder, "--member", "L1U1", "--vehicle", "Type 3", "--sense", "tension").Output;
        Assert.Contains("The factored dead load is 3.250 kip in this sense and uses up the capacity of 1.000 kip: RF = 0, whatever the vehicle.", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--member \"L1U\": members.csv has no such member. Did you mean \"L1U1\"?", "--member", "L1U", "--vehicle", "Type 3")]
    [InlineData("--vehicle \"Type 33\": no catalogue has that vehicle. Did you mean \"Type 3\"?", "--member", "L1U1", "--vehicle", "Type 33")]
    public void Explain_Typo_SaysWhatWasMeant(string expected, params string[] options)
    {
        Run run = Run.Of(["explain", bridge.Folder, .. options]);
        Assert.Equal(1, run.Status);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"RF = \((?<c>[\d.]+) - (?<gdc>[\d.]+)·\(?(?<dc>-?[\d.]+)\)? - (?<gdw>[\d.]+)·\(?(?<dw>-?[\d.]+)\)?\) / \((?<gll>[\d.]+)·(?<ll>[\d.]+)·\(1 \+ (?<im>[\d.]+)\)\) = (?<room>[\d.]+) / (?<live>[\d.]+) = (?<rf>[\d.]+)")]
    private static partial Regex Sum();
}
