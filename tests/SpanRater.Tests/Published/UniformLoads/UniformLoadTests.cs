using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.UniformLoads;

/// <summary>
/// Uniform loads by the loaded length. Crowd of EN 1991-2:2003, 5.3.2.1(2): formula from memory, values computed from it. Lane load
/// HA of UK BD 37/01, Table 13, from memory. Sidewalk of AASHTO Standard Specifications, 17th ed. (2002), 3.14.1.1, from memory,
/// by hand.
/// </summary>
public class UniformLoadTests
{
    private const double PoundPerSquareFoot = Pound / (Foot * Foot);

    public static IEnumerable<TheoryDataRow<double, double>> CrowdRows() =>
        from row in PublishedTable.Read("UniformLoads/footbridge-pressure.csv")
        select new TheoryDataRow<double, double>(row.Number("L_m"), row.Number("qfk_kN_m2"))
        {
            Label = row.Label($"crowd, {row["L_m"]} m: {row["qfk_kN_m2"]} kN/m²"),
        };

    public static IEnumerable<TheoryDataRow<double, double>> LaneRows() =>
        from row in PublishedTable.Read("UniformLoads/ha-lane-load.csv")
        select new TheoryDataRow<double, double>(row.Number("loaded_length_m"), row.Number("udl_kN_per_m_of_lane"))
        {
            Label = row.Label($"HA, {row["loaded_length_m"]} m: {row["udl_kN_per_m_of_lane"]} kN/m"),
        };

    [Theory]
    [MemberData(nameof(CrowdRows))]
    public void FootbridgePressure_OfALoadedLength_IsTheRuleOfTheStandard(double length, double printed) =>
        Assert.Equal(printed * 1000, new FootbridgePressure().At(length, 2), 1e-9);

    // Printed to 0.1 kN/m; at 18 m, 48.45 is printed as 48.5.
    [Theory]
    [MemberData(nameof(LaneRows))]
    public void HighwayLaneLoad_OfALoadedLength_IsThePrintedLoad(double length, double printed) =>
        Assert.Equal(printed, new HighwayLaneLoad().At(length, 3) / 1000, 0.05 + 1e-9);

    [Theory]
    [InlineData(1, 5, 85)]
    [InlineData(25, 5, 85)]
    [InlineData(25.5, 5, 85)]
    [InlineData(26, 5, 60)]
    [InlineData(100, 12, 60)]
    [InlineData(150, 5, 50)]
    [InlineData(300, 5, 40)]
    [InlineData(300, 15, 32)]
    [InlineData(120, 0, 60)]
    [InlineData(300, 60, 60)]
    public void SidewalkPressure_OfLengthAndWidth_IsTheRuleByHand(double lengthInFeet, double widthInFeet, double pounds) =>
        Assert.Equal(pounds, new SidewalkPressure().At(lengthInFeet * Foot, widthInFeet * Foot) / PoundPerSquareFoot, 1e-9);

    [Fact]
    public void KnifeEdgeLoad_OfALane_IsThePrintedLoad() => Assert.Equal(120_000, HighwayLaneLoad.KnifeEdgeLoad);

    [Fact]
    public void Intensities_SayWhatTheyAreAPartOf()
    {
        LoadIntensity[] all = [new FootbridgePressure(), new SidewalkPressure(), new HighwayLaneLoad(), new ConstantPressure(1, "given")];
        Assert.Equal([true, true, false, true], all.Select(i => i.IsPerArea));
        Assert.All(all, i => Assert.False(string.IsNullOrWhiteSpace(i.Name) || string.IsNullOrWhiteSpace(i.Source)));
    }

    [Fact]
    public void HighwayLaneLoad_OfNoLength_IsABugOfTheCaller() =>
        Assert.Equal("loadedLength", Assert.Throws<ArgumentOutOfRangeException>(() => new HighwayLaneLoad().At(0, 3)).ParamName);
}
