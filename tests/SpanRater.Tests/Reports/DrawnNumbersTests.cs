using System.Xml.Linq;

namespace SpanRater.Tests.Reports;

/// <summary>Any number of the report, drawn at random, opens to formula and inputs, or is of a kind that has none.</summary>
public sealed class DrawnNumbersTests
{
    private const int Draws = 600, Seed = 1926;

    public static TheoryData<string> Reports => ["garrow-landing", "hollis-fork", "mossback-lane", "tansy-weir", "wrenfield-ferry", "mossback-lane/variants/b-king-post", "tansy-weir/variants/partial-factors"];

    [Theory]
    [MemberData(nameof(Reports))]
    public void Report_NumbersDrawnAtRandom_Open(string sample)
    {
        var numbers = new DrawnNumbers(ReportHtml.OfSample(sample));
        var random = new Random(Seed);
        DrawnNumber[] drawn = [.. Enumerable.Range(0, Draws).Select(_ => numbers.All[random.Next(numbers.All.Count)])];

        AssertOpen(numbers, drawn);
    }

    // Most numbers stand within workings, where a draw nearly always falls: what stands outside is looked at whole.
    [Theory]
    [MemberData(nameof(Reports))]
    public void Report_EveryNumberOutsideOfFolds_Opens(string sample)
    {
        var numbers = new DrawnNumbers(ReportHtml.OfSample(sample));
        DrawnNumber[] outside = [.. numbers.All.Where(n => !n.Node.Ancestors("details").Any())];

        Assert.InRange(outside.Length, 200, 5000);
        AssertOpen(numbers, outside);
    }

    [Theory]
    [InlineData("change")]
    [InlineData("chance below 1")]
    [InlineData("urgency")]
    [InlineData("safe load [US ton]")]
    public void Report_TableWithoutItsLinks_IsCaught(string heading)
    {
        XDocument page = Copy();
        foreach (XElement link in ReportHtml.TablesWith(page.Root!, heading).SelectMany(t => t.Descendants("tbody")).Descendants("a").ToArray())
        {
            link.ReplaceWith(link.Nodes());
        }

        Assert.NotEmpty(FaultsOf(page, ReportHtml.TablesWith(page.Root!, heading)));
    }

    [Fact]
    public void Report_WorkingsWithoutWhatTheyHold_AreCaught()
    {
        XDocument page = Copy();
        foreach (XElement fold in page.Descendants("div").Where(d => d.Attribute("id")?.Value is { } id && id.StartsWith("with-", StringComparison.Ordinal)))
        {
            fold.RemoveNodes();
        }

        XElement table = ReportHtml.TablesWith(page.Root!, "type").Single(t => ReportHtml.Headings(t).Contains("crawl speed"));
        Assert.True(FaultsOf(page, [table]).Count >= 40);
    }

    [Fact]
    public void Report_CellWithAnotherNumberThanItsWorking_IsCaught()
    {
        XDocument page = Copy();
        XElement table = ReportHtml.TablesWith(page.Root!, "type").Single(t => ReportHtml.Headings(t).Contains("crawl speed"));
        XText shown = table.Descendants("td").SelectMany(t => t.Descendants("a")).SelectMany(a => a.Nodes().OfType<XText>()).First(t => t.Value == "at most 0.775");
        shown.Value = "at most 0.785";

        Assert.Contains("0.785 leads to \"centred: every other type\", which does not hold it", Assert.Single(FaultsOf(page, [table])), StringComparison.Ordinal);
    }

    private static void AssertOpen(DrawnNumbers numbers, IEnumerable<DrawnNumber> drawn)
    {
        string[] faults = [.. drawn.Where(n => DrawnNumbers.KindWithoutWorking(n) is null).Select(numbers.FaultOf).OfType<string>()];
        Assert.True(faults.Length == 0, string.Join("\n", faults));
    }

    private static XDocument Copy() => new(ReportHtml.OfSample("garrow-landing"));

    private static List<string> FaultsOf(XDocument page, IEnumerable<XElement> places)
    {
        var numbers = new DrawnNumbers(page);
        HashSet<XElement> within = [.. places];
        return [.. numbers.All.Where(n => n.Node.Ancestors().Any(within.Contains) && DrawnNumbers.KindWithoutWorking(n) is null).Select(numbers.FaultOf).OfType<string>()];
    }
}
