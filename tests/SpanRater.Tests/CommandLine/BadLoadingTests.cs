using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>Faults of a folder's own loadings, crowds and tracked vehicles as a user meets them: text, file, line and column.</summary>
public sealed class BadLoadingTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Check_ALoadingWithoutVehiclesAndLane_IsRefused()
    {
        Loading("");
        Refused("vehicles.toml:1:1: a loading names no vehicle and has no lane load: write vehicles = [\"…\"], a lane load, or both.");
    }

    [Fact]
    public void Check_AnUnknownVehicleInALoading_IsSuggested()
    {
        Loading("vehicles = [\"Tipe 3\"]");
        Refused("vehicles.toml:2:8: loading \"Ours\" names vehicle \"Tipe 3\", which no catalogue has. Did you mean \"Type 3\"?");
    }

    [Fact]
    public void Check_ALoadingOfACrowd_IsRefused()
    {
        Loading("vehicles = [\"Crowd 90 psf\"]");
        Refused("vehicles.toml:2:8: loading \"Ours\" names \"Crowd 90 psf\", which is no vehicle on axles: a loading is made of those.");
    }

    [Fact]
    public void Check_ConcentratedLoadsWithoutALane_AreEachNamed()
    {
        Loading("vehicles = [\"Type 3\"]\npoint_moment = \"18 kip\"\npoint_shear = \"26 kip\"");
        Refused(
            "vehicles.toml:5:16: point_moment goes with a lane load, and there is none: write lane = \"0.64 klf\", or leave point_moment out.",
            "vehicles.toml:6:15: point_shear goes with a lane load, and there is none: write lane = \"0.64 klf\", or leave point_shear out.");
    }

    [Fact]
    public void Check_AHeadwayWithoutARow_AsksForOne()
    {
        Loading("vehicles = [\"Type 3\", \"Type 3\"]\nheadway = \"30 ft\"");
        Refused("vehicles.toml:5:11: a headway is for vehicles that follow one another in one lane: write take = \"sum\" as well, or leave it out.");
    }

    // Two faults at once: the reversed range is not looked at before the word that gives it a meaning is there.
    [Fact]
    public void Check_AReversedHeadwayWithoutARow_AsksForOne()
    {
        Loading("vehicles = [\"Type 3\", \"Type 3\"]\nheadway = \"30 ft\"\nheadway_max = \"20 ft\"");
        Refused("vehicles.toml:5:11: a headway is for vehicles that follow one another in one lane: write take = \"sum\" as well, or leave it out.");
    }

    [Fact]
    public void Check_ARowWithoutHeadway_AsksForIt()
    {
        Loading("vehicles = [\"Type 3\", \"Type 3\"]\ntake = \"sum\"");
        Refused("vehicles.toml:1:1: vehicles that follow one another in one lane need the key \"headway\": from the last axle of one to the first of the next, such as headway = \"30 ft\".");
    }

    [Fact]
    public void Check_ALargestHeadwayBelowTheSmallest_SaysLowFirst()
    {
        Loading("vehicles = [\"Type 3\", \"Type 3\"]\ntake = \"sum\"\nheadway = \"30 ft\"\nheadway_max = \"20 ft\"");
        Refused("vehicles.toml:7:15: headway_max is the largest headway, and headway the smallest: low value first.");
    }

    // One fault is told once: nothing is said of the largest headway, or of what a headway is for, where another key is at fault.
    [Theory]
    [InlineData("take = \"sum\"\nheadway = \"30 kip\"\nheadway_max = \"40 ft\"", "vehicles.toml:6:11: headway = \"30 kip\": \"kip\" is a unit of a force; for a length, write ft or m.")]
    [InlineData("take = \"summ\"\nheadway = \"30 ft\"", "vehicles.toml:5:8: take = \"summ\": write \"worst\" or \"sum\".")]
    public void Check_AnUnreadableRow_IsToldOnce(string keys, string line)
    {
        Loading("vehicles = [\"Type 3\", \"Type 3\"]\n" + keys);
        Refused(line);
    }

    [Fact]
    public void Check_TooManyVaryingGaps_AreCountedWithTheHeadways()
    {
        Loading("vehicles = [\"HS20\", \"HS20\", \"HS20\"]\ntake = \"sum\"\nheadway = \"30 ft\"\nheadway_max = \"40 ft\"");
        Refused("vehicles.toml:2:8: loading \"Ours\" has more than 3 gaps that vary, headways among them: fix some of them.");
    }

    [Theory]
    [InlineData("lane = \"0.64 kip\"", "vehicles.toml:4:8: lane = \"0.64 kip\": \"kip\" is a unit of a force; for a load per length, write klf or kN/m.")]
    [InlineData("lane = 0.64", "vehicles.toml:4:8: lane = 0.64 has no unit: write lane = \"0.64 klf\" or lane = \"0.64 kN/m\".")]
    [InlineData("lane = \"0 klf\"", "vehicles.toml:4:8: lane must be above zero.")]
    [InlineData("lane = true", "vehicles.toml:4:8: lane is a quantity in quotes: lane = \"16 klf\".")]
    public void Check_ALaneThatIsNoLoadPerLength_IsRefused(string lane, string line)
    {
        Loading(lane);
        Refused(line);
    }

    [Theory]
    [InlineData("", "vehicles.toml:1:1: a crowd has a load per area: write pressure = \"90 psf\", or rule = ")]
    [InlineData("pressure = \"90 klf\"", "vehicles.toml:3:12: pressure = \"90 klf\": \"klf\" is a unit of a load per length; for a load per area, write psf or kN/m2.")]
    [InlineData("rule = \"thick\"", "vehicles.toml:3:8: rule = \"thick\" is no rule that is known.")]
    [InlineData("rule = \"thick\"\npressure = \"90 psf\"", "; not both.\n")]
    public void Check_ACrowdThatHasNotOneLoad_IsRefused(string keys, string said)
    {
        Toml("[[crowd]]\nname = \"Ours\"\n" + keys + "\n");

        Run run = Run.Of("check", bridge.Folder);

        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Output);
        Assert.Equal(1, run.Status);
    }

    [Fact]
    public void Check_AnUnknownTable_IsSuggested()
    {
        Toml("[[loadings]]\nname = \"Ours\"\n");
        Refused("vehicles.toml:1:1: unknown table [loadings]. Did you mean \"loading\"? A catalogue of loadings holds [[loading]], [[crowd]], [[tracked]] tables.");
    }

    [Fact]
    public void Check_AnUnknownKey_IsSuggested()
    {
        Loading("vehicle = [\"Type 3\"]\nlane = \"0.2 klf\"");
        Refused("vehicles.toml:4:1: unknown key \"vehicle\". Did you mean \"vehicles\"? The keys in [loading] are: name, class, source, vehicles, take, times, point_moment, point_shear, lane_impact, lane, headway, headway_max, deck_over, weight, interior_supports.");
    }

    [Fact]
    public void Check_ATrackedVehicleWithoutWeight_AsksForIt()
    {
        Toml("[[tracked]]\nname = \"Ours\"\nclass = \"farm\"\nlength = \"9 ft\"\n");
        Refused("vehicles.toml:1:1: a tracked vehicle needs the key \"weight\".");
    }

    [Fact]
    public void Check_ANameThatIsTaken_NamesBoth()
    {
        Toml("[[crowd]]\nname = \"Type 3\"\npressure = \"90 psf\"\n");
        Refused("vehicles.toml:2:8: the name \"Type 3\" is taken by vehicles/us-legal.csv:3:1 (built in): vehicles and loadings share one name space, so give this one another, such as \"Type 3, ours\".");
    }

    [Fact]
    public void Check_AnUnknownSurface_IsRefusedWithTheThreeWords()
    {
        bridge.Replace("bridge.toml", "adtt = 80", "adtt = 80\nsurface = \"smoth\"");
        Refused("bridge.toml:11:11: surface = \"smoth\": write \"smooth\", \"minor deviations\" or \"rough\", approaches and joints included.");
    }

    [Fact]
    public void Check_CrawlSpeedTogetherWithImpact_KeepsOne()
    {
        bridge.Replace("bridge.toml", "adtt = 80", "adtt = 80\nimpact = 0.2\ncrawl_speed = \"a flagman\"");
        Refused("bridge.toml:12:15: crawl_speed leaves impact out and impact gives it: keep one of the two.");
    }

    // A bare word would switch impact off, whatever its writer meant by it.
    [Theory]
    [InlineData("no")]
    [InlineData("None")]
    [InlineData("yes")]
    [InlineData("false")]
    public void Check_CrawlSpeedThatSaysNoReason_IsRefused(string word)
    {
        bridge.Replace("bridge.toml", "adtt = 80", $"adtt = 80\ncrawl_speed = \"{word}\"");
        Refused($"bridge.toml:11:15: crawl_speed = \"{word}\": the key leaves impact out, and says how vehicles are held to crawl speed, such as \"gate and guard, one vehicle at a time\". Where they are not, leave the key out.");
    }

    [Theory]
    [InlineData("rate", "Governing: ")]
    [InlineData("post", "needs a posting")]
    public void Headline_AtCrawlSpeed_SaysThatItHoldsThereOnly(string command, string headline)
    {
        bridge.Replace("bridge.toml", "adtt = 80", "adtt = 80\ncrawl_speed = \"gate and guard\"");
        string line = Run.Of(command, bridge.Folder).Output.Split('\n').First(l => l.Contains(headline, StringComparison.Ordinal));
        Assert.Contains(" This holds at crawl speed only, without impact.", line, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_AShareBelowAnEvenPart_IsRefused()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"12 ft\"\ntruss_share = 0.4\ntruss_share_reason = \"a guess\"");
        Refused("bridge.toml:7:15: truss_share = 0.4 is less than an even part of one vehicle over 2 trusses, 0.5: one truss always carries that much. Write the share of the truss that carries most.");
    }

    [Theory]
    [InlineData("wheel_to_kerb = \"1 ft\"", "- wheel_to_kerb 1.00 ft is given in bridge.toml, in place of 2.00 ft")]
    [InlineData("wheel_to_kerb = \"2 ft\"", null)]
    public void Rate_AnotherDistanceToTheKerb_IsStamped(string key, string? stamp)
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", $"roadway = \"12 ft\"\n{key}");
        string output = Run.Of("rate", bridge.Folder).Output;
        Assert.Equal(stamp is not null, output.Contains(stamp ?? "wheel_to_kerb", StringComparison.Ordinal));
    }

    // 24 ft of deck: the allowance by surface is for longer ones.
    [Theory]
    [InlineData("smooth", true)]
    [InlineData("rough", false)]
    public void Rate_ASurfaceThatChangesNothing_IsStamped(string surface, bool stamped)
    {
        bridge.Replace("bridge.toml", "adtt = 80", $"adtt = 80\nsurface = \"{surface}\"");
        Assert.Equal(stamped, Run.Of("rate", bridge.Folder).Output.Contains($"the riding surface given in bridge.toml ({surface}) changes no impact here", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("rate")]
    [InlineData("post")]
    public void Page_OfAnInputThatIsWarnedOf_TellsTheWarning(string command)
    {
        bridge.Replace("loads.csv", "DC,L2,-1", "DC,L2,0.2");
        const string Warning = "loads.csv:4:7: warning: case DC lifts joint \"L2\" by 0.2: a weight is negative under up. Check the sign.";
        string text = Run.Of(command, bridge.Folder).Output;
        Assert.Contains("Warnings of the input, which may change the numbers here:", text, StringComparison.Ordinal);
        Assert.Contains(Warning, text, StringComparison.Ordinal);
        Assert.Contains($"# Warning of the input: {Warning}", Run.Of(command, bridge.Folder, "--format", "csv").Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of(command, bridge.Folder, "--format", "json").Output);
        Assert.Equal(Warning, Assert.Single(json.RootElement.GetProperty("warnings").EnumerateArray().ToArray()).GetString());
    }

    [Fact]
    public void Check_AnUnknownMaterial_IsSuggested()
    {
        bridge.Replace("members.csv", "role,", "role,material,").Replace("members.csv", "hanger,", "hanger,timbre,")
            .Replace("members.csv", "end post,", "end post,,").Replace("members.csv", "bottom chord,", "bottom chord,,");
        Refused("members.csv:6:19: material \"timbre\" is not known. Did you mean \"timber\"? Write a name of materials.toml; without a strength steel, wrought iron or timber; or leave it blank.");
    }

    // 11 ft of gauge and 1 ft to each kerb need 13 ft of a roadway of 12.
    [Fact]
    public void Rate_ATooWideVehicle_IsNotRatedAndSaysWhy()
    {
        bridge.Replace("bridge.toml", "Type 3", "Wide");
        Toml("[[tracked]]\nname = \"Wide\"\nclass = \"farm\"\nweight = \"20 kip\"\nlength = \"9 ft\"\ngauge = \"11 ft\"\n");

        Run run = Run.Of("rate", bridge.Folder);

        Assert.Contains("  - Wide: too wide for the roadway: it needs 13.00 ft and there is 12.00 ft\n", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_APostingWeightFarFromItsTrains_IsRefused()
    {
        Loading("vehicles = [\"Type 3-3\"]\ntimes = 0.75\nweight = \"900 US ton\"");
        Refused("vehicles.toml:6:10: weight = 900 US ton (8,006.799 kN) is 30 times what its train weighs, 30 US ton (266.893 kN), and a posting is reckoned from it: write a weight from a quarter to four times that, or leave weight out, and it is not posted.");
        Loading("vehicles = [\"Type 3\", \"Type 3-3\"]\nweight = \"9 US ton\"");
        Refused("vehicles.toml:5:10: weight = 9 US ton (80.068 kN) is 0.23 times what its heaviest train weighs, 40 US ton (355.858 kN), and a posting is reckoned from it: write a weight from a quarter to four times that, or leave weight out, and it is not posted.");
        Loading("lane = \"0.2 klf\"\nweight = \"900 US ton\"");
        Refused("vehicles.toml:5:10: weight = 900 US ton (8,006.799 kN) is no weight of a legal load, and a posting is reckoned from it: write one from 1 to 100 US ton, or leave weight out, and it is not posted.");
    }

    [Theory]
    [InlineData("vehicles = [\"Type 3-3\"]\ntimes = 0.75\nlane = \"0.2 klf\"\nweight = \"40 US ton\"")]
    [InlineData("vehicles = [\"Type 3-3\"]\nweight = \"10 US ton\"")]
    [InlineData("lane = \"0.05 klf\"\nweight = \"100 US ton\"")]
    public void Check_APostingWeightNearItsTrains_IsTaken(string keys)
    {
        Loading(keys);
        Assert.Equal((0, ""), (Run.Of("check", bridge.Folder).Status, SecondLook()));
    }

    [Fact]
    public void Check_TimesWithoutVehicles_IsRefused()
    {
        Loading("lane = \"0.64 klf\"\ntimes = 0.75");
        Refused("vehicles.toml:5:9: times goes with vehicles, and there are none: write vehicles = [\"…\"], or leave times out.");
    }

    [Theory]
    [InlineData("times = 0.4", "vehicles.toml:5:9: warning: times = 0.4: every axle load of the vehicles is multiplied by it, and it is from 0.5 to 2 where a standard asks for it. Check it.")]
    [InlineData("times = 7.5", "vehicles.toml:5:9: warning: times = 7.5: every axle load of the vehicles is multiplied by it, and it is from 0.5 to 2 where a standard asks for it. Check it.")]
    [InlineData("lane = \"6.4 klf\"", "vehicles.toml:5:8: warning: the lane load is 6.4 klf (93.401 kN/m), and lane loads are from 0.05 to 3 klf (0.73 to 43.8 kN/m): check lane and its unit.")]
    [InlineData("lane = \"0.64 plf\"", "vehicles.toml:5:8: warning: the lane load is 0.001 klf (0.009 kN/m), and lane loads are from 0.05 to 3 klf (0.73 to 43.8 kN/m): check lane and its unit.")]
    public void Check_AnUnlikelyLoading_IsWorthASecondLook(string key, string line)
    {
        Loading("vehicles = [\"Type 3\"]\n" + key);
        Assert.Equal(line, SecondLook());
    }

    [Theory]
    [InlineData("pressure = \"8 psf\"", "vehicles.toml:3:12: warning: \"Ours\" is a crowd of 8 psf (0.383 kPa), and people or animals are from 20 to 200 psf (1 to 9.6 kPa): check pressure and its unit.")]
    [InlineData("pressure = \"900 psf\"", "vehicles.toml:3:12: warning: \"Ours\" is a crowd of 900 psf (43.092 kPa), and people or animals are from 20 to 200 psf (1 to 9.6 kPa): check pressure and its unit.")]
    [InlineData("pressure = \"90 psf\"\nwidth = \"4 in\"", "vehicles.toml:4:9: warning: \"Ours\" is a crowd 0.333 ft (0.102 m) wide, and one along a kerb is from 1 to 12 ft (0.3 to 3.7 m): check width and its unit; where it fills the roadway leave width out.")]
    [InlineData("pressure = \"90 psf\"\nwidth = \"4 m\"", "vehicles.toml:4:9: warning: \"Ours\" is a crowd 13.123 ft (4 m) wide, and one along a kerb is from 1 to 12 ft (0.3 to 3.7 m): check width and its unit; where it fills the roadway leave width out.")]
    public void Check_AnUnlikelyCrowd_IsWorthASecondLook(string keys, string line)
    {
        Toml("[[crowd]]\nname = \"Ours\"\n" + keys + "\n");
        Assert.Equal(line, SecondLook());
    }

    [Theory]
    [InlineData("weight = \"28 lb\"\nlength = \"9 ft\"\ngauge = \"6.5 ft\"", "vehicles.toml:4:10: warning: \"Ours\" weighs 0.028 kip (0.125 kN) in all, less than any vehicle does: check weight and its unit.")]
    [InlineData("weight = \"28 kip\"\nlength = \"90 ft\"\ngauge = \"6.5 ft\"", "vehicles.toml:5:10: warning: \"Ours\" has tracks 90 ft (27.432 m) long, longer than 30 ft (9.1 m): length is that of a track on the ground. Check it and its unit.")]
    [InlineData("weight = \"28 kip\"\nlength = \"9 ft\"\ngauge = \"6.5 m\"", "vehicles.toml:6:9: warning: \"Ours\" has its tracks 21.325 ft (6.5 m) apart, and a gauge is from 1 to 12 ft (0.3 to 3.7 m): check gauge and its unit.")]
    public void Check_AnUnlikelyTrackedVehicle_IsWorthASecondLook(string keys, string line)
    {
        Toml("[[tracked]]\nname = \"Ours\"\nclass = \"farm\"\n" + keys + "\n");
        Assert.Equal(line, SecondLook());
    }

    [Theory]
    [InlineData("Ours,farm,0.4,,6,\nOurs,,0.5,9,,\n", "vehicles.csv:2:11: warning: \"Ours\" weighs 0.9 kip (4.003 kN) in all, less than any vehicle does: check its axle loads, and the unit in the heading of load.")]
    [InlineData("Ours,farm,4,,0.5,\n", "vehicles.csv:2:14: warning: \"Ours\" has its wheel lines 0.5 ft (0.152 m) apart, and a gauge is from 1 to 12 ft (0.3 to 3.7 m): check gauge and its unit.")]
    [InlineData("Ours,farm,4,,72,\n", "vehicles.csv:2:14: warning: \"Ours\" has its wheel lines 72 ft (21.946 m) apart, and a gauge is from 1 to 12 ft (0.3 to 3.7 m): check gauge and its unit.")]
    public void Check_AnUnlikelyVehicle_IsWorthASecondLook(string rows, string line)
    {
        bridge.Write("vehicles.csv", "vehicle,class,load [kip],spacing [ft],gauge [ft],source\n" + rows);
        Assert.Equal(line, SecondLook());
    }

    [Fact]
    public void Vehicles_AnUnlikelyVehicleOfACatalogue_IsToldBesideTheList()
    {
        bridge.Write("vehicles.csv", "vehicle,class,load [kip],spacing [ft],gauge [ft],source\nOurs,farm,0.4,,6,\n");

        Run run = Run.Of("vehicles", "Ours", "--catalogue", bridge.PathOf("vehicles.csv"));

        Assert.Equal(0, run.Status);
        Assert.Contains(":2:11: warning: \"Ours\" weighs 0.4 kip", run.Error, StringComparison.Ordinal);
        Assert.Contains("Ours (farm)", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void VehiclesAndPost_ALoadingPostedByAWeight_PrintWhatItWeighsBeside()
    {
        Assert.Contains("\nPosted by 40.0 US ton, its train weighs 30.0 US ton: a posting applies the rating factor to the former.\n", Run.Of("vehicles", "Lane-type legal load").Output, StringComparison.Ordinal);
        Loading("vehicles = [\"Type 3\", \"Type 3-3\"]\nweight = \"36 US ton\"");
        bridge.Replace("bridge.toml", "[\"Type 3\"]", "[\"Type 3\", \"Ours\"]");
        Assert.Contains("\nOurs: posted by 36.0 US ton, its heaviest train weighs 40.0 US ton.\n", Run.Of("post", bridge.Folder).Output, StringComparison.Ordinal);
        Assert.Contains("# Ours: posted by 36.0 US ton, its heaviest train weighs 40.0 US ton\n", Run.Of("post", bridge.Folder, "--format", "csv").Output, StringComparison.Ordinal);
        Assert.Contains("\"trainWeight\": 355.8", Run.Of("post", bridge.Folder, "--format", "json").Output, StringComparison.Ordinal);
    }

    private string SecondLook() =>
        string.Join('\n', Run.Of("check", bridge.Folder).Output.Split('\n').Where(l => l.Contains(": warning: ", StringComparison.Ordinal)).Select(l => l.Trim(' ', '-')));

    private void Loading(string keys) => Toml("[[loading]]\nname = \"Ours\"\nclass = \"legal\"\n" + keys + "\n");

    private void Toml(string text) => bridge.Write("vehicles.toml", text);

    private void Refused(params string[] lines)
    {
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(string.Join('\n', lines) + "\n", run.Error);
        Assert.Equal("", run.Output);
        Assert.Equal(1, run.Status);
    }
}
