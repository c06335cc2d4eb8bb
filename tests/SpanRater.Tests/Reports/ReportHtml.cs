using System.Collections.Concurrent;
using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using SpanRater.Reports;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>Reads a field report. But for meta and input, which have no end, and switches without a value, the page is XML as well: what is not encoded would break it.</summary>
internal static class ReportHtml
{
    private static readonly ConcurrentDictionary<string, Lazy<XDocument>> Samples = new();

    /// <summary>The report of a sample, made once for all tests, which only read it.</summary>
    public static XDocument OfSample(string sample, params string[] more) => Samples.GetOrAdd($"{sample} {string.Join(' ', more)}", _ => new Lazy<XDocument>(() =>
    {
        string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.html");
        try
        {
            Run.Of(["report", Repository.Sample(sample), "--out", file, .. more]);
            Assert.InRange(new FileInfo(file).Length, 10_000, 2_000_000);
            return Parsed(File.ReadAllText(file));
        }
        finally
        {
            File.Delete(file);
        }
    })).Value;

    public static XDocument Parsed(string html)
    {
        Assert.StartsWith("<!DOCTYPE html>\n", html, StringComparison.Ordinal);
        string ended = Regex.Replace(html["<!DOCTYPE html>\n".Length..], "<((?:meta|input) [^>]*?) ?/?>", "<$1/>");
        return XDocument.Parse(Regex.Replace(ended, "<((?:details|input|label)[^>]*?) (open|checked|hidden)(?=[ />])", "<$1 $2=\"\""), LoadOptions.PreserveWhitespace);
    }

    /// <summary>Of scripts the page has its own, to the letter, and its facts, which are none; nothing else in it could run.</summary>
    public static void AssertRunsNothingElse(XDocument page)
    {
        XElement[] scripts = [.. page.Descendants("script")];
        Assert.Equal(2, scripts.Length);
        Assert.Equal("application/json", scripts[0].Attribute("type")?.Value);
        using (JsonDocument.Parse(scripts[0].Value))
        {
        }

        Assert.Empty(scripts[1].Attributes());
        Assert.Equal(PageScript.Text.Replace("<![CDATA[", "", StringComparison.Ordinal).Replace("]]>", "", StringComparison.Ordinal), scripts[1].Value);
        Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase));
        Assert.Contains($"script-src {PageScript.Source}", page.Descendants("meta").Single(m => m.Attribute("http-equiv") is not null).Attribute("content")!.Value, StringComparison.Ordinal);
    }

    /// <summary>The section of a chapter.</summary>
    public static XElement Chapter(XDocument page, string id) => page.Descendants("section").Single(s => s.Attribute("id")?.Value == id);

    /// <summary>The tables of an element that have a column.</summary>
    public static IEnumerable<XElement> TablesWith(XElement within, string heading) => within.Descendants("table").Where(t => Headings(t).Contains(heading));

    /// <summary>The headings of a table.</summary>
    public static IReadOnlyList<string> Headings(XElement table) => [.. table.Element("thead")!.Descendants("th").Select(h => h.Value)];

    /// <summary>The rows of a table, a cell each.</summary>
    public static IReadOnlyList<IReadOnlyList<XElement>> Rows(XElement table) => [.. table.Element("tbody")!.Elements("tr").Select(r => (IReadOnlyList<XElement>)[.. r.Elements("td")])];

    /// <summary>The text of a cell that a reader sees: without what is said to those who hear the page.</summary>
    public static string Seen(XElement cell) => string.Concat(cell.DescendantNodes().OfType<XText>().Where(t => t.Parent!.Attribute("class")?.Value != "unseen").Select(t => t.Value));
}
