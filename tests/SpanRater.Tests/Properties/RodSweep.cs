namespace SpanRater.Tests;

/// <summary>
/// The plain twin of the search with rods: the train is moved over the deck in small steps, both ways and over a grid of its
/// varying gaps; at each position every set of acting rods is tried, each with its own influence lines and dead forces,
/// and that without compression is taken.
/// </summary>
internal sealed class RodSweep
{
    private readonly Truss truss;
    private readonly AxleTrain train;
    private readonly double step;
    private readonly int gapSteps;
    private readonly int[] rods;
    private readonly ActingForces[] sets;

    /// <param name="truss">The truss; each of its pairs decides by itself.</param>
    /// <param name="dead">Dead load cases, such as components and wearing surface.</param>
    /// <param name="train">The train.</param>
    /// <param name="step">Distance between two positions of the front axle [m].</param>
    /// <param name="gapSteps">Number of steps from a varying gap's smallest to its largest value.</param>
    internal RodSweep(Truss truss, IReadOnlyList<LoadCase> dead, AxleTrain train, double step, int gapSteps)
    {
        this.truss = truss;
        this.train = train;
        this.step = step;
        this.gapSteps = gapSteps;
        IReadOnlyList<CrossedPair> pairs = CrossedPair.Of(truss);
        rods = [.. pairs.SelectMany(p => new[] { p.First, p.Second })];
        sets =
        [
            .. OwnStatics.Sets(pairs).Select(slack => OwnStatics.Without(truss, slack)!).Select(statics => new ActingForces(
                [.. dead.Select(statics.Forces)],
                [.. truss.PanelPoints.Select(p => statics.Forces(new LoadCase("unit", [new JointLoad(truss.Joints[p].Name, 0, -1)])))])),
        ];
    }

    /// <summary>The largest and smallest total of each member, the dead cases by their factors and the train at a scale.</summary>
    internal (double[] Most, double[] Least) Totals(double[] factors, double scale)
    {
        double[][] dead = [.. sets.Select(s => Enumerable.Range(0, truss.Members.Count).Select(m => s.Dead.Zip(factors, (d, f) => f * d[m]).Sum()).ToArray())];
        double[] most = Alone(factors), least = [.. most];
        var found = new double[truss.Members.Count];
        foreach (double[] gaps in GapsOf(0, new double[train.Gaps.Count]))
        {
            double length = gaps.Sum();
            foreach (double backward in (double[])[-1, 1])
            {
                double first = truss.Stations[0] - (backward > 0 ? length : 0), last = truss.Stations[^1] + (backward < 0 ? length : 0);
                for (double front = first; front <= last + step; front += step)
                {
                    At(front, gaps, backward, dead, scale, found);
                    for (int m = 0; m < found.Length; m++)
                    {
                        most[m] = Math.Max(most[m], found[m]);
                        least[m] = Math.Min(least[m], found[m]);
                    }
                }
            }
        }

        return (most, least);
    }

    /// <summary>The forces under dead load alone, the cases by their factors.</summary>
    internal double[] Alone(double[] factors)
    {
        double[][] dead = [.. sets.Select(s => Enumerable.Range(0, truss.Members.Count).Select(m => s.Dead.Zip(factors, (d, f) => f * d[m]).Sum()).ToArray())];
        var found = new double[truss.Members.Count];
        Take(dead, new double[truss.Stations.Count], found);
        return found;
    }

    /// <summary>
    /// The most by which an exact extreme of a member may lie beyond the sweep: every axle is within half a step of a swept
    /// position, and half a step of each varying gap ahead of it, and on the way the force changes by the steepest
    /// piece of the steepest set.
    /// </summary>
    internal double MostMissed(int member, double scale)
    {
        double slope = 0;
        foreach (ActingForces set in sets)
        {
            for (int i = 1; i < truss.Stations.Count; i++)
            {
                slope = Math.Max(slope, Math.Abs(set.Unit[i][member] - set.Unit[i - 1][member]) / (truss.Stations[i] - truss.Stations[i - 1]));
            }
        }

        double missed = 0, distance = step / 2;
        for (int k = 0; k < train.Loads.Count; k++)
        {
            distance += k == 0 ? 0 : (train.Gaps[k - 1].Most - train.Gaps[k - 1].Least) / (2 * gapSteps);
            missed += train.Loads[k] * scale * slope * distance;
        }

        return missed;
    }

    private IEnumerable<double[]> GapsOf(int gap, double[] gaps)
    {
        if (gap == gaps.Length)
        {
            return [gaps];
        }

        AxleGap range = train.Gaps[gap];
        return Enumerable.Range(0, range.Varies ? gapSteps + 1 : 1).SelectMany(i =>
        {
            double[] next = [.. gaps];
            next[gap] = range.Least + ((range.Most - range.Least) * i / gapSteps);
            return GapsOf(gap + 1, next);
        });
    }

    private void At(double front, double[] gaps, double backward, double[][] dead, double scale, double[] into)
    {
        var loads = new double[truss.Stations.Count];
        double x = front;
        for (int k = 0; k < train.Loads.Count; k++)
        {
            x += k == 0 ? 0 : backward * gaps[k - 1];
            for (int i = 1; i < loads.Length && x >= truss.Stations[0] && x <= truss.Stations[^1]; i++)
            {
                double left = truss.Stations[i - 1], right = truss.Stations[i];
                if (x <= right)
                {
                    loads[i - 1] += scale * train.Loads[k] * (right - x) / (right - left);
                    loads[i] += scale * train.Loads[k] * (x - left) / (right - left);
                    break;
                }
            }
        }

        Take(dead, loads, into);
    }

    // Of all sets, that in which the rods of the pairs are pressed least: in the right one they are not.
    private void Take(double[][] dead, double[] loads, double[] into)
    {
        double best = double.NegativeInfinity;
        int chosen = -1;
        for (int s = 0; s < sets.Length && best < 0; s++)
        {
            double least = 0;
            foreach (int rod in rods)
            {
                least = Math.Min(least, Force(s, rod, dead, loads));
            }

            if (least > best)
            {
                (best, chosen) = (least, s);
            }
        }

        for (int m = 0; m < into.Length; m++)
        {
            into[m] = Force(chosen, m, dead, loads);
        }
    }

    private double Force(int set, int member, double[][] dead, double[] loads)
    {
        double force = dead[set][member];
        for (int i = 0; i < loads.Length; i++)
        {
            force += loads[i] * sets[set].Unit[i][member];
        }

        return force;
    }

    /// <summary>Forces of all members with one set acting: under each dead case, and under a unit load at each panel point.</summary>
    private sealed record ActingForces(double[][] Dead, double[][] Unit);
}
