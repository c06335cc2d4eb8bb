namespace SpanRater;

/// <summary>
/// Effects that are straight between panel points but for kinks: an effect is its dead value, plus the live load on its
/// line, plus its part of every take-over, which is zero until dead and live load together ask for it:
/// <c>T = d + λ Σ P y + Σ s max(0, dk + λ Σ P k)</c>. A kink is where one rod goes slack and another wakes.
/// </summary>
internal sealed class KinkedResponse
{
    private readonly int[][] kinksOf;

    /// <param name="lines">Ordinates of each effect while nothing is taken over [effects × panel points].</param>
    /// <param name="kinkLines">Ordinates of each take-over [kinks × panel points].</param>
    /// <param name="parts">What each effect gets of a unit take-over [kinks × effects].</param>
    public KinkedResponse(double[][] lines, double[][] kinkLines, double[][] parts)
    {
        Effects = lines.Length;
        Kinks = kinkLines.Length;
        Lines = [.. lines, .. kinkLines];
        Parts = parts;
        kinksOf = [.. Enumerable.Range(0, Effects).Select(e => Enumerable.Range(0, Kinks).Where(k => parts[k][e] != 0).ToArray())];
    }

    /// <summary>Number of effects.</summary>
    public int Effects { get; }

    /// <summary>Number of kinks.</summary>
    public int Kinks { get; }

    /// <summary>Ordinates of the effects, then of the take-overs.</summary>
    public double[][] Lines { get; }

    /// <summary>What each effect gets of a unit take-over [kinks × effects].</summary>
    public double[][] Parts { get; }

    /// <summary>The kinks of which an effect gets a part.</summary>
    public IReadOnlyList<int> KinksOf(int effect) => kinksOf[effect];

    /// <summary>Effect, all kinks counted, where the straight parts of effects and take-overs are known.</summary>
    public double Total(int effect, ReadOnlySpan<double> straight)
    {
        double total = straight[effect];
        foreach (int k in kinksOf[effect])
        {
            total += Parts[k][effect] * Math.Max(0, straight[Effects + k]);
        }

        return total;
    }
}
