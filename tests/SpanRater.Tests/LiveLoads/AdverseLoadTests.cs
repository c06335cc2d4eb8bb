using CsCheck;

namespace SpanRater.Tests.LiveLoads;

/// <summary>Where a uniform load lies that adds to an effect. Areas by hand; choices of stretches against every choice there is.</summary>
public class AdverseLoadTests
{
    private const int Cases = 500;

    // 0, 3, -1, 2, 0 over panels of 4 m: positive up to 4 + 3/4 x 4 = 7 m, and from 8 + 4/3 m on; area 3 x 7/2 and 2 x 20/3/2.
    private static readonly InfluenceLine TwoStretches = new([0, 4, 8, 12, 16], [0, 3, -1, 2, 0]);

    private static readonly ConstantLineLoad Constant = new(10, "made up for the test");

    [Fact]
    public void Of_AConstantLoad_LiesOnEveryAdverseStretchUpToItsNeutralPoints()
    {
        AdverseLoad load = AdverseLoad.Of(TwoStretches, Sense.Tension, Constant, 0)!;

        Assert.Collection(
            load.Stretches,
            s => Assert.True(s.Left == 0 && Math.Abs(s.Right - 7) < 1e-12),
            s => Assert.True(Math.Abs(s.Left - (8 + (4.0 / 3))) < 1e-12 && s.Right == 16));
        Assert.Equal((3 * 7 / 2.0) + (2 * (20.0 / 3) / 2), load.Area, 1e-12);
        Assert.Equal(10 * load.Area, load.Effect, 1e-12);
        Assert.Equal(7 + (20.0 / 3), load.Length, 1e-12);
    }

    // The negative stretch between them: from 7 to 8 + 4/3 m, 1 deep.
    [Fact]
    public void Of_TheOtherSense_LiesBetween()
    {
        AdverseLoad load = AdverseLoad.Of(TwoStretches, Sense.Compression, Constant, 0)!;

        Assert.Equal(-(7.0 / 3) / 2, load.Area, 1e-12);
        Assert.Equal(7.0 / 3, load.Length, 1e-12);
    }

    [Fact]
    public void Of_ALineWithoutThatSense_IsNothing() =>
        Assert.Null(AdverseLoad.Of(new InfluenceLine([0, 5, 10], [0, 1, 0]), Sense.Compression, Constant, 0));

    // What round-off leaves of a zero is no stretch: it would lengthen the load, or be one of no length.
    [Theory]
    [InlineData(1e-16)]
    [InlineData(1e-300)]
    public void Of_OrdinatesThatAreRoundOff_AreNotLoaded(double roundOff)
    {
        var load = new FallingLoad(100, 1);

        Assert.Null(AdverseLoad.Of(new InfluenceLine([0, 5, 10], [-1, roundOff, -1]), Sense.Tension, load, 0));
        Assert.Equal(10, AdverseLoad.Of(new InfluenceLine([0, 5, 10, 15, 20], [0, 1, 0, roundOff, 0]), Sense.Tension, Constant, 0)!.Length, 1e-12);
    }

    // A triangle of 10 x 1 and one of 30 x 0.2 under 100/length: alone 100/10 x 5 = 50; both 100/40 x 8 = 20.
    [Fact]
    public void Of_ALoadThatFallsFast_LiesOnTheShortStretchAlone()
    {
        var line = new InfluenceLine([0, 5, 10, 12, 14, 29, 44], [0, 1, 0, -1, 0, 0.2, 0]);

        AdverseLoad load = AdverseLoad.Of(line, Sense.Tension, new FallingLoad(100, 1), 0)!;

        Assert.Equal(new DeckStretch(0, 10), Assert.Single(load.Stretches));
        Assert.Equal(50, load.Effect, 1e-12);
    }

    [Fact]
    public void Of_ALoadThatFalls_IsTheBestOfEveryChoiceOfStretches() => SeededCases.Check(
        from panels in Gen.Int[1, 14]
        from lengths in Gen.Double[1, 8].Array[panels]
        from ordinates in Gen.Int[-20, 20].Array[panels + 1]
        from power in Gen.Double[0, 1.5]
        select (Line: new InfluenceLine([.. Enumerable.Range(0, panels + 1).Select(i => lengths.Take(i).Sum())], [.. ordinates.Select(y => y / 10.0)]), power),
        Cases,
        c =>
        {
            var intensity = new FallingLoad(100, c.power);
            foreach (Sense sense in Enum.GetValues<Sense>())
            {
                double best = BestOfAll(c.Line, sense, intensity);
                Assert.Equal(best, Math.Abs(AdverseLoad.Of(c.Line, sense, intensity, 0)?.Effect ?? 0), 1e-9 * Math.Max(1, best));
            }
        });

    // Own stretches, and every choice of them.
    private static double BestOfAll(InfluenceLine line, Sense sense, FallingLoad intensity)
    {
        List<(double Length, double Area)> stretches = OwnStretches(line, sense == Sense.Tension ? 1 : -1);
        double best = 0;
        for (int choice = 1; choice < 1 << stretches.Count; choice++)
        {
            double length = 0, area = 0;
            for (int i = 0; i < stretches.Count; i++)
            {
                if ((choice >> i & 1) == 1)
                {
                    length += stretches[i].Length;
                    area += stretches[i].Area;
                }
            }

            best = Math.Max(best, intensity.At(length, 0) * area);
        }

        return best;
    }

    // Panel by panel the part with the sign, joined where it goes on over a panel point.
    private static List<(double Length, double Area)> OwnStretches(InfluenceLine line, double sign)
    {
        var stretches = new List<(double Length, double Area)>();
        bool goesOn = false;
        for (int i = 1; i < line.Stations.Count; i++)
        {
            double panel = line.Stations[i] - line.Stations[i - 1], left = sign * line.Ordinates[i - 1], right = sign * line.Ordinates[i];
            double share = (left > 0, right > 0) switch
            {
                (true, true) => 1,
                (true, false) => left / (left - right),
                (false, true) => right / (right - left),
                _ => 0,
            };
            if (share > 0)
            {
                (double length, double area) = (share * panel, share * panel * (Math.Max(left, 0) + Math.Max(right, 0)) / 2);
                if (goesOn)
                {
                    stretches[^1] = (stretches[^1].Length + length, stretches[^1].Area + area);
                }
                else
                {
                    stretches.Add((length, area));
                }
            }

            goesOn = right > 0;
        }

        return stretches;
    }
}
