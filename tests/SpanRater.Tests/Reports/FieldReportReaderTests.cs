using System.Globalization;
using System.Security.Cryptography;
using System.Xml.Linq;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>The field report for its readers: learners, those who check by hand, and those whose input is hostile.</summary>
public sealed class FieldReportReaderTests : IDisposable
{
    private const string Hostile = "<script>alert(1)</script>'&\u202eabc\u202c";

    private readonly BridgeOnDisk bridge = new();
    private readonly string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.html");

    public static TheoryData<string> Samples => FieldReportTests.Samples;

    public void Dispose()
    {
        bridge.Dispose();
        File.Delete(file);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_Learners_GetEveryStepOfJoints_WithItsFreeBody_AndValuesThatASwitchHides(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample), "learners");

        XElement[] steps = [.. chapter.Descendants("details").Where(d => d.Element("summary")!.Value.StartsWith("Step ", StringComparison.Ordinal))];
        Assert.NotEmpty(steps);
        Assert.Equal(Enumerable.Range(1, steps.Length).Select(s => string.Create(CultureInfo.InvariantCulture, $"Step {s}.")), steps.Select(s => s.Element("summary")!.Value[..(s.Element("summary")!.Value.IndexOf('.', StringComparison.Ordinal) + 1)]));
        Assert.All(steps, s => Assert.Single(s.Descendants("svg")));
        Assert.All(steps, s => Assert.Contains(s.Descendants("span"), v => v.Attribute("class")?.Value == "value"));

        // Nothing that a step finds stands outside of what is hidden, in words or in the drawing.
        Assert.All(steps, s => Assert.DoesNotContain(s.Descendants("svg").Single().Elements("text"), t => Found(s).Any(f => t.Value.StartsWith($"{f} = ", StringComparison.Ordinal) && !t.Value.EndsWith('?'))));
        XElement all = chapter.Descendants("input").Single(i => i.Attribute("id")!.Value == "hide-values");
        Assert.Equal(("checkbox", ""), (all.Attribute("type")!.Value, all.Attribute("checked")!.Value));
        Assert.All(chapter.Descendants("input"), i => Assert.Single(chapter.Descendants("label"), l => l.Attribute("for")!.Value == i.Attribute("id")!.Value));
        Assert.Equal(steps.Length + 2, chapter.Descendants("input").Count());

        static IEnumerable<string> Found(XElement step) =>
            step.Descendants("span").Where(v => v.Attribute("class")?.Value == "value" && v.Parent!.Attribute("class") is null && v.Value.Contains(": ", StringComparison.Ordinal)).Select(v => v.Value.Split(": ")[0]);
    }

    [Fact]
    public void Report_TrussThatStaticsCannotDivide_SaysWhyThereAreNoSteps_AndNoHandCheck()
    {
        bridge.Replace("joints.csv", "L1,12,0,,,yes", "L1,12,0,roller,,yes");
        string[] members = File.ReadAllLines(bridge.PathOf("members.csv"));
        bridge.Write("members.csv", $"{members[0]},area [in2],modulus [ksi]\n" + string.Concat(members.Skip(1).Select(m => $"{m},4,29000\n")));

        XDocument page = Of(bridge);

        const string Why = "Redundant: 5 members + 4 reactions = 9, more than 2 × 4 joints = 8; rank 8.";
        Assert.Contains("There is no solution joint by joint of this truss under case DC + DW. " + Why, ReportHtml.Chapter(page, "learners").Value, StringComparison.Ordinal);
        Assert.Contains(Why, ReportHtml.Chapter(page, "checks").Value, StringComparison.Ordinal);
        Assert.Empty(ReportHtml.Chapter(page, "learners").Descendants("input"));
    }

    [Theory]
    [InlineData("garrow-landing", "M2U3", "M2U3 by sections: 19.790 kip compression. Joint by joint: 19.790 kip compression.", "M2U3 by sections: 0.5090 compression. Joint by joint: 0.5090 compression.")]
    [InlineData("hollis-fork", "L1U1", "L1U1 by section: 7.680 kip tension. Joint by joint: 7.680 kip tension.", "Rods only pull here")]
    public void Report_HandCheck_CutsTheGoverningTrussMember_UnderDeadLoadAndAtItsLargestOrdinate(string sample, string member, string dead, string ordinate)
    {
        string folder = Repository.Sample(sample);
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample), "checks");

        Assert.Contains(dead, chapter.Value, StringComparison.Ordinal);
        Assert.Contains(ordinate, chapter.Value, StringComparison.Ordinal);
        Assert.Contains(dead[..dead.IndexOf(':', StringComparison.Ordinal)], Run.Of("section", folder, "--case", "DC", "--member", member).Output, StringComparison.Ordinal);
        string residual = Run.Of("rate", folder).Output.Split("Largest residual ")[1].Split('\n')[0].TrimEnd('.');
        Assert.Contains($"Largest residual {residual} of the largest load", chapter.Value, StringComparison.Ordinal);
        Assert.Contains("equations are left over", chapter.Value, StringComparison.Ordinal);
    }

    [Fact]
    public void Report_BridgeWithoutFindings_SaysThatNoneWereWrittenDown() =>
        Assert.Contains("None were written down: findings.csv is not there", ReportHtml.Chapter(Of(bridge), "findings").Value, StringComparison.Ordinal);

    [Fact]
    public void Report_CatalogueOfTheCommandLine_IsAmongTheInputFilesWithItsHash_AndWithoutItsFolder()
    {
        using var catalogue = new BridgeOnDisk();
        catalogue.Write("ours.csv", "vehicle,class,load [kip],spacing [ft],source\nOurs,legal,10,,weighed\nOurs,,12,9,\n");

        XElement chapter = ReportHtml.Chapter(Of(bridge, "--catalogue", catalogue.PathOf("ours.csv")), "input");

        XElement input = chapter.Descendants("details").Single(d => d.Element("summary")!.Value.StartsWith("ours.csv, a catalogue ", StringComparison.Ordinal));
        Assert.Equal(Convert.ToHexStringLower(SHA256.HashData(File.ReadAllBytes(catalogue.PathOf("ours.csv")))), input.Descendants("span").Single().Value);
        Assert.Equal(File.ReadAllText(catalogue.PathOf("ours.csv")), input.Element("pre")!.Value);
        Assert.DoesNotContain(catalogue.Folder, File.ReadAllText(file), StringComparison.Ordinal);
    }

    [Fact]
    public void Report_HostileNamesOfJointsMembersAndPhotos_StayTextEverywhere()
    {
        foreach (string table in (string[])["joints.csv", "members.csv", "loads.csv"])
        {
            string text = File.ReadAllText(bridge.PathOf(table)).Replace("L1U1", "HANGER", StringComparison.Ordinal).Replace("L0L1", "CHORD", StringComparison.Ordinal).Replace("L1L2", "OTHER", StringComparison.Ordinal);
            bridge.Write(table, text.Replace("L1,", $"\"{Hostile}\",", StringComparison.Ordinal).Replace("HANGER", $"\"{Hostile} hanger\"", StringComparison.Ordinal));
        }

        XDocument page = Of(bridge);

        string html = File.ReadAllText(file);
        ReportHtml.AssertRunsNothingElse(page);
        Assert.Contains(ReportHtml.Chapter(page, "influence").Descendants("td"), c => c.Value == $"{Hostile} hanger");
        Assert.Contains(ReportHtml.Chapter(page, "influence").Descendants("text"), t => t.Value == Hostile || t.Value.EndsWith('…'));
        Assert.InRange(html.Length, 10_000, 500_000);
    }

    [Fact]
    public void Report_HostileFindings_AndANoteOfTenThousandCharacters_StayText()
    {
        using BridgeOnDisk copy = BridgeOnDisk.OfSample("hollis-fork");
        string note = new string('n', 10_000) + Hostile;
        copy.Replace("findings.csv", "photo,date\n", "photo,date,note\n").Replace("findings.csv", "J. Rowe", $"\"{Hostile}\"").Replace("findings.csv", "P11,2026-05-30", $"\"{Hostile}\",2026-05-30,\"{note}\"");

        XDocument page = Of(copy);

        ReportHtml.AssertRunsNothingElse(page);
        XElement[] cells = [.. ReportHtml.Chapter(page, "findings").Descendants("td")];
        Assert.Single(cells, c => c.Value == note);
        Assert.True(cells.Count(c => c.Value == Hostile) > 3);
        Assert.InRange(new FileInfo(file).Length, 10_000, 2_000_000);
    }

    [Fact]
    public void Report_NamesOfTenThousandCharacters_AreCutInDrawings_AndWholeInTables()
    {
        string name = new('W', 10_000);
        bridge.Write("members.csv", File.ReadAllText(bridge.PathOf("members.csv")).Replace("L1U1,", $"{name},", StringComparison.Ordinal));

        XDocument page = Of(bridge);

        Assert.Contains(ReportHtml.Chapter(page, "influence").Descendants("td"), c => c.Value == name);
        Assert.All(page.Descendants("text"), t => Assert.InRange(t.Value.Length, 0, 201));
        Assert.All(page.Descendants("summary"), t => Assert.InRange(t.Value.Length, 0, 400));
        Assert.InRange(new FileInfo(file).Length, 10_000, 2_000_000);
    }

    private XDocument Of(BridgeOnDisk disk, params string[] more)
    {
        Run run = Run.Of(["report", disk.Folder, "--out", file, .. more]);
        Assert.True(run.Status is 0 or 3 or 4, run.Error);
        return ReportHtml.Parsed(File.ReadAllText(file));
    }
}
