namespace SpanRater.Tests.Traffic;

/// <summary>
/// The live-load factor of a site, worked by pocket calculator. Form, fractiles and least values: AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.4.4.2.3b and commentary, from memory.
/// </summary>
public class SiteLiveLoadFactorTests
{
    private const double Kip = 4448.2216152605;

    // 1.8 (68 + 4.9 · 18)/120 = 2.343; 1.8 (2 · 68 + 4.3 · 1.41 · 18)/240 = 1.8 (136 + 109.134)/240 = 1.8385.
    [Fact]
    public void Factors_HeavyTrafficOfFiveThousand_AreByTheForm()
    {
        var factor = new SiteLiveLoadFactor(68 * Kip, 18 * Kip, 1000, 5000);
        Assert.Equal(2.343, factor.OneLane, 0.0005);
        Assert.Equal(1.8385, factor.MoreLanes, 0.0001);
    }

    // 1.8 (50 + 3.9 · 5)/120 = 1.0425; 1.8 (100 + 1.5 · 1.41 · 5)/240 = 0.8293: the least values count.
    [Fact]
    public void Factors_LightTraffic_AreNotBelowTheirLeast()
    {
        var factor = new SiteLiveLoadFactor(50 * Kip, 5 * Kip, 1000, 40);
        Assert.Equal(1.0425, factor.OneLaneByFormula, 0.0001);
        Assert.Equal(0.8293, factor.MoreLanesByFormula, 0.0001);
        Assert.Equal((1.80, 1.30), (factor.OneLane, factor.MoreLanes));
    }

    [Theory]
    [InlineData(40, 3.9, 1.5)]
    [InlineData(100, 3.9, 1.5)]
    [InlineData(550, 4.2, 2.4)]
    [InlineData(1000, 4.5, 3.3)]
    [InlineData(3000, 4.7, 3.8)]
    [InlineData(9000, 4.9, 4.3)]
    public void Fractiles_BetweenPublishedTraffic_AreStraight(double trucksADay, double one, double more)
    {
        var factor = new SiteLiveLoadFactor(68 * Kip, 18 * Kip, 1000, trucksADay);
        Assert.Equal(one, factor.FractileOfOneLane, 1e-12);
        Assert.Equal(more, factor.FractileOfMoreLanes, 1e-12);
    }

    [Fact]
    public void Clauses_Values_AreTheProgramsNumbers()
    {
        double[] trucksADay = [100, 1000, 5000];
        SiteLiveLoadFactor[] at = [.. trucksADay.Select(t => new SiteLiveLoadFactor(68 * Kip, 18 * Kip, 1000, t))];
        Assert.Equal(TrafficClauses.SiteFractiles.Values, string.Join("; ", at.Select(f => f.FractileOfOneLane).Concat(at.Select(f => f.FractileOfMoreLanes)).Select(t => t.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture))));
        Assert.Equal("1.80 (W* + t σ*)/120; 1.80; 1.80 (2 W* + t 1.41 σ*)/240; 1.30", TrafficClauses.SiteFactor.Values);
    }
}
