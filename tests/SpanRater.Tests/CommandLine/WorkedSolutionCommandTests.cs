namespace SpanRater.Tests.CommandLine;

/// <summary>What joints and section refuse, and the pictures they draw.</summary>
public sealed class WorkedSolutionCommandTests : IDisposable
{
    private static readonly string Garrow = Repository.Sample("garrow-landing");

    private readonly BridgeOnDisk disk = new();

    public void Dispose() => disk.Dispose();

    [Theory]
    [InlineData("What load? Give --case NAME, a load case, or --unit-load JOINT, a load of 1 downward at that joint.")]
    [InlineData("--case and --unit-load: give one of the two, not both.", "--case", "DC", "--unit-load", "L1")]
    [InlineData("--case \"dc\": the bridge has no such case; its cases are: DC, DW. Did you mean \"DC\"?", "--case", "dc")]
    [InlineData("--unit-load \"L9\": joints.csv has no such joint. Did you mean \"L8\"?", "--unit-load", "L9")]
    public void JointsAndSection_WrongLoad_SayWhatIsWrongAndTheMend(string expected, params string[] load)
    {
        foreach (string[] command in (string[][])[["joints", Garrow], ["section", Garrow, "--member", "M2U3"]])
        {
            Run run = Run.Of([.. command, .. load]);
            Assert.Equal((1, "", expected + "\n"), (run.Status, run.Output, run.Error));
        }
    }

    [Fact]
    public void Section_UnknownMemberOrNone_IsRefused()
    {
        Assert.Equal("--member \"M2U9\": members.csv has no such member. Did you mean \"M2U3\"?\n", Run.Of("section", Garrow, "--case", "DC", "--member", "M2U9").Error);
        Assert.Equal("--member \"U3M2\": members.csv has no such member. Did you mean \"M2U3\"?\n", Run.Of("section", Garrow, "--case", "DC", "--member", "U3M2").Error);
        Assert.Equal("--member \"l3m2\": members.csv has no such member. Did you mean \"M2L3\"?\n", Run.Of("section", Garrow, "--case", "DC", "--member", "l3m2").Error);
        Assert.Contains("Option '--member' is required.", Run.Of("section", Garrow, "--case", "DC").Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("csv")]
    [InlineData("json")]
    public void JointsAndSection_Mechanism_SayWhyAndEndWithStatusThree(string format)
    {
        disk.Write("members.csv", "member,from,to\nL0L1,L0,L1\nL1L2,L1,L2\nL0U1,L0,U1\nU1L2,U1,L2\n");
        foreach (string[] command in (string[][])[["joints"], ["section", "--member", "L0L1"]])
        {
            Run run = Run.Of([command[0], disk.Folder, .. command[1..], "--case", "DC", "--format", format]);
            Assert.Equal(3, run.Status);
            Assert.Contains("Mechanism: 4 members + 3 reactions = 7", run.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Pictures_AFolder_HoldsOneOfEveryStepAndThePageNamesThem()
    {
        string folder = disk.PathOf("photos/steps"), page = disk.PathOf("page.md");
        Run run = Run.Of("joints", disk.Folder, "--case", "DC", "--pictures", folder, "--out", page);
        Assert.Equal((0, "", ""), (run.Status, run.Output, run.Error));
        string[] files = [.. Directory.EnumerateFiles(folder).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];
        Assert.Equal(["step-01-reactions.png", "step-02-L0.png", "step-03-L1.png", "step-04-U1.png"], files);
        Assert.Contains("![Free body. Step 2. Joint L0](<photos/steps/step-02-L0.png>)", File.ReadAllText(page), StringComparison.Ordinal);

        // A second run replaces what it draws and leaves other files alone.
        File.WriteAllText(Path.Combine(folder, "step-02-L0.png"), "old");
        File.WriteAllText(Path.Combine(folder, "mine.png"), "mine");
        Assert.Equal(0, Run.Of("joints", disk.Folder, "--case", "DC", "--pictures", folder, "--out", page).Status);
        Assert.True(new FileInfo(Path.Combine(folder, "step-02-L0.png")).Length > 1000);
        Assert.Equal("mine", File.ReadAllText(Path.Combine(folder, "mine.png")));
    }

    [Fact]
    public void Pictures_IntoABridgeFolderOrAFile_AreRefused()
    {
        Run folder = Run.Of("joints", disk.Folder, "--case", "DC", "--pictures", disk.Folder);
        Assert.Equal((1, $"--pictures \"{disk.Folder}\": is a bridge folder: choose a folder of its own for the pictures.\n"), (folder.Status, folder.Error));
        Assert.Empty(Directory.EnumerateFiles(disk.Folder, "*.png"));
        string file = disk.PathOf("loads.csv");
        Assert.Equal($"--pictures \"{file}\": is a file: choose a folder.\n", Run.Of("joints", disk.Folder, "--case", "DC", "--pictures", file).Error);
    }

    [Fact]
    public void Picture_OfASection_IsDrawn()
    {
        string file = disk.PathOf("cut.svg");
        Assert.Equal(0, Run.Of("section", Garrow, "--case", "DC", "--member", "U2U3", "--picture", file).Status);
        Assert.Contains("moments about L2", File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Completion_OfUnitLoad_GivesTheJoints() =>
        Assert.Contains("L1", Run.Of("[suggest:" + $"joints {disk.Folder} --unit-load ".Length + "]", $"joints {disk.Folder} --unit-load ").Output.Split('\n'));
}
