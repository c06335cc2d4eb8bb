using CsCheck;

namespace SpanRater.Tests;

/// <summary>An even load of a fixed length: closed forms of triangles, and a plain sweep over its positions.</summary>
public class PatchSearchTests
{
    private const int Cases = 500;

    // Over a triangle of base a and height h the ends stand at equal ordinates, wherever its top is: the top of the triangle
    // that is cut off is similar to the whole, so that the ends stand at h(1 - l/a) and the area is l h (1 - l/(2a)).
    [Theory]
    [InlineData(30, 12, 15)]
    [InlineData(30, 12, 6)]
    [InlineData(30, 30, 20)]
    [InlineData(8, 3, 7)]
    public void PeakOf_ATriangle_IsTheClosedForm(double length, double patch, double top)
    {
        const double Height = 0.8, Weight = 200;
        var line = new InfluenceLine([0, top, length], [0, Height, 0]);

        PatchPeak peak = PatchSearch.PeakOf(line, Weight, patch, Sense.Tension)!;

        Assert.Equal(Weight * Height * (1 - (patch / (2 * length))), peak.Force, 1e-9);
        Assert.Equal(top * (1 - (patch / length)), peak.Stretch.Left, 1e-9);
        Assert.Equal(patch, peak.Stretch.Length, 1e-9);
        Assert.Null(PatchSearch.PeakOf(line, Weight, patch, Sense.Compression));
    }

    // Longer than the deck it lies on all of it, and the rest of it beyond: weight/length x a h/2.
    [Fact]
    public void PeakOf_APatchLongerThanTheDeck_IsTheWholeArea()
    {
        var line = new InfluenceLine([0, 12, 30], [0, -0.8, 0]);

        PatchPeak peak = PatchSearch.PeakOf(line, 200, 50, Sense.Compression)!;

        Assert.Equal(-200.0 / 50 * 30 * 0.8 / 2, peak.Force, 1e-9);
        Assert.True(peak.Stretch.Left <= 1e-9 && peak.Stretch.Right >= 30 - 1e-9);
    }

    // The end reaction: one end at the support, weight x (1 - l/(2a)).
    [Fact]
    public void PeakOf_ALineThatJumpsAtItsEnd_StandsAtTheEnd()
    {
        PatchPeak peak = PatchSearch.PeakOf(new InfluenceLine([0, 40], [1, 0]), 200, 10, Sense.Tension)!;

        Assert.Equal(200 * (1 - (10 / 80.0)), peak.Force, 1e-9);
        Assert.Equal(0, peak.Stretch.Left, 1e-9);
    }

    [Fact]
    public void PeakOf_RandomLines_IsNeverBeatenByASweepAndIsWithinItsStep() => SeededCases.Check(
        from line in Lines()
        from patch in Gen.Double[0.1, 60]
        select (line, patch),
        Cases,
        c =>
        {
            const double Step = 0.02, Weight = 100;
            double highest = c.line.Ordinates.Max(Math.Abs);
            foreach (Sense sense in Enum.GetValues<Sense>())
            {
                double sign = sense == Sense.Tension ? 1 : -1, swept = 0;
                for (double left = c.line.Stations[0] - c.patch; left <= c.line.Stations[^1]; left += Step)
                {
                    swept = Math.Max(swept, sign * Weight / c.patch * (AreaUpTo(c.line, left + c.patch) - AreaUpTo(c.line, left)));
                }

                PatchPeak? peak = PatchSearch.PeakOf(c.line, Weight, c.patch, sense);
                double exact = Math.Abs(peak?.Force ?? 0);
                Assert.True(exact >= swept - (1e-9 * Weight * Math.Max(1, highest)), $"The sweep reaches {swept:R}, the search {exact:R}.");

                // Half a step changes the area by no more than that length of two end ordinates, each of the highest at most.
                Assert.True(exact <= swept + (Weight / c.patch * Step * highest) + 1e-7, $"The search reports {exact:R}, the sweep {swept:R}.");
                if (peak is not null)
                {
                    double own = Weight / c.patch * (AreaUpTo(c.line, peak.Stretch.Right) - AreaUpTo(c.line, peak.Stretch.Left));
                    Assert.Equal(own, peak.Force, 1e-9 * Weight * Math.Max(1, highest));
                }
            }
        });

    [Fact]
    public void PeakOf_AMirroredLine_IsTheSameAndItsPatchMirrored() => SeededCases.Check(
        from line in Lines()
        from patch in Gen.Double[0.1, 60]
        select (line, patch),
        Cases,
        c =>
        {
            double end = c.line.Stations[0] + c.line.Stations[^1];
            var mirrored = new InfluenceLine([.. c.line.Stations.Reverse().Select(s => end - s)], [.. c.line.Ordinates.Reverse()]);
            foreach (Sense sense in Enum.GetValues<Sense>())
            {
                PatchPeak? peak = PatchSearch.PeakOf(c.line, 100, c.patch, sense), other = PatchSearch.PeakOf(mirrored, 100, c.patch, sense);
                Assert.Equal(peak?.Force ?? 0, other?.Force ?? 0, 1e-7);
                if (peak is not null && other is not null)
                {
                    // Where several places are equal either may be told: each does the same in the other's line.
                    double again = 100 / c.patch * (AreaUpTo(mirrored, end - peak.Stretch.Left) - AreaUpTo(mirrored, end - peak.Stretch.Right));
                    Assert.Equal(other.Force, again, 1e-7);
                }
            }
        });

    private static Gen<InfluenceLine> Lines() =>
        from panels in Gen.Int[1, 9]
        from start in Gen.Double[-20, 20]
        from lengths in Gen.Double[1, 8].Array[panels]
        from ordinates in Gen.Double[-2, 2].Array[panels + 1]
        select new InfluenceLine([.. Enumerable.Range(0, panels + 1).Select(i => start + lengths.Take(i).Sum())], ordinates);

    // Area from the left end of the deck to a station, panel by panel.
    private static double AreaUpTo(InfluenceLine line, double station)
    {
        double area = 0;
        for (int i = 1; i < line.Stations.Count; i++)
        {
            double panel = line.Stations[i] - line.Stations[i - 1], covered = Math.Clamp(station - line.Stations[i - 1], 0, panel);
            double slope = (line.Ordinates[i] - line.Ordinates[i - 1]) / panel;
            area += covered * (line.Ordinates[i - 1] + (slope * covered / 2));
        }

        return area;
    }
}
