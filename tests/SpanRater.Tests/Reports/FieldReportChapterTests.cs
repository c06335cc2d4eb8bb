using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>The chapters of the field report: all there and in order, and their numbers those of the commands.</summary>
public sealed class FieldReportChapterTests
{
    private static readonly string[] Order =
    [
        "governing", "not-rated", "elevation", "rating", "posting", "assumptions", "findings", "measure", "dead", "vehicles", "influence", "capacity", "factors", "checks", "learners", "check", "input", "sign-off",
    ];

    public static TheoryData<string> Samples => FieldReportTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_OfASample_HasEveryChapterInOrder_DecisionFirst(string sample)
    {
        XDocument page = ReportHtml.OfSample(sample);

        Assert.Equal(Order, page.Descendants("main").Single().Elements("section").Select(s => s.Attribute("id")!.Value));
        XElement decision = page.Descendants("header").Single().Descendants("section").Single();
        Assert.Contains(Words.Caution, decision.Value, StringComparison.Ordinal);
        Assert.All(page.Descendants("main").Single().Elements("section").Where(s => s.Attribute("id")!.Value != "sign-off"), s => Assert.True(s.Value.Trim().Length > s.Element("h2")!.Value.Length + 20));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_EveryRowOfTheRatingTables_LeadsToItsFactorOpened(string sample)
    {
        XDocument page = ReportHtml.OfSample(sample);
        XElement rating = ReportHtml.Chapter(page, "rating"), factors = ReportHtml.Chapter(page, "factors");
        int rows = 0;
        foreach ((string heading, XElement table) in ((string[])["factor", "lowest factor"]).SelectMany(h => ReportHtml.TablesWith(rating, h).Select(t => (h, t))))
        {
            IReadOnlyList<string> headings = ReportHtml.Headings(table);
            int name = headings.ToList().FindIndex(h => h is "part" or "member"), vehicle = headings.ToList().IndexOf("vehicle"), level = headings.ToList().IndexOf("level");
            foreach (IReadOnlyList<XElement> row in ReportHtml.Rows(table))
            {
                XElement cell = row[headings.ToList().IndexOf(heading)];
                string factor = ReportHtml.Seen(cell), target = cell.Element("a")!.Attribute("href")!.Value[1..];
                XElement within = factors.Descendants().Single(e => e.Attribute("id")?.Value == target), fold = within.Parent!;
                Assert.Equal("details", fold.Name.LocalName);
                string title = fold.Element("summary")!.Value;
                Assert.StartsWith($"{factor}: ", title, StringComparison.Ordinal);
                Assert.Contains(row[name].Value, title, StringComparison.Ordinal);
                Assert.Contains(row[vehicle].Value, title, StringComparison.Ordinal);
                Assert.Contains($"{row[level].Value} level", title, StringComparison.Ordinal);
                if (double.TryParse(factor, CultureInfo.InvariantCulture, out _))
                {
                    Assert.Contains(within.Elements("h3"), h => h.Value.EndsWith($"RF = {factor}", StringComparison.Ordinal) || h.Value.Contains($"RF = {factor}", StringComparison.Ordinal));
                }

                rows++;
            }
        }

        Assert.True(rows > 10);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_TableOfOrdinates_IsThatOfInfluence_AndEveryMemberHasItsLineDrawn(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample), "influence");
        using JsonDocument json = JsonDocument.Parse(Run.Of("influence", Repository.Sample(sample), "--format", "json").Output);

        string[] points = [.. json.RootElement.GetProperty("panelPoints").EnumerateArray().Select(p => p.GetProperty("joint").GetString()!)];
        XElement table = chapter.Descendants("table").Single(t => ReportHtml.Headings(t).Skip(1).SequenceEqual(points));
        JsonElement[] effects = [.. json.RootElement.GetProperty("effects").EnumerateArray()];
        IReadOnlyList<XElement>[] rows = [.. ReportHtml.Rows(table).Skip(1)];
        Assert.Equal(effects.Select(e => e.GetProperty("name").GetString()), rows.Select(r => r[0].Value));
        Assert.All(effects.Zip(rows), p => Assert.Equal(
            p.First.GetProperty("ordinates").EnumerateArray().Select(o => ResultTable.Figure(o.GetDouble(), 4)),
            p.Second.Skip(1).Select(c => c.Value)));
        string[] members = [.. effects.Where(e => e.GetProperty("kind").GetString() == "member").Select(e => e.GetProperty("name").GetString()!)];
        XElement[] drawn = [.. chapter.Descendants("svg").Where(s => s.Attribute("aria-label")!.Value.StartsWith("Influence line of ", StringComparison.Ordinal))];
        Assert.Equal(members.Order(StringComparer.Ordinal), drawn.Select(s => s.Attribute("aria-label")!.Value["Influence line of ".Length..].Split('.')[0]).Order(StringComparer.Ordinal));
        Assert.All(drawn, s => Assert.Equal(points, s.Elements("text").Select(t => t.Value).Where(points.Contains)));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_Envelope_IsTheLargestLiveForceOfAllRowsOfRate(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample, "--units", "si"), "influence");
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", Repository.Sample(sample), "--format", "json").Output);
        ILookup<(string, string), (double Live, string Vehicle, string? Truss)> live = json.RootElement.GetProperty("ratings").EnumerateArray()
            .Where(r => r.GetProperty("part").GetString() == "truss member" && r.GetProperty("live").ValueKind == JsonValueKind.Number)
            .ToLookup(r => (r.GetProperty("member").GetString()!, r.GetProperty("sense").GetString()!), r => (r.GetProperty("live").GetDouble(), r.GetProperty("vehicle").GetString()!, r.GetProperty("truss").GetString()));

        XElement table = ReportHtml.TablesWith(chapter, "tension under").Single();
        List<string> headings = [.. ReportHtml.Headings(table)];
        int rows = 0;
        foreach (IReadOnlyList<XElement> row in ReportHtml.Rows(table))
        {
            foreach (string sense in (string[])["tension", "compression"])
            {
                int column = headings.FindIndex(h => h == $"{sense} [kN]");
                (double Live, string Vehicle, string? Truss)[] all = [.. live[(row[0].Value, sense)].Where(l => l.Live != 0 && (headings[1] != "truss" || l.Truss == row[1].Value))];
                if (all.Length == 0)
                {
                    Assert.Equal(("", "none"), (row[column].Value, row[column + 1].Value));
                    continue;
                }

                double most = all.Max(l => Math.Abs(l.Live));
                Assert.Equal(ResultTable.Figure(sense == "tension" ? most : -most, 2), row[column].Value);
                Assert.Contains(row[column + 1].Value, all.Where(l => Math.Abs(l.Live) > most - 1e-6).Select(l => l.Vehicle));
                Assert.NotEqual("", row[column + 2].Value);
                rows++;
            }
        }

        Assert.True(rows >= json.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("part").GetString() == "truss member").Select(r => r.GetProperty("member").GetString()).Distinct().Count() / 2);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_Findings_AreEveryRowOfTheFile_WithItsPhoto(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample), "findings");
        string[] lines = [.. File.ReadAllLines(Path.Combine(Repository.Sample(sample), "findings.csv")).Where(l => l.Length > 0 && l[0] != '#').Skip(1)];

        XElement table = chapter.Descendants("table").Single();
        List<string> headings = [.. ReportHtml.Headings(table)];
        IReadOnlyList<IReadOnlyList<XElement>> rows = ReportHtml.Rows(table);
        Assert.Equal(lines.Length, rows.Count);
        Assert.All(lines.Zip(rows), p =>
        {
            Assert.StartsWith($"{p.Second[0].Value},", p.First, StringComparison.Ordinal);
            Assert.Contains($",{p.Second[headings.IndexOf("photo")].Value},{p.Second[headings.IndexOf("date")].Value}", p.First, StringComparison.Ordinal);
            Assert.Contains($",{p.Second[headings.IndexOf("by")].Value},", p.First, StringComparison.Ordinal);
        });
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_Assumptions_AreThoseOfRate_ThoseToConfirmFirst(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample, "--units", "si"), "assumptions");
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", Repository.Sample(sample), "--format", "json").Output);

        string[] told = [.. chapter.Descendants("li").Select(l => l.Value)], assumed = [.. json.RootElement.GetProperty("assumptions").EnumerateArray().Select(a => a.GetString()!)];
        Assert.Equal(assumed.OrderByDescending(a => a.StartsWith("to confirm: ", StringComparison.Ordinal)), told);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_Vehicles_AreAllDrawnWithTheirLoads_AndTheShareIsThatOfShare(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample), "vehicles");
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", Repository.Sample(sample), "--format", "json").Output);
        string[] rated = [.. json.RootElement.GetProperty("ratings").EnumerateArray().Select(r => r.GetProperty("vehicle").GetString()!).Distinct()];

        Assert.All(rated, v => Assert.Contains(chapter.Descendants("h3"), h => h.Value.StartsWith($"{v} (", StringComparison.Ordinal)));
        XElement[] sketches = [.. chapter.Descendants("svg").Where(s => s.Attribute("aria-label")!.Value.StartsWith("Side view. ", StringComparison.Ordinal))];
        Assert.NotEmpty(sketches);
        string share = string.Join(' ', Run.Of("share", Repository.Sample(sample)).Output.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), said = string.Join(' ', chapter.Value.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
        Assert.All(chapter.Descendants("svg").Where(s => s.Attribute("aria-label")!.Value.StartsWith("Cross-section", StringComparison.Ordinal)), s => Assert.NotEmpty(s.Elements("polygon")));
        Assert.All(ReportHtml.TablesWith(chapter, "lever rule").SelectMany(t => ReportHtml.Rows(t)), r => Assert.Contains(string.Join(' ', r.Select(c => c.Value)), share, StringComparison.Ordinal));
        Assert.Contains("lever rule", said, StringComparison.Ordinal);
    }
}
