namespace SpanRater.Tests.CommandLine;

/// <summary>Faults of numbers, units, names and settings as a user meets them: text, file, line and column.</summary>
public sealed class BadValuesTests : IDisposable
{
    private const string VehicleHeader = "vehicle,class,load [kip],spacing [ft],spacing max [ft]\n";

    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Check_NoUnit_AsksForOneInTableAndToml()
    {
        bridge.Replace("joints.csv", "x [ft]", "x").Replace("bridge.toml", "\"14 ft\"", "14");
        Refused(
            "joints.csv:1:7: column \"x\" has no unit: write x [ft] or x [m].",
            "bridge.toml:5:17: truss_spacing = 14 has no unit: write truss_spacing = \"14 ft\" or truss_spacing = \"14 m\".");
    }

    [Fact]
    public void Check_InchesOfTwelveOrMore_AreRefused()
    {
        bridge.Replace("joints.csv", "L1,12,", "L1,11 ft 14 in,");
        Refused("joints.csv:3:4: \"11 ft 14 in\": inches after feet must be under 12.");
    }

    [Fact]
    public void Check_DecimalCommaInACommaFile_IsRefusedQuotedOrNot()
    {
        bridge.Replace("joints.csv", "L1,12,0,,,yes", "L1,12,0,,,yes,5").Replace("loads.csv", "-0.5", "\"-0,5\"");
        Refused(
            "joints.csv:3:15: the row has 7 cells and the header 6. A decimal comma? Write a point, or separate the columns with semicolons.",
            "loads.csv:5:7: \"-0,5\" has a comma: write a decimal point (-0.5) or separate the columns with semicolons; thousands are not separated.");
    }

    [Fact]
    public void Check_TwoDecimalMarksInOneFile_AreRefused()
    {
        bridge.Write("loads.csv", "case;joint;up [kip]\nDC;L1;-1,5\nDC;L2;-1.5\n");
        Refused("loads.csv:3:7: \"-1.5\" has a decimal point, and the file used a decimal comma before: use one throughout.");
    }

    [Fact]
    public void Check_Thousands_AreRefused()
    {
        bridge.Write("loads.csv", "case;joint;up [lb]\nDC;L1;-1.234,5\n");
        Refused("loads.csv:2:7: \"-1.234,5\" has more than one decimal mark; thousands are not separated.");
    }

    [Fact]
    public void Check_SpacingOnFirstAxleAndNoneOnALater_AreBothNamed()
    {
        bridge.Write("vehicles.csv", VehicleHeader + "Milk,farm,8,4,\nMilk,,9,,\n");
        Refused(
            "vehicles.csv:2:13: axle 1 of \"Milk\" has a spacing: the first axle follows none. Leave it blank; a spacing is the distance from the axle ahead.",
            "vehicles.csv:3:9: axle 2 of \"Milk\" has no spacing: write its distance from the axle ahead.");
    }

    [Fact]
    public void Check_NegativeAndZeroAxles_AreRefused()
    {
        bridge.Write("vehicles.csv", VehicleHeader + "Milk,farm,8,,\nMilk,,-8,10,\nMilk,,0,10,\n");
        Refused(
            "vehicles.csv:3:7: axle 2 of \"Milk\" weighs -8: axle loads must be above zero.",
            "vehicles.csv:4:7: axle 3 of \"Milk\" weighs 0: axle loads must be above zero.");
    }

    [Fact]
    public void Check_PoundsTypedAsKips_AreNotBelieved()
    {
        bridge.Write("vehicles.csv", VehicleHeader + "Milk,farm,24000,,\n");
        Refused("vehicles.csv:2:11: axle 1 of \"Milk\" weighs 24,000 kip (106,757 kN), which no axle does: is 24000 in lb? Then head the column load [lb].");
    }

    [Fact]
    public void Check_ReversedRange_SaysLowFirst()
    {
        bridge.Write("vehicles.csv", VehicleHeader + "Milk,farm,8,,\nMilk,,8,30,14\n");
        Refused("vehicles.csv:3:12: axle 2 of \"Milk\": spacing 30 to 14 is reversed: low value first.");
    }

    [Fact]
    public void Check_FourVaryingGaps_AreTooMany()
    {
        bridge.Write("vehicles.csv", VehicleHeader + "Long,permit,8,,\nLong,,8,4,5\nLong,,8,4,5\nLong,,8,4,5\nLong,,8,4,5\n");
        Refused("vehicles.csv:2:1: \"Long\" has more than 3 gaps that vary: fix some of them, or make several vehicles.");
    }

    [Fact]
    public void Check_BareTon_IsRefusedWithBothMeanings()
    {
        bridge.Write("vehicles.csv", "vehicle,class,load [ton]\nMilk,farm,8\n");
        Refused("vehicles.csv:1:15: column \"load\": a bare ton may be 2,000 lb or 1,000 kg: write \"US ton\" (2,000 lbf) or \"tonne\" (1,000 kg).");
    }

    [Fact]
    public void Check_WheelOutsideTruss_SaysByHowMuch()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"22 ft\"");
        Refused("bridge.toml:6:11: the outer wheel line would stand 0.61 m (2.0 ft) outside a truss: check roadway, roadway_offset, truss_spacing and wheel_to_kerb. If the deck does overhang, give truss_share.");
    }

    [Fact]
    public void Check_UnknownNames_AreSuggested()
    {
        bridge.Replace("joints.csv", "deck", "dek").Replace("bridge.toml", "roadway", "roadwy").Replace("bridge.toml", "Type 3", "Tipe 3").Write("load.csv", "x\n");
        Refused(
            "load.csv: is not a file of a bridge folder. Did you mean \"loads.csv\"? Its tables are bridge.toml, joints.csv, members.csv, sections.csv, lacing.csv, materials.toml, floor.csv, connections.csv, packing.csv, findings.csv, dead.csv, loads.csv, vehicles.csv, vehicles.toml, factors.toml; notes go in .md or .txt files.",
            "joints.csv:1:49: unknown column \"dek\". Did you mean \"deck\"? The columns are: joint, x, y, support, roller normal, deck, held sideways, note.",
            "bridge.toml:6:1: unknown key \"roadwy\". Did you mean \"roadway\"? The keys in [deck] are: truss_names, trusses, truss_spacing, roadway, roadway_offset, wheel_to_kerb, truss_share, truss_share_reason.",
            "bridge.toml:11:13: no catalogue has a vehicle \"Tipe 3\". Did you mean \"Type 3\"? List them with: spanrater vehicles.");
    }

    [Fact]
    public void Check_FaultsInEveryFile_AreToldInOneGo()
    {
        bridge.Replace("joints.csv", "L0,0,0,pin", "L0,0x,0,pinn").Replace("loads.csv", "DC,L2", "DC,L7").Replace("bridge.toml", "\"14 ft\"", "\"14 kip\"").Replace("members.csv", "L1U1,L1,", "L1U1,L11,");
        Refused(
            "joints.csv:2:4: \"0x\" is not a number.",
            "joints.csv:2:9: support \"pinn\": write pin or roller, or leave it blank. Did you mean \"pin\"?",
            "bridge.toml:5:17: truss_spacing = \"14 kip\": \"kip\" is a unit of a force; for a length, write ft or m.",
            "members.csv:6:6: member \"L1U1\" names joint \"L11\", which joints.csv does not have. Did you mean \"L1\"?",
            "loads.csv:4:4: case \"DC\" loads joint \"L7\", which joints.csv does not have. Did you mean \"L2\"? A load between joints bends a member, and pin-joint forces alone are not enough.");
    }

    [Fact]
    public void Check_NameOfAShippedVehicle_IsRefusedWithBothPlaces()
    {
        bridge.Write("vehicles.csv", VehicleHeader + "type 3,legal,8,,\n");
        Refused("vehicles.csv:2:1: the name \"type 3\" is taken by vehicles/us-legal.csv:3:1 (built in): vehicles and loadings share one name space, so give this one another, such as \"type 3, ours\".");
    }

    [Fact]
    public void Check_UpwardDeadLoad_IsRefused()
    {
        bridge.Replace("loads.csv", "DC,L1,-2", "DC,L1,20");
        Refused(
            "loads.csv:2:1: the dead load of case DC adds up to 80.068 kN (18 kip) upward: a weight is negative under up.",
            "loads.csv:3:7: warning: case DC lifts joint \"L1\" by 20: a weight is negative under up. Check the sign.");
    }

    [Fact]
    public void Check_DeadCaseInSmallLetters_IsNotLost()
    {
        bridge.Replace("loads.csv", "DW,L1", "dw,L1");
        Refused("loads.csv:5:1: case \"dw\": the dead load case is written DW.");
    }

    [Fact]
    public void Check_PercentForImpact_IsRefused()
    {
        bridge.Append("bridge.toml", "impact = 33\n");
        Refused("bridge.toml:12:10: impact = 33: write the allowance as a fraction, such as 0.33 for 33%.");
    }

    [Fact]
    public void Check_ValuesThatCannotBeTrue_AreRefused()
    {
        bridge.Replace("joints.csv", "L2,24,0", "L2,240000,0").Replace("loads.csv", "DC,L1,-2", "DC,L1,-2e200");
        Refused(
            "joints.csv:4:4: x = 240000 is more than 10 km away: check the number and the unit in the heading.",
            "loads.csv:3:7: \"-2e200\" is too large to be true: check the number and the unit in the heading.");
    }

    [Fact]
    public void Check_BrokenToml_NamesTheFirstBreak()
    {
        bridge.Replace("bridge.toml", "\"Test bridge\"", "\"Test bridge");
        Refused("bridge.toml:1:20: this is not TOML: Invalid newline in a string. Mend this first; the rest of the file is read after that.");
    }

    [Fact]
    public void Rate_NoMethodAndNoDeadLoad_AsksForBoth()
    {
        bridge.Replace("bridge.toml", "method = \"LRFR\"\n", "").Write("loads.csv", "case,joint,up [kip]\nsnow,L1,-1\n");
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal(
            "bridge.toml:8:1: the rating method is missing: write method = \"LRFR\", \"LFR\", \"ASR\" or \"partial factors\" under [rating].\n"
            + "loads.csv: has no case DC, the dead load of the components on one truss: a bridge is not rated without it.\n",
            run.Error);
        Assert.Equal(1, run.Status);
    }

    [Fact]
    public void Check_OddRowsOfDeadLoad_AreWorthASecondLook()
    {
        bridge.Write("loads.csv", "case,joint,right [kip],up [kip]\nDC,L0,,-1\nDC,L1,,2\nDC,L2,-1,\nDC,L0,,-1\n");
        string text = Run.Of("check", bridge.Folder).Output;
        Assert.Contains("loads.csv:3:8: warning: case DC lifts joint \"L1\" by 2: a weight is negative under up. Check the sign.", text, StringComparison.Ordinal);
        Assert.Contains("loads.csv:4:1: warning: case DC puts no weight on joint \"L2\": up is blank. Is a cell missing, or in the wrong column?", text, StringComparison.Ordinal);
        Assert.Contains("loads.csv:4:7: warning: case DC pushes joint \"L2\" sideways by -1, which dead load does not do. Is the cell in the wrong column?", text, StringComparison.Ordinal);
        Assert.Contains("loads.csv:5:4: warning: case DC loads joint \"L0\" a second time: the loads add up. If one row is a slip, remove it.", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_KerbBeyondATruss_IsWorthASecondLook()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"17 ft\"");
        Assert.Contains("bridge.toml:6:11: warning: a kerb stands beyond a truss. Right for a deck that overhangs its trusses; for trusses beside the roadway, check roadway, roadway_offset and truss_spacing.", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("load (kip)")]
    [InlineData("load kip")]
    public void Check_UnitWithoutBrackets_LeadsToTheMend(string heading)
    {
        bridge.Write("vehicles.csv", $"vehicle,class,{heading}\nMilk,farm,8\n");
        Refused($"vehicles.csv:1:15: column \"{heading}\": write load [kip]: the unit stands in square brackets.");
    }

    [Fact]
    public void Check_ShortRow_IsCounted()
    {
        bridge.Replace("joints.csv", "U1,12,8,,,", "U1,12");
        Refused("joints.csv:5:1: \"y\" is missing: the row has 2 cells and the header 6.");
    }

    [Fact]
    public void Check_FaultyVehicleThatIsAskedFor_IsNotCalledUnknown()
    {
        bridge.Replace("bridge.toml", "Type 3", "Milk").Write("vehicles.csv", VehicleHeader + "Milk,farmer,8,,\n");
        Refused("vehicles.csv:2:6: unknown class \"farmer\". Did you mean \"farm\"? The classes are: design, legal, screening, emergency, permit, farm, maintenance, crowd.");
    }

    [Fact]
    public void Check_ConfirmedNamesNoFactorInDoubt_IsRefusedWithTheNearestAndTheList()
    {
        bridge.Replace("bridge.toml", "adtt = 80", "confirmed = [\"emergncy factor\", \"DC\", \"Special hauling factor\"]");
        Refused(
            "bridge.toml:10:14: confirmed: there is no value \"emergncy factor\" to confirm. Did you mean \"emergency factor\"? The values to confirm are: special hauling factor, emergency factor, allowable tension of wrought iron, allowable tension on the net section, LFR tension, eyebar heads, design values of timber, wet service of timber 2 to 4 in thick, wet service of timber 5 by 5 in and larger, size factor of timber 2 to 4 in thick, size factor along the grain, LRFR modulus for stability, operating level of timber, lanes on stringers, spread on laminated decks, ASR pins at operating level, LRFR rivets, LRFR bolts, gussets in tension, gussets in compression, gussets in shear, fatigue life, fatigue in tension.",
            "bridge.toml:10:33: confirmed: there is no value \"DC\" to confirm. The values to confirm are: special hauling factor, emergency factor, allowable tension of wrought iron, allowable tension on the net section, LFR tension, eyebar heads, design values of timber, wet service of timber 2 to 4 in thick, wet service of timber 5 by 5 in and larger, size factor of timber 2 to 4 in thick, size factor along the grain, LRFR modulus for stability, operating level of timber, lanes on stringers, spread on laminated decks, ASR pins at operating level, LRFR rivets, LRFR bolts, gussets in tension, gussets in compression, gussets in shear, fatigue life, fatigue in tension.");
    }

    [Fact]
    public void Rate_FactorInDoubt_IsToldUntilItIsConfirmed()
    {
        bridge.Replace("bridge.toml", "\"Type 3\"", "\"EV2\"");
        string before = Run.Of("rate", bridge.Folder).Output;
        bridge.Replace("bridge.toml", "adtt = 80", "adtt = 80\nconfirmed = [\"emergency factor\"]");
        string after = Run.Of("rate", bridge.Folder).Output;

        Assert.Contains("to confirm: LRFR live-load factor of emergency vehicles, 1.30", before, StringComparison.Ordinal);
        Assert.Contains("confirmed by the user: LRFR live-load factor of emergency vehicles, 1.30", after, StringComparison.Ordinal);
        Assert.DoesNotContain("to confirm", after, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_EmergencyFactorBelowOne_IsRefused()
    {
        bridge.Append("bridge.toml", "emergency_factor = 0.13\n");
        Refused("bridge.toml:12:20: emergency_factor = 0.13: write the LRFR live-load factor of emergency vehicles as your copy has it, 1 or more, such as 1.3.");
    }

    [Fact]
    public void Rate_EmergencyFactorGiven_ReplacesTheOneInDoubtOnThePage()
    {
        bridge.Replace("bridge.toml", "\"Type 3\"", "\"EV2\"").Append("bridge.toml", "emergency_factor = 1.2\n");

        string page = Run.Of("rate", bridge.Folder).Output;

        Assert.Contains("emergency_factor 1.20 is given in bridge.toml and replaces the LRFR live-load factor of emergency vehicles, 1.30", page, StringComparison.Ordinal);
        Assert.Contains("live 1.20 at emergency level", page, StringComparison.Ordinal);
        Assert.DoesNotContain("to confirm", page, StringComparison.Ordinal);
    }

    private void Refused(params string[] lines)
    {
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(string.Join('\n', lines) + "\n", run.Error);
        Assert.Equal("", run.Output);
        Assert.Equal(1, run.Status);
    }
}
