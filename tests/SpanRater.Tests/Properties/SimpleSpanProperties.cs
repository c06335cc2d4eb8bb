using CsCheck;

namespace SpanRater.Tests;

/// <summary>Moments and shears of simple spans and floorbeams against placements swept finely, which must never bring more.</summary>
public class SimpleSpanProperties
{
    private const int Cases = 150;
    private const double Span = 10;

    private static readonly Gen<(AxleTrain Train, double Uniform, double At, double Share)> Trains =
        from train in RandomTrains.For([0, 2.5, 5, 7.5, Span], 2)
        from uniform in Gen.Double[0, 2e4]
        from at in Gen.Double[0, 0.6]
        from share in Gen.Double[0, 1]
        select (train, uniform, at * Span, share);

    [Fact]
    public void MostMoment_AgainstASweep_IsNeverBeaten() => SeededCases.Check(Trains, Cases, c =>
    {
        SpanPeak most = new SimpleSpan(Span).MostMoment(c.Train, c.Uniform)!;
        Assert.Equal(most.Effect, Sum(most, u => Moment(most.Section, u), false) + (c.Uniform * most.Section * (Span - most.Section) / 2), 1e-9 * c.Train.Weight * Span);
        for (int z = 1; z < 20; z++)
        {
            double section = z * Span / 20;
            foreach (double effect in Swept(c.Train, c.Share, u => Moment(section, u), false))
            {
                Assert.True(effect + (c.Uniform * section * (Span - section) / 2) <= most.Effect * (1 + 1e-9));
            }
        }
    });

    [Fact]
    public void MostShear_AgainstASweep_IsNeverBeaten() => SeededCases.Check(Trains, Cases, c =>
    {
        bool leftOut = c.Train.RelievingAxles == RelievingAxles.LeftOut;
        SpanPeak most = new SimpleSpan(Span).MostShear(c.Train, c.At)!;
        Assert.Equal(most.Effect, most.OfAxles, 1e-9 * c.Train.Weight);
        Assert.Equal(most.Effect, Sum(most, u => Shear(c.At, u + 1e-9), leftOut), 1e-6 * c.Train.Weight);
        foreach (double effect in Swept(c.Train, c.Share, u => Shear(c.At, u), leftOut))
        {
            Assert.True(effect <= most.Effect + (1e-9 * c.Train.Weight));
        }
    });

    private static double Sum(SpanPeak peak, Func<double, double> line, bool leftOut)
    {
        double toFront = peak.Direction == Direction.Right ? -1 : 1, place = peak.Station, sum = 0;
        for (int k = 0; k < peak.Axles.Count; k++)
        {
            double y = line(place);
            sum += leftOut && y < 0 ? 0 : peak.Axles[k].Load * y;
            place += k < peak.Gaps.Count ? toFront * peak.Gaps[k] : 0;
        }

        return sum;
    }

    private static IEnumerable<double> Swept(AxleTrain train, double share, Func<double, double> line, bool leftOut)
    {
        foreach (double part in (double[])[0, share, 1])
        {
            double[] gaps = [.. train.Gaps.Select(g => g.Least + (part * (g.Most - g.Least)))];
            foreach (Direction direction in (Direction[])[Direction.Right, Direction.Left])
            {
                double reach = gaps.Sum() + Span;
                for (double front = -reach; front <= Span + reach; front += 0.05)
                {
                    var peak = new SpanPeak(0, 0, front, direction, gaps, [.. train.Loads.Select(p => new AxleEffect(p, 0, 0, 0))]);
                    yield return Sum(peak, line, leftOut);
                }
            }
        }
    }

    private static double Moment(double z, double u) => u < 0 || u > Span ? 0 : Math.Min(u * (Span - z), z * (Span - u)) / Span;

    private static double Shear(double z, double u) => u < 0 || u > Span ? 0 : u < z ? -u / Span : (Span - u) / Span;
}
