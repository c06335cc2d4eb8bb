namespace SpanRater;

/// <summary>
/// Positions of a train that are as far as they can be pinned: some of its groups stand with an axle on a panel point, and
/// each of the others floats within a stretch between such positions, where one rod each is just at zero. What is left free
/// is the weight of the train. At a given weight a family is one position; as the weight changes, its floating groups move.
/// </summary>
internal sealed class Family
{
    private readonly GroupPlace[] places;
    private readonly int[] floating;
    private readonly int[] zeroKinks;

    public Family(Arrangement arrangement, GroupPlace[] places, int[] zeroKinks)
    {
        Arrangement = arrangement;
        this.places = places;
        this.zeroKinks = zeroKinks;
        floating = [.. Enumerable.Range(0, places.Length).Where(g => places[g].IsFloating)];
    }

    public Arrangement Arrangement { get; }

    /// <summary>The kinks that are at zero, one a floating group.</summary>
    public IReadOnlyList<int> ZeroKinks => zeroKinks;

    /// <summary>The foremost limit that the train stands at, or the positions themselves.</summary>
    public Approach Approach => places.Select(p => p.Approach).FirstOrDefault(a => a != Approach.At);

    /// <summary>Where each group stands or floats, front to back.</summary>
    public IReadOnlyList<GroupPlace> Places => places;

    /// <summary>The straight parts of all lines along the family, and the weights for which it exists; null where there are none.</summary>
    /// <param name="response">The response.</param>
    /// <param name="dead">Dead values of the effects, then of the take-overs.</param>
    /// <param name="tolerance">Length within which the limit of a gap counts as reached [m].</param>
    public Ray? Along(KinkedResponse response, double[] dead, double tolerance)
    {
        // Positions times scale: those of floating groups are start + λ rate.
        var start = new double[places.Length];
        var rate = new double[places.Length];
        for (int g = 0; g < places.Length; g++)
        {
            rate[g] = places[g].Left;
        }

        if (floating.Length > 0 && !SolveFloating(response, dead, start, rate))
        {
            return null;
        }

        double least = 0, most = double.PositiveInfinity;
        // Strictly within the stretch: its ends are families of their own, and just beyond them a force of zero would have the wrong sign.
        foreach (int g in floating)
        {
            Restrict(start[g], rate[g] - places[g].Left, ref least, ref most);
            Restrict(-start[g], places[g].Right - rate[g], ref least, ref most);
        }

        for (int g = 0; g + 1 < places.Length && floating.Length > 0; g++)
        {
            double front = Arrangement.TowardFront;
            double gapStart = front * (start[g] - start[g + 1]);
            double gapRate = front * (rate[g] + Arrangement.Groups[g].Offsets[^1] - rate[g + 1]);
            Restrict(gapStart, gapRate - Arrangement.FreeGaps[g].Least + tolerance, ref least, ref most);
            Restrict(-gapStart, Arrangement.FreeGaps[g].Most - gapRate + tolerance, ref least, ref most);
        }

        if (!(least <= most))
        {
            return null;
        }

        var constants = new double[dead.Length];
        var rates = new double[dead.Length];
        for (int line = 0; line < dead.Length; line++)
        {
            constants[line] = dead[line];
            for (int g = 0; g < places.Length; g++)
            {
                constants[line] += places[g].Slopes is { } slopes ? slopes[line] * start[g] : 0;
                rates[line] += places[g].Constants[line] + (places[g].Slopes is { } own ? own[line] * rate[g] : 0);
            }
        }

        foreach (int k in zeroKinks)
        {
            (constants[response.Effects + k], rates[response.Effects + k]) = (0, 0);
        }

        return new Ray(this, constants, rates, start, rate, least, most);
    }

    private bool SolveFloating(KinkedResponse response, double[] dead, double[] start, double[] rate)
    {
        var slopes = new double[zeroKinks.Length, floating.Length];
        var fromDead = new double[zeroKinks.Length];
        var fromLive = new double[zeroKinks.Length];
        for (int z = 0; z < zeroKinks.Length; z++)
        {
            int line = response.Effects + zeroKinks[z];
            fromDead[z] = -dead[line];
            foreach (GroupPlace place in places)
            {
                fromLive[z] -= place.Constants[line];
            }

            for (int f = 0; f < floating.Length; f++)
            {
                slopes[z, f] = places[floating[f]].Slopes![line];
            }
        }

        if (Elimination.Of(slopes) is not { } system)
        {
            return false;
        }

        double[] starts = system.Solve([.. system.Rows.Select(r => fromDead[r])]);
        double[] rates = system.Solve([.. system.Rows.Select(r => fromLive[r])]);
        for (int f = 0; f < floating.Length; f++)
        {
            (start[floating[f]], rate[floating[f]]) = (starts[f], rates[f]);
        }

        return true;
    }

    // Keeps the scales at which constant + λ rate is not negative.
    private static void Restrict(double constant, double rate, ref double least, ref double most)
    {
        if (rate > 0)
        {
            least = Math.Max(least, -constant / rate);
        }
        else if (rate < 0)
        {
            most = Math.Min(most, -constant / rate);
        }
        else if (constant < 0)
        {
            most = double.NegativeInfinity;
        }
    }
}

/// <summary>Where a rigid group stands: pinned with an axle on a panel point, or floating between two such positions.</summary>
/// <param name="Position">Its position in <see cref="RigidGroup.Positions"/>, or that at the left end of its stretch.</param>
/// <param name="Left">x of its front axle where pinned; else the left end of its stretch [m].</param>
/// <param name="Right">The right end of its stretch; the same where pinned [m].</param>
/// <param name="Approach">The side of a pinned position that is taken.</param>
/// <param name="Constants">Live value of each line: constant part.</param>
/// <param name="Slopes">Live value of each line by x of the front axle; null where pinned.</param>
internal sealed record GroupPlace(int Position, double Left, double Right, Approach Approach, double[] Constants, double[]? Slopes)
{
    public bool IsFloating => Slopes is not null;
}
