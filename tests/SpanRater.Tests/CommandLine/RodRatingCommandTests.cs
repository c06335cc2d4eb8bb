using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>rate</c> says where rods bound, cap or withhold a factor: a symmetric Pratt truss of six panels, crossed rods in four of them.</summary>
public sealed class RodRatingCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public RodRatingCommandTests()
    {
        bridge.Write(
            "joints.csv",
            "joint,x [ft],y [ft],support,deck\nL0,0,0,pin,yes\nL1,16,0,,yes\nL2,32,0,,yes\nL3,48,0,,yes\nL4,64,0,,yes\nL5,80,0,,yes\nL6,96,0,roller,yes\n"
            + "U1,16,20,,\nU2,32,20,,\nU3,48,20,,\nU4,64,20,,\nU5,80,20,,\n");
        bridge.Write(
            "members.csv",
            "member,from,to,tension only,operating tension [kip],operating compression [kip],inventory tension [kip],inventory compression [kip]\n"
            + string.Concat("L0L1 L1L2 L2L3 L3L4 L4L5 L5L6 L1U1 L5U5".Split(' ').Select(m => Member(m, "yes", "90,,70,")))
            + string.Concat("U1U2 U2U3 U3U4 U4U5 L0U1 U5L6 L2U2 L3U3 L4U4".Split(' ').Select(m => Member(m, "", "90,120,70,90")))
            + string.Concat("U1L2 U2L3 U4L3 U5L4 L1U2 L2U3 L4U3 L5U4".Split(' ').Select(m => Member(m, "yes", "40,,30,"))));
        bridge.Write("loads.csv", "case,joint,up [kip]\n" + string.Concat(Enumerable.Range(1, 5).Select(i => $"DC,L{i},-7.68\n")));
        bridge.Write(
            "bridge.toml",
            "name = \"Rod bridge\"\n[deck]\ntruss_spacing = \"16 ft\"\nroadway = \"14 ft\"\n[rating]\nmethod = \"ASR\"\nimpact = 0.3\nvehicles = [\"Type 3\", \"Type 3S2\", \"Type 3-3\", \"EV3\"]\n");
    }

    public void Dispose() => bridge.Dispose();

    // Both directions are rolled, so that a symmetric bridge has the same answer at either end: statuses and factors alike.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Rate_SymmetricBridge_RatesBothHalvesAlike(bool crossedInPanelsTwoAndFive)
    {
        if (!crossedInPanelsTwoAndFive)
        {
            bridge.Replace("members.csv", Member("L1U2", "yes", "40,,30,"), "").Replace("members.csv", Member("L5U4", "yes", "40,,30,"), "");
        }

        Dictionary<string, (string? Status, double? Factor)> rows = Rows().ToDictionary(
            r => string.Join('|', Ends(r.Member), r.Vehicle, r.Level, r.Sense), r => (r.Status, r.Factor));
        Assert.NotEmpty(rows);
        foreach (Row row in Rows())
        {
            (string? status, double? factor) = rows[string.Join('|', Ends(Mirrored(row.Member)), row.Vehicle, row.Level, row.Sense)];
            Assert.Equal(row.Status, status);
            Assert.Equal(row.Factor ?? -1, factor ?? -1, 1e-6);
        }
    }

    // At L1 the hip vertical carries the panel load less what the counter L1U2 lifts, which is at most a sixth of it: never below zero.
    // Dead load is only on the other panel points, so that nothing else holds the hip vertical in tension.
    [Theory]
    [InlineData("-7.68")]
    [InlineData("-0.4")]
    public void Rate_HipVerticalAtZeroWithoutLoad_IsNoBarThatGoesSlack(string load)
    {
        bridge.Replace("loads.csv", "DC,L1,-7.68\n", "").Replace("loads.csv", "DC,L5,-7.68\n", "").Replace("loads.csv", "-7.68", load);
        Row[] rows = [.. Rows()];
        Assert.Contains(rows, r => r.Status == "rated");
        Assert.All(rows, r => Assert.Null(r.CappedBy));
        Assert.All(rows, r => Assert.NotEqual("withheld", r.Status));
    }

    // Under Type 3-3 as it is L1U2 stays slack; the factored vehicle wakes it, and what it can carry then is not known.
    [Fact]
    public void Rate_CounterThatOnlyAHeavierVehicleWakes_AsksForItsCapacity()
    {
        bridge.Replace("members.csv", Member("L1U2", "yes", "40,,30,"), Member("L1U2", "yes", ",,,"));
        Row row = Assert.Single(Rows(), r => r is { Member: "L1U2", Vehicle: "Type 3-3", Level: "operating", Sense: "tension" });
        Assert.Null(row.Live);
        Assert.Equal("notRated", row.Status);
        Assert.Contains("L1U2 in tension: no capacity: column \"operating tension\" of members.csv is blank", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    // With every rod in a pair nothing fails, and a force that only takes dead load away reaches no capacity.
    [Fact]
    public void Rate_ForceThatRodsBound_IsToldApartFromNoForce()
    {
        Row row = Assert.Single(Rows(), r => r is { Member: "L2U2", Vehicle: "EV3", Level: "operating", Sense: "tension" });
        Assert.Equal("notLoaded", row.Status);
        Assert.True(row.Live > 0);
        Assert.Contains("Not applicable, since rods go slack first: L2U2 tension, L4U4 tension.", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_FactorHeldDownByABarThatGoesSlack_IsToldInEveryFormat()
    {
        bridge.Replace("members.csv", Member("L1U2", "yes", "40,,30,"), "").Replace("members.csv", Member("L5U4", "yes", "40,,30,"), "");
        Row[] capped = [.. Rows().Where(r => r.CappedBy is not null)];
        Assert.NotEmpty(capped);
        string text = Run.Of("rate", bridge.Folder, "--all").Output;
        Assert.Contains("Held down by a bar that only pulls and has nothing to take over from it, not by the member's own capacity:", text, StringComparison.Ordinal);
        Assert.Contains($"where {capped[0].CappedBy} goes slack: ", text, StringComparison.Ordinal);
        string[] lines = Run.Of("rate", bridge.Folder, "--format", "csv").Output.Split('\n');
        Assert.Equal(capped.Length, lines.Count(l => l.Contains("goes slack with nothing to take over,", StringComparison.Ordinal)));
    }

    [Fact]
    public void Rate_FactorHeldDownByABarThatGoesSlack_IsToldInThePicture()
    {
        bridge.Replace("members.csv", Member("L1U2", "yes", "40,,30,"), "").Replace("members.csv", Member("L5U4", "yes", "40,,30,"), "");
        string picture = bridge.Folder + ".svg";
        try
        {
            Assert.Equal(0, Run.Of("rate", bridge.Folder, "--picture", picture).Status);
            Assert.Contains("Held down to where ", File.ReadAllText(picture), StringComparison.Ordinal);
        }
        finally
        {
            File.Delete(picture);
        }
    }

    [Fact]
    public void Check_TensionOnlyWithACapacityInCompression_DeservesASecondLook()
    {
        bridge.Replace("members.csv", Member("L1U2", "yes", "40,,30,"), Member("L1U2", "yes", "40,25,30,"));
        Assert.Contains(
            "warning: member \"L1U2\" is marked tension only, and its capacity in compression is never used.", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
    }

    private static string Member(string name, string tensionOnly, string capacities) => $"{name},{name[..2]},{name[2..]},{tensionOnly},{capacities}\n";

    private static string Mirrored(string member) => string.Concat(member.Select(c => char.IsAsciiDigit(c) ? (char)('0' + 6 - (c - '0')) : c));

    private static string Ends(string member) => string.Join('-', new[] { member[..2], member[2..] }.Order(StringComparer.Ordinal));

    private IEnumerable<Row> Rows()
    {
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", bridge.Folder, "--format", "json").Output);
        return
        [
            .. json.RootElement.GetProperty("ratings").EnumerateArray().Select(r => new Row(
                r.GetProperty("member").GetString()!,
                r.GetProperty("vehicle").GetString()!,
                r.GetProperty("level").GetString()!,
                r.GetProperty("sense").GetString()!,
                r.GetProperty("status").GetString(),
                Number(r.GetProperty("factor")),
                Number(r.GetProperty("live")),
                r.TryGetProperty("cappedBy", out JsonElement rod) ? rod.GetString() : null)),
        ];
    }

    private static double? Number(JsonElement value) => value.ValueKind == JsonValueKind.Null ? null : value.GetDouble();

    private sealed record Row(string Member, string Vehicle, string Level, string Sense, string? Status, double? Factor, double? Live, string? CappedBy);
}
