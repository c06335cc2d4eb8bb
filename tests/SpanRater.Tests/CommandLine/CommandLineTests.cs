namespace SpanRater.Tests.CommandLine;

/// <summary>Typos on the command line, output files, completion.</summary>
public sealed class CommandLineTests : IDisposable
{
    private static readonly string Garrow = Repository.Sample("garrow-landing");

    private readonly BridgeOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Theory]
    [InlineData("spanrater: did you mean rate?", "rat", "x")]
    [InlineData("spanrater: did you mean --units?", "check", "x", "--unit", "si")]
    [InlineData("spanrater: Required argument 'BRIDGE' missing for command: 'rate'.", "rate")]
    [InlineData("spanrater: Argument 'xml' not recognized. Must be one of: 'text' 'markdown' 'csv' 'json'.", "check", "x", "--format", "xml")]
    [InlineData("spanrater: Option '--case' is required.", "forces", "x")]
    public void Run_Typo_SaysWhatWasMeant(string expected, params string[] args)
    {
        Run run = Run.Of(args);
        Assert.Equal(1, run.Status);
        Assert.Equal("", run.Output);
        Assert.Contains(expected, run.Error.Split('\n'));
        Assert.Contains(" --help", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Run_UnknownNames_AreSuggested()
    {
        Assert.Equal("--member \"U3V4\": members.csv has no such member. Did you mean \"U3U4\"?\n", Run.Of("influence", Garrow, "--member", "U3V4").Error);
        Assert.Equal("--vehicle \"Tpye 3\": no catalogue has that vehicle. Did you mean \"Type 3\"? List them with: spanrater vehicles\n", Run.Of("roll", Garrow, "--vehicle", "Tpye 3").Error);
        Assert.Equal("--case \"dc\": the bridge has no such case; its cases are: DC, DW. Did you mean \"DC\"?\n", Run.Of("forces", Garrow, "--case", "dc").Error);
    }

    [Fact]
    public void Out_AFile_AppearsWholeAndAloneAndTheTerminalStaysEmpty()
    {
        string file = disk.PathOf("forces.json");
        Run run = Run.Of("forces", Garrow, "--case", "DC", "--out", file);
        Assert.Equal(0, run.Status);
        Assert.Equal("", run.Output);
        Assert.Equal(Run.Of("forces", Garrow, "--case", "DC", "--format", "json").Output, File.ReadAllText(file));
        Assert.Empty(Directory.EnumerateFiles(disk.Folder, "*.part"));
    }

    [Fact]
    public void Out_WhereNothingCanBeWritten_SaysWhyAndLeavesNothing()
    {
        Run run = Run.Of("check", Garrow, "--out", "/no/such/folder/x.txt");
        Assert.Equal(1, run.Status);
        Assert.Equal("/no/such/folder/x.txt: cannot be written: its folder is not there.\n", run.Error);

        Directory.CreateDirectory(disk.PathOf("taken"));
        Assert.Equal($"{disk.PathOf("taken")}: cannot be written: it is a folder.\n", Run.Of("check", Garrow, "--out", disk.PathOf("taken")).Error);
        Assert.Empty(Directory.EnumerateFiles(disk.Folder, "*.part"));
    }

    [Fact]
    public void Out_WhenTheInputIsRefused_LeavesAnOlderFileAlone()
    {
        disk.Write("old.txt", "older").Replace("joints.csv", "pin", "pinn");
        Assert.Equal(1, Run.Of("check", disk.Folder, "--out", disk.PathOf("old.txt")).Status);
        Assert.Equal("older", File.ReadAllText(disk.PathOf("old.txt")));
    }

    [Theory]
    [InlineData("members.csv", "stands in a bridge folder, where every .csv and .toml is read as input: choose another folder.")]
    [InlineData("r.csv", "stands in a bridge folder, where every .csv and .toml is read as input: choose another folder.")]
    [InlineData("r.xlsx", "its ending names no format that is written: end it in .txt, .md, .csv or .json, or say --format.")]
    public void Out_NameThatWouldDoHarm_IsRefused(string name, string expected)
    {
        string before = File.ReadAllText(disk.PathOf("members.csv"));
        Run run = Run.Of("rate", disk.Folder, "--out", disk.PathOf(name));
        Assert.Equal(1, run.Status);
        Assert.Equal($"--out \"{disk.PathOf(name)}\": {expected}\n", run.Error);
        Assert.Equal(before, File.ReadAllText(disk.PathOf("members.csv")));
    }

    [Fact]
    public void Out_NameOfAnAddedCatalogue_IsRefused()
    {
        disk.Write("mine.txt", "vehicle,class,load [kip]\nCart,farm,1\n");
        string path = disk.PathOf("mine.txt");
        Assert.Equal($"--out \"{path}\": is one of the files that are read: choose another name.\n", Run.Of("vehicles", "--catalogue", path, "--out", path).Error);
    }

    [Fact]
    public void Picture_WithAnEndingThatIsNotDrawn_IsRefused() =>
        Assert.Equal("--picture \"x.jpg\": must end in .png or .svg, the two kinds of picture there are.\n", Run.Of("check", Garrow, "--picture", "x.jpg").Error);

    [Theory]
    [InlineData("check")]
    [InlineData("influence")]
    [InlineData("influence", "--member", "M2U3")]
    [InlineData("roll", "--vehicle", "EV3")]
    [InlineData("rate")]
    public void Picture_OfEveryCommandThatDraws_IsWrittenBesideTheAnswer(string command, params string[] options)
    {
        string png = disk.PathOf("a.png"), svg = disk.PathOf("a.svg");
        Run run = Run.Of([command, Garrow, .. options, "--picture", png]);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Equal(Run.Of([command, Garrow, .. options]).Output, run.Output);
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], File.ReadAllBytes(png)[..4]);
        Assert.Equal(0, Run.Of([command, Garrow, .. options, "--picture", svg]).Status);
        Assert.StartsWith("<?xml", File.ReadAllText(svg), StringComparison.Ordinal);
    }

    [Fact]
    public void Picture_OfWhatHasNoAnswer_IsNotDrawnAndSaidSo()
    {
        disk.Replace("members.csv", "L1U1,L1,U1,hanger,40,\n", "");
        Run run = Run.Of("rate", disk.Folder, "--picture", disk.PathOf("a.png"));
        Assert.Equal(3, run.Status);
        Assert.Equal($"{disk.PathOf("a.png")}: not drawn, since there is no answer to draw.\n", run.Error);
        Assert.False(File.Exists(disk.PathOf("a.png")));
    }

    [Fact]
    public void Rate_OwnVehicleThatNobodyAskedFor_IsNamedAsNotRated()
    {
        disk.Write("vehicles.csv", "vehicle,class,load [kip]\nMarsh milk lorry,farm,20\n");
        foreach (string format in (string[])["text", "csv", "json"])
        {
            string output = Run.Of("rate", disk.Folder, "--format", format).Output;
            Assert.Contains("Marsh milk lorry", output, StringComparison.Ordinal);
            Assert.Contains("not asked for: name it under vehicles in bridge.toml [rating]", output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Catalogue_AddedFile_BringsItsVehicles()
    {
        disk.Write("mine.txt", "vehicle,class,load [kip]\nCart,farm,1\n");
        string path = disk.PathOf("mine.txt");
        Assert.Contains("Cart", Run.Of("vehicles", "--catalogue", path).Output, StringComparison.Ordinal);
        Assert.Equal(0, Run.Of("roll", Garrow, "--vehicle", "cart", "--catalogue", path).Status);
    }

    [Theory]
    [InlineData("spanrater fo", "forces")]
    [InlineData("spanrater roll {0} --vehicle Typ", "Type 3", "Type 3-3", "Type 3S2", "Lane-type legal load", "Lane-type legal load, two trucks")]
    [InlineData("spanrater influence {0} --member M2", "M2L2", "M2L3", "M2U3", "U2M2")]
    [InlineData("spanrater forces {0} --case D", "DC", "DW")]
    public void Suggest_ForAShell_CompletesNames(string line, params string[] expected)
    {
        string typed = string.Format(System.Globalization.CultureInfo.InvariantCulture, line, Garrow);
        Assert.Equal(expected, Run.Of($"[suggest:{typed.Length}]", typed).Output.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void Suggest_BridgeFolders_AreCompletedBelowWhatWasTyped()
    {
        string typed = "spanrater check " + Path.Combine(Repository.Root, "samples", "garr");
        Assert.Equal(Garrow + "\n", Run.Of($"[suggest:{typed.Length}]", typed).Output);
    }

    [Theory]
    [InlineData("bash", "complete -o default -F _spanrater spanrater")]
    [InlineData("zsh", "compdef _spanrater spanrater")]
    [InlineData("powershell", "Register-ArgumentCompleter -Native -CommandName spanrater")]
    public void Completion_EveryShell_HasItsScript(string shell, string expected) =>
        Assert.Contains(expected, Run.Of("completion", shell).Output, StringComparison.Ordinal);
}
