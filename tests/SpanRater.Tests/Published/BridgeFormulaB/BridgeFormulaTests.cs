namespace SpanRater.Tests.Published.BridgeFormulaB;

/// <summary>The printed tables of bridge formula B: Code of Virginia 46.2-1126, California Vehicle Code 35551, FHWA brochure.</summary>
public class BridgeFormulaTests
{
    public static IEnumerable<TheoryDataRow<double, int, double, string>> Rows() =>
        PublishedTable.Read("BridgeFormulaB/table.csv").Select(row =>
            new TheoryDataRow<double, int, double, string>(row.Number("length_ft"), row.Whole("axles"), row.Number("weight_lb"), row["source"].Split(" table")[0])
            {
                Label = row.Label($"{row["length_ft"]} ft, {row["axles"]} axles: {row["weight_lb"]} lb, {row["source"].Split(" table")[0]}"),
            });

    // Weights are multiples of 500 lb: the formula meets the table exactly or not at all.
    [Theory]
    [MemberData(nameof(Rows))]
    public void Tabulated_LengthAndAxles_IsThePrintedWeight(double lengthInFeet, int axles, double pounds, string source)
    {
        double tabulated = BridgeFormula.Tabulated(lengthInFeet, axles);

        Assert.True(pounds == tabulated, $"{source} prints {pounds} lb; the formula gives {tabulated} lb.");
    }
}
