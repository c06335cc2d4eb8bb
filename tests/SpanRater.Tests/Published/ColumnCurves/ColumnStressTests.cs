using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.ColumnCurves;

/// <summary>
/// Critical stresses of columns as the AISC manuals print them: 14th ed., Table 4-22 (curve of AASHTO LRFD 6.9.4.1 with φ 0.90 and Ω 1.67), found and from
/// memory by row; 9th ed., Tables C-36 and C-50 (parabola of the allowable stresses with a factor of safety of its own), from memory.
/// </summary>
public class ColumnStressTests
{
    private const double Modulus = 29_000_000 * Psi;

    public static IEnumerable<TheoryDataRow<double, double, string, string>> Rows() =>
        from row in PublishedTable.Read("ColumnCurves/column-stress.csv")
        select new TheoryDataRow<double, double, string, string>(row.Number("Fy_ksi"), row.Number("KL_over_r"), row["Fcr_over_omega_ksi"], row["phi_Fcr_ksi"])
        {
            Label = row.Label($"Fy {row["Fy_ksi"]}, KL/r {row["KL_over_r"]}: {row["Fcr_over_omega_ksi"]} and {row["phi_Fcr_ksi"]} ksi"),
        };

    public static IEnumerable<TheoryDataRow<double, double, string>> AllowableRows() =>
        from row in PublishedTable.Read("ColumnCurves/column-fa-asd9.csv")
        select new TheoryDataRow<double, double, string>(row.Number("Fy_ksi"), row.Number("KL_over_r"), row["Fa_ksi"])
        {
            Label = row.Label($"Fy {row["Fy_ksi"]}, KL/r {row["KL_over_r"]}: {row["Fa_ksi"]} ksi"),
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void LoadAndResistance_Nominal_IsThePrintedStress(double yield, double slenderness, string allowed, string factored)
    {
        double stress = StrengthOf(ColumnCurve.LoadAndResistance, yield, slenderness).Nominal / (1000 * Psi);
        if (allowed.Length > 0)
        {
            AssertPrinted(allowed, stress / 1.67);
        }

        if (factored.Length > 0)
        {
            AssertPrinted(factored, 0.90 * stress);
        }

        Assert.True(allowed.Length + factored.Length > 0);
    }

    // Spec. 9th ed., E2: the factor of safety grows from 5/3 to 23/12 at Cc.
    [Theory]
    [MemberData(nameof(AllowableRows))]
    public void Allowable_NominalOverItsFactorOfSafety_IsThePrintedStress(double yield, double slenderness, string printed)
    {
        ColumnStrength column = StrengthOf(ColumnCurve.Allowable(AllowableLevel.Inventory), yield, slenderness);
        double part = Math.Min(1, slenderness / Math.Sqrt(2 * Math.PI * Math.PI * 29_000 / yield));
        AssertPrinted(printed, column.Nominal / (1000 * Psi) / ((5.0 / 3) + (3.0 / 8 * part) - (part * part * part / 8)));
    }

    [Fact]
    public void LoadAndResistance_Value_HasTheBridgeFactor()
    {
        ColumnStrength column = StrengthOf(ColumnCurve.LoadAndResistance, 36, 50);
        Assert.Equal(0.95, Assert.Single(column.Factors).Value);
        Assert.Equal(0.95 * column.Nominal, column.Value, 1e-6);
    }

    private static ColumnStrength StrengthOf(ColumnCurve curve, double yield, double slenderness) =>
        curve.Strength(1, yield * 1000 * Psi, ElasticBuckling.Force(Modulus, 1, slenderness));

    private static void AssertPrinted(string printed, double value)
    {
        int digits = printed.Contains('.', StringComparison.Ordinal) ? printed.Length - printed.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        Assert.Equal(double.Parse(printed, System.Globalization.CultureInfo.InvariantCulture), value, (0.5 * Math.Pow(10, -digits)) + 1e-9);
    }
}
