namespace SpanRater.Tests.CommandLine;

/// <summary>Faults in how members are made and held, as a user meets them: lacing.csv, [pony], and the columns of members.csv.</summary>
public sealed class BadMakeTests : IDisposable
{
    private readonly BridgeOnDisk bridge = LacedKingPost.Make();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Rate_WithoutFaults_RatesTheRaftersFromTheirSection()
    {
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.DoesNotContain("Not rated:", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lacing.csv", "single lacing,7,9,2,0.25,1", "single lace,7,9,2,0.25,1", "lacing.csv:2:8: held by \"single lace\" is not known. Did you mean \"single lacing\"? Write single lacing, double lacing, battens, stitch rivets, stitch welds, plates.")]
    [InlineData("lacing.csv", "7,9,2,0.25,1", "7,,2,0.25,", "lacing.csv:2:8: single lacing needs between, planes: write them.")]
    [InlineData("lacing.csv", "single lacing,7,9,2,0.25,1", "stitch rivets,7,9,,,", "lacing.csv:2:24: between has no meaning beside stitch rivets: clear it.")]
    [InlineData("lacing.csv", "rafter,single", "raftr,single", "lacing.csv:2:1: there is no section \"raftr\" in sections.csv. Did you mean \"rafter\"?")]
    [InlineData("lacing.csv", "0.25,1\n", "0.25,1\nrafter,plates,,,,,\n", "lacing.csv:3:1: section \"rafter\" is there twice: keep one row of it.")]
    [InlineData("lacing.csv", "0.25,1\n", "0.25,3\n", "lacing.csv:2:33: planes = 3: write a whole number from 1 to 2.")]
    [InlineData("members.csv", "rafter,iron,pinned", "raftr,iron,pinned", "members.csv:4:21: there is no section \"raftr\" in sections.csv. Did you mean \"rafter\"?")]
    [InlineData("members.csv", "rafter,iron,pinned", "rafter,irn,pinned", "members.csv:4:28: material \"irn\" is not known. Did you mean \"iron\"? Write a name of materials.toml; without a strength steel, wrought iron or timber; or leave it blank.")]
    [InlineData("members.csv", "iron,pinned", "iron,pined", "members.csv:4:33: ends \"pined\" is not known. Did you mean \"pinned\"? Write pinned, riveted, bolted, welded, or leave it blank.")]
    [InlineData("members.csv", "pinned,1,,", "pinned,75,,", "members.csv:4:40: shear lag = 75: write the part of the net section that works, from 0.3 to 1; 1 where every part of the section is connected.")]
    [InlineData("members.csv", "pinned,1,,", "pinned,1,0.1,", "members.csv:4:42: out-of-plane k = 0.1: an effective length factor is from 0.5 (both ends fixed) to 3.")]
    public void Check_AFaultOfAMake_IsTold(string file, string old, string with, string error)
    {
        string text = File.ReadAllText(bridge.PathOf(file));
        int at = text.IndexOf(old, StringComparison.Ordinal);
        bridge.Write(file, string.Concat(text.AsSpan(0, at), with, text.AsSpan(at + old.Length)));
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, error + "\n"), (run.Status, run.Error));
    }

    // Each datum by itself, so that the reader sees what to write.
    [Theory]
    [InlineData("members.csv", "iron,pinned,1", ",pinned,1", "no capacity: No material. Name one of materials.toml under material in members.csv")]
    [InlineData("members.csv", "iron,pinned,1", "steel,pinned,1", "no capacity: No material. Name one of materials.toml under material in members.csv")]
    [InlineData("members.csv", "iron,pinned,1", "iron,,1", "no capacity: How its ends are fastened is missing, and with it the effective length. Write ends in members.csv: pinned, riveted, bolted or welded")]
    [InlineData("joints.csv", "U1,12,8,,,,yes", "U1,12,8,,,,", "no capacity: Nothing says that U1 is held sideways. Write held sideways in joints.csv, out-of-plane length in members.csv, or [pony] in bridge.toml")]
    [InlineData("sections.csv", "2,,,backs in,6.5,0,0,", "2,,,,,,0,", "no capacity: Positions of channels in section \"rafter\" are missing, and with them the radii of gyration. Write arrangement and gap, or x and y, in sections.csv")]
    [InlineData("lacing.csv", "rafter,single lacing,7,9,2,0.25,1\n", "", "no capacity: How the parts of section \"rafter\" are held together is missing. Write a row of it in lacing.csv")]
    public void Rate_ADatumMissing_IsNotRatedAndSaysWhich(string file, string old, string with, string reason)
    {
        bridge.Replace(file, old, with);
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Contains($"  - L0U1, U1L2 in compression: {reason}\n", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("sections.csv", "plate,1,12,0.25,,,4.125,0,", "plate,1,12,0.25,,,4.125,,", "Holes of plate in section \"rafter\" are missing, and with them the net section. Write holes and hole in sections.csv for the worst path, holes = 0 where there are none")]
    [InlineData("members.csv", "pinned,1,", "pinned,,", "Shear lag is missing: how much of the net section works. Write shear lag in members.csv, 1 where every part of the section is connected")]
    public void Rate_ADatumOfTensionMissing_IsNotRatedAndSaysWhich(string file, string old, string with, string reason)
    {
        // The hanger takes the rafters' section, so that something made of shapes is pulled.
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,,,,,,,40", "L1U1,L1,U1,hanger,rafter,iron,pinned,1,,,").Replace(file, old, with);
        Assert.Contains($"in tension: no capacity: {reason}\n", Run.Of("rate", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LacingMissingWhereThereIsNone_IsRefused()
    {
        bridge.Write("findings.csv", "member,truss,what,count\nL0U1,both,lacing missing,2\n");
        Run sound = Run.Of("check", bridge.Folder);
        Assert.Equal(0, sound.Status);
        bridge.Write("lacing.csv", LacedKingPost.LacingHeader + "rafter,plates,,,,,\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, "findings.csv:2:1: lacing is missing on member \"L0U1\", and lacing.csv gives its section \"rafter\" none: write a row of it there.\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Rate_LacingMissing_LowersTheCapacityOfThatMemberAlone()
    {
        double sound = Capacity("L0U1"), other = Capacity("U1L2");
        bridge.Write("findings.csv", "member,truss,what,count\nL0U1,both,lacing missing,12\n");
        Assert.True(Capacity("L0U1") < 0.999 * sound);
        Assert.Equal(other, Capacity("U1L2"));
    }

    [Theory]
    [InlineData("", "bridge.toml:12:1: [pony] needs post, beam, post_height: post and beam are sections of sections.csv, post_height is from the middle of the floorbeam to that of the chord.")]
    [InlineData("post = \"pst\"\nbeam = \"rafter\"\npost_height = \"5 ft\"\n", "bridge.toml:13:8: there is no section \"pst\" in sections.csv. Did you mean \"post\"?")]
    [InlineData("post = \"post\"\nbeam = \"rafter\"\npost_height = \"5 ft\"\nknee_height = \"6 ft\"\n", "bridge.toml:16:15: knee_height is how far up a knee holds the post stiff: from 0 to less than post_height.")]
    [InlineData("post = \"post\"\nbeam = \"rafter\"\npost_height = \"5 ft\"\nk = 0.9\n", "bridge.toml:16:5: k = 0.9: write the effective length factor read in the guide's table, 1 or more, such as 1.15.")]
    [InlineData("post = \"post\"\nbeam = \"rafter\"\npost_height = \"5 ft\"\npost_hight = \"5 ft\"\n", "bridge.toml:16:1: unknown key \"post_hight\". Did you mean \"post_height\"? The keys in [pony] are: post, beam, post_height, beam_length, knee_height, modulus, k.")]
    public void Check_AFaultOfThePonyTable_IsTold(string keys, string error)
    {
        bridge.Append("sections.csv", "post,plate,plate,1,6,0.5,,,,0,\n").Append("bridge.toml", "[pony]\n" + keys);
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal((1, error + "\n"), (run.Status, run.Error));
    }

    private double Capacity(string member)
    {
        using var json = System.Text.Json.JsonDocument.Parse(Run.Of("rate", bridge.Folder, "--format", "json").Output);
        return json.RootElement.GetProperty("ratings").EnumerateArray()
            .First(r => r.GetProperty("member").GetString() == member && r.GetProperty("sense").GetString() == "compression").GetProperty("capacity").GetDouble();
    }
}
