using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.HicksHandbook;

/// <summary>
/// Hicks, Handbook of Civil Engineering Calculations, 2nd ed., pages 1.70 to 1.75: three trusses under moving loads.
/// The Pratt trusses have joints L0, L1 … and U1, U2 … in place of the book's a, b … and A, B …: c is L2, C is U2.
/// </summary>
public class HicksTests
{
    /// <summary>Figure 49: axle loads, front to back, and their gaps.</summary>
    private static readonly AxleTrain FourLoads = new(
        [5 * Kip, 12 * Kip, 18 * Kip, 15 * Kip],
        [AxleGap.Fixed(6 * Foot), AxleGap.Fixed(10 * Foot), AxleGap.Fixed(6 * Foot)]);

    // Figure 48: Pratt, six panels of 20 ft, 25 ft high; the third panel is c-d and its diagonal Cd.
    private static readonly Lazy<SolvedTruss> Figure48 = new(() => ParallelChordTruss.Pratt(6, 20 * Foot, 25 * Foot));

    // Figure 49: Pratt, eight panels of 25 ft, 30 ft high; the fourth panel is d-e and its diagonal De.
    private static readonly Lazy<SolvedTruss> Figure49 = new(() => ParallelChordTruss.Pratt(8, 25 * Foot, 30 * Foot));

    private static readonly Lazy<SolvedTruss> Figure50 = new(WarrenDeckTruss);

    private static readonly Dictionary<(string Case, string Quantity), Func<double>> Answers = new()
    {
        [("HICKS48", "IL Vcd ordinate at d (midspan)")] = () => PanelShear(Figure48.Value, "U2L3", 60 * Foot),
        [("HICKS48", "IL Vcd zero point, ft from right support")] =
            () => 120 - (Figure48.Value.Line("U2L3").NeutralPoints().Single() / Foot),
        [("HICKS48", "Vcd max, 2.3 klf")] =
            () => 2.3 * KipPerFoot * Figure48.Value.Line("U2L3").Area(Sense.Tension) * Figure48.Value.Sine("U2L3") / Kip,
        [("HICKS48", "Cd max tension")] = () => 2.3 * KipPerFoot * Figure48.Value.Line("U2L3").Area(Sense.Tension) / Kip,
        [("HICKS48", "Cd min (compression)")] = () => 2.3 * KipPerFoot * Figure48.Value.Line("U2L3").Area(Sense.Compression) / Kip,

        [("HICKS49", "resultant of load system")] = () => FourLoads.Weight / Kip,
        [("HICKS49", "centroid from load 1")] = () => Placement.DistanceOfResultant(FourLoads) / Foot,
        [("HICKS49", "Vde, load 2 at e, load 1 in panel")] = LoadTwoAtE,
        [("HICKS49", "Vde max, load 4 at e")] =
            () => Figure49.Value.Peaks("U3L4", FourLoads).Tension!.Force * Figure49.Value.Sine("U3L4") / Kip,
        [("HICKS49", "De max tension")] = () => Figure49.Value.Peaks("U3L4", FourLoads).Tension!.Force / Kip,

        [("HICKS50", "IL Mb at C")] = () => MomentAtLowerB(60 * Foot) / Foot,
        [("HICKS50", "IL Mb at B")] = () => MomentAtLowerB(30 * Foot) / Foot,
        [("HICKS50", "Mb, rear load at C, front to the left")] = () => RearLoadAtC(frontAt: 46 * Foot),
        [("HICKS50", "Mb, rear load at C, front to the right")] = () => RearLoadAtC(frontAt: 74 * Foot),
        [("HICKS50", "BC max (compression)")] =
            () => Figure50.Value.Peaks("BC", PublishedVehicles.Train("H15")).Compression!.Force / Kip,
    };

    public static IEnumerable<TheoryDataRow<string, string, double, double>> Rows() =>
        PublishedTable.Read("HicksHandbook/examples.csv").Select(row =>
            new TheoryDataRow<string, string, double, double>(row["case"], row["quantity"], row.Number("value"), row.Number("tolerance"))
            {
                Label = row.Label($"{row["case"]}, {row["quantity"]}: {row["value"]} {row["unit"]}"),
            });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Truss_OfTheHandbook_GivesThePrintedValue(string figure, string quantity, double printed, double tolerance) =>
        Assert.Equal(printed, Answers[(figure, quantity)](), tolerance);

    [Fact]
    public void PeaksOf_FourLoadsOnDe_StandWithLoadFourOverE()
    {
        Peak peak = Figure49.Value.Peaks("U3L4", FourLoads).Tension!;

        Assert.Equal(100 * Foot, peak.Axles[3].Station, 1e-9);
    }

    // The shear of a panel is what its diagonal carries upright; the chords lie level.
    private static double PanelShear(SolvedTruss truss, string diagonal, double station) =>
        truss.Line(diagonal).OrdinateAt(station) * truss.Sine(diagonal);

    // Load 1 stands 6 ft left of joint e, which is 100 ft from the left; the loads behind it to the right.
    private static double LoadTwoAtE()
    {
        double[] stations = [94, 100, 110, 116];
        return stations.Select((x, i) => FourLoads.Loads[i] * PanelShear(Figure49.Value, "U3L4", x * Foot)).Sum() / Kip;
    }

    // The moment about the lower joint b is what the upper chord above it carries, on the height of the truss.
    private static double MomentAtLowerB(double station) => -Figure50.Value.Line("BC").OrdinateAt(station) * 20 * Foot;

    // The rear load of 24 kip stands on C, at 60 ft; the front one of 6 kip is 14 ft from it.
    private static double RearLoadAtC(double frontAt) =>
        ((24 * Kip * MomentAtLowerB(60 * Foot)) + (6 * Kip * MomentAtLowerB(frontAt))) / KipFoot;

    // Figure 50: a Warren deck truss, four panels of 30 ft, 20 ft high. The lower joints a to d stand under the middle of
    // the panels, which the ordinates 18.75 and 22.50 ft of the moment about b require.
    internal static SolvedTruss WarrenDeckTruss() => SolvedTruss.Of(
        [
            new Joint("A", 0, 20 * Foot, Support.Pin, IsPanelPoint: true),
            new Joint("B", 30 * Foot, 20 * Foot, IsPanelPoint: true),
            new Joint("C", 60 * Foot, 20 * Foot, IsPanelPoint: true),
            new Joint("D", 90 * Foot, 20 * Foot, IsPanelPoint: true),
            new Joint("E", 120 * Foot, 20 * Foot, Support.Roller(), IsPanelPoint: true),
            new Joint("a", 15 * Foot, 0),
            new Joint("b", 45 * Foot, 0),
            new Joint("c", 75 * Foot, 0),
            new Joint("d", 105 * Foot, 0),
        ],
        [
            ("A", "B"), ("B", "C"), ("C", "D"), ("D", "E"),
            ("a", "b"), ("b", "c"), ("c", "d"),
            ("A", "a"), ("a", "B"), ("B", "b"), ("b", "C"), ("C", "c"), ("c", "D"), ("D", "d"), ("d", "E"),
        ]);
}
