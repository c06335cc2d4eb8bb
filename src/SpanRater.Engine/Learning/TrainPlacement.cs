namespace SpanRater;

/// <summary>A train where a learner puts it: one axle on a panel point.</summary>
/// <param name="Force">Force in the member [N].</param>
/// <param name="Direction">The way the train drives.</param>
/// <param name="Stations">x of each axle, from the front axle back [m].</param>
/// <param name="Ordinates">Ordinate under each axle; 0 off the deck [-].</param>
public sealed record TrainPlacement(double Force, Direction Direction, IReadOnlyList<double> Stations, IReadOnlyList<double> Ordinates)
{
    /// <summary>The placement that gives most of a sense, of all with an axle on a panel point; null where none gives any.</summary>
    /// <param name="stations">x of the panel points [m].</param>
    /// <param name="ordinates">Ordinates there; zero at both ends [-].</param>
    /// <param name="train">A train whose gaps do not vary.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="directions">The directions to try.</param>
    internal static TrainPlacement? Worst(IReadOnlyList<double> stations, IReadOnlyList<double> ordinates, AxleTrain train, Sense sense, params IReadOnlyList<Direction> directions)
    {
        double sign = sense == Sense.Tension ? 1 : -1;
        TrainPlacement? worst = null;
        foreach (Direction direction in directions)
        {
            double[] behind = Behind(train, direction);
            foreach (double station in stations)
            {
                foreach (double offset in behind)
                {
                    TrainPlacement here = At(station - offset, behind, stations, ordinates, train, direction);
                    if (sign * here.Force > 1e-9 * train.Weight && !(sign * here.Force <= (sign * worst?.Force) + (1e-12 * train.Weight)))
                    {
                        worst = here;
                    }
                }
            }
        }

        return worst;
    }

    // Distance of each axle from the front axle, to the right.
    private static double[] Behind(AxleTrain train, Direction direction)
    {
        var offsets = new double[train.Loads.Count];
        for (int i = 1; i < offsets.Length; i++)
        {
            offsets[i] = offsets[i - 1] + (direction == Direction.Right ? -train.Gaps[i - 1].Least : train.Gaps[i - 1].Least);
        }

        return offsets;
    }

    private static TrainPlacement At(double front, double[] behind, IReadOnlyList<double> stations, IReadOnlyList<double> ordinates, AxleTrain train, Direction direction)
    {
        double[] at = [.. behind.Select(b => front + b)];
        double[] under = [.. at.Select(x => Ordinate(x, stations, ordinates))];
        return new TrainPlacement(under.Zip(train.Loads, (y, p) => y * p).Sum(), direction, at, under);
    }

    private static double Ordinate(double x, IReadOnlyList<double> stations, IReadOnlyList<double> ordinates)
    {
        for (int i = 1; i < stations.Count; i++)
        {
            if (x >= stations[i - 1] && x <= stations[i])
            {
                return ordinates[i - 1] + ((ordinates[i] - ordinates[i - 1]) * (x - stations[i - 1]) / (stations[i] - stations[i - 1]));
            }
        }

        return 0;
    }
}
