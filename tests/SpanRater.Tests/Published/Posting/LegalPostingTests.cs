using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.Posting;

/// <summary>
/// Safe posting load of legal types, (W/0.7)(RF − 0.3), and the rating in tons, RF × W: AASHTO Manual for Bridge Evaluation,
/// 3rd ed. (2018), Eq. 6A.8.3-1, from memory; the values were worked out from it. US tons.
/// </summary>
public class LegalPostingTests
{
    /// <summary>Half the third decimal.</summary>
    private const double Tolerance = 0.0005;

    public static IEnumerable<TheoryDataRow<double, double, double, double>> Rows() =>
        PublishedTable.Read("Posting/lrfr.csv").Select(row =>
            new TheoryDataRow<double, double, double, double>(row.Number("W_ton"), row.Number("RF"), row.Number("safe_posting_ton"), row.Number("tonnage_RT_ton"))
            {
                Label = row.Label($"{row["W_ton"]} t at {row["RF"]}: {row["safe_posting_ton"]} t"),
            });

    [Theory]
    [MemberData(nameof(Rows))]
    public void SafeLoad_OfALegalType_IsTheTabulatedOne(double weight, double factor, double posting, double tonnage)
    {
        Assert.Equal(posting, SafeLoad.Of(weight * 2 * Kip, factor, PostingRule.ReducedLegal) / (2 * Kip), Tolerance);
        Assert.Equal(tonnage, SafeLoad.Of(weight * 2 * Kip, factor, PostingRule.FactorTimesWeight) / (2 * Kip), Tolerance);
    }
}
