using System.Text;
using System.Text.Json;
using SpanRater.Cli;
using SpanRater.Files;
using SpanRater.Tests.Traffic;

namespace SpanRater.Tests.CommandLine;

/// <summary>The command that rolls recorded trucks: what it says, what it refuses, and that it says the same whoever counted.</summary>
public sealed class TrafficCommandTests : IDisposable
{
    private const string Kips = "time,loads [kip],spacings [ft],lane\n";
    private readonly BridgeOnDisk bridge = FatigueKingPost.Make();
    private readonly string place = Directory.CreateTempSubdirectory("span-traffic-").FullName;

    public void Dispose()
    {
        bridge.Dispose();
        Directory.Delete(place, recursive: true);
    }

    // 20 kip alone: share (11 + 5)/28, impact 0.33, dead 2.5 and capacity of the members given 40 kip; the chord takes 12/(2 · 8) = 0.75 of it.
    [Fact]
    public void Traffic_OneTruck_IsToldWithItsRecordAndItsPartOfTheCapacity()
    {
        using var plain = new BridgeOnDisk();
        Run run = Run.Of("traffic", plain.Folder, "--records", Records(Kips + "2026-05-04T10:00:00,20,,south\nrubbish\n"));
        Assert.Equal(0, run.Status);
        Assert.Equal("2 rows read", run.Error[..11]);
        Assert.Contains("1 truck counted from 2026-05-04 to 2026-05-04: 1 day, 1 of them with trucks. 1 of 2 rows is rejected and in no number here: look at them, since the heaviest may be among them.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Nearest to its capacity: L1U1 in tension: dead load and live load with impact come to 0.44 of it, under the truck of line 2, 2026-05-04T10:00:00, 20.00 kip gross, lane south; 0 crossings (0 %) exceed it.", run.Output, StringComparison.Ordinal);
        Assert.Contains("no time that can be read: 1", run.Output, StringComparison.Ordinal);
        Assert.Contains("trucks.csv:3:1: warning: \"rubbish\" is not a date and time", run.Output, StringComparison.Ordinal);
        Assert.Contains("this is no rating factor, and no truck may cross because of it", run.Output, StringComparison.Ordinal);
        Assert.Contains(Words.Caution, run.Output, StringComparison.Ordinal);
        Assert.Contains("Deck, stringers, floorbeams and hangers: the floor is not given (floor.csv)", run.Output, StringComparison.Ordinal);
        Assert.Contains("Not extrapolated: say --years with the return period; none is assumed.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Every truck has its wheel lines 6.00 ft apart: records do not hold the gauge", run.Output, StringComparison.Ordinal);
    }

    // 71 kip in place of 20, the sums as above: 0.44 of the capacity is from 2.5 and 15.2 kip of 40, so that (2.5 + 71 · 0.76)/40 = 1.41.
    [Fact]
    public void Traffic_AnUnlikelyTruck_IsCountedAndMarkedWhereverItCounts()
    {
        using var plain = new BridgeOnDisk();
        string records = Records(Kips + "2026-05-04T10:00:00,20,,south\n2026-05-04T11:00:00,71,,north\n");
        Run run = Run.Of("traffic", plain.Folder, "--records", records);
        Assert.Equal(0, run.Status);
        Assert.Contains("2 trucks counted, 1 of them unlikely (listed below), from 2026-05-04", run.Output, StringComparison.Ordinal);
        Assert.Contains("come to 1.41 of it, under the truck of line 3, 2026-05-04T11:00:00, 71.00 kip gross, lane north, marked as unlikely; 1 crossing (50 %) exceeds it.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Trucks marked as unlikely brought ", run.Output, StringComparison.Ordinal);
        Assert.Contains("Unlikely trucks are counted in every number here. Of all trucks more than one in 100 is among them: look whether the unit in the heading is that of the numbers. The first 5 of each reason:", run.Output, StringComparison.Ordinal);
        Assert.Contains("an axle over 60 kip (266.893 kN): 1", run.Output, StringComparison.Ordinal);
        Assert.Contains("trucks.csv:3:21: warning: axle 1 weighs 71 kip", run.Output, StringComparison.Ordinal);
        Assert.Contains("3, unlikely", run.Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("traffic", plain.Folder, "--records", records, "--format", "json").Output);
        JsonElement root = json.RootElement, hanger = root.GetProperty("effects").EnumerateArray().Single(e => e.GetProperty("name").GetString() == "L1U1");
        Assert.Equal((1, 0), (root.GetProperty("unlikelyRows").GetInt32(), root.GetProperty("rejectedRows").GetInt32()));
        Assert.Equal("an axle over 60 kip (266.893 kN)", root.GetProperty("unlikely")[0].GetProperty("reason").GetString());
        Assert.True(hanger.GetProperty("record").GetProperty("unlikely").GetBoolean());
    }

    // One of 38 days has its largest from a truck of 80 kip on one axle: the fit takes it, and says so.
    [Fact]
    public void Traffic_YearsWithAnUnlikelyTruck_SaysThatTheFitRestsOnIt()
    {
        const string Unlikely = "Trucks marked as unlikely brought up to 1 of the 38 values that are fitted for an effect: a wrong record moves every level here.";
        string record = RecordedTrucks.Record(2, 40, 6);
        Run without = Run.Of("traffic", bridge.Folder, "--records", Records(record), "--years", "75"), with = Run.Of("traffic", bridge.Folder, "--records", Records(record + "2026-03-20T12:00:00,14 80 80,14 5,south,\n"), "--years", "75");
        Assert.DoesNotContain("unlikely", without.Output, StringComparison.Ordinal);
        Assert.Contains(Unlikely, with.Output, StringComparison.Ordinal);
        Assert.Contains("The record itself holds more than the level told for ", with.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("The record itself holds more", without.Output, StringComparison.Ordinal);
        double Level(Run run) => double.Parse(System.Text.RegularExpressions.Regex.Match(run.Output[run.Output.IndexOf("once in 75 years  ", StringComparison.Ordinal)..], @"L1U1 +tension +\S* +(\S+ kip +){3}(\S+) kip").Groups[2].Value, System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(Level(with) > Level(without));
    }

    [Fact]
    public void Traffic_Json_HoldsTheFactsInKilonewtons()
    {
        using var plain = new BridgeOnDisk();
        Run run = Run.Of("traffic", plain.Folder, "--records", Records(Kips + "2026-05-04T10:00:00,20,,south\n"), "--format", "json");
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement root = json.RootElement, hanger = root.GetProperty("effects").EnumerateArray().Single(e => e.GetProperty("name").GetString() == "L1U1");
        Assert.Equal(1, root.GetProperty("format").GetInt32());
        Assert.Equal(1, root.GetProperty("trucks").GetInt64());
        Assert.Equal(20 * 4.4482216152605 * 16 / 28, hanger.GetProperty("largest").GetDouble(), 1e-9);
        Assert.Equal(20 * 4.4482216152605 * 16 / 28 * 1.33, hanger.GetProperty("largestWithImpact").GetDouble(), 1e-9);
        Assert.Equal((2, "south"), (hanger.GetProperty("record").GetProperty("line").GetInt32(), hanger.GetProperty("record").GetProperty("further").GetProperty("lane").GetString()));
        Assert.Equal(4.4482216152605 * 16 / 28, hanger.GetProperty("binWidth").GetDouble(), 1e-9);
        Assert.Equal(0, hanger.GetProperty("above").GetInt32());
        Assert.Equal(JsonValueKind.Null, hanger.GetProperty("extrapolated").ValueKind);
        Assert.False(root.GetProperty("extrapolation").GetProperty("whyNot").ValueKind == JsonValueKind.Null);
    }

    [Fact]
    public void Traffic_Csv_HasARowForEachEffectAndItsNotes()
    {
        Run run = Run.Of("traffic", bridge.Folder, "--records", Records(RecordedTrucks.Record(1, 3, 10)), "--format", "csv", "--units", "si");
        string[] lines = run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        Assert.Contains(lines, l => l.StartsWith("# ", StringComparison.Ordinal) && l.Contains(Words.Caution, StringComparison.Ordinal));
        string[] rows = [.. lines.Where(l => l[0] != '#')];
        Assert.StartsWith("truss,part,name,at,effect,sense,unit,largest,with impact,impact,\"share, or arm in m\",quantile 0.5,", rows[0], StringComparison.Ordinal);
        Assert.Equal(RecordedTrucks.Plan(bridge.Folder).Effects.Count, rows.Length - 1);
        Assert.Contains(rows, r => r.StartsWith(",floorbeam,floorbeam,L1,moment,,kN·m,", StringComparison.Ordinal));
    }

    [Fact]
    public void Traffic_AMemberInFull_TellsCrossingsByLevelAndByStressRange()
    {
        Run run = Run.Of("traffic", bridge.Folder, "--records", Records(RecordedTrucks.Record(1, 3, 10)), "--member", "L1U1");
        Assert.Equal(0, run.Status);
        Assert.Contains("L1U1 in full", run.Output, StringComparison.Ordinal);
        Assert.Contains("Stress ranges: effective ", run.Output, StringComparison.Ordinal);
        Assert.Contains("stands for the traffic in N = A/Δσ³ as spanrater fatigue uses it", run.Output, StringComparison.Ordinal);
    }

    // Forty days but the first and the last: 38 blocks; in weeks there are too few.
    [Fact]
    public void Traffic_Years_ExtrapolatesWhereTheRecordIsLongEnough()
    {
        string records = Records(RecordedTrucks.Record(2, 40, 6));
        Run run = Run.Of("traffic", bridge.Folder, "--records", records, "--years", "75");
        Assert.Contains("The largest of each of 38 whole days, fitted by a Gumbel distribution (maximum likelihood), and what one day in 27,375 exceeds: once in 75 years on average. Interval: 95%", run.Output, StringComparison.Ordinal);
        Assert.Contains("684.4 times as long as the record", run.Output, StringComparison.Ordinal);

        Run shorter = Run.Of("traffic", bridge.Folder, "--records", Records(RecordedTrucks.Record(2, 31, 6)), "--years", "75");
        Assert.Contains("Not extrapolated: the record has 29 days with trucks between its first and its last, which may be cut short; at least 30 are asked for.", shorter.Output, StringComparison.Ordinal);
    }

    // Thirty whole weeks from a Monday on need 30 · 7 days, and one before and one behind: the record starts on a Monday, so that its first week falls away.
    [Fact]
    public void Traffic_YearsOfALongRecord_FitsWeeks()
    {
        Run run = Run.Of("traffic", bridge.Folder, "--records", Records(RecordedTrucks.Record(3, (31 * 7) + 1, 2)), "--years", "10");
        Assert.Contains("The largest of each of 30 whole weeks", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Traffic_SiteFactor_NamesItsSourceAndThatNoRatingTakesIt()
    {
        string records = Records(RecordedTrucks.Record(1, 3, 10));
        Run given = Run.Of("traffic", bridge.Folder, "--records", records);
        Assert.Contains("Trucks a day: 80 (adtt).", given.Output, StringComparison.Ordinal);
        Assert.Contains("From memory of AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.4.4.2.3b", given.Output, StringComparison.Ordinal);
        Assert.Contains("at least 1.80 (from memory, check against the manual): 1.80.", given.Output, StringComparison.Ordinal);
        Assert.Contains("at least 1.30 (from memory, check against the manual): 1.30.", given.Output, StringComparison.Ordinal);
        Assert.Contains("No rating takes it, neither here nor in rate: an engineer confirms it first.", given.Output, StringComparison.Ordinal);

        bridge.Replace("bridge.toml", "adtt = 80\n", "");
        Assert.Contains("No live-load factor of the site: it needs the trucks a day (adtt in bridge.toml [rating]), or a record of a week at least.", Run.Of("traffic", bridge.Folder, "--records", records).Output, StringComparison.Ordinal);
        Assert.Contains("the mean of the record", Run.Of("traffic", bridge.Folder, "--records", Records(RecordedTrucks.Record(1, 8, 10))).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Traffic_RodsThatDecide_AreNamedAndNotComputed()
    {
        Run run = Run.Of("traffic", Repository.Sample("hollis-fork"), "--records", Records(Kips + "2026-05-04T10:00:00,16 17 17,15 4,1\n"));
        Assert.Contains(": not available: which rods act changes with the load", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Traffic_BarThatWouldBePressed_IsToldFirst()
    {
        Run run = Run.Of("traffic", Repository.Sample("wrenfield-ferry"), "--records", Records(Kips + "2026-05-04T10:01:00,20 59 59 59,12 4 4,1\n"));
        Assert.Contains("only pulls, and in 1 of the crossings dead load and truck together would press it, with nothing to take over from it", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("1")]
    [InlineData("2")]
    [InlineData("7")]
    public void Traffic_HoweverManyCount_SaysTheSameBytes(string workers)
    {
        TrafficPlan plan = RecordedTrucks.Plan(bridge.Folder);
        string record = RecordedTrucks.Record(5, 45, 12) + "rubbish\n2026-01-01T00:00:00,10 20,12,a,b\n2026-03-09T00:00:00,10 90,12,a,b\n";
        byte[] Bytes(int by) => ResultFormats.Json(TrafficPage.Of(RecordedTrucks.Counted(plan, record, by, blockSize: 1000), 50, null, true, DisplayUnits.Us));
        Assert.Equal(Bytes(1), Bytes(int.Parse(workers, System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void Traffic_Interrupted_EndsWithItsStatusAndWritesNothing()
    {
        string records = Records(RecordedTrucks.Record(1, 3, 10)), target = Path.Combine(place, "page.txt");
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        int status = CommandLineProgram.Run(["traffic", bridge.Folder, "--records", records, "--out", target], new Surroundings(output, error, null, false) { Stop = stop.Token });
        Assert.Equal((130, 0L), (status, output.Length));
        Assert.Equal("spanrater: interrupted; no file is left half-written.\n", error.ToString());
        Assert.Equal([Path.GetFileName(records)], Directory.EnumerateFileSystemEntries(place).Select(Path.GetFileName));
    }

    [Fact]
    public void Traffic_OnATerminal_ShowsNoProgressOverAPipedMessage()
    {
        Run run = Run.Of("traffic", bridge.Folder, "--records", Records(RecordedTrucks.Record(1, 3, 10)));
        Assert.DoesNotContain("\r", run.Error, StringComparison.Ordinal);
        Assert.EndsWith(" a second.\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Traffic_CommandLineThatIsWrong_IsRefusedWithTheMend()
    {
        string records = Records(Kips + "2026-05-04T10:00:00,20,,south\n"), empty = Path.Combine(place, "empty.csv"), wrong = Path.Combine(place, "wrong.csv");
        File.WriteAllText(empty, "");
        File.WriteAllText(wrong, "time,weights [kip],spacings [ft]\n2026-05-04T10:00:00,20,\n");
        (string[] Args, string Says)[] cases =
        [
            (["--record", records], "did you mean --records?"),
            ([], "--records"),
            (["--records", place], "is a folder, not a file: name the file of records in it."),
            (["--records", empty], "empty.csv: is empty."),
            (["--records", wrong], "wrong.csv:1:1: column \"loads\" is missing: add a column headed loads [kip]."),
            (["--records", Path.Combine(place, "none.csv")], "none.csv: cannot be read (it is not there): check that it is there and that you may read it."),
            (["--records", records, "--years", "0"], "--years 0: must be a number from 1 to 1000, such as 75."),
            (["--records", records, "--member", "L1U2"], "--member \"L1U2\": members.csv has no such member."),
            (["--records", records, "--out", records], "is one of the files that are read: choose another name."),
        ];
        Assert.All(cases, c =>
        {
            Run run = Run.Of(["traffic", bridge.Folder, .. c.Args]);
            Assert.Equal((1, ""), (run.Status, run.Output));
            Assert.Contains(c.Says, run.Error, StringComparison.Ordinal);
        });
    }

    [Fact]
    public void Traffic_WithoutAMethod_AsksForIt()
    {
        bridge.Replace("bridge.toml", "method = \"LRFR\"\n", "");
        Run run = Run.Of("traffic", bridge.Folder, "--records", Records(Kips + "2026-05-04T10:00:00,20,,south\n"));
        Assert.Equal(1, run.Status);
        Assert.Contains("the rating method is missing", run.Error, StringComparison.Ordinal);
    }

    // Every row rejected: read and understood, and no answer.
    [Fact]
    public void Traffic_NoRowThatCanBeCounted_HasNoAnswer()
    {
        Run run = Run.Of("traffic", bridge.Folder, "--records", Records(Kips + "rubbish\n"));
        Assert.Equal(3, run.Status);
        Assert.Contains("No truck is counted. 1 of 1 rows is rejected", run.Output, StringComparison.Ordinal);
    }

    // By hand, as docs/traffic.md tells it: the crane of line 186 drives right, its last axle on L3, the ordinates read off the influence line of M2U3.
    [Fact]
    public void Sample_TruckOfLine186_BringsM2U3WhatTheHandFinds()
    {
        double Ordinate(double feet) => -0.5090 * (144 - feet) / (144 - 54);
        double byHand = -((20.2 * Ordinate(54)) + (18.1 * Ordinate(54 + 4.6)) + (13.3 * Ordinate(54 + 4.6 + 12.9)) + (13.6 * Ordinate(54 + 4.6 + 12.9 + 5.3))) * 32 / 44;
        Assert.Equal(21.56, byHand, 0.005);
        using JsonDocument json = JsonDocument.Parse(Run.Of("traffic", Repository.Sample("garrow-landing"), "--records", Path.Combine(Repository.Root, "samples/traffic/country-road.csv"), "--format", "json").Output);
        JsonElement diagonal = json.RootElement.GetProperty("effects").EnumerateArray().First(e => e.GetProperty("name").GetString() == "M2U3" && e.GetProperty("sense").GetString() == "compression");
        Assert.Equal(186, diagonal.GetProperty("record").GetProperty("line").GetInt32());

        // The ordinate is read with four digits, half a unit of the last in 5,090.
        Assert.Equal(byHand * 4.4482216152605, diagonal.GetProperty("largest").GetDouble(), byHand * 4.4482216152605 * 0.5 / 5090);
    }

    // samples/traffic/country-road.csv is what RecordedTrucks makes of its seed.
    [Fact]
    public void Sample_OfRecordedTrucks_IsWhatItsSeedMakes() =>
        Assert.Equal(RecordedTrucks.Record(19260302, days: 45, aDay: 14), File.ReadAllText(Path.Combine(Repository.Root, "samples/traffic/country-road.csv"), Encoding.UTF8));

    private string Records(string text)
    {
        string path = Path.Combine(place, "trucks.csv");
        File.WriteAllText(path, text);
        return path;
    }
}
