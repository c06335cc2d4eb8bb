using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>No name made of what a user wrote leaves its folder. What systems refuse is that of Microsoft's page on naming files, from memory.</summary>
public class FileNamesTests
{
    [Theory]
    [InlineData("U1", "U1")]
    [InlineData("../../etc/passwd", "______etc_passwd")]
    [InlineData("a\\b:c\0d", "a_b_c_d")]
    [InlineData("CON", "CON")]
    [InlineData("é ü", "___")]
    public void Of_AnyText_IsLettersDigitsHyphensAndLowLines(string text, string expected) => Assert.Equal(expected, FileNames.Of(text));

    [Fact]
    public void Of_ThreeHundredCharacters_IsCut() => Assert.Equal(FileNames.Longest, FileNames.Of(new string('x', 300)).Length);

    [Theory]
    [InlineData("letter.md", true)]
    [InlineData("step-01-L0.png", true)]
    [InlineData("", false)]
    [InlineData(".", false)]
    [InlineData("..", false)]
    [InlineData("a/b", false)]
    [InlineData("a\\b", false)]
    [InlineData("a\0b", false)]
    [InlineData("a:b", false)]
    [InlineData("CON", false)]
    [InlineData("aux.txt", false)]
    [InlineData("com1.csv", false)]
    [InlineData("lpt9", false)]
    [InlineData("com10", true)]
    [InlineData("console", true)]
    [InlineData("name.", false)]
    [InlineData("name ", false)]
    public void IsSafe_Name_IsWhetherEverySystemTakesItAsAFileOfTheFolder(string name, bool expected) => Assert.Equal(expected, FileNames.IsSafe(name));

    [Fact]
    public void Write_FileThatWouldLeaveItsFolder_IsRefusedAndNothingIsWritten()
    {
        string parent = Directory.CreateTempSubdirectory("span-names-").FullName;
        Assert.Throws<ArgumentException>(() => NewFolder.Write(Path.Combine(parent, "new"), [new NewFile("good.md", [1]), new NewFile("../evil.md", [1])]));
        Assert.Empty(Directory.EnumerateFileSystemEntries(parent));
        Directory.Delete(parent);
    }

    [Fact]
    public void Joints_NamesThatAreTraps_KeepTheirPicturesInTheFolderEachItsOwn()
    {
        using var bridge = new BridgeOnDisk();
        string longName = new('n', 300);
        foreach (string file in (string[])["joints.csv", "members.csv", "loads.csv"])
        {
            bridge.Write(file, File.ReadAllText(bridge.PathOf(file))
                .Replace("L0U1", "a", StringComparison.Ordinal).Replace("L0L1", "b", StringComparison.Ordinal).Replace("L1L2", "c", StringComparison.Ordinal).Replace("U1L2", "d", StringComparison.Ordinal).Replace("L1U1", "e", StringComparison.Ordinal)
                .Replace("L0", "../../x", StringComparison.Ordinal).Replace("L1", "..\\..\\X", StringComparison.Ordinal).Replace("L2", longName, StringComparison.Ordinal).Replace("U1", "CON", StringComparison.Ordinal));
        }

        string pictures = bridge.PathOf("pictures");
        Run run = Run.Of("joints", bridge.Folder, "--case", "DC", "--pictures", pictures);
        Assert.Equal((0, ""), (run.Status, run.Error));
        string[] names = [.. Directory.EnumerateFileSystemEntries(bridge.Folder, "*.png", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(pictures, f))];
        Assert.True(names.Length >= 4, string.Join(' ', names));
        Assert.All(names, n => Assert.True(FileNames.IsSafe(n), n));
        Assert.Equal(names.Length, names.Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.Empty(Directory.EnumerateFiles(Path.GetDirectoryName(bridge.Folder)!, "step-*"));
    }
}
