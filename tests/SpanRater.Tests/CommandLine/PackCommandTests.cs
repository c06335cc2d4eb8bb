namespace SpanRater.Tests.CommandLine;

/// <summary><c>pack</c>: what it refuses, with the mend, and that it writes whole or not at all.</summary>
public sealed class PackCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();
    private readonly string place = Directory.CreateTempSubdirectory("span-pack-").FullName;

    private string Out => Path.Combine(place, "out");

    public void Dispose()
    {
        bridge.Dispose();
        Directory.Delete(place, recursive: true);
    }

    [Fact]
    public void Pack_FolderThatHoldsAnything_IsRefused_AndStaysAsItWas()
    {
        Directory.CreateDirectory(Out);
        File.WriteAllText(Path.Combine(Out, "letter.md"), "mine");

        Run run = Run.Of("pack", bridge.Folder, "--out", Out);

        Assert.Equal((1, $"--out \"{Out}\": holds files already, and nothing is ever overwritten: name a folder that is not there yet, or an empty one.\n"), (run.Status, run.Error));
        Assert.Equal("mine", File.ReadAllText(Assert.Single(Directory.EnumerateFileSystemEntries(Out))));
    }

    [Fact]
    public void Pack_EmptyFolder_IsFilled()
    {
        Directory.CreateDirectory(Out);
        Assert.Equal(0, Run.Of("pack", bridge.Folder, "--out", Out).Status);
        Assert.Equal(["calculation.html", "calculation.md", "letter.html", "letter.md", "sign.svg"], Directory.EnumerateFileSystemEntries(Out).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Pack_OutThatIsAFile_IsRefused()
    {
        File.WriteAllText(Out, "mine");
        Run run = Run.Of("pack", bridge.Folder, "--out", Out);
        Assert.Equal((1, $"--out \"{Out}\": is a file: name a folder that is not there yet.\n"), (run.Status, run.Error));
        Assert.Equal("mine", File.ReadAllText(Out));
    }

    [Fact]
    public void Pack_OutWithinAFolderThatIsNotThere_IsRefused()
    {
        Run run = Run.Of("pack", bridge.Folder, "--out", Path.Combine(Out, "deep"));
        Assert.Equal((1, $"--out \"{Path.Combine(Out, "deep")}\": cannot be made: the folder {Out} is not there.\n"), (run.Status, run.Error));
        NothingIsWritten();
    }

    [Theory]
    [InlineData("26.11.2026")]
    [InlineData("2026-02-30")]
    public void Pack_DateThatIsNone_IsRefused(string date)
    {
        Run run = Run.Of("pack", bridge.Folder, "--out", Out, "--date", date);
        Assert.Equal((1, $"--date \"{date}\": write year, month and day, as 2026-11-26.\n"), (run.Status, run.Error));
        NothingIsWritten();
    }

    [Fact]
    public void Pack_WithoutOut_AsksForIt() => Assert.Contains("--out", Run.Of("pack", bridge.Folder).Error, StringComparison.Ordinal);

    [Fact]
    public void Pack_BridgeThatIsNotThere_IsRefusedAsReportDoes()
    {
        string wrong = bridge.Folder + "x";
        Run run = Run.Of("pack", wrong, "--out", Out), report = Run.Of("report", wrong, "--out", Path.Combine(place, "r.html"));
        Assert.Equal((report.Status, report.Error), (run.Status, run.Error));
        Assert.Equal(1, run.Status);
        NothingIsWritten();
    }

    [Fact]
    public void Pack_Mechanism_IsRefusedWithTheReason()
    {
        string sways = Path.Combine(Repository.Sample("mossback-lane"), "variants", "a-rods-gone");
        Run run = Run.Of("pack", sways, "--out", Out), report = Run.Of("report", sways, "--out", Path.Combine(place, "r.html"));
        Assert.Equal(1, run.Status);
        Assert.StartsWith("Nothing is rated, and no pack is written. Mechanism", run.Error, StringComparison.Ordinal);
        Assert.Equal((report.Status, report.Error.Replace("no report", "no pack", StringComparison.Ordinal)), (run.Status, run.Error));
        NothingIsWritten();
    }

    [Fact]
    public void Pack_NothingRated_IsWritten_AndEndsAsRateDoes()
    {
        bridge.Replace("members.csv", "40", "");
        Run run = Run.Of("pack", bridge.Folder, "--out", Out);
        Assert.Equal((3, 3), (run.Status, Run.Of("rate", bridge.Folder).Status));
        Assert.Contains("Nothing could be rated, and no vehicle can be called safe here.", File.ReadAllText(Path.Combine(Out, "letter.md")), StringComparison.Ordinal);
    }

    private void NothingIsWritten() => Assert.Empty(Directory.EnumerateFileSystemEntries(place));
}
