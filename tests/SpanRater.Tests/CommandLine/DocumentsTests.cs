using System.Text.RegularExpressions;

namespace SpanRater.Tests.CommandLine;

/// <summary>What the documents quote is run, and its output held against what they say.</summary>
public sealed partial class DocumentsTests
{
    [Fact]
    public void Readme_QuotedOutputOfRate_IsWhatRatePrints()
    {
        string quoted = Block(Read("README.md"), "Governing:");
        Assert.Contains(quoted, Run.Of("rate", Repository.Sample("garrow-landing")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Readme_QuotedOutputOfPost_IsWhatPostPrints() =>
        Assert.Contains(Block(Read("README.md"), "One limit"), Run.Of("post", Repository.Sample("hollis-fork")).Output, StringComparison.Ordinal);

    [Fact]
    public void Traffic_QuotedOutput_IsWhatTrafficPrints() =>
        Assert.Contains(
            Block(Read("docs/traffic.md"), "Nearest to"),
            Run.Of("traffic", Repository.Sample("garrow-landing"), "--records", Path.Combine(Repository.Root, "samples/traffic/country-road.csv")).Output,
            StringComparison.Ordinal);

    [Fact]
    public void Learning_QuotedSteps_AreWhatJointsAndSectionPrint()
    {
        string document = Read("docs/learning.md");
        Assert.Contains(Block(document, "Step 5. Joint M1"), Run.Of("joints", Repository.Sample("garrow-landing"), "--case", "DC").Output, StringComparison.Ordinal);
        Assert.Contains(Block(document, "Cut 1, for L2U3"), Run.Of("section", Repository.Sample("tansy-weir"), "--unit-load", "L2", "--member", "L2U3").Output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(Repository.Root, "docs/pictures/garrow-landing-section-M2U3.png")));
    }

    [Fact]
    public void InfluenceLines_EverySentenceQuoted_IsPrinted()
    {
        string[] quotes = [.. Read("docs/influence-lines.md").Split('\n').Where(l => l.StartsWith("> ", StringComparison.Ordinal)).Select(l => l[2..])];
        string printed = Run.Of("influence", Repository.Sample("tansy-weir"), "--explain", "L2U3").Output
            + Run.Of("roll", Repository.Sample("tansy-weir"), "--vehicle", "EN service vehicle", "--explain", "L2U3").Output;
        Assert.Equal(7, quotes.Length);
        Assert.All(quotes, quote => Assert.Contains(quote, printed, StringComparison.Ordinal));
    }

    [Fact]
    public void Readme_PicturesAndPages_AreThere() =>
        Assert.All(
            Link().Matches(Read("README.md")).Select(m => m.Groups["path"].Value).Where(p => !p.Contains("://", StringComparison.Ordinal)),
            path => Assert.True(File.Exists(Path.Combine(Repository.Root, path)), path));

    [Fact]
    public void Formats_WholeBridgeToCopy_IsRatedWithoutAWord()
    {
        using var disk = new BridgeOnDisk();
        string[] parts = Block(Read("docs/formats.md"), "# bridge.toml").Split("# ", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(5, parts.Length);
        foreach (string part in parts)
        {
            int end = part.IndexOf('\n', StringComparison.Ordinal);
            disk.Write(part[..end], part[(end + 1)..]);
        }

        Run run = Run.Of("rate", disk.Folder);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("Quill Farm milk lorry", run.Output, StringComparison.Ordinal);
    }

    // On the joints of Hollis Fork, whose names the table uses.
    [Fact]
    public void Formats_TableOfDeadLoadToCopy_IsTakenOffWithoutAWord()
    {
        using var disk = new BridgeOnDisk();
        foreach (string file in (string[])["joints.csv", "members.csv", "sections.csv", "lacing.csv", "materials.toml", "bridge.toml"])
        {
            disk.Write(file, File.ReadAllText(Path.Combine(Repository.Sample("hollis-fork"), file)));
        }

        File.Delete(disk.PathOf("loads.csv"));
        disk.Write("dead.csv", Block(Read("docs/formats.md"), "item,case"));
        Run run = Run.Of("dead", disk.Folder);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("water main", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("README.md")]
    [InlineData("docs/learning.md")]
    [InlineData("docs/influence-lines.md")]
    [InlineData("docs/traffic.md")]
    [InlineData("samples/garrow-landing/README.md")]
    [InlineData("samples/tansy-weir/README.md")]
    [InlineData("samples/hollis-fork/README.md")]
    [InlineData("samples/wrenfield-ferry/README.md")]
    [InlineData("samples/mossback-lane/README.md")]
    public void EveryCommandQuoted_Runs(string document)
    {
        string[] commands = [.. Command().Matches(Read(document)).Select(m => m.Groups["line"].Value).Distinct()];
        Assert.NotEmpty(commands);
        string place = Directory.CreateTempSubdirectory("span-quoted-").FullName;
        try
        {
            Assert.All(commands, command =>
            {
                string[] words = [.. Word().Matches(command).Select(m => m.Value.Trim('"'))];
                string[] args = [.. words.Select((a, i) => a.StartsWith("samples/", StringComparison.Ordinal) ? Path.Combine(Repository.Root, a) : i > 0 && words[i - 1] == "--out" ? Path.Combine(place, a) : a)];
                Run run = Run.Of(args);
                Assert.True(run.Status == (WithoutAnswer.Contains(command) ? 3 : 0), $"spanrater {command}: {run.Status} {run.Error}");
            });
        }
        finally
        {
            Directory.Delete(place, recursive: true);
        }
    }

    // Quoted because they give no answer, and say why.
    private static readonly string[] WithoutAnswer = ["rate samples/wrenfield-ferry", "check samples/mossback-lane/variants/a-rods-gone"];

    // "spanrater new alder …": what they write goes to a place of its own.
    [Fact]
    public void Readme_CommandsThatWriteFolders_Run()
    {
        string place = Directory.CreateTempSubdirectory("span-readme-").FullName;
        string[] commands = [.. WritingCommand().Matches(Read("README.md")).Select(m => m.Groups["line"].Value)];
        Assert.Equal(3, commands.Length);
        try
        {
            Assert.All(commands, command =>
            {
                string[] args = [.. Word().Matches(command).Select(m => m.Value.Trim('"')).Select(a => a is "alder" || a.StartsWith("parker-3", StringComparison.Ordinal) ? Path.Combine(place, a) : a)];
                Run run = Run.Of(args);
                Assert.True(run.Status == 0, $"spanrater {command}: {run.Status} {run.Error}");
            });
        }
        finally
        {
            Directory.Delete(place, recursive: true);
        }
    }

    private static string Read(string document) => File.ReadAllText(Path.Combine(Repository.Root, document));

    // The fenced block that starts with a text.
    private static string Block(string document, string start)
    {
        int from = document.IndexOf("```\n" + start, StringComparison.Ordinal);
        Assert.True(from >= 0, start);
        from += 4;
        return document[from..document.IndexOf("```", from, StringComparison.Ordinal)];
    }

    // "spanrater check samples/…", in a block or between backticks; the table of commands names its arguments in capitals.
    [GeneratedRegex(@"spanrater (?<line>[a-z]+ samples/[^`\n]+)")]
    private static partial Regex Command();

    [GeneratedRegex(@"^spanrater (?<line>(new|exercise) [^`\n]+)$", RegexOptions.Multiline)]
    private static partial Regex WritingCommand();

    [GeneratedRegex("""
        "[^"]*"|\S+
        """)]
    private static partial Regex Word();

    [GeneratedRegex(@"\]\((?<path>[^)#]+)\)")]
    private static partial Regex Link();
}
