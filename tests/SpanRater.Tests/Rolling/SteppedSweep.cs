namespace SpanRater.Tests;

/// <summary>
/// The plain twin of the exact search: the train is moved over the deck in small steps, both ways and over a grid of its
/// varying gaps, and the line is read under every axle.
/// </summary>
internal sealed class SteppedSweep
{
    private readonly InfluenceLine line;
    private readonly AxleTrain train;
    private readonly double step;
    private readonly int gapSteps;

    /// <param name="line">The influence line.</param>
    /// <param name="train">The train.</param>
    /// <param name="step">Distance between two positions of the front axle [m].</param>
    /// <param name="gapSteps">Number of steps from a varying gap's smallest to its largest value.</param>
    internal SteppedSweep(InfluenceLine line, AxleTrain train, double step, int gapSteps)
    {
        this.line = line;
        this.train = train;
        this.step = step;
        this.gapSteps = gapSteps;
        Run(0, new double[train.Gaps.Count]);
    }

    /// <summary>Largest positive effect met; 0 where none is.</summary>
    internal double Tension { get; private set; }

    /// <summary>Largest negative effect met; 0 where none is.</summary>
    internal double Compression { get; private set; }

    /// <summary>Magnitude of the largest effect met in a sense.</summary>
    internal double Highest(Sense sense) => sense == Sense.Tension ? Tension : -Compression;

    /// <summary>
    /// The most by which an exact peak may lie above the sweep. The nearest swept position has every axle within half a
    /// step and half a step of each varying gap ahead of it; so far the line changes by its largest slope times that
    /// distance, and by the ordinate of a deck end besides, where the axle stands so near to it that it may be off.
    /// </summary>
    internal double MostMissed(Peak peak)
    {
        double slope = 0;
        for (int i = 1; i < line.Stations.Count; i++)
        {
            slope = Math.Max(slope, Math.Abs((line.Ordinates[i] - line.Ordinates[i - 1]) / (line.Stations[i] - line.Stations[i - 1])));
        }

        double missed = 0, distance = step / 2;
        for (int k = 0; k < train.Loads.Count; k++)
        {
            distance += k == 0 ? 0 : (train.Gaps[k - 1].Most - train.Gaps[k - 1].Least) / (2 * gapSteps);
            double jump = 0;
            foreach (int end in (int[])[0, line.Stations.Count - 1])
            {
                // The last part allows for the rounding of the station that is reported.
                if (Math.Abs(peak.Axles[k].Station - line.Stations[end]) <= distance * (1 + 1e-9))
                {
                    jump = Math.Max(jump, Math.Abs(line.Ordinates[end]));
                }
            }

            missed += train.Loads[k] * ((slope * distance) + jump);
        }

        return missed;
    }

    private void Run(int gap, double[] gaps)
    {
        if (gap < gaps.Length)
        {
            AxleGap range = train.Gaps[gap];
            for (int i = 0; i <= (range.Varies ? gapSteps : 0); i++)
            {
                gaps[gap] = range.Least + ((range.Most - range.Least) * i / gapSteps);
                Run(gap + 1, gaps);
            }

            return;
        }

        double length = gaps.Sum();
        for (double front = line.Stations[0] - step; front <= line.Stations[^1] + length + step; front += step)
        {
            Visit(front, gaps, -1);
        }

        for (double front = line.Stations[0] - length - step; front <= line.Stations[^1] + step; front += step)
        {
            Visit(front, gaps, 1);
        }
    }

    private void Visit(double front, double[] gaps, double backward)
    {
        bool leaveOut = train.RelievingAxles == RelievingAxles.LeftOut;
        double whole = 0, pulling = 0, pressing = 0, x = front;
        for (int k = 0; k < train.Loads.Count; k++)
        {
            x += k == 0 ? 0 : backward * gaps[k - 1];
            double effect = train.Loads[k] * line.OrdinateAt(x);
            whole += effect;
            pulling += Math.Max(0, effect);
            pressing += Math.Min(0, effect);
        }

        Tension = Math.Max(Tension, leaveOut ? pulling : whole);
        Compression = Math.Min(Compression, leaveOut ? pressing : whole);
    }
}
