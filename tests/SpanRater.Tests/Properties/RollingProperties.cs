using CsCheck;
using SpanRater.Tests.Rolling;

namespace SpanRater.Tests.Properties;

/// <summary>The exact search for peaks against the plain twin that steps, and every peak worked out again.</summary>
public class RollingProperties
{
    private const double EqualEffect = 1e-9;

    // Stations, gaps and steps that are whole numbers of 1/64 m are exact in binary, so that both searches stand an axle
    // on the end of a deck at the same positions.
    private const double Binary = 1.0 / 64;
    private const double Beside = 1.0 / 65_536;

    private static readonly Gen<InfluenceLine> LinesThatJump = Gen.Int[2, 8].SelectMany(points => Gen.Select(
        Gen.Int[64, 640].Array[points],
        Gen.Int[-8, 8].Array[points],
        (lengths, ordinates) => new InfluenceLine([.. Sums(lengths)], [.. ordinates.Select(y => y / 8.0)])));

    [Fact]
    public void PeaksOf_MembersOfRandomTrusses_AgreeWithTheSweep()
    {
        SeededSample.Run(
            Gen.Select(RandomTrusses.All, RandomTrains.Of(0.3048 / 4, varying: false), Gen.Int[0, 1_000]),
            "0000KnsK0J81",
            2_000,
            (sample, train, pick) =>
            {
                var plan = new RollingPlan(sample.Truss.Stations, train);
                foreach (InfluenceLine line in Lines(sample, pick, 2))
                {
                    Compare(line, train, plan, sample.Span / 160, gapSteps: 1);
                }
            });
    }

    [Fact]
    public void PeaksOf_GapsThatVary_AgreeWithTheSweep()
    {
        SeededSample.Run(
            Gen.Select(RandomTrusses.All, RandomTrains.Of(0.3048 / 4, varying: true), Gen.Int[0, 1_000]),
            "0001KnsK0J82",
            250,
            (sample, train, pick) =>
            {
                var plan = new RollingPlan(sample.Truss.Stations, train);
                foreach (InfluenceLine line in Lines(sample, pick, 2))
                {
                    Compare(line, train, plan, sample.Span / 80, gapSteps: 4);
                }
            });
    }

    [Fact]
    public void PeaksOf_LinesThatJumpAtTheEnds_AgreeWithTheSweep()
    {
        SeededSample.Run(
            Gen.Select(LinesThatJump, RandomTrains.Of(Binary * 8, varying: false)),
            "0002KnsK0J83",
            1_500,
            (line, train) => Compare(line, train, new RollingPlan(line.Stations, train), 0.25, gapSteps: 1, Beside));
    }

    [Fact]
    public void PeaksOf_LinesThatJumpAndGapsThatVary_AreReachedAndNeverBeaten()
    {
        SeededSample.Run(
            Gen.Select(LinesThatJump, RandomTrains.Of(Binary * 8, varying: true)),
            "0003KnsK0J84",
            400,
            (line, train) =>
            {
                PeakPair peaks = new RollingPlan(line.Stations, train).PeaksOf(line);
                (double highest, double lowest) = SteppedSweep.Of(line, train, 0.5, 4, Beside);
                NeverBeaten(peaks, highest, lowest, train);
                foreach (Peak peak in Peaks(peaks))
                {
                    Reached(line, train, peak);
                }
            });
    }

    [Fact]
    public void PeaksOf_AnyPeak_FollowsFromItsAxles()
    {
        SeededSample.Run(
            Gen.Select(LinesThatJump, RandomTrains.Of(Binary * 8, varying: true)),
            "0004KnsK0J85",
            2_000,
            (line, train) =>
            {
                PeakPair peaks = new RollingPlan(line.Stations, train).PeaksOf(line);
                Assert.True(peaks.Tension is null || peaks.Tension.Force > EqualEffect * train.Weight);
                Assert.True(peaks.Compression is null || peaks.Compression.Force < -EqualEffect * train.Weight);
                foreach (Peak peak in Peaks(peaks))
                {
                    FollowsFromItsAxles(line, train, peak);
                }
            });
    }

    private static IEnumerable<InfluenceLine> Lines(SampleTruss sample, int pick, int count)
    {
        Assert.True(DeterminateTruss.Of(sample.Truss).TryGet(out DeterminateTruss? system, out _));
        Assert.True(InfluenceLines.Of(system).TryGet(out InfluenceLines? lines, out _));
        for (int i = 0; i < count; i++)
        {
            yield return lines.Members[(pick + (i * 7)) % lines.Members.Count].Line;
        }
    }

    private static IEnumerable<double> Sums(int[] lengths)
    {
        int sum = 0;
        foreach (int length in lengths)
        {
            sum += length;
            yield return sum * Binary;
        }
    }

    private static IEnumerable<Peak> Peaks(PeakPair pair) => new[] { pair.Tension, pair.Compression }.OfType<Peak>();

    private static void NeverBeaten(PeakPair peaks, double highest, double lowest, AxleTrain train)
    {
        double equal = EqualEffect * train.Weight;
        Assert.True((peaks.Tension?.Force ?? 0) >= highest - equal, $"tension {peaks.Tension?.Force} beaten by {highest}");
        Assert.True((peaks.Compression?.Force ?? 0) <= lowest + equal, $"compression {peaks.Compression?.Force} beaten by {lowest}");
    }

    private static void Compare(InfluenceLine line, AxleTrain train, RollingPlan plan, double step, int gapSteps, double beside = 0)
    {
        PeakPair peaks = plan.PeaksOf(line);
        (double highest, double lowest) = SteppedSweep.Of(line, train, step, gapSteps, beside);
        NeverBeaten(peaks, highest, lowest, train);
        double shortfall = SteppedSweep.Shortfall(line, train, step, gapSteps) + (EqualEffect * train.Weight);
        Assert.True((peaks.Tension?.Force ?? 0) <= highest + shortfall, $"tension {peaks.Tension?.Force} above {highest} + {shortfall}");
        Assert.True((peaks.Compression?.Force ?? 0) >= lowest - shortfall, $"compression {peaks.Compression?.Force} below {lowest} - {shortfall}");
    }

    // A peak stands at its position or in a limit beside it: some position a hair away, with gaps in their ranges, gives it.
    private static void Reached(InfluenceLine line, AxleTrain train, Peak peak)
    {
        double steepest = SteppedSweep.Steepest(line), near = (EqualEffect + (steepest * 8 * Beside)) * train.Weight;
        int backward = peak.Direction == Direction.Right ? -1 : 1;
        List<double[]> nearby = [[0]];
        for (int g = 0; g < train.Gaps.Count; g++)
        {
            AxleGap gap = train.Gaps[g];
            double value = peak.Gaps[g];
            double[] choices = gap.Varies
                ? [.. Enumerable.Range(-2, 5).Select(k => value + (k * Beside)).Where(v => v >= gap.Least && v <= gap.Most)]
                : [value];
            nearby = [.. nearby.SelectMany(front => choices.Select(c => (double[])[.. front, front[^1] + c]))];
        }

        double closest = double.PositiveInfinity;
        foreach (double[] behind in nearby)
        {
            for (int k = -1; k <= 1; k++)
            {
                (double tension, double compression) = SteppedSweep.Response(line, train, peak.Station + (k * Beside), backward, behind);
                closest = Math.Min(closest, Math.Abs((peak.Force > 0 ? tension : compression) - peak.Force));
            }
        }

        Assert.True(closest <= near, $"{peak.Force} is missed by {closest}, more than {near}");
    }

    private static void FollowsFromItsAxles(InfluenceLine line, AxleTrain train, Peak peak)
    {
        Assert.Equal(train.Gaps.Count, peak.Gaps.Count);
        Assert.Equal(train.Loads, peak.Axles.Select(a => a.Load));
        Assert.Equal(peak.Force, peak.Axles.Sum(a => a.Effect), EqualEffect * train.Weight);
        for (int g = 0; g < peak.Gaps.Count; g++)
        {
            Assert.InRange(peak.Gaps[g], train.Gaps[g].Least, train.Gaps[g].Most);
        }

        double station = peak.Station, span = line.Stations[^1] - line.Stations[0];
        for (int a = 0; a < peak.Axles.Count; a++)
        {
            AxleEffect axle = peak.Axles[a];
            Assert.Equal(station, axle.Station, 1e-9 * span);
            bool onAnEnd = axle.Station == line.Stations[0] || axle.Station == line.Stations[^1];
            if (!(onAnEnd && axle.Ordinate == 0))
            {
                Assert.Equal(line.OrdinateAt(axle.Station), axle.Ordinate, 1e-12);
            }

            bool relieves = axle.Ordinate * peak.Force < 0;
            double counted = train.RelievingAxles == RelievingAxles.LeftOut && relieves ? 0 : axle.Load * axle.Ordinate;
            Assert.Equal(counted, axle.Effect, EqualEffect * train.Weight);
            station += (peak.Direction == Direction.Right ? -1 : 1) * (a < peak.Gaps.Count ? peak.Gaps[a] : 0);
        }
    }
}
