namespace SpanRater.Tests.CommandLine;

/// <summary>Faults of connections as a user meets them: connections.csv and packing.csv.</summary>
public sealed class BadConnectionTests : IDisposable
{
    private readonly BridgeOnDisk bridge = PinnedKingPost.Make();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Rate_WithoutFaults_RatesEveryConnection()
    {
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.DoesNotContain("Not rated:", run.Output, StringComparison.Ordinal);
        Assert.Contains("those that connections.csv gives are rated", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("connections.csv", "pin,pin,L1", "pin,pn,L1", "connections.csv:2:5: kind \"pn\" is not known. Did you mean \"pin\"? Write pin, eyebar head, pin plate, rivets, bolts, gusset.")]
    [InlineData("connections.csv", "pin,pin,L1", "pin,pin,L9", "connections.csv:2:9: joint \"L9\" is not in joints.csv. Did you mean \"L2\"?")]
    [InlineData("connections.csv", "iron,,,2,,,", "iron,,,,,,", "connections.csv:2:5: pin needs diameter: write it.")]
    [InlineData("connections.csv", "iron,,,2,,,", "iron,,,2,1,,", "connections.csv:2:22: thickness has no meaning for pin: clear it.")]
    [InlineData("connections.csv", "iron,,,2,,,", "iron,,,2,,2.5,", "connections.csv:2:23: remaining 2.5 is more than the diameter of 2: rust scale measured? Clean it, or correct the diameter.")]
    [InlineData("connections.csv", "heads,eyebar head,L1,L1U1", "heads,eyebar head,L1,L0U1", "connections.csv:3:22: member \"L0U1\" does not end at joint \"L1\": check both.")]
    [InlineData("connections.csv", "0.5,,5,2.0625", "0.5,,5,5", "connections.csv:3:43: the pin hole of 5 is as wide as the head of 5 or wider: check both.")]
    [InlineData("connections.csv", "iron,by year,8", "iron,good,8", "connections.csv:4:28: grade \"good\" is not known. Write A502 grade 1, A502 grade 2, by year, unknown.")]
    [InlineData("connections.csv", "rivets,rivets,U1,L0U1,iron", "rivets,rivets,U1,L0U1,irn", "connections.csv:4:23: material \"irn\" is not known. Did you mean \"iron\"? Write a name of materials.toml, or leave it blank: then the connection is not rated.")]
    [InlineData("connections.csv", "plane,gusset,L1", "heads,gusset,L1", "connections.csv:6:1: connection \"heads\" is there twice, here and on line 3: give each a name of its own.")]
    [InlineData("connections.csv", "heads,eyebar head", "hangers,eyebar head", "connections.csv:3:1: connection \"hangers\" has the name of a member or part: give it another.")]
    [InlineData("packing.csv", "pin,L0L1,1,\n", "pin,L0L1,,\n", "packing.csv:2:10: thickness of bar \"L0L1\" on the pin is missing: write how thick it is along the pin.")]
    [InlineData("packing.csv", "pin,L1U1,0.5,0.5", "pin,L1U1,0.5,-0.5", "packing.csv:4:14: gap = -0.5: write the clear distance from the bar before it, 0 where they touch.")]
    [InlineData("packing.csv", "pin,L1U1,0.5,0.5", "pin,L1U2,0.5,0.5", "packing.csv:4:5: bar \"L1U2\" is no member, nor floor or bearing. Did you mean \"L1L2\"?")]
    [InlineData("packing.csv", "pin,L1U1,0.5,0.5", "pin,L0U1,0.5,0.5", "packing.csv:4:5: member \"L0U1\" does not end at joint \"L1\", where the pin is: check the bar, or the joint of the pin.")]
    [InlineData("packing.csv", "pin,L1U1,0.5,0.5", "pin,bearing,0.5,0.5", "packing.csv:4:5: joint \"L1\" has no support, and no bearing holds it: remove the row.")]
    public void Check_AFaultOfAConnection_IsToldWithItsPlace(string file, string old, string with, string error)
    {
        string text = File.ReadAllText(bridge.PathOf(file));
        int at = text.IndexOf(old, StringComparison.Ordinal);
        bridge.Write(file, string.Concat(text.AsSpan(0, at), with, text.AsSpan(at + old.Length)));
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains(error + "\n", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_APinWithNoPacking_IsRefused()
    {
        File.Delete(bridge.PathOf("packing.csv"));
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "connections.csv:2:1: pin \"pin\" has no packing: write its bars in packing.csv, one a row in the order in which they stand along the pin, or remove the pin.\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Check_APackingThatLacksAMember_SaysWhich()
    {
        bridge.Write("packing.csv", PinnedKingPost.Packing.Replace("pin,L1U1,0.5,0.5\n", "", StringComparison.Ordinal).Replace("pin,L1U1,0.5,0.25\n", "", StringComparison.Ordinal));
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "packing.csv:2:1: pin \"pin\" at joint \"L1\" lacks L1U1 in its packing: its forces would not balance. Write a row for it.\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Check_APackingWithoutAPin_IsRefused()
    {
        bridge.Replace("packing.csv", "pin,L0L1,1,\n", "pni,L0L1,1,\n");
        Assert.Contains("packing.csv:2:1: pin \"pni\" is packed, and connections.csv has no pin of that name. Did you mean \"pin\"?\n", Run.Of("check", bridge.Folder).Error, StringComparison.Ordinal);
        File.Delete(bridge.PathOf("connections.csv"));
        Assert.Contains("packing.csv:2:1: pin \"pni\" is packed, and there is no connections.csv: write its joint and diameter there.\n", Run.Of("check", bridge.Folder).Error, StringComparison.Ordinal);
    }

    // Each datum by itself, so that the reader sees what to write.
    [Theory]
    [InlineData("connections.csv", "heads,eyebar head,L1,L1U1,iron", "heads,eyebar head,L1,L1U1,", "heads in force: No material. Name one of materials.toml under material in members.csv")]
    [InlineData("connections.csv", "3,1.5,6,,", "3,1.5,,,", "gusset in compression: The length over which the gusset buckles is not known. Write middle length in connections.csv")]
    [InlineData("bridge.toml", "\"LRFR\"", "\"LFR\"", "pin, rivets, gusset, plane in force: LFR has no rule for such a connection in the program")]
    public void Rate_ADatumMissing_IsNotRatedAndSaysWhich(string file, string old, string with, string reason)
    {
        bridge.Replace(file, old, with);
        Assert.Contains($"  - {reason}\n", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }
}
