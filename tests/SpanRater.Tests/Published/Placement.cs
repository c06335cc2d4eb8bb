namespace SpanRater.Tests.Published;

/// <summary>
/// The placement of loads on a simple beam that gives its largest moment: midspan halves the distance between the
/// resultant of the loads on the span and the axle at the section. Source: any text on structural analysis, such as
/// Hibbeler, Structural Analysis, chapter 6. The loads that are then on the span are not known beforehand, so every row of
/// neighbouring axles is tried.
/// </summary>
internal static class Placement
{
    /// <summary>Distance of the resultant behind the front axle, read off the engine [m].</summary>
    public static double DistanceOfResultant(AxleTrain train)
    {
        // The line of the moment about the left end is the distance itself, so that a train that stands on it whole has the
        // effect weight times distance of its resultant.
        double length = 10 * train.Gaps.Sum(g => g.Most);
        double[] stations = [0, length];
        Peak peak = new RollingPlan(stations, train).PeaksOf(new InfluenceLine(stations, stations)).Tension!;
        Assert.All(peak.Axles, axle => Assert.InRange(axle.Station, 0, length + 1e-9));
        return Math.Abs((peak.Force / train.Weight) - peak.Station);
    }

    /// <summary>The largest moment that a train of fixed gaps gives anywhere in a simple beam [N·m].</summary>
    public static double LargestMoment(double span, AxleTrain train) =>
        Sections(span, train).Max(section =>
        {
            double[] stations = [0, section, span];
            var line = new InfluenceLine(stations, [0, section * (span - section) / span, 0]);
            return new RollingPlan(stations, train).PeaksOf(line).Tension!.Force;
        });

    /// <summary>The largest end shear of a simple beam [N].</summary>
    public static double LargestEndShear(double span, AxleTrain train)
    {
        double[] stations = [0, span];
        return new RollingPlan(stations, train).PeaksOf(new InfluenceLine(stations, [1, 0])).Tension!.Force;
    }

    private static IEnumerable<double> Sections(double span, AxleTrain train)
    {
        double[] behind = new double[train.Loads.Count];
        for (int k = 1; k < behind.Length; k++)
        {
            behind[k] = behind[k - 1] + train.Gaps[k - 1].Least;
        }

        for (int first = 0; first < behind.Length; first++)
        {
            for (int last = first; last < behind.Length; last++)
            {
                double weight = 0, moment = 0;
                for (int k = first; k <= last; k++)
                {
                    weight += train.Loads[k];
                    moment += train.Loads[k] * behind[k];
                }

                for (int k = first; k <= last; k++)
                {
                    double section = (span / 2) + ((behind[k] - (moment / weight)) / 2);
                    if (section > 0 && section < span)
                    {
                        yield return section;
                    }
                }
            }
        }
    }
}
