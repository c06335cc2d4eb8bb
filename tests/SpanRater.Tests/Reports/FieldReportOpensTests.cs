using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Tests.Reports;

/// <summary>What the report shows opens to where it comes from, and what stands there gives the number again.</summary>
public sealed partial class FieldReportOpensTests
{
    public static TheoryData<string> Samples => FieldReportTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_EveryOrdinate_FollowsFromTheUnitLoadThatItsHeadingLeadsTo(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample), "influence"), table = Ordinates(chapter);
        XElement[] headings = [.. table.Element("thead")!.Descendants("th")];
        IReadOnlyList<XElement>[] rows = [.. ReportHtml.Rows(table).Skip(1)];
        int byHand = 0;
        for (int p = 1; p < headings.Length; p++)
        {
            XElement fold = Led(chapter, headings[p].Element("a")!);
            Assert.Equal($"Load of 1 at {headings[p].Value}", fold.Element("summary")!.Value);
            Dictionary<string, IReadOnlyList<XElement>> solved = ReportHtml.Rows(fold.Descendants("table").Single()).ToDictionary(r => r[0].Value);
            foreach (IReadOnlyList<XElement> row in rows)
            {
                if (!solved.TryGetValue(row[0].Value, out IReadOnlyList<XElement>? line))
                {
                    // A rod that is slack carries nothing, and has no equation.
                    Assert.Equal("0.0000", row[p].Value);
                    Assert.Contains("is slack while these lines hold", Led(chapter, row[0].Element("a")!).Value, StringComparison.Ordinal);
                    continue;
                }

                Assert.Equal(row[p].Value, line[1].Value);
                (double value, double doubt) = SolvedByHand.Of(line[3].Value, line[0].Value);
                Assert.Equal(double.Parse(row[p].Value, CultureInfo.InvariantCulture), value, doubt + 1e-4);
                byHand++;
            }
        }

        Assert.True(byHand >= (rows.Length - 2) * (headings.Length - 1));
    }

    // The section that gives a line is found beside the solution of the joints: the two are independent routes.
    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_EveryMemberOfTheOrdinates_LeadsToItsLine_WhoseCutGivesTheSameOrdinates(string sample)
    {
        XElement chapter = ReportHtml.Chapter(ReportHtml.OfSample(sample), "influence");
        int cut = 0, members = 0;
        foreach (IReadOnlyList<XElement> row in ReportHtml.Rows(Ordinates(chapter)).Skip(1).Where(r => r[0].Element("a") is not null))
        {
            XElement fold = Led(chapter, row[0].Element("a")!);
            Assert.StartsWith($"{row[0].Value}: ", fold.Element("summary")!.Value, StringComparison.Ordinal);
            members++;
            if (fold.Descendants("table").SingleOrDefault() is { } steps)
            {
                Assert.Equal(row.Skip(1).Select(c => c.Value), ReportHtml.Rows(steps).Select(s => s[5].Value));
                cut++;
            }
            else
            {
                Assert.Matches("F\\(.*\\) = |is slack while|equations of all joints", fold.Value);
            }
        }

        Assert.True(cut > members / 2, $"{cut} of {members}");
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_EveryLiveForceOfTheEnvelope_LeadsToWhereItIsWorked(string sample)
    {
        XDocument page = ReportHtml.OfSample(sample);
        XElement table = ReportHtml.TablesWith(ReportHtml.Chapter(page, "influence"), "tension under").Single();
        List<string> headings = [.. ReportHtml.Headings(table)];
        int opened = 0;
        foreach (IReadOnlyList<XElement> row in ReportHtml.Rows(table))
        {
            foreach (int column in ((string[])["tension [", "compression ["]).Select(h => headings.FindIndex(x => x.StartsWith(h, StringComparison.Ordinal))).Where(c => row[c].Value.Length > 0))
            {
                XElement fold = Led(page.Root!, row[column].Element("a")!);
                Assert.Contains($"{row[0].Value}", fold.Element("summary")!.Value, StringComparison.Ordinal);
                double live = Math.Abs(double.Parse(row[column].Value, CultureInfo.InvariantCulture));
                Assert.Contains(Live().Matches(fold.Value), m => Math.Abs(double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture) - live) <= 0.00501);
                opened++;
            }
        }

        Assert.True(opened > 3);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Report_DeadForcesOfEveryFactor_AreThoseWorkedJointByJoint(string sample)
    {
        XDocument page = ReportHtml.OfSample(sample);
        XElement all = page.Descendants("details").Single(d => d.Attribute("id")?.Value == "dead-forces");
        int checkedForces = 0;
        foreach (XElement fold in ReportHtml.Chapter(page, "factors").Descendants("details").Where(d => d.Elements("div").Descendants("a").Any(a => a.Attribute("href")!.Value == "#dead-forces-in") && d.Attribute("id")!.Value.StartsWith("factor-", StringComparison.Ordinal)))
        {
            string title = fold.Element("summary")!.Value;
            string member = title.Split(": ")[1].Split(" in ")[0];

            // A rod that goes slack first is told before the member itself, with its own dead forces; of one that only pulls nothing goes in.
            XElement? own = fold.Descendants("ul").LastOrDefault(u => u.ElementsBeforeSelf("p").Last().Value == "What goes in:");
            foreach (Match given in (own?.Elements("li") ?? []).Select(l => Dead().Match(l.Value)).Where(m => m.Success))
            {
                double force = double.Parse(given.Groups["force"].Value, CultureInfo.InvariantCulture);
                IEnumerable<double> worked = all.Elements("div").Elements("details").Where(d => d.Element("summary")!.Value.StartsWith($"Case {given.Groups["case"].Value}", StringComparison.Ordinal))
                    .SelectMany(d => ReportHtml.Rows(d.Descendants("table").Single())).Where(r => r[0].Value == member).Select(r => Math.Abs(double.Parse(r[1].Value, CultureInfo.InvariantCulture)));

                // A slack rod has no line in the table, and no dead force.
                Assert.Contains(worked.DefaultIfEmpty(0), w => Math.Abs(w - force) <= 0.00501);
                checkedForces++;
            }
        }

        Assert.True(checkedForces > 5);
    }

    [Fact]
    public void Report_PinInBending_DirectionIsExplained_AndTheSumOverItsBarsIsTheMomentOfTheFactor()
    {
        XElement factors = ReportHtml.Chapter(ReportHtml.OfSample("hollis-fork"), "factors");
        XElement[] pins = [.. factors.Descendants("details").Where(d => d.Attribute("id")!.Value.StartsWith("factor-", StringComparison.Ordinal) && PinSum().IsMatch(d.Value))];

        Assert.NotEmpty(pins);
        Assert.All(pins, pin =>
        {
            string text = pin.Value;
            Assert.Contains("that is the one along which the factor is lowest", text, StringComparison.Ordinal);
            Match sum = PinSum().Match(text), whole = PinWhole().Match(text);
            Assert.Equal(Number(whole, "live"), Number(sum, "live"), 2e-3);
            double dead = PinDead().Matches(text).Sum(m => double.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture));
            Assert.Equal(dead, Number(sum, "dead"), 2e-3);
        });
    }

    [Fact]
    public void Report_FloorbeamBesideALegalVehicle_TellsTheAxlesOfBothAndTheWheelLinesOfBoth()
    {
        XElement factors = ReportHtml.Chapter(ReportHtml.OfSample("garrow-landing"), "factors");
        XElement fold = factors.Descendants("details").First(d => d.Attribute("id")!.Value == "factor-1");
        Match beside = Beside().Match(fold.Value);
        Assert.True(beside.Success, fold.Value);

        XElement axles = ReportHtml.TablesWith(fold, "part on the floorbeam").Last();
        Assert.Equal(Number(beside, "reaction"), ReportHtml.Rows(axles).Sum(r => double.Parse(r[3].Value, CultureInfo.InvariantCulture)), 2e-3 * ReportHtml.Rows(axles).Count);
        XElement wheels = ReportHtml.TablesWith(fold, "wheel line").Single();
        double[] sums = [.. ReportHtml.Rows(wheels).Where(r => r[0].Value == "sum").Select(r => double.Parse(r[4].Value, CultureInfo.InvariantCulture))];
        Assert.Equal(2, sums.Length);
        Assert.Contains(sums, s => Math.Abs(s - Number(beside, "arm")) <= 1e-3);
    }

    [Theory]
    [InlineData(Condition.Good, SystemKind.MultipleEyebars, "φc = 1, condition good (bridge.toml, [rating], condition = \"good\"): AASHTO Manual for Bridge Evaluation", "φs = 0.9, system: as a member of several eyebars")]
    [InlineData(Condition.Fair, SystemKind.RivetedTrussMember, "φc = 0.95, condition fair (bridge.toml, [rating], condition = \"fair\"): AASHTO Manual for Bridge Evaluation", "φs = 0.9, system: as a riveted member of a truss")]
    [InlineData(Condition.Poor, SystemKind.WideFloorbeam, "φc = 0.85, condition poor (bridge.toml, [rating], condition = \"poor\"): AASHTO Manual for Bridge Evaluation", "φs = 0.85, system: as a floorbeam over 12 ft from the next")]
    [InlineData(null, SystemKind.OtherTrussMember, "φc = 0.85, condition not given, that of a poor one assumed", "φs = 0.85, system: as a member that the table does not name")]
    public void FactorsTelling_OfAConditionAndAKind_NamesWhatWasGivenWhereAndTheClause(Condition? condition, SystemKind kind, string phiC, string phiS)
    {
        IReadOnlyList<string> lines = FactorsTelling.Of(MemberFactors.Of(condition, kind)).Entries;

        Assert.StartsWith(phiC, lines[0], StringComparison.Ordinal);
        Assert.StartsWith(phiS, lines[1], StringComparison.Ordinal);
        Assert.StartsWith("their product at least 0.85: ", lines[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Report_CapacitiesAndPostedFactors_LeadToTheirSheets()
    {
        XDocument page = ReportHtml.OfSample("garrow-landing");
        XElement capacities = ReportHtml.TablesWith(ReportHtml.Chapter(page, "capacity"), "as built [kip]").First();
        Assert.All(ReportHtml.Rows(capacities), r => Assert.Contains(r[1].Value, Led(page.Root!, r[4].Element("a")!).Element("summary")!.Value, StringComparison.Ordinal));
        XElement posting = ReportHtml.Chapter(page, "posting"), measure = ReportHtml.Chapter(page, "measure");
        foreach ((XElement chapter, string heading) in ((XElement, string)[])[(posting, "factor"), (posting, "lowest factor"), (measure, "factor")])
        {
            XElement table = ReportHtml.TablesWith(chapter, heading).First();
            int column = ReportHtml.Headings(table).ToList().IndexOf(heading);
            Assert.All(ReportHtml.Rows(table), r =>
            {
                string title = Led(page.Root!, r[column].Element("a")!).Element("summary")!.Value;
                Assert.Contains($"{ResultTable.Cut(double.Parse(ReportHtml.Seen(r[column]), CultureInfo.InvariantCulture), 2)}: ", title, StringComparison.Ordinal);
            });
        }
    }

    private static XElement Ordinates(XElement chapter) => chapter.Descendants("table").Single(t => ReportHtml.Headings(t)[0] == "effect");

    private static XElement Led(XElement within, XElement way) => within.Descendants().Single(e => e.Attribute("id")?.Value == way.Attribute("href")!.Value[1..]).Parent!;

    private static double Number(Match match, string group) => double.Parse(match.Groups[group].Value.Replace('−', '-'), CultureInfo.InvariantCulture);

    [GeneratedRegex(@"LL = (?:[−\d.]+ · [^=]*= )?−?(\d+\.\d+) k")]
    private static partial Regex Live();

    [GeneratedRegex(@"^(?<case>DC|DW) = (?<force>\d+\.\d+) \S+ (?:tension|compression): case")]
    private static partial Regex Dead();

    [GeneratedRegex(@"over the bars \w+ it: dead (?<dead>[−\d.]+) kip·ft, live (?<live>[−\d.]+) kip·ft")]
    private static partial Regex PinSum();

    [GeneratedRegex(@"whole on one truss brings (?<live>[−\d.]+) kip·ft")]
    private static partial Regex PinWhole();

    [GeneratedRegex(@"D[CW] = (\d+\.\d+) kip·ft")]
    private static partial Regex PinDead();

    [GeneratedRegex(@"brings the reaction (?<reaction>[\d.]+) kip, and times (?<arm>[\d.]+) ft")]
    private static partial Regex Beside();
}
