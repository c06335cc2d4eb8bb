using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.Timber;

/// <summary>Design values and factors of timber: National Design Specification (2018) and its Supplement, AASHTO LRFD 8.4.4; load durations found, all else from memory.</summary>
public class TimberTests
{
    private static readonly Dictionary<string, TimberSizeClass> Classes = new()
    {
        ["2-4 in thick, 2 in and wider"] = TimberSizeClass.Dimension,
        ["Beams and Stringers"] = TimberSizeClass.BeamsAndStringers,
        ["Posts and Timbers"] = TimberSizeClass.PostsAndTimbers,
        ["5x5 and larger (wet or dry)"] = TimberSizeClass.Timbers,
    };

    private static readonly string[] Columns = ["Fb_psi", "Ft_psi", "Fv_psi", "Fcperp_psi", "Fc_psi", "E_psi", "Emin_psi"];

    private static readonly WetService Dimension = TimberFactors.Wet(TimberSizeClass.Dimension, 1151 * Psi, 751 * Psi), Large = TimberFactors.Wet(TimberSizeClass.PostsAndTimbers, 1500 * Psi, 1000 * Psi);

    private static readonly Dictionary<string, Func<double[]>> Factors = new()
    {
        ["CD permanent"] = () => [TimberFactors.Duration(LoadDuration.Permanent)],
        ["CD ten years (occupancy live)"] = () => [TimberFactors.Duration(LoadDuration.TenYears)],
        ["CD two months (snow)"] = () => [TimberFactors.Duration(LoadDuration.TwoMonths)],
        ["CD seven days (construction)"] = () => [TimberFactors.Duration(LoadDuration.SevenDays)],
        ["CD ten minutes (wind/earthquake)"] = () => [TimberFactors.Duration(LoadDuration.TenMinutes)],
        ["CD impact"] = () => [TimberFactors.Duration(LoadDuration.Impact)],
        ["CM T.4A Fb (1.0 when Fb*CF <= 1150)"] = () => [Dimension.Bending],
        ["CM T.4A Ft"] = () => [Dimension.Tension],
        ["CM T.4A Fv"] = () => [Dimension.Shear],
        ["CM T.4A Fc_perp"] = () => [Dimension.CompressionAcross],
        ["CM T.4A Fc (1.0 when Fc*CF <= 750)"] = () => [Dimension.Compression],
        ["CM T.4A E, Emin"] = () => [Dimension.Modulus],
        ["CM T.4D Fb"] = () => [Large.Bending],
        ["CM T.4D Ft"] = () => [Large.Tension],
        ["CM T.4D Fv"] = () => [Large.Shear],
        ["CM T.4D Fc_perp"] = () => [Large.CompressionAcross],
        ["CM T.4D Fc"] = () => [Large.Compression],
        ["CM T.4D E, Emin"] = () => [Large.Modulus],
        ["CF T.4A Fb width 4 in, 2-3 in thick (grades SS to No.2)"] = () => [Size(2, 4), Size(1.5, 3.5), Size(2, 3)],
        ["CF T.4A Fb width 5 in, 2-3 in thick (grades SS to No.2)"] = () => [Size(2, 5), Size(1.5, 4.5)],
        ["CF T.4A Fb width 6 in, 2-3 in thick (grades SS to No.2)"] = () => [Size(3, 6), Size(2.5, 5.5)],
        ["CF T.4A Fb width 8 in, 2-3 in thick (grades SS to No.2)"] = () => [Size(3, 8), Size(1.5, 7.25)],
        ["CF T.4A Fb width 10 in, 2-3 in thick (grades SS to No.2)"] = () => [Size(2, 10), Size(1.5, 9.25)],
        ["CF T.4A Fb width 12 in, 2-3 in thick (grades SS to No.2)"] = () => [Size(3, 12), Size(1.5, 11.25)],
        ["CF T.4A Fb width 14 in, 2-3 in thick (grades SS to No.2)"] = () => [Size(3, 14), Size(1.5, 13.25), Size(2, 16)],
        ["CF T.4A Fb width 8 in, 4 in thick"] = () => [Size(4, 8), Size(3.5, 7.25)],
        ["CF T.4A Fb width 10 in, 4 in thick"] = () => [Size(4, 10)],
        ["CF T.4A Fb width 12 in, 4 in thick"] = () => [Size(4, 12), Size(3.5, 11.25)],
        ["CF T.4A Fb width 14 in, 4 in thick"] = () => [Size(4, 14)],
        ["Cr repetitive member"] = () => [TimberFactors.Repetitive],
        ["LRFD wood phi flexure"] = () => [TimberFactors.PhiBending],
        ["LRFD wood phi shear"] = () => [TimberFactors.PhiShear],
        ["LRFD wood phi compression parallel"] = () => [TimberFactors.PhiCompression],
        ["LRFD wood phi tension parallel"] = () => [TimberFactors.PhiTension],
        ["LRFD wood CKF flexure 2.5/phi"] = () => [TimberFactors.Format(TimberFactors.PhiBending)],
        ["LRFD wood CKF shear 2.5/phi"] = () => [TimberFactors.Format(TimberFactors.PhiShear)],
        ["LRFD wood CKF compression parallel 2.5/phi"] = () => [TimberFactors.Format(TimberFactors.PhiCompression)],
        ["LRFD wood CKF tension 2.5/phi"] = () => [TimberFactors.Format(TimberFactors.PhiTension)],
        ["LRFD wood CKF compression perp 2.1/phi"] = () => [TimberFactors.FormatAcross],
        ["LRFD wood C_lambda Strength I"] = () => [TimberFactors.TimeEffect],
        ["LRFD wood C_lambda Strength II"] = () => [TimberFactors.TimeEffectOfPermits],
    };

    public static IEnumerable<TheoryDataRow<string, string, string, double[]>> ValueRows() =>
        from row in PublishedTable.Read("Timber/timber-design-values.csv")
        select new TheoryDataRow<string, string, string, double[]>(row["species"], row["size_class"], row["grade"], [.. Columns.Select(row.Number)])
        {
            Label = row.Label($"{row["species"]}, {row["size_class"]}, {row["grade"]}: {string.Join(", ", Columns.Select(c => row[c]))} psi"),
        };

    public static IEnumerable<TheoryDataRow<string, string>> FactorRows() =>
        from row in PublishedTable.Read("Timber/timber-factors.csv")
        select new TheoryDataRow<string, string>(row["item"], row["value"]) { Label = row.Label($"{row["item"]}: {row["value"]}") };

    [Theory]
    [MemberData(nameof(ValueRows))]
    public void Find_SpeciesClassAndGrade_IsThePrintedRow(string species, string sizeClass, string grade, double[] printed)
    {
        TimberDesignValues row = TimberDesignValues.Find(species, Classes[sizeClass], grade)!;
        double[] values = [row.Bending, row.Tension, row.Shear, row.CompressionAcross, row.Compression, row.Modulus, row.LeastModulus];
        Assert.All(printed.Zip(values), v => Assert.Equal(v.First, v.Second / Psi, 1e-6));

        // Supplement, commentary: Emin = 1.03 E (1 − 1.645 × 0.25)/1.66, rounded to 10,000 psi.
        Assert.Equal(1.03 * row.Modulus / Psi * (1 - (1.645 * 0.25)) / 1.66, row.LeastModulus / Psi, 5000.0);
    }

    [Theory]
    [MemberData(nameof(FactorRows))]
    public void Factor_IsThePrintedOne(string item, string printed)
    {
        double[] factors = item.StartsWith("CF timbers d=", StringComparison.Ordinal)
            ? [.. ((TimberSizeClass[])[TimberSizeClass.PostsAndTimbers, TimberSizeClass.BeamsAndStringers, TimberSizeClass.Timbers]).Select(c => TimberFactors.Size(c, 12 * Inch, Inch * Number(item["CF timbers d=".Length..])))]
            : Factors[item]();
        int digits = printed.Split('.') is [_, { } decimals] ? decimals.Length : 0;
        Assert.All(factors, f => Assert.Equal(Number(printed), f, (0.5 * Math.Pow(10, -Math.Max(2, digits))) + 1e-9));
    }

    [Fact]
    public void EveryFactorNamed_BelongsToARow() =>
        Assert.Equal(
            Factors.Keys.Order(),
            PublishedTable.Read("Timber/timber-factors.csv").Select(r => r["item"]).Where(i => !i.StartsWith("CF timbers d=", StringComparison.Ordinal)).Order());

    [Fact]
    public void Published_HasNoRowBeyondTheTable() =>
        Assert.Equal(PublishedTable.Read("Timber/timber-design-values.csv").Count, TimberDesignValues.Published.Count);

    [Fact]
    public void Wet_LowValues_AreFreeOfTheFactor()
    {
        WetService low = TimberFactors.Wet(TimberSizeClass.Dimension, 1150 * Psi, 750 * Psi);
        Assert.Equal((1.0, 1.0), (low.Bending, low.Compression));
    }

    private static double Size(double thickness, double width) => TimberFactors.Size(TimberSizeClass.Dimension, thickness * Inch, width * Inch);

    private static double Number(string text) => double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
