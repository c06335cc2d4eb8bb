using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>Workings that the report holds, worked again from the numbers that stand in them.</summary>
public sealed partial class OpenedWorkingTests : IDisposable
{
    private readonly string file = Path.Combine(Path.GetTempPath(), $"{Guid.NewGuid():N}.html");

    public void Dispose() => File.Delete(file);

    [Theory]
    [InlineData("garrow-landing")]
    [InlineData("hollis-fork")]
    [InlineData("tansy-weir")]
    public void Report_FactorOfEachTypeWithAChange_FollowsFromItsLine(string sample)
    {
        XElement posting = ReportHtml.Chapter(ReportHtml.OfSample(sample), "posting");
        int worked = 0;
        foreach (XElement table in ReportHtml.TablesWith(posting, "LL from"))
        {
            string[] heads = [.. ReportHtml.Headings(table)];
            double room = Numbers(table.Parent!.ElementsBeforeSelf("p").Last(p => p.Value.StartsWith("C − γDC·DC", StringComparison.Ordinal)).Value).Last();
            foreach (IReadOnlyList<XElement> row in ReportHtml.Rows(table))
            {
                double beside = Array.FindIndex(heads, h => h.StartsWith("γN·N", StringComparison.Ordinal)) is var b and >= 0 && row[b].Value.Length > 0 ? Numbers(row[b].Value)[0] : 0;
                double[] from = Numbers(row[Array.IndexOf(heads, "LL from")].Value);
                if (from.Length == 2)
                {
                    Assert.Equal(Numbers(row[^3].Value)[0], Math.Abs(from[0] * from[1]), 2e-3 * Math.Max(1, Math.Abs(from[0] * from[1])));
                }

                Assert.Equal(Numbers(row[^1].Value)[0], (room - beside) / Numbers(row[^2].Value)[0], 2e-3);
                worked++;
            }
        }

        // Over rods, on pins and on planks a factor is told in full instead.
        Assert.True(worked > 0 || sample != "garrow-landing");
    }

    // By the curve and by drawing: two ways to the same chance, four standard errors apart at most.
    [Fact]
    public void MeasureFirst_ChanceByTheCurve_IsThatOfTheDraws()
    {
        int compared = 0;
        foreach (string sample in (string[])["garrow-landing", "hollis-fork", "mossback-lane", "tansy-weir"])
        {
            BridgeReading reading = BridgeFolder.Read(Repository.Sample(sample), []);
            Assert.True(BridgeRater.Rate(reading.Bridge!, reading.Bridge!.Rating.Method!, reading.VehiclesAsked).TryGet(out BridgeRating? rating, out _));
            foreach (DoubtfulFactor factor in MeasureFirst.Of(rating).Factors.Where(f => f.ByTheCurve is not null))
            {
                Assert.InRange(factor.ChanceBelowOne - factor.ByTheCurve!.Chance, -4 * (factor.StandardError + 1e-4), 4 * (factor.StandardError + 1e-4));
                Assert.True(factor.Drawn!.Least <= factor.Drawn.Middle && factor.Drawn.Middle <= factor.Drawn.Most);
                Assert.Equal(factor.ChanceBelowOne, factor.Drawn.Below / (double)DoubtfulFactor.Samples);
                Assert.Equal(1, factor.Row.FactorWith(factor.NeededCapacity!.Value)!.Value, 1e-9);
                compared++;
            }
        }

        Assert.True(compared > 5);
    }

    [Fact]
    public void Report_NeededDimension_CarriesJustTheCapacityForOne()
    {
        XElement fold = ReportHtml.OfSample("garrow-landing").Descendants("details").Single(d => d.Attribute("id")?.Value == "needed-1");
        string[] equations = [.. fold.Descendants("p").Where(p => p.Attribute("class")?.Value == "equation").Select(p => p.Value)];

        Assert.Equal(Numbers(equations.Single(e => e.StartsWith("C1, at which RF = 1", StringComparison.Ordinal))).Last(), Numbers(equations.Last(e => e.StartsWith("C = φc·φs·P", StringComparison.Ordinal))).Last(), 0.01);
        Assert.Contains("thickness of angles at 0.42", fold.Value, StringComparison.Ordinal);
    }

    // In feet and kip: a timber of 10 x 12 in of 1,600 ksi; two rods of 1 1/4 in of 29,000 ksi, 1.5 ft below over one post, over 14 ft.
    [Fact]
    public void Report_TrussedFloorbeam_OrdinatesFollowFromItsGeometry()
    {
        using BridgeOnDisk bridge = TrussedKingPost.Make();
        XDocument page = Of(bridge);
        Assert.Equal("", string.Join('\n', DrawnNumbers.FaultsOf(page)));
        XElement[] tables = [.. ReportHtml.TablesWith(page.Root!, "∫ M0·y dx [ft3]")];
        const double Half = 7, Drop = 1.5, Bending = 1600 * 1440 / 144.0;
        double cosine = Half / Math.Sqrt((Half * Half) + (Drop * Drop));
        double whole = (2 * Half / 3 * Drop * Drop) + (Bending / (1600 * 120) * 14) + (Bending / (29000 * 2 * Math.PI * 1.25 * 1.25 / 4) * 2 * Half / Math.Pow(cosine, 3));
        Assert.True(tables.Length >= 3);
        foreach (XElement table in tables)
        {
            XElement working = table.Parent!;
            string formula = working.ElementsBeforeSelf("p").Last().Value;
            double told = Numbers(working.ElementsBeforeSelf("p").Last(p => p.Value.StartsWith("H = ∫", StringComparison.Ordinal)).Value.Replace("ft3", "", StringComparison.Ordinal)).Last();
            Assert.Equal(whole, told, 1e-3);
            string[] heads = [.. ReportHtml.Headings(table)];
            double sum = 0;
            foreach (IReadOnlyList<XElement> row in ReportHtml.Rows(table).Where(r => r[0].Value != "sum" && heads[0] == "wheel line"))
            {
                double at = Cell(row, heads, "a [ft]"), near = Math.Min(at, 14 - at), pull = Cell(row, heads, "H");
                Assert.Equal(((Drop * Half / 2 * near) - (Drop * near * near * near / (6 * Half))) / whole, pull, 1e-3);
                double ordinate = Moment().Match(formula) is { Success: true } m
                    ? ((m.Groups["sign"].Value.Length > 0 ? -1 : 1) * (m.Groups["times"].Value.Length > 0 ? Numbers(m.Groups["times"].Value)[0] : 1) * (Cell(row, heads, "M0 [ft]") - (pull * Numbers(m.Groups["y"].Value)[0]))) + (Numbers(m.Groups["arm"].Value)[0] * pull)
                    : Shear().Match(formula) is { Success: true } v ? (v.Groups["sign"].Value.Length > 0 ? -1 : 1) * (Cell(row, heads, "V0") - (pull * Numbers(v.Groups["slope"].Value)[0])) : pull / cosine;
                Assert.Equal(ordinate, Numbers(row[^2].Value)[0], 1e-3);
                sum += Numbers(row[^1].Value)[0];
            }

            if (heads[0] == "wheel line")
            {
                Assert.Equal(Numbers(ReportHtml.Rows(table).Single(r => r[0].Value == "sum")[^1].Value)[0], sum, 2e-4);
            }
        }
    }

    // Three panels with both diagonals in the middle one, which all push and pull.
    [Fact]
    public void Report_DeadForcesOfARedundantTruss_AreReleasedForcesAndRedundantsPart()
    {
        using BridgeOnDisk bridge = new BridgeOnDisk()
            .Write("joints.csv", "joint,x [ft],y [ft],support,deck\nL0,0,0,pin,yes\nL1,12,0,,yes\nL2,24,0,,yes\nL3,36,0,roller,yes\nU1,12,9,,\nU2,24,9,,\n")
            .Write("members.csv", "member,from,to,tension capacity [kip],compression capacity [kip],area [in2],modulus [ksi]\n" + string.Concat("L0L1 L1L2 L2L3 U1U2 L0U1 U2L3 L1U1 L2U2 U1L2 L1U2".Split(' ').Select((m, i) => string.Create(CultureInfo.InvariantCulture, $"{m},{m[..2]},{m[2..]},90,90,{3 + (i / 2.0)},29000\n"))))
            .Write("loads.csv", "case,joint,up [kip]\nDC,L0,-2\nDC,L1,-4\nDC,L2,-7\nDC,L3,-2\nDW,L1,-1\n");
        XDocument page = Of(bridge);
        Assert.Equal("", string.Join('\n', DrawnNumbers.FaultsOf(page)));

        XElement fold = page.Descendants("details").Single(d => d.Attribute("id")?.Value == "dead-forces-DC"), table = ReportHtml.TablesWith(fold, "N0 [kip]").Single();
        IReadOnlyList<IReadOnlyList<XElement>> rows = ReportHtml.Rows(table);
        double redundant = Numbers(fold.Descendants("p").Single(p => p.Value.StartsWith("X1 = ", StringComparison.Ordinal)).Value.Split(" = ")[2])[0];
        Dictionary<string, double> given = Run.Of("forces", bridge.Folder, "--case", "DC", "--format", "csv").Output.Split('\n').Select(l => l.Split(',')).Where(l => l[0] == "member").ToDictionary(l => l[1], l => double.Parse(l[3], CultureInfo.InvariantCulture));
        double closes = 0;
        foreach (IReadOnlyList<XElement> row in rows.SkipLast(1))
        {
            double force = Numbers(row[1].Value)[0], released = Numbers(row[2].Value)[0], unit = Numbers(row[3].Value)[0];
            Assert.Equal(force, released + (unit * redundant), 2e-3);
            Assert.Equal(given[row[0].Value], force, 2e-3);
            closes += unit * force * Numbers(row[4].Value)[0];
        }

        Assert.Equal(0, closes, 1e-4);
        Assert.Equal(10, rows.Count - 1);

        // N0 and n are worked joint by joint below, and give the columns again.
        foreach ((string part, int column) in ((string, int)[])[("dead-forces-DC-cut", 2), ("dead-forces-DC-pull-1", 3)])
        {
            XElement worked = fold.Descendants("details").Single(d => d.Attribute("id")?.Value == part);
            Dictionary<string, double> forces = ReportHtml.Rows(worked.Descendants("table").Single()).ToDictionary(r => r[0].Value, r => Numbers(r[1].Value)[0]);
            Assert.All(rows.SkipLast(1).Where(r => forces.ContainsKey(r[0].Value)), r => Assert.Equal(forces[r[0].Value], Numbers(r[column].Value)[0], 2e-3));
        }
    }

    private static double Cell(IReadOnlyList<XElement> row, string[] heads, string heading) => Numbers(row[Array.IndexOf(heads, heading)].Value)[0];

    private static double[] Numbers(string text) => [.. Number().Matches(text).Select(m => double.Parse(m.Value.Replace('−', '-'), CultureInfo.InvariantCulture))];

    private XDocument Of(BridgeOnDisk bridge)
    {
        Run run = Run.Of("report", bridge.Folder, "--out", file);
        Assert.True(File.Exists(file), run.Error);
        return ReportHtml.Parsed(File.ReadAllText(file));
    }

    [GeneratedRegex(@"ordinate = (?<sign>−?)(?<times>[\d.]*)·?\(M0 − H·y\) \+ (?<arm>[\d.]+) ft·H, y = (?<y>[\d.]+) ft")]
    private static partial Regex Moment();

    [GeneratedRegex(@"ordinate = (?<sign>−?)\(V0 − H·y′\).*y′ = (?<slope>[−\d.]+)")]
    private static partial Regex Shear();

    [GeneratedRegex(@"(?<![\w.])[-−]?\d+(?:\.\d+)?(?:E[-−+]?\d+)?")]
    private static partial Regex Number();
}
