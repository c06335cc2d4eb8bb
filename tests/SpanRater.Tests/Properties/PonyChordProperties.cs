using CsCheck;
using MathNet.Numerics.LinearAlgebra;

namespace SpanRater.Tests.Properties;

/// <summary>Engesser's force against the buckling of a bar on single springs, found as an eigenvalue of beam elements.</summary>
public class PonyChordProperties
{
    private const int ElementsPerPanel = 4;

    // Long chords, springs at every panel point, ends held: the formula spreads the springs evenly, and is up to 2 % too high for it.
    [Fact]
    public void EngesserForce_OfALongChord_IsThatOfABarOnSprings() =>
        SeededCases.Check(Gen.Select(Gen.Double[1.3, 2.5], Gen.Int[10, 16]), 25, c =>
        {
            PonyChord chord = Chord(c.Item1);
            double onSprings = CriticalForce(chord, c.Item2);
            Assert.Equal(c.Item1, chord.EffectiveLengthFactor, 1e-9);
            Assert.InRange(onSprings / chord.EngesserForce, 0.98, 1.12);
        });

    [Fact]
    public void LeastElasticForce_OfAnyChord_IsReachedByABarOnSprings() =>
        SeededCases.Check(Gen.Select(Gen.Double[0.5, 2.5], Gen.Int[4, 14]), 25, c =>
        {
            PonyChord chord = Chord(c.Item1);
            Assert.True(CriticalForce(chord, c.Item2) > 0.98 * chord.LeastElasticForce);
        });

    [Fact]
    public void CriticalForce_OfABarHeldAtItsEnds_IsEulers()
    {
        PonyChord chord = Chord(1.5) with { FrameStiffness = 1e-3 };
        Assert.Equal(chord.PanelForce / 36, CriticalForce(chord, 6), chord.PanelForce * 1e-6);
    }

    [Fact]
    public void ElasticForce_StiffFrames_AsksForTheTable()
    {
        PonyChord stiff = Chord(1.29);
        Assert.Null(stiff.ElasticForce);
        Assert.Equal(1.29, Assert.IsType<MissingDatum.PonyTable>(stiff.Missing).EffectiveLengthFactor, 1e-9);
        Assert.Equal(stiff.PanelForce / 1.69, stiff.LeastElasticForce, 1e-6);
        Assert.Equal(1, Chord(0.5).EffectiveLengthFactor);
        Assert.Equal(stiff.PanelForce, stiff.ElasticForceFor(1));
        Assert.Equal((1000 * 0.01 / 1.25, 3), (PonyChord.PostForce(1000, 1.25), PonyChord.PostForce(1000, 4)));
    }

    [Fact]
    public void Stiffness_WithAKnee_IsMore()
    {
        var frame = new PonyFrame(200e9, 1.65, 190e-8, 2.4, 935e-8);
        Assert.True((frame with { KneeHeight = 0.5 }).Stiffness > frame.Stiffness);
        Assert.Equal("KneeHeight", Assert.Throws<ArgumentOutOfRangeException>(() => (frame with { KneeHeight = 1.65 }).Stiffness).ParamName);
    }

    // K² = Pe/(2 √(C E I/d)).
    private static PonyChord Chord(double factor)
    {
        const double modulus = 200e9, inertia = 3e-6, panel = 3;
        double engesser = Math.PI * Math.PI * modulus * inertia / (panel * panel) / (factor * factor);
        return new PonyChord(modulus, inertia, panel, engesser * engesser * panel / (4 * modulus * inertia));
    }

    private static double CriticalForce(PonyChord chord, int panels)
    {
        int elements = panels * ElementsPerPanel, size = 2 * (elements + 1);
        double l = chord.PanelLength / ElementsPerPanel, ei = chord.Modulus * chord.Inertia / (l * l * l);
        Matrix<double> stiffness = Matrix<double>.Build.Dense(size, size), geometric = Matrix<double>.Build.Dense(size, size);
        double[,] bending = { { 12, 6 * l, -12, 6 * l }, { 6 * l, 4 * l * l, -6 * l, 2 * l * l }, { -12, -6 * l, 12, -6 * l }, { 6 * l, 2 * l * l, -6 * l, 4 * l * l } };
        double[,] slope = { { 36, 3 * l, -36, 3 * l }, { 3 * l, 4 * l * l, -3 * l, -l * l }, { -36, -3 * l, 36, -3 * l }, { 3 * l, -l * l, -3 * l, 4 * l * l } };
        for (int e = 0; e < elements; e++)
        {
            for (int i = 0; i < 4; i++)
            {
                for (int j = 0; j < 4; j++)
                {
                    stiffness[(2 * e) + i, (2 * e) + j] += ei * bending[i, j];
                    geometric[(2 * e) + i, (2 * e) + j] += slope[i, j] / (30 * l);
                }
            }
        }

        for (int p = 1; p < panels; p++)
        {
            stiffness[2 * p * ElementsPerPanel, 2 * p * ElementsPerPanel] += chord.FrameStiffness;
        }

        // Both ends are held across the bridge and free to turn.
        int[] free = [.. Enumerable.Range(0, size).Where(i => i != 0 && i != size - 2)];
        Matrix<double> k = Matrix<double>.Build.Dense(free.Length, free.Length, (i, j) => stiffness[free[i], free[j]]);
        Matrix<double> g = Matrix<double>.Build.Dense(free.Length, free.Length, (i, j) => geometric[free[i], free[j]]);
        Matrix<double> half = k.Cholesky().Factor.Inverse();
        return 1 / (half * g * half.Transpose()).Evd(Symmetricity.Symmetric).EigenValues.Max(v => v.Real);
    }
}
