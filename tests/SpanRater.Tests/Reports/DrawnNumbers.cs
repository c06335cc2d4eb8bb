using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace SpanRater.Tests.Reports;

/// <summary>A number as it stands in a report.</summary>
/// <param name="Text">The number as written.</param>
/// <param name="Node">The text it stands in.</param>
internal sealed record DrawnNumber(string Text, XText Node)
{
    /// <summary>Its size.</summary>
    public double Value => Math.Abs(double.Parse(Plain, NumberStyles.Float, CultureInfo.InvariantCulture));

    /// <summary>Its decimals.</summary>
    public int Decimals => Plain.Split('e', 'E')[0].Split('.') is [_, var behind] ? behind.Length : 0;

    private string Plain => Text.Replace('−', '-').Replace(",", "", StringComparison.Ordinal).TrimStart('+');
}

/// <summary>
/// The numbers of a report, and whether each of them can be opened: it stands within a working, leads to one that holds it, or repeats one that does; else it is of a kind that has nothing to open,
/// each of which is named with its reason in <see cref="KindWithoutWorking"/>.
/// </summary>
internal sealed partial class DrawnNumbers
{
    private readonly XElement root;
    private readonly Dictionary<string, XElement> byId;
    private readonly Dictionary<XElement, double[][]> numbersOf = [];
    private readonly Lazy<double[][]> opened;
    private readonly XElement input;

    public DrawnNumbers(XDocument page)
    {
        root = page.Root!;
        byId = root.Descendants().Where(e => e.Attribute("id") is not null).ToDictionary(e => e.Attribute("id")!.Value);
        input = byId["input"];
        All = [.. root.Descendants("body").DescendantNodes().OfType<XText>().Where(t => !t.Ancestors().Any(a => a.Name.LocalName is "script" or "style" or "desc" or "title")).SelectMany(Of)];

        // What links and titles of workings show, and what workings come to.
        opened = new(() => ByDecimals(root.Descendants().Where(e => (e.Name.LocalName == "a" && TargetOf(e) is not null) || e.Name.LocalName == "summary" || e.Attribute("class")?.Value == "equation" || (e.Name.LocalName == "td" && WorkingAround(e) is not null)).SelectMany(NumbersIn)));
    }

    /// <summary>All numbers, in the order in which they stand.</summary>
    public IReadOnlyList<DrawnNumber> All { get; }

    /// <summary>Every number of a page that needs a working and does not open.</summary>
    public static IReadOnlyList<string> FaultsOf(XDocument page)
    {
        var numbers = new DrawnNumbers(page);
        return [.. numbers.All.Where(n => KindWithoutWorking(n) is null).Select(numbers.FaultOf).OfType<string>()];
    }

    /// <summary>Why a number has no working, and needs none; null where it needs one.</summary>
    public static string? KindWithoutWorking(DrawnNumber number)
    {
        XElement at = number.Node.Parent!;
        string chapter = ChapterOf(at);
        string? heading = at.AncestorsAndSelf("td").FirstOrDefault() is { } cell ? HeadingOf(cell) : null;
        string said = number.Node.Value;
        return chapter == "input" ? "the input itself, to which all is opened"
            : at.AncestorsAndSelf().Any(a => a.Attribute("id")?.Value == "living") ? "what the page rolls: its own table of axles and ordinates opens it, and the tests of the page hold it to the engine"
            : chapter == "findings" ? "a reading as it was entered, in both units"
            : chapter == "measure" && heading is "read ± doubt" or "as built" or "least read" ? "a reading or a dimension as it was given, fractions as decimals"
            : chapter == "vehicles" && (at.AncestorsAndSelf().Any(a => a.Attribute("id")?.Value == "loads-in") || at.AncestorsAndSelf("figure").Any()) ? "a vehicle as its catalogue has it, with the source beside it, or a drawing of it"
            : heading is not null && heading.StartsWith("weight [", StringComparison.Ordinal) ? "the weight of a vehicle: the sum of the axles that are listed with their source"
            : heading is not null && heading.StartsWith("RF × weight", StringComparison.Ordinal) ? "a product of two cells of its row, as its heading says"
            : chapter == "check" && heading == "value" && !at.AncestorsAndSelf("a").Any() ? "a count, or a length between joints whose coordinates are the input"
            : at.Name.LocalName is "li" or "p" or "strong" or "td" && Source().IsMatch(said) ? "a value of a standard or a rule, with its source in the same sentence"
            : at.Name.LocalName is "h1" ? "the name of the bridge"
            : at.Name.LocalName is "figcaption" ? "a count of what is drawn, or a limit of the legend"
            : at.Name.LocalName is "summary" && Regex.IsMatch(said, @"\(\d+\)$") ? "how many things open below"
            : null;
    }

    /// <summary>What is wrong with a number that needs a working; null where it opens.</summary>
    public string? FaultOf(DrawnNumber number)
    {
        XElement at = number.Node.Parent!;
        XElement? link = at.AncestorsAndSelf("a").FirstOrDefault(), row = at.AncestorsAndSelf("tr").FirstOrDefault();
        if (WorkingAround(at) is not null)
        {
            return null;
        }

        if (link is not null && link.Attribute("href")?.Value.EndsWith("-in", StringComparison.Ordinal) == true)
        {
            return TargetOf(link) is not { } target ? Told(number, "leads to no working")
                : Holds(target, number) ? null : Told(number, $"leads to \"{target.Element("summary")?.Value}\", which does not hold it");
        }

        // A row is opened by its own links; a table whose row has none is no place to repeat a number.
        if (row is not null && row.Descendants("a").Select(TargetOf).OfType<XElement>().ToArray() is { Length: > 0 } ways && ways.Any(w => Holds(w, number)))
        {
            return null;
        }

        if (at.AncestorsAndSelf("td").FirstOrDefault() is { } cell && Head(cell)?.Element("a") is { } headed && TargetOf(headed) is { } column && Holds(column, number))
        {
            return null;
        }

        if (Holds(input, number))
        {
            return null;
        }

        // A fold that is no working itself says where to go on.
        if (at.Ancestors("details").FirstOrDefault() is { } fold && fold.Descendants("p").Where(p => p.Attribute("class")?.Value == "way").SelectMany(p => p.Elements("a")).Select(TargetOf).OfType<XElement>().Any(w => Holds(w, number) || row is null))
        {
            return null;
        }

        bool isRepeat = at.Name.LocalName is "p" or "strong" or "li" or "text" or "figcaption" or "summary" or "td" && (row is null || ChapterOf(at) is "vehicles" or "dead" or "not-rated");
        return isRepeat && Has(opened.Value, number) ? null : Told(number, "is opened nowhere");
    }

    private static string Told(DrawnNumber number, string what) => $"{number.Text} {what}: <{number.Node.Parent!.Name.LocalName}> of {ChapterOf(number.Node.Parent!)}: {number.Node.Value.Trim()}";

    // The fold that a link leads into, where it works something.
    private XElement? TargetOf(XElement link) =>
        link.Attribute("href")?.Value is ['#', .. var id] && byId.TryGetValue(id, out XElement? within) && within.Parent is { Name.LocalName: "details" } fold && IsWorking(fold) ? fold : null;

    private static XElement? WorkingAround(XElement at) => at.AncestorsAndSelf("details").FirstOrDefault() is { } fold && IsWorking(fold) ? fold : null;

    private static bool IsWorking(XElement fold) => fold.DescendantNodes().OfType<XText>().Any(t => t.Value.Contains(" = ", StringComparison.Ordinal) || t.Value.Contains('×', StringComparison.Ordinal));

    private bool Holds(XElement place, DrawnNumber number)
    {
        if (!numbersOf.TryGetValue(place, out double[][]? there))
        {
            there = ByDecimals(NumbersIn(place));
            numbersOf.Add(place, there);
        }

        return Has(there, number);
    }

    // As good as written: rounded or cut to the decimals of the number drawn, which may be a shorter form of what stands there.
    private static bool Has(double[][] there, DrawnNumber number)
    {
        double step = Math.Pow(10, -number.Decimals), low = number.Value - (0.501 * step), high = number.Value + (1.0001 * step);
        for (int decimals = 0; decimals < there.Length; decimals++)
        {
            double from = decimals >= Math.Min(number.Decimals, 1) ? low : number.Value, to = decimals >= Math.Min(number.Decimals, 1) ? high : number.Value;
            int at = Array.BinarySearch(there[decimals], from);
            at = at < 0 ? ~at : at;
            if (at < there[decimals].Length && there[decimals][at] <= to)
            {
                return true;
            }
        }

        return false;
    }

    private static double[][] ByDecimals(IEnumerable<DrawnNumber> numbers)
    {
        ILookup<int, double> by = numbers.ToLookup(n => n.Decimals, n => n.Value);
        return [.. Enumerable.Range(0, 16).Select(d => by[d].Order().ToArray())];
    }

    private static IEnumerable<DrawnNumber> NumbersIn(XElement place) => place.DescendantNodes().OfType<XText>().SelectMany(Of);

    private static IEnumerable<DrawnNumber> Of(XText text) => Number().Matches(Name().Replace(text.Value, m => new string(' ', m.Length))).Select(m => new DrawnNumber(m.Value, text));

    private static string ChapterOf(XElement at) => at.AncestorsAndSelf("section").FirstOrDefault(s => s.Attribute("class")?.Value == "chapter")?.Attribute("id")?.Value ?? "top";

    private static XElement? Head(XElement cell) => cell.Ancestors("table").First().Element("thead")?.Descendants("th").ElementAtOrDefault(cell.ElementsBeforeSelf().Count());

    private static string? HeadingOf(XElement cell) => Head(cell)?.Value;

    // Not the digits of a name such as M2U3 or EV3, nor of a path.
    [GeneratedRegex(@"(?<![\w.#/])[-−+]?(?:\d{1,3}(?:,\d{3})+(?!\d)|\d+)(?:\.\d+)?(?:[eE][+\-−]?\d+)?(?![\w]|\.\d)")]
    private static partial Regex Number();

    // Names of vehicles, editions, years, clauses, dates, tables of standards, the version.
    [GeneratedRegex(@"Type 3-3|Type 3S2|Type 3|\b\d+(?:st|nd|rd|th) ed\.(?: \(\d{4}\))?|\((?:19|20)\d\d\)|\b\d+[A-Z]?(?:\.\d+[A-Z]?){2,}[a-z]?(?:-\d+)?\b|\b\d[A-Z]\.\d+[\d.]*[a-z]?(?:-\d+)?|\b\d{1,2} [A-Z][a-z]+ \d{4}|\b\d{4}-\d{2}-\d{2}\b|spanrater \d+\.\d+\.\d+|Tables? \S+|\d+ (?:CFR|U\.S\.C\.) [\d.]+|EN \d+-\d+|\bof \d{4}\b|""[^""]*""")]
    private static partial Regex Name();

    [GeneratedRegex(@"from memory|common practice|AASHTO|FHWA|EN 1991|National Design|bridge\.toml|Safe loads:|CFR|, by the Manual|USDA")]
    private static partial Regex Source();
}
