using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.StandardSpecifications;

/// <summary>
/// AASHTO Standard Specifications for Highway Bridges, 17th ed. (2002), 3.8.2.1: impact 50/(L + 125), at most 0.30. The
/// formula is from memory; the values were computed from it.
/// </summary>
public class ImpactTests
{
    /// <summary>Half the third decimal.</summary>
    private const double Tolerance = 0.0005;

    public static IEnumerable<TheoryDataRow<string, double, double>> Rows() =>
        from method in (string[])["LFR", "ASR"]
        from row in PublishedTable.Read("StandardSpecifications/impact.csv")
        select new TheoryDataRow<string, double, double>(method, row.Number("loaded_length_ft"), row.Number("impact"))
        {
            Label = row.Label($"{method}, {row["loaded_length_ft"]} ft: {row["impact"]}"),
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Impact_OfALoadedLength_IsThePrintedFraction(string method, double lengthInFeet, double printed) =>
        Assert.Equal(printed, RatingMethod.Find(method)!.Impact(lengthInFeet * Foot), Tolerance);
}
