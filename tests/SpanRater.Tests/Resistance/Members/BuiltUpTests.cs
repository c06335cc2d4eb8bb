namespace SpanRater.Tests.Resistance.Members;

/// <summary>Built-up, laced and battened columns against statics and a second standard.</summary>
public class BuiltUpTests
{
    private const double Modulus = 200e9;

    // A unit shear on one panel: the bar takes d/b, and the work of the shear is that of the bar.
    [Theory]
    [InlineData(1, false)]
    [InlineData(2, false)]
    [InlineData(2, true)]
    public void ShearFlexibility_OfLacing_IsThatOfTheWorkOfItsBars(int planes, bool isDouble)
    {
        var lacing = new Lacing(0.3, 0.25, 4e-4, planes, isDouble);
        double bars = planes * (isDouble ? 2 : 1), force = lacing.BarLength / 0.25 / bars;
        double moved = bars * force * force * lacing.BarLength / (Modulus * 4e-4);
        Assert.Equal(moved / 0.3, lacing.ShearFlexibility(Modulus), 1e-15);
    }

    // EN 1993-1-1:2005, 6.4.3.1(2), from memory: Sv = 24 E Ich/(a² (1 + 2 Ich h0/(n Ib a))).
    [Fact]
    public void ShearFlexibility_OfBattens_IsThatOfTheEuropeanFormula()
    {
        const double a = 0.8, h = 0.3, batten = 2e-6, leg = 1.5e-6;
        double stiffness = 24 * Modulus * leg / (a * a * (1 + (2 * leg * h / (batten * a))));
        Assert.Equal(1, stiffness * new Battens(a, h, batten, leg).ShearFlexibility(Modulus), 1e-12);
    }

    [Fact]
    public void ElasticForce_StiffAndSoftLacing_LiesBetweenEulerAndTheShear()
    {
        Assert.Equal(1e6, BuiltUpColumn.ElasticForce(1e6, 0));
        Assert.Equal(0.5e6, BuiltUpColumn.ElasticForce(1e6, 1e-6), 1e-6);
        Assert.True(BuiltUpColumn.ElasticForce(1e12, 1e-6) < 1e6);
    }

    // By hand: √(60² + 45²) = 75; welded with α = 2: 60² + 0.82 × 0.8 × 45².
    [Fact]
    public void Slenderness_OfStitchedParts_IsThatByHand()
    {
        Assert.Equal(75, BuiltUpColumn.Slenderness(60, 0.9, 0.02, BuiltUpConnection.Riveted), 1e-9);
        Assert.Equal(Math.Sqrt(3600 + (0.82 * 0.8 * 2025)), BuiltUpColumn.Slenderness(60, 0.9, 0.02, BuiltUpConnection.Welded, 0.08), 1e-9);
        Assert.False(BuiltUpColumn.PartIsTooSlender(60, 0.9, 0.02));
        Assert.True(BuiltUpColumn.PartIsTooSlender(60, 0.91, 0.02));
    }

    [Fact]
    public void FreeLength_MissingLacing_GrowsByAPitchEach()
    {
        Lacing single = new(0.3, 0.25, 4e-4, 2, false), crossed = single with { IsDouble = true };
        Assert.Equal([0.6, 0.9, 1.2], Enumerable.Range(0, 3).Select(n => Math.Round(single.FreeLength(n), 12)));
        Assert.Equal([0.3, 0.6], Enumerable.Range(0, 2).Select(n => Math.Round(crossed.FreeLength(n), 12)));
        Assert.True(BuiltUpColumn.ElasticForceOfLegs(Modulus, 4e-3, single.FreeLength(1), 0.015) < BuiltUpColumn.ElasticForceOfLegs(Modulus, 4e-3, single.FreeLength(0), 0.015));
    }

    // 400 kN bring 10 kN across; d/b = 1.25 over two bars.
    [Fact]
    public void BarForce_IsTheShareOfTheShear()
    {
        var lacing = new Lacing(0.3, 0.4, 4e-4, 2, false);
        Assert.Equal(10e3 * 1.25 / 2, lacing.BarForce(400e3), 1e-6);
        Assert.Equal(0.7 * 0.5, (lacing with { IsDouble = true }).EffectiveBarLength, 1e-12);
    }
}
