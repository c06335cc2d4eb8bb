using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>
/// The first vertical natural frequency of a truss with the mass of its dead load lumped at the joints that carry it, from its
/// flexibility: the largest value of <c>M½ F M½</c> is 1/ω². Beside it stands the simple formula with the dead load's own
/// deflection, <c>f = 0.18 √(g/Δ)</c>: AISC Steel Design Guide 11 (1997), 3.3, from memory.
/// </summary>
public sealed class VerticalFrequency
{
    /// <summary>Standard gravity [m/s²].</summary>
    public const double Gravity = 9.80665;

    private VerticalFrequency(double frequency, double simpleFrequency, double mass, double deadDeflection, int deadDeflectionAt)
    {
        Frequency = frequency;
        SimpleFrequency = simpleFrequency;
        Mass = mass;
        DeadDeflection = deadDeflection;
        DeadDeflectionAt = deadDeflectionAt;
    }

    /// <summary>First vertical frequency [Hz].</summary>
    public double Frequency { get; }

    /// <summary>0.18 √(g/Δ) with Δ the largest dead-load deflection [Hz].</summary>
    public double SimpleFrequency { get; }

    /// <summary>Mass of the dead load on one truss that moves [kg].</summary>
    public double Mass { get; }

    /// <summary>Largest downward deflection under the dead load [m].</summary>
    public double DeadDeflection { get; }

    /// <summary>Position of the joint where it is.</summary>
    public int DeadDeflectionAt { get; }

    /// <summary>The frequency of a truss under its dead load.</summary>
    /// <param name="truss">The truss; every member that acts needs an area.</param>
    /// <param name="dead">The dead load on one truss; weights are negative up.</param>
    public static Outcome<VerticalFrequency> Of(Truss truss, LoadCase dead)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(dead);
        (int Joint, double Weight)[] weights =
        [
            .. dead.Loads.GroupBy(l => l.Joint).Select(g => (Joint: truss.FindJoint(g.Key)!.Value, Weight: -g.Sum(l => l.Up)))
                .Where(w => w.Weight > 0 && truss.Joints[w.Joint].Support is null),
        ];
        if (weights.Length == 0)
        {
            return new Refusal.NoMovingMass();
        }

        int[] joints = [.. weights.Select(w => w.Joint)];
        if (!Deflections.Flexibilities(truss, dead, joints).TryGet(out FlexibilityTable? table, out Refusal? refusal))
        {
            return refusal;
        }

        double[][] flexibilities = table.Values;
        Matrix<double> scaled = Matrix<double>.Build.Dense(joints.Length, joints.Length, (r, c) =>
            Math.Sqrt(weights[r].Weight * weights[c].Weight) / Gravity * (flexibilities[r][c] + flexibilities[c][r]) / 2);
        double largest = scaled.Evd(Symmetricity.Symmetric).EigenValues.Max(v => v.Real);
        double[] sags = [.. joints.Select((_, i) => weights.Select((w, k) => w.Weight * flexibilities[k][i]).Sum())];
        int most = Array.IndexOf(sags, sags.Max());
        return !(largest > 0) || !(sags[most] > 0)
            ? new Refusal.NoMovingMass()
            : new VerticalFrequency(
                1 / (2 * Math.PI * Math.Sqrt(largest)), 0.18 * Math.Sqrt(Gravity / sags[most]), weights.Sum(w => w.Weight) / Gravity, sags[most], joints[most]);
    }
}
