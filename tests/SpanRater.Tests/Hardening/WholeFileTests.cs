using SpanRater.Files;

namespace SpanRater.Tests.Hardening;

/// <summary>Files and folders appear whole or not at all.</summary>
public sealed class WholeFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("span-whole-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Fact]
    public void Write_File_ReplacesTheOldOneAndLeavesNothingBeside()
    {
        string path = Path.Combine(folder, "a.txt");
        WholeFile.Write(path, [1]);
        WholeFile.Write(path, [2, 3]);
        Assert.Equal([2, 3], File.ReadAllBytes(path));
        Assert.Single(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void Write_OntoADevice_WritesToItAndDoesNotReplaceIt()
    {
        if (OperatingSystem.IsWindows())
        {
            // There no path is a device in this way.
            return;
        }

        WholeFile.Write("/dev/null", [1, 2, 3]);
        Assert.Empty(File.ReadAllBytes("/dev/null"));
        Assert.Empty(Directory.GetFiles("/dev", "null.*.part"));
    }

    [Fact]
    public void Write_NewFolder_IsThereWithAllItsFiles()
    {
        string path = Path.Combine(folder, "pack");
        NewFolder.Write(path, Files);
        AssertWhole(path);
    }

    [Fact]
    public void Write_EmptyFolderThatIsThere_IsThereWithAllItsFiles()
    {
        string path = Directory.CreateDirectory(Path.Combine(folder, "pack")).FullName;
        NewFolder.Write(path, Files);
        AssertWhole(path);
    }

    [Fact]
    public void Write_LinkToAnEmptyFolder_StaysALink()
    {
        string target = Directory.CreateDirectory(Path.Combine(folder, "target")).FullName, link = Path.Combine(folder, "link");
        Directory.CreateSymbolicLink(link, target);
        NewFolder.Write(link, Files);
        Assert.Equal(target, new DirectoryInfo(link).LinkTarget);
        Assert.Equal(["bridge", "key.md"], Directory.EnumerateFileSystemEntries(target).Select(Path.GetFileName).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Write_FolderThatHoldsFiles_IsRefusedAndUntouched()
    {
        string path = Directory.CreateDirectory(Path.Combine(folder, "pack")).FullName;
        File.WriteAllText(Path.Combine(path, "mine.txt"), "mine");
        Assert.Throws<IOException>(() => NewFolder.Write(path, Files));
        Assert.Equal("mine", File.ReadAllText(Assert.Single(Directory.GetFiles(path))));
    }

    private static IReadOnlyList<NewFile> Files => [new("key.md", [1, 2]), new("bridge/joints.csv", [3])];

    private void AssertWhole(string path)
    {
        Assert.Equal([1, 2], File.ReadAllBytes(Path.Combine(path, "key.md")));
        Assert.Equal([3], File.ReadAllBytes(Path.Combine(path, "bridge", "joints.csv")));
        Assert.Single(Directory.EnumerateFileSystemEntries(folder));
    }
}
