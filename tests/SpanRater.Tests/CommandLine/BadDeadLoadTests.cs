namespace SpanRater.Tests.CommandLine;

/// <summary>Faults of dead.csv, of members' weights and of [dead] as a user meets them: text, file, line and column.</summary>
public sealed class BadDeadLoadTests : IDisposable
{
    private const string Header = "item,case,material,thickness [in],width [ft],unit weight [pcf],area load [psf],line load [plf],load [kip],count,centre [ft],from [ft],to [ft],joints\n";

    private readonly BridgeOnDisk bridge = new BridgeOnDisk().Write("loads.csv", "case,joint,up [kip]\nsnow,L1,-1\n");

    public void Dispose() => bridge.Dispose();

    [Theory]
    [InlineData("deck,DC,timber,,,,,,,,,,,", "2:1: item \"deck\" has nothing that gives weight: write thickness, width and unit weight or material; or area load and width; or line load; or load.")]
    [InlineData("deck,DC,timber,3,12,,20,,,,,,,", "2:22: item \"deck\" has thickness and area load: one of them gives the weight. Clear the others, or make a row of each.")]
    [InlineData("deck,DC,timber,3,,,,,,,,,,", "2:1: item \"deck\" has no width: write how wide it is across the deck.")]
    [InlineData("deck,DC,,3,12,,,,,,,,,", "2:1: item \"deck\" has no unit weight: write it, or a material whose weight is known: steel, concrete, timber, rolled gravel, macadam, compacted earth, loose earth.")]
    [InlineData("deck,DC,timbre,3,12,,,,,,,,,", "2:9: item \"deck\": the weight of \"timbre\" is not known. Did you mean \"timber\"? Write its unit weight, or one of: steel, concrete, timber, rolled gravel, macadam, compacted earth, loose earth.")]
    [InlineData("deck,DC,timber,36,12,,,,,,,,,", "2:16: item \"deck\" would be 3.00 ft (0.91 m) thick, which no layer of a deck is: is 36 in inches or millimetres? Then head the column thickness [in] or thickness [mm].")]
    [InlineData("deck,DC,,3,12,955,,,,,,,,", "2:15: item \"deck\" would weigh 955 pcf (150.02 kN/m3), more than steel: check the number and the unit in the heading.")]
    [InlineData("deck,DC,,,12,,1500,,,,,,,", "2:15: item \"deck\": area load 1500 is 1,500 psf (71.8 kPa), more than any deck: check the number and the unit in the heading.")]
    [InlineData("deck,DC,timber,-3,12,,,,,,,,,", "2:16: item \"deck\": thickness = -3: it must be above zero.")]
    [InlineData("rail,DC,,,,,,-20,,,,,,", "2:14: item \"rail\": line load = -20: a weight is written without a sign.")]
    [InlineData("rail,DC,,,12,,,20,,,,,,", "2:11: item \"rail\" has line load, and width has no meaning beside it: clear it.")]
    [InlineData("rail,DC,,,,,,20,,1.5,,,,", "2:18: item \"rail\": count = 1.5: write how many there are, a whole number from 1.")]
    [InlineData("rail,dw,,,,,,20,,,,,,", "2:6: case \"dw\": dead load is DC (components) or DW (wearing surface and utilities). Did you mean \"DW\"?")]
    [InlineData("rail,DC,,,,,,20,,,15,,,", "2:19: item \"rail\": centre 15 is farther from the middle than the trusses are from each other: check centre, its unit and truss_spacing.")]
    [InlineData("rail,DC,,,,,,20,,,,2,30,", "2:22: item \"rail\": to 30 is beyond the joints that carry it, which run from 0 to 7.315 m (0 to 24 ft).")]
    [InlineData("rail,DC,,,,,,20,,,,L2,L1,", "2:23: item \"rail\" ends where it starts, or before: from is the left end, to the right one.")]
    [InlineData("rail,DC,,,,,,20,,,,L9,,", "2:20: item \"rail\": from \"L9\" is no joint of joints.csv and no station. Did you mean \"L2\"?")]
    [InlineData("beam,DC,,,,,,,2,,,,,L1 L9", "2:21: item \"beam\" names joint \"L9\", which joints.csv does not have. Did you mean \"L2\"? Joints are parted by spaces.")]
    [InlineData("beam,DC,,,,,,,2,,,,,L1 L1", "2:21: item \"beam\" names joint \"L1\" twice: name it once, and write count where there are several.")]
    [InlineData("beam,DC,,,,,,,2,,,L0,,L1", "2:19: item \"beam\" is a load at each joint, and from has no meaning beside it: name the joints under joints.")]
    [InlineData("pipe,DW,,,,,,20,,,,,,L1 U1", "2:22: item \"pipe\" spans from joint to joint, and two of those named stand one above the other: name one of them.")]
    [InlineData("pipe,DW,,,,,,20,,,,,,U1", "2:1: item \"pipe\" has no two joints to rest on: it spans from joint to joint; name two or more under joints.")]
    public void Check_ARowThatCannotBeUsed_SaysWhereAndTheMend(string row, string expected)
    {
        bridge.Write("dead.csv", Header + row + "\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Contains("dead.csv:" + expected, run.Error.Split('\n'));
        Assert.Equal((1, ""), (run.Status, run.Output));
    }

    [Theory]
    [InlineData("deck,DC,timber,14,12,,,,,,,,,", "2:16: warning: item \"deck\" is 1.17 ft (0.36 m) thick, much for a layer of a deck: check the number and the unit in the heading.")]
    [InlineData("deck,DC,timber,3,16,,,,,,,,,", "2:18: warning: item \"deck\" is wider than the trusses are apart. Right for a deck that overhangs them; else check width and truss_spacing.")]
    [InlineData("deck,DC,,3,12,7.85,,,,,,,,", "2:15: warning: item \"deck\" weighs 7.9 pcf (1.23 kN/m3), less than any timber: check the number and the unit in the heading.")]
    [InlineData("main,DC,,,,,,20,,,8,,,\ndeck,DC,timber,3,12,,,,,,,,,", "2:19: warning: item \"main\" hangs outside a truss: by the lever rule it lifts the other one. Right for a bracket that goes on from the floorbeam; else check centre and truss_spacing.")]
    [InlineData("pipe,DW,,,,,,20,,,,,,", "2:1: warning: case DW has no layer: is the wearing surface missing? Where the deck bears none, write a row with area load 0.")]
    [InlineData("rail,DC,,,,,,20,,,,,,\nrail,DC,,,,,,20,,,,,,", "3:1: warning: item \"rail\" of DC is there a second time: both count. If one row is a slip, remove it.")]
    public void Check_ARowThatIsOdd_IsWorthASecondLook(string row, string expected)
    {
        bridge.Write("dead.csv", Header + row + "\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Contains("- dead.csv:" + expected, run.Output.Split('\n').Select(l => l.Trim()));
        Assert.Equal((0, ""), (run.Status, run.Error));
    }

    [Fact]
    public void Check_NoItems_IsWorthASecondLook()
    {
        bridge.Write("dead.csv", Header);
        Assert.Contains("dead.csv: warning: holds no item: there is no dead load in it. Write a row an item, or remove the file.", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_UnitsOfTheColumns_AreThoseOfATakeOff()
    {
        bridge.Write("dead.csv", "item,case,thickness,width [ft],area load [plf]\ndeck,DC,3,12,\n");
        Refused(
            "dead.csv:1:11: column \"thickness\" has no unit: write thickness [in] or thickness [mm].",
            "dead.csv:1:32: column \"area load\": \"plf\" is a unit of a load per length; for a stress, write psf or kPa.",
            "dead.csv:2:1: item \"deck\" has no unit weight: write it, or a material whose weight is known: steel, concrete, timber, rolled gravel, macadam, compacted earth, loose earth.");
    }

    [Fact]
    public void Check_AStationThatIsTheNameOfAJointToo_IsAskedWhich()
    {
        bridge.Write("joints.csv", "joint,x [ft],y [ft],support,deck\n1,0,0,pin,yes\n2,12,0,,yes\n3,24,0,roller,yes\n4,12,8,,\n")
            .Write("members.csv", "member,from,to\na,1,2\nb,2,3\nc,1,4\nd,4,3\ne,2,4\n").Write("loads.csv", "case,joint,up [kip]\nsnow,2,-1\n")
            .Write("dead.csv", "item,case,line load [plf],from [ft]\npipe,DC,20,2\n");
        Refused("dead.csv:2:12: item \"pipe\": from 2 is the name of a joint and could be a station as well: take the unit out of the heading, and name joints; or write the station with its unit in the cell, as 16 ft.");
        bridge.Write("dead.csv", "item,case,line load [plf],from\npipe,DC,20,2\n");
        Assert.Contains("pipe  DC    20 plf, from x = 12 ft to the last joint", Run.Of("dead", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_OffCentreWhereTheLeverRuleDoesNotReach_IsRefused()
    {
        bridge.Write("dead.csv", Header + "rail,DC,,,,,,20,,,3,,,\n").Replace("bridge.toml", "truss_spacing = \"14 ft\"", "trusses = 3");
        Refused("dead.csv:2:19: item \"rail\" is off centre, and the lever rule is for two trusses, not 3: clear centre, and the trusses share it equally.");
        bridge.Replace("bridge.toml", "trusses = 3", "trusses = 2");
        Refused("dead.csv:2:19: item \"rail\" is off centre, and truss_spacing is missing in bridge.toml [deck]: the lever rule needs it.");
    }

    [Fact]
    public void Check_WeightsWithoutAllowance_AsksForIt()
    {
        Weigh("30", "30", "25", "25", "20");
        Refused("bridge.toml: members.csv:2:21 gives the weight of a member, and the allowance for rivets, lacing and gussets is missing: write allowance = 0.10, or what it is, under [dead]; 0 where the weights hold them.");
    }

    [Fact]
    public void Check_AMemberWithoutWeight_IsNamed()
    {
        Weigh("30", "30", "25", "", "-20").Append("bridge.toml", "[dead]\nallowance = 0.1\n");
        Refused(
            "members.csv:5:21: member \"U1L2\" has no weight, and others have: write its weight per length, 0 where it is counted elsewhere.",
            "members.csv:6:21: member \"L1U1\" weighs -20: a weight is written without a sign, 0 where it is counted elsewhere.");
    }

    [Fact]
    public void Check_AWeightThatCannotBeTrue_IsRefused()
    {
        Weigh("30000", "30", "25", "25", "20").Append("bridge.toml", "[dead]\nallowance = 10\n");
        Refused(
            "members.csv:2:21: member \"L0L1\" weighs 30,000 plf (437.8 kN/m), which no member does: check the number and the unit in the heading.",
            "bridge.toml:13:13: allowance = 10: write the part added for rivets, lacing and gussets as a fraction, such as 0.10 for 10%.");
    }

    [Fact]
    public void Check_LighterThanItsOwnSteel_IsWorthASecondLook()
    {
        bridge.Write("members.csv", "member,from,to,area [in2],weight [plf]\nL0L1,L0,L1,10,20\nL1L2,L1,L2,10,34\nL0U1,L0,U1,,30\nU1L2,U1,L2,,30\nL1U1,L1,U1,,9\n").Append("bridge.toml", "[dead]\nallowance = 0.1\n");
        string[] lines = [.. Run.Of("check", bridge.Folder).Output.Split('\n').Where(l => l.Contains("warning", StringComparison.Ordinal))];
        Assert.Equal("members.csv:2:15: warning: member \"L0L1\" weighs 20, less than its area of steel does (a blank modulus is steel): check weight, area and their units. Steel lost to rust is no relief.", Assert.Single(lines).Trim(' ', '-'));
    }

    [Fact]
    public void Check_AllowanceWithoutWeights_IsWorthASecondLook()
    {
        bridge.Append("bridge.toml", "[dead]\nallowance = 0.1\n");
        Assert.Contains("bridge.toml:12:1: warning: allowance is added to the weights of members, and members.csv gives none: it has no effect.", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_TakeOffAndLoadsOfOneCase_AsksWhatLoadsDo()
    {
        bridge.Write("loads.csv", BridgeOnDisk.Loads).Write("dead.csv", Header + "deck,DC,timber,3,12,,,,,,,,,\n");
        Refused("bridge.toml: dead.csv:2:1 and loads.csv:2:1 both give dead load of case DC: write loads = \"add\" under [dead] where loads.csv adds to the take-off, or loads = \"replace\" where it stands in its place.");
        bridge.Append("bridge.toml", "[dead]\nloads = \"repalce\"\n");
        Assert.Contains("bridge.toml:13:9: loads = \"repalce\": write \"add\", where loads.csv adds to the take-off, or \"replace\", where it stands in its place. Did you mean \"replace\"?", Run.Of("check", bridge.Folder).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_ATrussLiftedAsAWhole_IsRefused()
    {
        bridge.Write("dead.csv", Header + "main,DC,,,,,,200,,,12,,,\n");
        Assert.Contains("dead.csv: the dead load of case DC lifts a truss as a whole: check the column centre, and truss_spacing in bridge.toml.", Run.Of("check", bridge.Folder).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_TakeOffWithoutComponents_AsksForThem()
    {
        bridge.Write("dead.csv", Header + "asphalt,DW,,2,12,144,,,,,,,,\n");
        Assert.Equal("loads.csv: has no case DC, and the take-off no item of it, the dead load of the components on one truss: a bridge is not rated without it.\n", Run.Of("rate", bridge.Folder).Error);
    }

    // The errors of all files first, then the warnings, each by its line, whatever was looked at first.
    [Fact]
    public void Check_ErrorsAndWarningsTogether_StandApart()
    {
        bridge.Write("dead.csv", Header + "asphalt,DW,,2,12,144,,,,,,,,\nasphalt,DW,,2,12,144,,,,,,,,\ndeck,dc,timber,3,12,,,,,,,,,\n")
            .Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = 12").Write("loads.csv", "case,joint,up [kip]\nDC,L9,-1\n");

        string[] lines = Run.Of("check", bridge.Folder).Error.TrimEnd('\n').Split('\n');

        Assert.True(lines.Length >= 4, string.Join('\n', lines));
        int errors = lines.TakeWhile(l => !l.Contains(": warning: ", StringComparison.Ordinal)).Count();
        Assert.Equal(3, errors);
        Assert.All(lines[errors..], l => Assert.Contains(": warning: ", l, StringComparison.Ordinal));
        Assert.Contains(lines[errors..], l => l.StartsWith("dead.csv:3:1: warning: item \"asphalt\"", StringComparison.Ordinal));
    }

    private BridgeOnDisk Weigh(params string[] weights)
    {
        string[] names = ["L0L1,L0,L1", "L1L2,L1,L2", "L0U1,L0,U1", "U1L2,U1,L2", "L1U1,L1,U1"];
        return bridge.Write("members.csv", "member,from,to,role,weight [plf]\n" + string.Concat(names.Zip(weights, (n, w) => $"{n},a member,{w}\n")));
    }

    private void Refused(params string[] lines)
    {
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(string.Join('\n', lines) + "\n", run.Error);
        Assert.Equal((1, ""), (run.Status, run.Output));
    }
}
