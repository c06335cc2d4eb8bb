namespace SpanRater;

/// <summary>The corners of a response with kinks for one dead load, and what they say of peaks and limits.</summary>
internal sealed class KinkedRays(KinkedResponse response, double[] dead, double trainWeight, IReadOnlyList<Ray> rays)
{
    // As in the search without kinks: see RollingPlan.
    private const double ZeroEffect = 1e-9;
    private const double EqualEffect = 1e-12;

    /// <summary>Part of a scale by which it is raised to be clear of a turn [-].</summary>
    private const double JustBeyond = 1e-9;

    /// <summary>An effect under the dead load alone.</summary>
    public double DeadAlone(int effect) => response.Total(effect, dead);

    /// <summary>The largest change of each effect from its dead value, in each sense, with the train at a scale.</summary>
    /// <param name="scale">Part of the train that is on, positive.</param>
    public (KinkedPeak? Tension, KinkedPeak? Compression)[] Peaks(double scale)
    {
        double equal = EqualEffect * trainWeight * scale, zero = ZeroEffect * trainWeight * scale;
        double[] alone = [.. Enumerable.Range(0, response.Effects).Select(DeadAlone)];
        var best = new KinkedPeak?[response.Effects, 2];
        var straight = new double[dead.Length];
        foreach (Ray ray in rays)
        {
            if (scale < ray.Least || scale > ray.Most)
            {
                continue;
            }

            ray.At(scale, straight);
            for (int e = 0; e < response.Effects; e++)
            {
                double change = response.Total(e, straight) - alone[e];
                Offer(ref best[e, 0], change, equal, zero, ray, scale);
                Offer(ref best[e, 1], -change, equal, zero, ray, scale);
            }
        }

        return [.. Enumerable.Range(0, response.Effects).Select(e => (best[e, 0], best[e, 1]))];
    }

    /// <summary>The placements that change an effect in a sense, the best first.</summary>
    /// <param name="effect">The effect.</param>
    /// <param name="sign">+1 for tension, -1 for compression.</param>
    /// <param name="scale">Part of the train that is on, positive.</param>
    /// <param name="positions">Number of placements looked at, both directions.</param>
    public IReadOnlyList<KinkedPeak> Ranked(int effect, double sign, double scale, out int positions)
    {
        Ray[] there = [.. rays.Where(r => scale >= r.Least && scale <= r.Most)];
        positions = there.Length;
        double alone = DeadAlone(effect), zero = ZeroEffect * trainWeight * scale, equal = EqualEffect * trainWeight * scale;
        return
        [
            .. there.Select(r => new KinkedPeak(sign * (r.Total(response, effect, scale) - alone), r, scale)).Where(p => p.Change > zero)
                .OrderByDescending(p => Math.Round(p.Change / equal)).ThenBy(p => p.Ray.Family.Arrangement.Direction).ThenBy(p => p.Ray.AxleStations(scale)[0]),
        ];
    }

    /// <summary>
    /// The smallest scale of the train at which an effect, with its sign, reaches a limit, divided by what a position adds to the
    /// weight; null where it never does.
    /// </summary>
    /// <param name="effect">The effect.</param>
    /// <param name="sign">+1 for tension, -1 for compression.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="addition">What a position adds to the weight of the train there, at least 1.</param>
    /// <param name="mostAddition">The largest such addition.</param>
    public KinkedScale? LeastScale(int effect, double sign, double limit, Func<Ray, double, double> addition, double mostAddition)
    {
        KinkedScale? least = null;
        double noRate = ZeroEffect * trainWeight;
        foreach (Ray ray in rays)
        {
            if (ray.Reaches(response, effect, sign, limit, noRate) is not { } weight || weight / mostAddition >= least?.Scale)
            {
                continue;
            }

            least = Smaller(least, ray, weight, addition(ray, weight));

            // A little beyond the limit another set may act, under which the position adds more: the scale is then smaller.
            foreach (double turn in ray.TurnsBeyond(response, effect, sign, limit, weight, least.Scale * mostAddition))
            {
                double beyond = turn * (1 + JustBeyond);
                least = Smaller(least, ray, beyond, addition(ray, beyond));
            }
        }

        return least;
    }

    private static KinkedScale Smaller(KinkedScale? least, Ray ray, double weight, double added) =>
        least is null || weight / added < least.Scale * (1 - EqualEffect) ? new KinkedScale(weight / added, weight, added, ray) : least;

    private static void Offer(ref KinkedPeak? best, double change, double equal, double zero, Ray ray, double scale)
    {
        if (change <= zero || (best is not null && change < best.Change - equal))
        {
            return;
        }

        if (best is null || change > best.Change + equal || IsEarlier(ray, scale, best))
        {
            best = new KinkedPeak(best is null ? change : Math.Max(change, best.Change), ray, scale);
        }
    }

    // Right before left, then the smaller gaps, then the smaller station.
    private static bool IsEarlier(Ray ray, double scale, KinkedPeak best)
    {
        Direction direction = ray.Family.Arrangement.Direction, other = best.Ray.Family.Arrangement.Direction;
        if (direction != other)
        {
            return direction < other;
        }

        double[] gaps = ray.Gaps(scale), others = best.Ray.Gaps(scale);
        for (int g = 0; g < gaps.Length; g++)
        {
            if (Math.Abs(gaps[g] - others[g]) > RollingPlan.OnPanelPoint * others[g])
            {
                return gaps[g] < others[g];
            }
        }

        double station = ray.AxleStations(scale)[0], bestStation = best.Ray.AxleStations(scale)[0];
        return station < bestStation - (RollingPlan.OnPanelPoint * Math.Abs(bestStation));
    }
}

/// <summary>The largest change of an effect, and the ray and scale at which it occurs.</summary>
internal sealed record KinkedPeak(double Change, Ray Ray, double Scale);

/// <summary>The scale at which a limit is reached.</summary>
/// <param name="Scale">Scale of the train, what the position adds taken out.</param>
/// <param name="Weight">Scale of the train with what the position adds.</param>
/// <param name="Addition">What the position adds.</param>
/// <param name="Ray">The positions.</param>
internal sealed record KinkedScale(double Scale, double Weight, double Addition, Ray Ray);
