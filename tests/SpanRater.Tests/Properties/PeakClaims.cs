namespace SpanRater.Tests;

/// <summary>What must hold of every peak that the exact search reports.</summary>
internal static class PeakClaims
{
    /// <summary>The sweep never beats the exact peaks, and they lie above it by no more than its steps explain.</summary>
    internal static void AssertMatchesSweep(InfluenceLine line, AxleTrain train, double step, int gapSteps)
    {
        PeakPair peaks = new RollingPlan(line.Stations, train).PeaksOf(line);
        var sweep = new SteppedSweep(line, train, step, gapSteps);
        double equal = 1e-9 * train.Weight;
        foreach (Sense sense in Enum.GetValues<Sense>())
        {
            Peak? peak = peaks.Of(sense);
            double exact = Math.Abs(peak?.Force ?? 0), swept = sweep.Highest(sense);
            Assert.True(exact >= swept - equal, $"{sense}: the sweep reaches {swept:R}, the search {exact:R}.");
            if (peak is not null)
            {
                double missed = sweep.MostMissed(peak);
                Assert.True(exact <= swept + missed + equal, $"{sense}: the search reports {exact:R}, the sweep {swept:R}, which misses {missed:R} at most.");
                AssertConsistent(line, train, sense, peak);
            }
        }
    }

    /// <summary>The peak says of each axle where it stands and what it adds, and the train can stand like that.</summary>
    internal static void AssertConsistent(InfluenceLine line, AxleTrain train, Sense sense, Peak peak)
    {
        double near = 1e-9 * (line.Stations[^1] - line.Stations[0]), sign = sense == Sense.Tension ? 1 : -1;
        Assert.True(sign * peak.Force > 1e-9 * train.Weight);
        Assert.Equal(train.Loads, peak.Axles.Select(a => a.Load));
        Assert.Equal(peak.Force, peak.Axles.Sum(a => a.Effect), 1e-12 * train.Weight);
        Assert.Equal(train.Gaps.Count, peak.Gaps.Count);
        double x = peak.Station;
        for (int k = 0; k < peak.Axles.Count; k++)
        {
            if (k > 0)
            {
                Assert.InRange(peak.Gaps[k - 1], train.Gaps[k - 1].Least, train.Gaps[k - 1].Most);
                x += peak.Direction == Direction.Right ? -peak.Gaps[k - 1] : peak.Gaps[k - 1];
            }

            AxleEffect axle = peak.Axles[k];
            Assert.Equal(x, axle.Station, near * train.Loads.Count);
            double ordinate = OrdinateAt(line, axle.Station, near);
            bool isOff = axle.Ordinate == 0 && EndUnder(line, axle.Station, near) is not null;
            Assert.True(isOff || Math.Abs(axle.Ordinate - ordinate) <= 1e-7 * line.Ordinates.Max(Math.Abs), $"Axle {k}: {axle.Ordinate:R} against {ordinate:R}.");
            bool isLeftOut = train.RelievingAxles == RelievingAxles.LeftOut && sign * axle.Ordinate < 0;
            Assert.Equal(isLeftOut ? 0 : axle.Load * axle.Ordinate, axle.Effect);
        }

        AssertAttained(line, train, sign, peak, near);
    }

    // A one-sided limit is attained by moving each axle a little, all gaps staying in their ranges.
    private static void AssertAttained(InfluenceLine line, AxleTrain train, double sign, Peak peak, double near)
    {
        const double LargestPart = 1e-6;
        double nudge = 1e3 * near, allowed = LargestPart * train.Weight * line.Ordinates.Max(Math.Abs) * line.Stations.Count * SteepnessOf(line);
        double highest = double.NegativeInfinity;
        void Move(int axle, double previous, double sum)
        {
            if (axle == peak.Axles.Count)
            {
                highest = Math.Max(highest, sum);
                return;
            }

            foreach (double move in (double[])[0, -nudge, nudge])
            {
                if (axle > 0)
                {
                    double gap = peak.Gaps[axle - 1] + ((peak.Direction == Direction.Right ? 1 : -1) * (previous - move));
                    AxleGap range = train.Gaps[axle - 1];
                    if (range.Varies ? gap < range.Least - near || gap > range.Most + near : move != previous)
                    {
                        continue;
                    }
                }

                double effect = sign * peak.Axles[axle].Load * OrdinateAt(line, peak.Axles[axle].Station + move, near);
                Move(axle + 1, move, sum + (train.RelievingAxles == RelievingAxles.LeftOut ? Math.Max(0, effect) : effect));
            }
        }

        Move(0, 0, 0);
        Assert.True(highest >= Math.Abs(peak.Force) - allowed, $"The train nowhere near the reported place gives {Math.Abs(peak.Force):R}; the most is {highest:R}.");
    }

    // How much steeper the steepest piece is than one that changes by the largest ordinate over a mean panel.
    private static double SteepnessOf(InfluenceLine line)
    {
        double panel = (line.Stations[^1] - line.Stations[0]) / (line.Stations.Count - 1);
        return Math.Max(1, 2 * panel / Enumerable.Range(1, line.Stations.Count - 1).Min(i => line.Stations[i] - line.Stations[i - 1]));
    }

    // A station that rounding put a hair off the deck's end stands on the end.
    private static double OrdinateAt(InfluenceLine line, double station, double near) => line.OrdinateAt(EndUnder(line, station, near) ?? station);

    private static double? EndUnder(InfluenceLine line, double station, double near) =>
        Math.Abs(station - line.Stations[0]) <= 2 * near ? line.Stations[0]
        : Math.Abs(station - line.Stations[^1]) <= 2 * near ? line.Stations[^1]
        : null;
}
