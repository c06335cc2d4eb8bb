using System.Globalization;
using System.Xml.Linq;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>The report that goes to the field: one file, whole, the same each time, that says what the commands say.</summary>
public sealed class FieldReportTests : IDisposable
{
    private const string Hostile = "<script>alert(1)</script>\\\"'&\u202e\u202c";

    private readonly BridgeOnDisk bridge = new();
    private readonly string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.html");

    public static TheoryData<string> Samples => ["garrow-landing", "hollis-fork", "mossback-lane", "tansy-weir", "wrenfield-ferry"];

    public void Dispose()
    {
        bridge.Dispose();
        File.Delete(file);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_OfASample_SaysWhatRateAndPostSay_AndFetchesNothing(string sample)
    {
        string folder = Repository.Sample(sample);
        Run run = Run.Of("report", folder, "--out", file), rate = Run.Of("rate", folder, "--format", "markdown"), post = Run.Of("post", folder);

        Assert.Equal(rate.Status, run.Status);
        string html = File.ReadAllText(file);
        XDocument page = ReportHtml.Parsed(html);
        string text = page.Root!.Value;
        string governing = Run.Of("rate", folder).Output.Split("\n\n")[1];
        Assert.Contains(governing, text, StringComparison.Ordinal);
        Assert.Contains(post.Output.Split("\n\n")[1], text, StringComparison.Ordinal);
        Assert.InRange(Count(text, Words.Caution), 2, 20);
        Assert.StartsWith("default-src 'none'", page.Descendants("meta").Single(m => m.Attribute("http-equiv") is not null).Attribute("content")!.Value, StringComparison.Ordinal);
        Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName is "link" or "img" or "iframe" or "object");
        Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName is "src" or "action" || (a.Name.LocalName == "href" && !a.Value.StartsWith('#')));
        ReportHtml.AssertRunsNothingElse(page);
        string style = page.Descendants("style").Single().Value;
        Assert.DoesNotContain("url(", style, StringComparison.Ordinal);
        Assert.DoesNotContain("@import", style, StringComparison.Ordinal);
        Assert.InRange(new FileInfo(file).Length, 10_000, 2_000_000);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_EveryChapterLink_LeadsToAChapter_AndEveryCellHasAHeading(string sample)
    {
        Run.Of("report", Repository.Sample(sample), "--out", file);
        XDocument page = ReportHtml.Parsed(File.ReadAllText(file));

        string[] ids = [.. page.Descendants().Attributes("id").Select(a => a.Value)];
        Assert.Equal(ids.Distinct(), ids);
        Assert.All(page.Descendants("a"), a => Assert.Contains(a.Attribute("href")!.Value[1..], ids));
        Assert.All(page.Descendants("table"), t => Assert.All(t.Descendants("tr"), r => Assert.Equal(t.Element("thead")!.Descendants("th").Count(), r.Elements().Count())));
        Assert.All(page.Descendants("svg"), s => Assert.False(string.IsNullOrWhiteSpace(s.Attribute("aria-label")?.Value)));
    }

    [Fact]
    public void Report_OfTheSameInput_IsTheSameBytes_InWhateverCulture()
    {
        Run.Of("report", Repository.Sample("hollis-fork"), "--out", file);
        byte[] first = File.ReadAllBytes(file);
        CultureInfo commas = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        Run.Of("report", Repository.Sample("hollis-fork"), "--out", file);
        CultureInfo.CurrentCulture = commas;

        Assert.NotEqual(".", commas.NumberFormat.NumberDecimalSeparator);
        Assert.Equal(first, File.ReadAllBytes(file));
        Run.Of("report", Repository.Sample("hollis-fork"), "--out", file, "--date", "2026-11-26");
        Assert.Contains("Load rating report, 2026-11-26", ReportHtml.Parsed(File.ReadAllText(file)).Root!.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_HostileName_IsTextEverywhere()
    {
        bridge.Replace("bridge.toml", "name = \"", $"name = \"{Hostile}{new string('x', 10_000)}");

        Run run = Run.Of("report", bridge.Folder, "--out", file);

        Assert.Equal("", run.Error);
        string html = File.ReadAllText(file);
        XDocument page = ReportHtml.Parsed(html);
        ReportHtml.AssertRunsNothingElse(page);
        Assert.Contains("<script>alert(1)</script>\"'&", page.Descendants("h1").Single().Value, StringComparison.Ordinal);
        Assert.Contains("<script>alert(1)</script>\"'&", page.Descendants("title").First().Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_HoldsEachInputFileWithItsHash()
    {
        Run.Of("report", bridge.Folder, "--out", file);
        XElement[] inputs = [.. ReportHtml.Chapter(ReportHtml.Parsed(File.ReadAllText(file)), "input").Descendants("details")];

        string[] files = [.. Directory.EnumerateFiles(bridge.Folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal)];
        Assert.Equal(files, inputs.Select(i => i.Element("summary")!.Value.Split(' ')[0]));
        Assert.All(inputs.Zip(files), p => Assert.Equal(
            (Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(Path.Combine(bridge.Folder, p.Second)))), File.ReadAllText(Path.Combine(bridge.Folder, p.Second))),
            (p.First.Descendants("span").Single().Value, p.First.Element("pre")!.Value)));
    }

    [Theory]
    [InlineData("report.txt", "--out \"report.txt\": the report is a page for a browser: end its name in .html.")]
    [InlineData("report", "--out \"report\": the report is a page for a browser: end its name in .html.")]
    public void Report_OutputWithAnotherEnding_IsRefused(string output, string expected)
    {
        Run run = Run.Of("report", bridge.Folder, "--out", output);
        Assert.Equal((1, expected + "\n"), (run.Status, run.Error));
        Assert.False(File.Exists(output));
    }

    [Fact]
    public void Report_DateThatIsNone_IsRefused()
    {
        Run run = Run.Of("report", bridge.Folder, "--out", file, "--date", "26.11.2026");
        Assert.Equal((1, "--date \"26.11.2026\": write year, month and day, as 2026-11-26.\n"), (run.Status, run.Error));
        Assert.False(File.Exists(file));
    }

    [Fact]
    public void Report_WithoutOut_AsksForIt() => Assert.Contains("--out", Run.Of("report", bridge.Folder).Error, StringComparison.Ordinal);

    private static int Count(string text, string part) => text.Split(part).Length - 1;
}
