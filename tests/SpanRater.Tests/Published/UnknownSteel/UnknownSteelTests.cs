using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.UnknownSteel;

/// <summary>
/// Strengths and allowable stresses of metal of which only the year of building is known. AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), Tables
/// 6A.6.2.1-1, 6A.6.2.2-1 and 6B.5.2.1-1, from memory; named grades as found, row by row.
/// </summary>
public class UnknownSteelTests
{
    private const double RoundOff = 1e-9;

    private static readonly Dictionary<string, int[]> YearsOf = new()
    {
        ["prior to 1905"] = [1850, 1897, 1904],
        ["1905 to 1936"] = [1905, 1920, 1935],
        ["1905 through 1935"] = [1905, 1920, 1935],
        ["1936 to 1963"] = [1936, 1950, 1963],
        ["1936 through 1963"] = [1936, 1950, 1963],
        ["after 1963"] = [1964, 2000],
        ["any"] = [1870, 1950],
    };

    private static readonly Dictionary<string, MaterialKind> Kinds = new()
    {
        ["structural steel"] = MaterialKind.Steel,
        ["pins, unknown"] = MaterialKind.Pin,
        ["wrought iron"] = MaterialKind.WroughtIron,
    };

    public static IEnumerable<TheoryDataRow<string, string, string, string, string, string>> Rows() =>
        from row in PublishedTable.Read("UnknownSteel/unknown-steel.csv")
        let use = Kinds.ContainsKey(row["material"]) ? "used" : "not used, a named grade is given by the user with its source"
        select new TheoryDataRow<string, string, string, string, string, string>(row["material"], row["years"], row["Fy_ksi"], row["Fu_ksi"], row["tension_inv_ksi"], row["tension_op_ksi"])
        {
            Label = row.Label($"{row["material"]}, {row["years"]}: {row["Fy_ksi"]} and {row["Fu_ksi"]} ksi, {use}"),
        };

    public static IEnumerable<TheoryDataRow<string, double, double, double>> ColumnRows() =>
        from row in PublishedTable.Read("UnknownSteel/column-asr.csv")
        select new TheoryDataRow<string, double, double, double>(row["years"], row.Number("Cc"), row.Number("a_psi"), row.Number("b_psi"))
        {
            Label = row.Label($"{row["years"]}: {row["a_psi"]} − {row["b_psi"]} (KL/r)² to {row["Cc"]}"),
        };

    public static IEnumerable<TheoryDataRow<string, double>> ConstantRows() =>
        from row in PublishedTable.Read("UnknownSteel/column-asr-const.csv")
        select new TheoryDataRow<string, double>(row["quantity"], row.Number("value")) { Label = row.Label($"{row["quantity"]}: {row["value"]}") };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Find_KindAndYear_IsThePrintedRow(string material, string years, string yield, string ultimate, string inventory, string operating)
    {
        if (!Kinds.TryGetValue(material, out MaterialKind kind))
        {
            // A named grade is no row by year.
            Assert.StartsWith("ASTM ", material, StringComparison.Ordinal);
            return;
        }

        foreach (int year in YearsOf[years])
        {
            PublishedStrength row = PublishedStrength.Find(kind, year)!;
            Assert.Equal(Ksi(yield), row.Yield / (1000 * Psi), RoundOff);
            Assert.Equal(Ksi(ultimate), row.Ultimate / (1000 * Psi) ?? double.NaN, RoundOff);
            var strength = MetalStrength.ByYear(row, year);
            Assert.True(strength.Origin.IsAssumed);
            if (inventory.Length > 0)
            {
                Assert.Equal(Ksi(inventory), strength.AllowableGross(AllowableLevel.Inventory).Value / (1000 * Psi), RoundOff);
                Assert.Equal(Ksi(operating), strength.AllowableGross(AllowableLevel.Operating).Value / (1000 * Psi), RoundOff);
            }
        }
    }

    [Theory]
    [MemberData(nameof(ColumnRows))]
    public void Allowable_OfSteelByYear_IsThePrintedStress(string years, double limit, double a, double b)
    {
        int year = YearsOf[years][0];
        var strength = MetalStrength.ByYear(PublishedStrength.Find(MaterialKind.Steel, year)!, year);
        AllowableColumn printed = strength.Row!.AllowableColumn!;
        Assert.Equal([limit, a, b], new[] { printed.Limit, printed.AtZero / Psi, printed.Fall / Psi }.Select(v => Math.Round(v, 9)));

        foreach (double slenderness in (double[])[1, 40, 80, 120, limit])
        {
            Assert.Equal(a - (b * slenderness * slenderness), StressOf(ColumnCurve.Allowable(strength, AllowableLevel.Inventory), strength.Yield, slenderness) / Psi, 1e-6);
        }

        foreach (double slenderness in (double[])[160, 200, 300])
        {
            Assert.Equal(135_008_740 / (slenderness * slenderness), StressOf(ColumnCurve.Allowable(strength, AllowableLevel.Inventory), strength.Yield, slenderness) / Psi, 1e-6);
        }
    }

    // The printed constants are those of the formula, rounded: a = Fy/2.12 and b = a/(2 Cc²).
    [Theory]
    [MemberData(nameof(ColumnRows))]
    public void Allowable_ByTheFormula_IsWithinThePrintedDigits(string years, double limit, double a, double b)
    {
        int year = YearsOf[years][0];
        double yield = PublishedStrength.Find(MaterialKind.Steel, year)!.Yield;
        foreach (double slenderness in (double[])[1, 40, 80, 120])
        {
            double most = 10 + (0.005 * slenderness * slenderness);
            Assert.Equal(a - (b * slenderness * slenderness), StressOf(ColumnCurve.Allowable(AllowableLevel.Inventory), yield, slenderness) / Psi, most);
        }

        Assert.Equal(limit, Math.PI * Math.Sqrt(2 * PublishedStrength.Modulus / yield), 0.05);
    }

    [Theory]
    [MemberData(nameof(ConstantRows))]
    public void Allowable_SlenderColumn_HasThePrintedConstant(string quantity, double value)
    {
        if (quantity.StartsWith("Cc Fy=", StringComparison.Ordinal))
        {
            double yield = 1000 * Psi * double.Parse(quantity["Cc Fy=".Length..], System.Globalization.CultureInfo.InvariantCulture);
            ColumnStrength before = StrengthOf(ColumnCurve.Allowable(AllowableLevel.Inventory), yield, value - 0.06), after = StrengthOf(ColumnCurve.Allowable(AllowableLevel.Inventory), yield, value + 0.06);
            Assert.Equal((ColumnRange.Inelastic, ColumnRange.Elastic), (before.Range, after.Range));
            return;
        }

        AllowableLevel level = quantity.Contains("operating", StringComparison.Ordinal) ? AllowableLevel.Operating : AllowableLevel.Inventory;
        Assert.Equal(value, StressOf(ColumnCurve.Allowable(level), 36_000 * Psi, 200) / Psi * 200 * 200, 5.0);
    }

    // A year that two headings name takes the later row; 1963 is named by one heading only.
    [Theory]
    [InlineData(1905, 30)]
    [InlineData(1936, 33)]
    [InlineData(1963, 33)]
    public void Find_YearBetweenTwoRows_TakesTheLaterOneThatNamesIt(int year, double yield) =>
        Assert.All((MaterialKind[])[MaterialKind.Steel, MaterialKind.Pin], k => Assert.Equal(yield, PublishedStrength.Find(k, year)!.Yield / (1000 * Psi), RoundOff));

    [Fact]
    public void Find_NothingPublished_IsNull()
    {
        Assert.Null(PublishedStrength.Find(MaterialKind.Rivet, 1910));
        Assert.Null(PublishedStrength.Find(MaterialKind.Steel, null));
        Assert.NotNull(PublishedStrength.Find(MaterialKind.WroughtIron, null));
    }

    private static double Ksi(string cell) => cell.Length == 0 ? double.NaN : double.Parse(cell, System.Globalization.CultureInfo.InvariantCulture);

    private static double StressOf(ColumnCurve curve, double yield, double slenderness) => StrengthOf(curve, yield, slenderness).Value;

    private static ColumnStrength StrengthOf(ColumnCurve curve, double yield, double slenderness) =>
        curve.Strength(1, yield, ElasticBuckling.Force(PublishedStrength.Modulus, 1, slenderness));
}
