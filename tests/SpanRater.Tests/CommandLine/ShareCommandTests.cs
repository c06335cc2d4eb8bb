using System.Globalization;
using System.Text.Json;
using System.Text.RegularExpressions;
using SpanRater.Files;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>share</c> says, and how an override of the lever rule carries its reason.</summary>
public sealed partial class ShareCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    // EN service vehicle at the kerb, wheels 0.3 and 1.6 m from the truss: (2.1 + 0.8) / (2 x 2.4) = 0.604, by hand.
    [Fact]
    public void Share_TansyWeirServiceVehicle_IsWorkedFromItsWheels()
    {
        Run run = Run.Of("share", Repository.Sample("tansy-weir"), "--vehicle", "EN service vehicle");

        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("One vehicle: wheel lines at 0.3, 1.6 m from the truss, the nearest 0.1 m from the kerb.", run.Output, StringComparison.Ordinal);
        Assert.Contains("((2.4 − 0.3) + (2.4 − 1.6)) / (2 · 2.4) = 2.9 / 4.8 = 0.6042\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("0.6042 · 1.20 = 0.7250\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("A vehicle of class maintenance is taken alone on the bridge.", run.Output, StringComparison.Ordinal);
        Assert.Contains(Words.Caution, run.Output, StringComparison.Ordinal);
        Assert.Equal(0.604, Arrangements(Repository.Sample("tansy-weir"), "EN service vehicle")[0].GetProperty("leverRule").GetDouble(), 0.0005);
    }

    // Trusses 16 ft apart, roadway 14 ft, wheels 3 and 9 ft from the truss: 20/32 = 0.625; times 1.20 for one lane by LRFR 0.750.
    [Theory]
    [InlineData("ASR", 0.625, 1.00)]
    [InlineData("LFR", 0.625, 1.00)]
    [InlineData("LRFR", 0.750, 1.20)]
    public void Share_OneLaneBetweenTrussesSixteenFeetApart_HoldsThePresenceOfTheMethod(string method, double share, double presence)
    {
        bridge.Replace("bridge.toml", "\"14 ft\"", "\"16 ft\"").Replace("bridge.toml", "\"12 ft\"", "\"14 ft\"").Replace("bridge.toml", "LRFR", method);

        JsonElement arrangement = Arrangements(bridge.Folder, "Type 3").Single();

        Assert.Equal(0.625, arrangement.GetProperty("leverRule").GetDouble(), 1e-12);
        Assert.Equal(presence, arrangement.GetProperty("presence").GetDouble());
        Assert.Equal(share, arrangement.GetProperty("share").GetDouble(), 1e-12);
    }

    [Fact]
    public void Share_HollisFork_IsFiveEighths() =>
        Assert.Contains("((16 − 3) + (16 − 9)) / (2 · 16) = 20 / 32 = 0.6250\n", Run.Of("share", Repository.Sample("hollis-fork"), "--vehicle", "Type 3").Output, StringComparison.Ordinal);

    // Two lanes of trucks: (19 + 13 + 9 + 3) / 44 = 1.00 with 1.00, more than one with 1.20; an emergency vehicle is alone.
    [Fact]
    public void Share_GarrowLanding_CountsTwoTrucksButOneEmergencyVehicle()
    {
        Run run = Run.Of("share", Repository.Sample("garrow-landing"));

        Assert.Contains("Two abreast: wheel lines at 3, 9, 13, 19 ft from the truss, the nearest 2 ft from the kerb.", run.Output, StringComparison.Ordinal);
        Assert.Contains("((22 − 3) + (22 − 9) + (22 − 13) + (22 − 19)) / (2 · 22) = 44 / 44 = 1.0000\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("The largest counts, two abreast: share 1.0000.", run.Output, StringComparison.Ordinal);
        Assert.Contains("A vehicle of class emergency or farm is taken alone on the bridge.", run.Output, StringComparison.Ordinal);
        Assert.Contains("0.7273 · 1.20 = 0.8727\n", run.Output, StringComparison.Ordinal);
        JsonElement[] tried = Arrangements(Repository.Sample("garrow-landing"), "Type 3");
        Assert.Equal([false, true], tried.Select(a => a.GetProperty("counts").GetBoolean()));
        Assert.Equal(1, tried[1].GetProperty("share").GetDouble(), 1e-12);
    }

    [Theory]
    [InlineData("garrow-landing")]
    [InlineData("tansy-weir")]
    [InlineData("hollis-fork")]
    [InlineData("wrenfield-ferry")]
    [InlineData("mossback-lane")]
    public void Share_OfASample_IsWhatItIsRatedWith(string sample)
    {
        string folder = Repository.Sample(sample);
        using var shares = JsonDocument.Parse(Run.Of("share", folder, "--format", "json").Output);
        using var ratings = JsonDocument.Parse(Run.Of("rate", folder, "--all", "--format", "json").Output);
        int compared = 0;
        foreach (JsonElement row in ratings.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.TryGetProperty("share", out JsonElement s) && s.ValueKind == JsonValueKind.Number && r.GetProperty("beside").ValueKind == JsonValueKind.Null))
        {
            JsonElement[] own = [.. shares.RootElement.GetProperty("shares").EnumerateArray().Where(s => s.GetProperty("vehicles").EnumerateArray().Any(v => v.GetString() == row.GetProperty("vehicle").GetString()))];
            Assert.Equal(Assert.Single(own).GetProperty("trusses")[0].GetProperty("share").GetDouble(), row.GetProperty("share").GetDouble());
            compared++;
        }

        Assert.True(compared > 0);
    }

    // Each line that works a share follows from its own printed numbers.
    [Theory]
    [InlineData("garrow-landing", "us", 3)]
    [InlineData("garrow-landing", "si", 3)]
    [InlineData("tansy-weir", "si", 2)]
    [InlineData("tansy-weir", "us", 2)]
    public void Share_PrintedLines_CanBeFollowedWithACalculator(string sample, string units, int lines)
    {
        string output = Run.Of("share", Repository.Sample(sample), "--units", units).Output;
        MatchCollection found = Lever().Matches(output);

        Assert.Equal(lines, found.Count);
        Assert.All(found, m =>
        {
            double[] arms = [.. Arm().Matches(m.Groups["arms"].Value).Select(a => Number(a.Groups["spacing"].Value) - Number(a.Groups["wheel"].Value))];
            Assert.Equal(arms.Sum() / (2 * Number(m.Groups["spacing"].Value)), Number(m.Groups["share"].Value), 0.0001);
            Assert.Equal(Number(m.Groups["sum"].Value) / Number(m.Groups["both"].Value), Number(m.Groups["share"].Value), 0.0001);
            Assert.Equal(Number(m.Groups["share"].Value) * Number(m.Groups["presence"].Value), Number(m.Groups["product"].Value), 0.0001);
        });
    }

    [Fact]
    public void Share_RoadwayOffCentre_WorksEachTrussOnItsOwn()
    {
        bridge.Replace("bridge.toml", "truss_spacing = \"14 ft\"", "truss_spacing = \"18 ft\"\nroadway_offset = \"1 ft\"\ntruss_names = [\"north\", \"south\"]")
            .Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"14 ft\"");

        string output = Run.Of("share", bridge.Folder).Output;

        Assert.Contains("its centre 1.00 ft to the right of the middle: the left kerb is 3.00 ft from the north truss, the right one 1.00 ft from the south truss.", output, StringComparison.Ordinal);
        Assert.Contains("((18 − 5) + (18 − 11)) / (2 · 18) = 20 / 36 = 0.5556\n", output, StringComparison.Ordinal);
        Assert.Contains("((18 − 3) + (18 − 9)) / (2 · 18) = 24 / 36 = 0.6667\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Share_NoMethod_SaysSoAndGoesWithoutPresence()
    {
        bridge.Replace("bridge.toml", "method = \"LRFR\"\n", "");

        Run run = Run.Of("share", bridge.Folder);

        Assert.Equal(0, run.Status);
        Assert.Contains("No rating method is given in bridge.toml, and presence factors are a method's own: these shares have none. Write method = \"LRFR\", \"LFR\", \"ASR\" or \"partial factors\" under [rating].", run.Output, StringComparison.Ordinal);
        Assert.Contains("((14 − 3) + (14 − 9)) / (2 · 14) = 16 / 28 = 0.5714\n", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("1.20", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Share_VehicleTooWide_SaysByHowMuchAndIsNoAnswer()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"7 ft\"");

        Run run = Run.Of("share", bridge.Folder, "--picture", bridge.PathOf("section.png"));

        Assert.Equal(3, run.Status);
        Assert.Contains("  - Type 3: too wide for the roadway: it needs 8.00 ft and there is 7.00 ft, 1.00 ft too little\n", run.Output, StringComparison.Ordinal);
        Assert.EndsWith("section.png: not drawn, since there is no answer to draw.\n", run.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(bridge.PathOf("section.png")));
    }

    [Fact]
    public void Share_NarrowRoadway_SaysThatTheWheelIsNearerToTheKerb()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"9 ft\"");
        Assert.Contains("the nearest 1 ft from the kerb, since it does not fit with 2 ft.", Run.Of("share", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Share_DeckNotDescribed_SaysWhatIsMissing()
    {
        bridge.Replace("bridge.toml", "truss_spacing = \"14 ft\"\nroadway = \"12 ft\"\n", "");

        Run run = Run.Of("share", bridge.Folder);

        Assert.Equal(3, run.Status);
        Assert.Contains("  - Type 3: no lateral share: truss_spacing and roadway are missing in bridge.toml [deck] (or give truss_share)\n", run.Output, StringComparison.Ordinal);
    }

    // The kerb 1.5 ft beyond the truss, the wheel 0.5 ft inside it: worked, with a warning.
    [Fact]
    public void Share_KerbBeyondATruss_IsWorkedAndWarnedOf()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"17 ft\"");

        Run run = Run.Of("share", bridge.Folder);

        Assert.StartsWith("bridge.toml:6:11: warning: a kerb stands beyond a truss.", run.Error, StringComparison.Ordinal);
        Assert.Contains("each kerb is 1.50 ft beyond its truss.", run.Output, StringComparison.Ordinal);
        Assert.Contains("((14 − 0.5) + (14 − 6.5)) / (2 · 14) = 21 / 28 = 0.7500\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Share_WheelOutsideTruss_IsRefusedWithItsPlace()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"22 ft\"");
        Assert.Equal(
            new Run(1, "", "bridge.toml:6:11: the outer wheel line would stand 0.61 m (2.0 ft) outside a truss: check roadway, roadway_offset, truss_spacing and wheel_to_kerb. If the deck does overhang, give truss_share.\n"),
            Run.Of("share", bridge.Folder));
    }

    [Fact]
    public void Share_OfALoading_WorksItsTruckAndItsLaneLoad()
    {
        // Garrow Landing: trusses 22 ft apart, kerbs 1 ft from them: lanes of 10 ft have their middles 6 and 16 ft from the truss.
        string output = Run.Of("share", Repository.Sample("garrow-landing"), "--vehicle", "HS20 truck or lane").Output;
        Assert.Contains("(22 − 6) / 22 = 0.7273; 0.7273 · 1.20 = 0.8727\n", output, StringComparison.Ordinal);
        Assert.Contains("((22 − 6) + (22 − 16)) / 22 = 1.0000; 1.0000 · 1.00 = 1.0000\n", output, StringComparison.Ordinal);
        Assert.Contains("HS20 ", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Share_OfACrowd_IsTheWidthThatOneTrussCarries()
    {
        Run run = Run.Of("share", Repository.Sample("tansy-weir"), "--vehicle", "Crowd 90 psf");
        Assert.Equal(0, run.Status);
        Assert.Contains("2 · (2.4 − 1.2) / 2.4 = 1 m\n", run.Output, StringComparison.Ordinal);
        using var json = JsonDocument.Parse(Run.Of("share", Repository.Sample("tansy-weir"), "--vehicle", "Crowd 90 psf", "--format", "json").Output);
        Assert.Equal(1, json.RootElement.GetProperty("strips")[0].GetProperty("trusses")[0].GetProperty("width").GetDouble(), 1e-12);
    }

    [Fact]
    public void Share_OfACrowdWithoutTrussSpacing_SaysWhatIsMissing()
    {
        bridge.Replace("bridge.toml", "truss_spacing = \"14 ft\"\n", "");
        Run run = Run.Of("share", bridge.Folder, "--vehicle", "Crowd 90 psf");
        Assert.Equal(3, run.Status);
        Assert.Contains("  - Crowd 90 psf: no lateral share: truss_spacing is missing in bridge.toml [deck]", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Share_Csv_HasARowAWheelLine()
    {
        string[] lines = Run.Of("share", bridge.Folder, "--format", "csv").Output.Split('\n');
        Assert.Contains("vehicle,class,gauge [ft],truss,abreast,wheel line [ft],wheel to kerb [ft],lever rule,presence,share,counts,reason", lines);
        Assert.Equal(4, lines.Count(l => l.StartsWith("Type 3,legal,", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("png")]
    [InlineData("svg")]
    public void Share_Picture_IsWritten(string ending)
    {
        string file = bridge.PathOf($"section.{ending}");
        Assert.Equal(0, Run.Of("share", bridge.Folder, "--picture", file).Status);
        Assert.True(new FileInfo(file).Length > 3000);
    }

    [Fact]
    public void Override_WithItsReason_IsStampedOnEveryRating()
    {
        bridge.Replace("bridge.toml", "[rating]", "truss_share = 0.75\ntruss_share_reason = \"refined analysis\\n  of 2019\"\n\n[rating]");
        const string Stamp = "truss_share 0.750 is given in bridge.toml and replaces the lever rule: \"refined analysis of 2019\"; presence is taken to be in it";

        foreach (string[] command in (string[][])[["rate"], ["post"], ["share"], ["explain", "--member", "L1U1", "--vehicle", "Type 3"], ["rate", "--format", "csv"], ["share", "--format", "csv"]])
        {
            Run run = Run.Of([command[0], bridge.Folder, .. command[1..]]);
            Assert.Equal((0, ""), (run.Status, run.Error));
            Assert.Contains(Stamp, run.Output, StringComparison.Ordinal);
        }

        using var json = JsonDocument.Parse(Run.Of("share", bridge.Folder, "--format", "json").Output);
        Assert.Equal("refined analysis of 2019", json.RootElement.GetProperty("given").GetProperty("reason").GetString());
        Assert.Equal(0.75, json.RootElement.GetProperty("given").GetProperty("share").GetDouble());
        Assert.DoesNotContain("no reason", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Override_WithoutAReason_IsTakenStampedAndWarnedOf()
    {
        bridge.Replace("bridge.toml", "[rating]", "truss_share = 0.75\n[rating]");

        Assert.Contains("bridge.toml:8:15: warning: truss_share replaces the lever rule, and no reason is given: write who found it and how, truss_share_reason = \"…\".", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
        Run rated = Run.Of("rate", bridge.Folder);
        Assert.Equal(0, rated.Status);
        Assert.Contains("truss_share 0.750 is given in bridge.toml and replaces the lever rule, and no reason is given; presence is taken to be in it", rated.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Override_GivenWhereTheDeckIsNotDescribed_IsAnAnswer()
    {
        bridge.Replace("bridge.toml", "truss_spacing = \"14 ft\"\nroadway = \"12 ft\"\n", "truss_share = 0.75\n");

        Run run = Run.Of("share", bridge.Folder);

        Assert.Equal(0, run.Status);
        Assert.Contains("presence is taken to be in it. The lever rule gives no share beside it.", run.Output, StringComparison.Ordinal);
        Assert.Contains("No share by the lever rule:\n  - Type 3: no lateral share: truss_spacing and roadway are missing", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Reason_WithoutAnOverride_IsRefused()
    {
        bridge.Replace("bridge.toml", "[rating]", "truss_share_reason = \"refined analysis\"\n[rating]");
        Assert.Equal(
            new Run(1, "", "bridge.toml:8:22: truss_share_reason is given without truss_share: write the share that it speaks of, such as truss_share = 0.75, or remove the reason.\n"),
            Run.Of("check", bridge.Folder));
    }

    [Theory]
    [InlineData("\"\"")]
    [InlineData("2019")]
    public void Reason_ThatSaysNothing_IsRefused(string reason)
    {
        bridge.Replace("bridge.toml", "[rating]", $"truss_share = 0.75\ntruss_share_reason = {reason}\n[rating]");
        Assert.Equal(new Run(1, "", "bridge.toml:9:22: truss_share_reason is a text in quotes: truss_share_reason = \"…\".\n"), Run.Of("check", bridge.Folder));
    }

    private static JsonElement[] Arrangements(string folder, string vehicle)
    {
        using var json = JsonDocument.Parse(Run.Of("share", folder, "--vehicle", vehicle, "--format", "json").Output);
        return [.. json.RootElement.GetProperty("shares")[0].GetProperty("trusses")[0].GetProperty("arrangements").EnumerateArray().Select(a => a.Clone())];
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"\((?<arms>[^/]+)\) / \(2 · (?<spacing>[\d.]+)\) = (?<sum>[\d.]+) / (?<both>[\d.]+) = (?<share>[\d.]+)\n\n    [\d.]+ · (?<presence>[\d.]+) = (?<product>[\d.]+)\n")]
    private static partial Regex Lever();

    [GeneratedRegex(@"\((?<spacing>[\d.]+) − (?<wheel>[\d.]+)\)")]
    private static partial Regex Arm();
}
