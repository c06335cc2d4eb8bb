using System.Globalization;
using System.Text.Json;
using System.Xml.Linq;
using SpanRater.Files;
using SpanRater.Reports;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>The pack for checker and board: calculation, letter and sign, whole, that say what the commands say.</summary>
public sealed class CalculationPackTests
{
    private static readonly string[] Names = ["calculation.html", "calculation.md", "letter.html", "letter.md", "sign.svg"];

    public static TheoryData<string> Samples => ["garrow-landing", "hollis-fork", "mossback-lane", "tansy-weir", "wrenfield-ferry"];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Pack_OfASample_SaysWhatRateAndPostSay(string sample)
    {
        string folder = Repository.Sample(sample);
        using var pack = new PackOnDisk(folder);
        Run rate = Run.Of("rate", folder, "--all", "--format", "markdown");

        Assert.Equal((rate.Status, ""), (pack.Run.Status, pack.Run.Error));
        Assert.Equal(Names, pack.Files);
        Assert.Empty(pack.Beside);
        string governing = Run.Of("rate", folder).Output.Split("\n\n")[1];
        string[] post = Run.Of("post", folder).Output.Split("\n\n");
        string html = pack.Page("calculation.html").Root!.Value, markdown = pack.Read("calculation.md");
        Assert.Contains(governing, pack.Run.Output, StringComparison.Ordinal);
        Assert.All((string[])[governing, post[1], ScopeOf(folder)], said =>
        {
            Assert.Contains(said, html, StringComparison.Ordinal);
            Assert.Contains(said, markdown, StringComparison.Ordinal);
        });
        string[] rows = [.. rate.Output.Split('\n').SkipWhile(l => !l.StartsWith("## Every rating", StringComparison.Ordinal)).Where(l => l.StartsWith('|'))];
        Assert.True(rows.Length > 10);
        Assert.Contains(string.Join('\n', rows), pack.Text("calculation.md"), StringComparison.Ordinal);
        XElement table = pack.Page("calculation.html").Descendants("section").Single(s => s.Attribute("id")?.Value == "rating").Descendants("table").Last();
        Assert.Equal(rows.Length - 2, table.Element("tbody")!.Elements().Count());
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Pack_EveryDocument_BearsScopeCautionAndABlankForTheDecision(string sample)
    {
        string folder = Repository.Sample(sample), scope = ScopeOf(folder);
        using var pack = new PackOnDisk(folder);
        string[] documents = [pack.Page("calculation.html").Root!.Value, pack.Read("calculation.md"), pack.Page("letter.html").Root!.Value, pack.Read("letter.md"), pack.Sign()];
        Assert.All(documents, document =>
        {
            Assert.Contains(scope, document, StringComparison.Ordinal);
            Assert.Contains(Words.Caution, document, StringComparison.Ordinal);
            Assert.Contains("ecision", document, StringComparison.Ordinal);
        });
        Assert.All(FieldReport.SignOff, line => Assert.Contains($"| {line} |  |  |  |", documents[1], StringComparison.Ordinal));
        Assert.Contains("[decision and its date]", documents[3], StringComparison.Ordinal);
        Assert.Contains(SignFace.Generic, documents[4], StringComparison.Ordinal);
        Assert.Contains("Decision of the responsible engineer, name, date:", documents[4], StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Pack_Pages_FetchNothing_AndEveryLinkLeadsToAChapter(string sample)
    {
        using var pack = new PackOnDisk(Repository.Sample(sample));
        foreach (string file in (string[])["calculation.html", "letter.html"])
        {
            XDocument page = pack.Page(file);
            Assert.Equal("default-src 'none'; style-src 'unsafe-inline'", page.Descendants("meta").Single(m => m.Attribute("http-equiv") is not null).Attribute("content")!.Value);
            Assert.DoesNotContain(page.Descendants(), e => e.Name.LocalName is "script" or "link" or "img" or "iframe" or "object");
            Assert.DoesNotContain(page.Descendants().Attributes(), a => a.Name.LocalName is "src" or "action" || (a.Name.LocalName == "href" && !a.Value.StartsWith('#')));
            string[] ids = [.. page.Descendants().Attributes("id").Select(a => a.Value)];
            Assert.Equal(ids.Distinct(), ids);
            Assert.All(page.Descendants("a"), a => Assert.Contains(a.Attribute("href")!.Value[1..], ids));
            Assert.DoesNotContain("url(", page.Descendants("style").Single().Value, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Pack_OpensWhatGoverns_AndTheGoverningMemberWhereThatIsAnother()
    {
        using var pack = new PackOnDisk(Repository.Sample("hollis-fork"));
        string text = pack.Read("calculation.md");
        string[] equations = [.. ((string[])["--part", "--member"]).Zip((string[])["pin L1", "L1U1"])
            .SelectMany(o => Run.Of("explain", Repository.Sample("hollis-fork"), o.First, o.Second, "--vehicle", "EV3", "--format", "markdown").Output.Split('\n')).Where(l => l.StartsWith("$$", StringComparison.Ordinal))];
        Assert.True(equations.Length > 20);
        Assert.All(equations, equation => Assert.Contains(equation, pack.Text("calculation.md"), StringComparison.Ordinal));
        Assert.Contains("## What governs, opened: pin L1\n", text, StringComparison.Ordinal);
        Assert.Contains("## The governing truss member, opened: L1U1\n", text, StringComparison.Ordinal);
        Assert.Contains("L1U1 by section: 5.120 kip tension. Joint by joint: 5.120 kip tension.", text, StringComparison.Ordinal);
        Assert.Contains("What is left over must close", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pack_Basis_HoldsEveryClauseInDoubtOnce_WithItsSource()
    {
        using var pack = new PackOnDisk(Repository.Sample("garrow-landing"));
        string text = pack.Read("calculation.md");
        Assert.All((string[])["emergency factor", "special hauling factor", "lever rule", "closure"], name =>
        {
            Clause clause = Clauses.All.Single(c => c.Name == name);
            Assert.Single(text.Split('\n'), line => line.StartsWith($"| {clause.Name} | {clause.Citation} |", StringComparison.Ordinal));
        });
        Assert.Equal(2, text.Split("to confirm: LRFR live-load factor of ").Length - 1);
    }

    [Fact]
    public void Pack_HoldsEachInputFileWithItsHash_AndTheVersion()
    {
        using var disk = new BridgeOnDisk();
        using var pack = new PackOnDisk(disk.Folder);
        string text = pack.Read("calculation.md");
        Assert.All(Directory.EnumerateFiles(disk.Folder), file => Assert.Contains(
            $"| {Path.GetFileName(file)} | {Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(file)))} |", text, StringComparison.Ordinal));
        Assert.Matches(@"As they were read by spanrater \d+\.\d+\.\d+", text);
        Assert.DoesNotContain(disk.Folder, text, StringComparison.Ordinal);
    }

    [Fact]
    public void Pack_OfTheSameInput_IsTheSameBytes_InWhateverCulture()
    {
        CultureInfo commas = CultureInfo.CurrentCulture;
        Assert.NotEqual(".", commas.NumberFormat.NumberDecimalSeparator);
        using var first = new PackOnDisk(Repository.Sample("hollis-fork"));
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        using var second = new PackOnDisk(Repository.Sample("hollis-fork"));
        CultureInfo.CurrentCulture = commas;

        Assert.All(Names, name => Assert.Equal(first.Bytes(name), second.Bytes(name)));
    }

    [Fact]
    public void Pack_Date_StandsOnCalculationAndLetter()
    {
        using var disk = new BridgeOnDisk();
        using var pack = new PackOnDisk(disk.Folder, "--date", "2026-11-26");
        Assert.StartsWith("# Test bridge: calculation pack, 2026-11-26\n", pack.Read("calculation.md"), StringComparison.Ordinal);
        Assert.Contains("Calculation pack, 2026-11-26", pack.Page("calculation.html").Root!.Value, StringComparison.Ordinal);
        Assert.Contains("Date: 2026-11-26.", pack.Read("letter.md"), StringComparison.Ordinal);
    }

    [Fact]
    public void Pack_HostileName_IsTextEverywhere()
    {
        const string Name = "# <script>alert(1)</script> | ![x](y) & `a` $b$";
        using var disk = new BridgeOnDisk();
        disk.Replace("bridge.toml", "name = \"Test bridge\"", $"name = '{Name}'");
        using var pack = new PackOnDisk(disk.Folder);

        Assert.Equal("", pack.Run.Error);
        Assert.All(Names, file => Assert.DoesNotContain("<script", file.EndsWith(".md", StringComparison.Ordinal) ? pack.Text(file).Replace("\\<script", "", StringComparison.Ordinal) : pack.Text(file), StringComparison.OrdinalIgnoreCase));
        Assert.Equal(Name, pack.Page("calculation.html").Descendants("h1").Single().Value);
        Assert.Equal($"Draft letter: {Name}", pack.Page("letter.html").Descendants("h1").Single().Value);
        Assert.Contains(Name, pack.Sign(), StringComparison.Ordinal);
        foreach (string file in (string[])["calculation.md", "letter.md"])
        {
            string bare = pack.Text(file).Replace("\\\\", "", StringComparison.Ordinal);
            Assert.Contains(Name, pack.Read(file), StringComparison.Ordinal);
            Assert.DoesNotContain(bare.Split('\n'), line => line.StartsWith("# <", StringComparison.Ordinal) || line.Contains(" ![x", StringComparison.Ordinal) || line.Contains(" | ![", StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Pack_SvgOfTheSign_IsBlackOnWhite_AndHoldsNothingButWordsLinesAndPaper()
    {
        using var pack = new PackOnDisk(Repository.Sample("garrow-landing"));
        XDocument sign = XDocument.Parse(pack.Text("sign.svg"));
        Assert.Equal("http://www.w3.org/2000/svg", sign.Root!.Name.NamespaceName);
        Assert.Subset(new HashSet<string> { "svg", "style", "text", "polygon", "polyline" }, sign.Descendants().Select(e => e.Name.LocalName).ToHashSet());
        Assert.Subset(new HashSet<string> { "ink-black", "ink-paper" }, sign.Descendants().Attributes("class").SelectMany(c => c.Value.Split(' ')).Where(c => c.StartsWith("ink-", StringComparison.Ordinal)).ToHashSet());
    }

    private static string ScopeOf(string folder)
    {
        using var json = JsonDocument.Parse(Run.Of("rate", folder, "--format", "json").Output);
        return json.RootElement.GetProperty("scope").GetString()!;
    }
}
