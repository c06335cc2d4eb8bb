using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.LateralDistribution;

/// <summary>
/// The lever rule for two trusses, wheels 6 ft apart, 2 ft from the kerb, 4 ft between trucks (AASHTO Standard
/// Specifications, 3.6 and 3.7; LRFD 3.6.1). The values were computed from the wheel distances, without presence factor.
/// </summary>
public class LeverRuleTableTests
{
    /// <summary>Half the fourth decimal.</summary>
    private const double Tolerance = 0.00005;

    public static IEnumerable<TheoryDataRow<double, double, double, int, double>> Rows() =>
        PublishedTable.Read("LateralDistribution/lever-rule.csv").Select(row =>
            new TheoryDataRow<double, double, double, int, double>(
                row.Number("truss_spacing_ft"),
                row.Number("truss_to_curb_ft"),
                row.Number("roadway_ft"),
                row.Whole("lanes"),
                row.Number("lanes_to_one_truss"))
            {
                Label = row.Label($"trusses {row["truss_spacing_ft"]} ft apart, roadway {row["roadway_ft"]} ft, {row["lanes"]} lanes: {row["lanes_to_one_truss"]}"),
            });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Share_OfOneTruss_IsTheTabulatedOne(double spacingInFeet, double toKerbInFeet, double roadwayInFeet, int lanes, double share)
    {
        Assert.Equal(spacingInFeet, roadwayInFeet + (2 * toKerbInFeet), 1e-9);
        var deck = new Deck { TrussSpacing = spacingInFeet * Foot, Roadway = roadwayInFeet * Foot };

        var found = Assert.IsType<ShareOutcome.Found>(LeverRule.Share(deck, Vehicle.StandardGauge, lanes == 1 ? 1 : null, _ => 1));

        Assert.Equal(share, found.Left.Value, Tolerance);
        Assert.Equal(share, found.Right.Value, Tolerance);
        Assert.Equal(lanes, found.Left.Lanes);
    }
}
