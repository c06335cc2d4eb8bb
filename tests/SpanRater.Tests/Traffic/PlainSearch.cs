namespace SpanRater.Tests;

/// <summary>
/// The plain twin of the search for recorded traffic: every axle is put on every panel point, driving either way, and each
/// line is read under all axles; three times, with the axles at both ends of the deck on it, and in the limits to either side.
/// </summary>
internal static class PlainSearch
{
    // As in the search for ratings: what is nearer than this part of the deck's length is at one place, what is less than this part of the weight is nothing.
    private const double SamePlace = 1e-9;
    private const double Nothing = 1e-9;

    /// <summary>The greatest and the least effect on each line, whichever way the train drives.</summary>
    internal static (double[] Greatest, double[] Least) Cross(
        IReadOnlyList<double> stations, IReadOnlyList<InfluenceLine> lines, ReadOnlySpan<double> loads, ReadOnlySpan<double> gaps)
    {
        double[] greatest = new double[lines.Count], least = new double[lines.Count], behind = new double[loads.Length];
        for (int k = 1; k < loads.Length; k++)
        {
            behind[k] = behind[k - 1] + gaps[k - 1];
        }

        double[][] ordinates = [.. lines.Select(line => line.Ordinates.ToArray())];
        var standing = new List<(int Left, double OnLeft, double OnRight)>();
        foreach (int backward in (int[])[-1, 1])
        {
            foreach (double station in stations)
            {
                foreach (double reference in behind)
                {
                    foreach (Approach approach in Enum.GetValues<Approach>())
                    {
                        standing.Clear();
                        for (int k = 0; k < loads.Length; k++)
                        {
                            Stand(stations, station + (backward * (behind[k] - reference)), loads[k], approach, standing);
                        }

                        Read(ordinates, standing, greatest, least);
                    }
                }
            }
        }

        double nothing = Nothing * loads.ToArray().Sum();
        return ([.. greatest.Select(g => g <= nothing ? 0 : g)], [.. least.Select(l => l >= -nothing ? 0 : l)]);
    }

    private static void Stand(IReadOnlyList<double> stations, double x, double load, Approach approach, List<(int Left, double OnLeft, double OnRight)> standing)
    {
        double left = stations[0], right = stations[^1], near = SamePlace * (right - left);
        if (x < left - near || x > right + near || (approach == Approach.JustLeft && x <= left + near) || (approach == Approach.JustRight && x >= right - near))
        {
            return;
        }

        int segment = 0;
        while (segment < stations.Count - 2 && stations[segment + 1] <= x)
        {
            segment++;
        }

        double share = Math.Clamp((x - stations[segment]) / (stations[segment + 1] - stations[segment]), 0, 1);
        standing.Add((segment, load * (1 - share), load * share));
    }

    private static void Read(double[][] ordinates, List<(int Left, double OnLeft, double OnRight)> standing, double[] greatest, double[] least)
    {
        for (int i = 0; i < ordinates.Length; i++)
        {
            double effect = 0;
            foreach ((int left, double onLeft, double onRight) in standing)
            {
                effect += (onLeft * ordinates[i][left]) + (onRight * ordinates[i][left + 1]);
            }

            greatest[i] = Math.Max(greatest[i], effect);
            least[i] = Math.Min(least[i], effect);
        }
    }
}
