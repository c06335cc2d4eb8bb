namespace SpanRater.Tests.Resistance.Members;

/// <summary>
/// Members by partial factors of the user's own. The curve values are those of the published table of EN 1993-1-1 that
/// Published/EuropeanBuckling holds, three digits each; the factors here are made up and are no national annex.
/// </summary>
public class PartialResistanceTests
{
    private const double Area = 2e-3, Yield = 235e6, Ultimate = 360e6, M0 = 1.0, M1 = 1.1, M2 = 1.25;

    private static readonly MetalStrength Steel = new(Yield, Ultimate, new StrengthOrigin.Given("made up for the test"));

    // Ncr = A fy / λ².
    [Theory]
    [InlineData("a", 0.8, 0.796)]
    [InlineData("b", 1.0, 0.597)]
    [InlineData("c", 1.2, 0.434)]
    [InlineData("d", 2.0, 0.177)]
    public void Column_OfASlenderness_TakesTheCurve(string curve, double slenderness, double reduction)
    {
        ColumnStrength column = ColumnCurve.Partial(Factors(curve)).Strength(Area, Yield, Area * Yield / (slenderness * slenderness));
        Assert.Equal(reduction, column.Value * M1 / (Area * Yield), 0.0005);
    }

    [Fact]
    public void Tension_OfANetSection_TakesTheTensileStrength()
    {
        IReadOnlyList<TensionStrength> modes = TensionRule.Partial(Factors("c")).Strengths(Steel, new TensionArea(Area, 1.6e-3, 0.9));
        Assert.Equal(Area * Yield / M0, modes[0].Value, 1e-6);
        Assert.Equal(0.9 * 1.6e-3 * 0.9 * Ultimate / M2, modes[1].Value, 1e-6);
    }

    // N/NRd + N e/((1 − N/Ncr) W fy/γ) = 1 at the force found.
    [Fact]
    public void Combined_AtTheForceFound_UsesUpTheLine()
    {
        PartialResistance factors = Factors("c");
        ColumnStrength column = ColumnCurve.Partial(factors).Strength(Area, Yield, Area * Yield);
        double moment = CombinedRule.Partial(factors).MomentStrength(Steel, 5e-5), critical = 1.4 * Area * Yield;
        CombinedStrength found = CombinedRule.Partial(factors).Compression(column, critical, moment, 0.02);
        Assert.Equal(1, (found.Force / column.Value) + (found.Force * 0.02 / ((1 - (found.Force / critical)) * moment)), 1e-6);
        Assert.Equal(5e-5 * Yield / M1, moment, 1e-6);
    }

    [Fact]
    public void Timber_ByPartialFactors_HasNoRule()
    {
        var method = new PartialFactorRating(new PartialFactors("made up", "this test", "assessment", new DeadFactors(1.35, 1.5, 1, 1), null, 1.5) { Resistance = Factors("c") });
        Assert.Null(method.StrengthsAt(method.LevelsOf(VehicleClass.Crowd, new RatingSettings())[0])!.Timber);
    }

    private static PartialResistance Factors(string curve) => new(M0, M1, M2, BucklingCurve.Find(curve)!);
}
