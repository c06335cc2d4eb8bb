namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>The top chord of Tansy Weir on its frames: our own anchors, worked by hand from the formulas of Engesser and Euler.</summary>
public class TansyWeirChordTests
{
    private const double Modulus = 200e9;

    private static readonly PonyFrame Frame = new(Modulus, 1.65, 190e-8, 2.4, 935e-8);

    private static readonly PonyChord Chord = new(Modulus, 318e-8, 3.0, Frame.Stiffness);

    [Fact]
    public void Stiffness_OfAFrame_Is176NewtonAMillimetre() => Assert.Equal(176, Frame.Stiffness / 1000, 0.5);

    [Fact]
    public void EngesserForce_Is386Kilonewton() => Assert.Equal(386, Chord.EngesserForce / 1000, 0.5);

    [Fact]
    public void PanelForce_Is697Kilonewton() => Assert.Equal(697, Chord.PanelForce / 1000, 0.5);

    [Fact]
    public void EffectiveLengthFactor_Is1Point34_AndTheFormulaHolds()
    {
        Assert.Equal(1.34, Chord.EffectiveLengthFactor, 0.005);
        Assert.Null(Chord.Missing);
        Assert.Equal(Chord.EngesserForce, Chord.ElasticForce);
        Assert.Equal(Chord.EngesserForce, Chord.LeastElasticForce);
    }

    // The same frame by virtual work: two posts and a floorbeam under a pair of unit forces at the tops, each moving by δ.
    [Fact]
    public void Stiffness_OfAFrame_IsThatOfVirtualWork()
    {
        const int parts = 2000;
        double work = 0;
        for (int i = 0; i < parts; i++)
        {
            double fromTop = 1.65 * (i + 0.5) / parts;
            work += 2 * fromTop * fromTop * 1.65 / parts / (Modulus * 190e-8);
        }

        work += 1.65 * 1.65 * 2.4 / (Modulus * 935e-8);
        Assert.Equal(2 / work, Frame.Stiffness, 1.0);
    }
}
