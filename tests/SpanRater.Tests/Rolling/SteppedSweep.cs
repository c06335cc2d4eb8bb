namespace SpanRater.Tests.Rolling;

/// <summary>
/// The plain twin of the exact search: it steps the train over the deck in both directions and over a grid of every gap
/// that may vary, and reads the influence line under each axle. What it finds is reached by some position; a peak
/// between two steps it misses by no more than <see cref="Shortfall"/>.
/// </summary>
internal static class SteppedSweep
{
    /// <summary>The highest and the lowest response of all positions tried [N]; 0 where no axle is on the deck.</summary>
    /// <param name="line">Influence line.</param>
    /// <param name="train">The train.</param>
    /// <param name="step">Distance between front stations [m].</param>
    /// <param name="gapSteps">Number of steps from the smallest to the largest value of a varying gap.</param>
    /// <param name="besideEnds">How far before and after an end of the deck each axle is stood as well; 0 for nowhere [m].</param>
    public static (double Highest, double Lowest) Of(InfluenceLine line, AxleTrain train, double step, int gapSteps, double besideEnds = 0)
    {
        double left = line.Stations[0], right = line.Stations[^1], highest = 0, lowest = 0;
        foreach (double[] behindFront in Grid(train, gapSteps))
        {
            foreach (int backward in (int[])[-1, 1])
            {
                double start = backward < 0 ? left : right;
                for (int k = 0; (k - 1) * step <= right - left + behindFront[^1]; k++)
                {
                    Try(start - (backward * k * step));
                }

                foreach (double behind in besideEnds > 0 ? behindFront : [])
                {
                    foreach (double aside in (double[])[-besideEnds, 0, besideEnds])
                    {
                        Try(left - (backward * behind) + aside);
                        Try(right - (backward * behind) + aside);
                    }
                }

                void Try(double front)
                {
                    (double up, double down) = Response(line, train, front, backward, behindFront);
                    highest = Math.Max(highest, up);
                    lowest = Math.Min(lowest, down);
                }
            }
        }

        return (highest, lowest);
    }

    /// <summary>The response in one position, in the sense of tension and in that of compression; the same where axles count whole.</summary>
    /// <param name="line">Influence line.</param>
    /// <param name="train">The train.</param>
    /// <param name="front">x of the front axle [m].</param>
    /// <param name="backward">−1 driving right, 1 driving left.</param>
    /// <param name="behindFront">Distance of each axle from the front axle [m].</param>
    public static (double Tension, double Compression) Response(InfluenceLine line, AxleTrain train, double front, int backward, double[] behindFront)
    {
        double whole = 0, pulling = 0, pressing = 0;
        for (int a = 0; a < behindFront.Length; a++)
        {
            double effect = train.Loads[a] * line.OrdinateAt(front + (backward * behindFront[a]));
            whole += effect;
            pulling += Math.Max(0, effect);
            pressing += Math.Min(0, effect);
        }

        return train.RelievingAxles == RelievingAxles.LeftOut ? (pulling, pressing) : (whole, whole);
    }

    /// <summary>
    /// The most by which the sweep can miss a peak: no axle is further from a position tried than a step and one grid
    /// step of every gap, and the line is nowhere steeper than its steepest piece. Holds where no jump lies in between:
    /// for lines that are zero at the ends of the deck, or with axles stood beside the ends.
    /// </summary>
    /// <param name="line">Influence line.</param>
    /// <param name="train">The train.</param>
    /// <param name="step">Distance between front stations [m].</param>
    /// <param name="gapSteps">Number of steps of a varying gap.</param>
    public static double Shortfall(InfluenceLine line, AxleTrain train, double step, int gapSteps) =>
        Steepest(line) * train.Weight * (step + train.Gaps.Sum(g => (g.Most - g.Least) / gapSteps));

    /// <summary>The steepest slope of the line, either way [effect/load/m].</summary>
    /// <param name="line">Influence line.</param>
    public static double Steepest(InfluenceLine line)
    {
        double steepest = 0;
        for (int i = 1; i < line.Stations.Count; i++)
        {
            double slope = (line.Ordinates[i] - line.Ordinates[i - 1]) / (line.Stations[i] - line.Stations[i - 1]);
            steepest = Math.Max(steepest, Math.Abs(slope));
        }

        return steepest;
    }

    // Distances of the axles from the front axle, for every choice of the varying gaps on their grids.
    private static List<double[]> Grid(AxleTrain train, int gapSteps)
    {
        List<double[]> grid = [[0]];
        foreach (AxleGap gap in train.Gaps)
        {
            int steps = gap.Varies ? gapSteps : 0;
            var longer = new List<double[]>();
            foreach (double[] front in grid)
            {
                for (int k = 0; k <= steps; k++)
                {
                    double value = steps == 0 ? gap.Least : gap.Least + ((gap.Most - gap.Least) * k / steps);
                    longer.Add([.. front, front[^1] + value]);
                }
            }

            grid = longer;
        }

        return grid;
    }
}
