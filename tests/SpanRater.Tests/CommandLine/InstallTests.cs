namespace SpanRater.Tests.CommandLine;

/// <summary>What is asked of the program right after it was installed.</summary>
public sealed class InstallTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory();

    public void Dispose() => folder.Delete(recursive: true);

    [Fact]
    public void Version_TellsVersionAndCommit()
    {
        Run run = Run.Of("--version");
        Assert.Equal(0, run.Status);
        Assert.Matches(@"^spanrater \d+\.\d+\.\d+, (commit [0-9a-f]{40}|of no known commit)\n$", run.Output.ReplaceLineEndings("\n"));
    }

    // What is written out is what is built in: read as catalogues of one's own, every name is found taken, and nothing else is wrong with it.
    [Fact]
    public void Write_CopiesEveryCatalogueOut_AsTheRepositoryHoldsIt()
    {
        string at = Path.Combine(folder.FullName, "mine");
        Run run = Run.Of("vehicles", "--write", at);
        Assert.Equal(("", 0), (run.Error, run.Status));
        string[] repository = [.. Directory.EnumerateFiles(Path.Combine(Repository.Root, "vehicles")).Where(f => Path.GetExtension(f) is ".csv" or ".toml").Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal)];
        Assert.Equal(repository, Directory.EnumerateFiles(at).Select(f => Path.GetFileName(f)!).Order(StringComparer.Ordinal));
        Assert.All(repository, f => Assert.Equal(File.ReadAllBytes(Path.Combine(Repository.Root, "vehicles", f)), File.ReadAllBytes(Path.Combine(at, f))));
        Assert.Contains($"{repository.Length} catalogues written", run.Output, StringComparison.Ordinal);
        Assert.Contains("--catalogue", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_WhereFilesStand_RefusesAndChangesNothing()
    {
        File.WriteAllText(Path.Combine(folder.FullName, "notes.txt"), "mine");
        Run run = Run.Of("vehicles", "--write", folder.FullName);
        Assert.Equal(1, run.Status);
        Assert.Equal($"--write \"{folder.FullName}\": holds files already, and nothing is ever overwritten: name a folder that is not there yet, or an empty one.\n", run.Error);
        Assert.Single(Directory.EnumerateFileSystemEntries(folder.FullName));
    }

    [Fact]
    public void Write_WithAName_IsRefused()
    {
        Run run = Run.Of("vehicles", "EV3", "--write", Path.Combine(folder.FullName, "mine"));
        Assert.Equal(1, run.Status);
        Assert.Equal("--write copies whole catalogues: leave NAME out, and take the rows you want from the files.\n", run.Error);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder.FullName));
    }
}
