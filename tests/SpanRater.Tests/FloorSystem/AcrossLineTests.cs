namespace SpanRater.Tests;

/// <summary>Loads placed on the lines of a trussed floorbeam, against a sweep in small steps and against areas by strips.</summary>
public class AcrossLineTests
{
    private static readonly TrussedBeam Beam = new(6.1, 2, 2.1, 0.5, 4.1e6, 7.7e8, 1.6e8);

    public static TheoryData<string> Lines() => new("rod", "sagging", "hogging", "shear");

    [Theory]
    [MemberData(nameof(Lines))]
    public void Worst_OfOneVehicle_IsThatOfASweep(string name)
    {
        AcrossLine line = Of(name);
        (double effect, IReadOnlyList<double> wheels) = line.Worst(0.6, 5.5, 1.8, 1.2, 1);
        double swept = Enumerable.Range(0, 31001).Max(i => Both(line, 0.6 + (i * 1e-4), 1.8));

        Assert.InRange(effect, swept - (1e-4 * Math.Abs(swept)), swept + (1e-4 * Math.Abs(swept)));
        Assert.Equal(effect, Both(line, wheels[0], 1.8), 1e-12);
        Assert.True(wheels[0] >= 0.6 && wheels[1] <= 5.5 + 1e-12);
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void Worst_OfTwoVehicles_IsThatOfASweep(string name)
    {
        AcrossLine line = Of(name);
        (double effect, IReadOnlyList<double> wheels) = line.Worst(0.2, 5.9, 1.8, 1.2, 2);
        double swept = double.NegativeInfinity, play = 5.9 - 0.2 - 1.8 - 1.8 - 1.2;
        for (double u = 0; u <= play; u += play / 400)
        {
            for (double v = u; v <= play; v += play / 400)
            {
                swept = Math.Max(swept, Both(line, 0.2 + u, 1.8) + Both(line, 0.2 + 3 + v, 1.8));
            }
        }

        Assert.InRange(effect, swept - (1e-4 * Math.Abs(swept)), swept + (1e-3 * Math.Abs(swept)));
        Assert.True(wheels[2] - wheels[1] >= 1.2 - 1e-9);
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void WorstPair_OfTwoAlike_IsWorstOfTwo(string name)
    {
        AcrossLine line = Of(name);
        (double own, double other, IReadOnlyList<double> wheels) = line.WorstPair(0.2, 5.9, (1.8, 3), (1.8, 3), 1.2);

        Assert.Equal(3 * line.Worst(0.2, 5.9, 1.8, 1.2, 2).Effect, own + other, 1e-4);
        Assert.Equal(own + other, 3 * (Both(line, wheels[0], 1.8) + Both(line, wheels[2], 1.8)), 1e-12);
    }

    // The heavier one stands where a load brings more, on either side.
    [Fact]
    public void WorstPair_OfTwoUnlike_IsThatOfASweep()
    {
        AcrossLine line = Of("hogging");
        (double own, double other, _) = line.WorstPair(0.2, 5.9, (1.5, 5), (1.8, 2), 1.2);
        double swept = double.NegativeInfinity, play = 5.9 - 0.2 - 1.5 - 1.8 - 1.2;
        for (double u = 0; u <= play; u += play / 400)
        {
            for (double v = u; v <= play; v += play / 400)
            {
                swept = Math.Max(swept, (5 * Both(line, 0.2 + u, 1.5)) + (2 * Both(line, 0.2 + 2.7 + v, 1.8)));
                swept = Math.Max(swept, (2 * Both(line, 0.2 + u, 1.8)) + (5 * Both(line, 0.2 + 3 + v, 1.5)));
            }
        }

        Assert.InRange(own + other, swept - (1e-4 * Math.Abs(swept)), swept + (1e-3 * Math.Abs(swept)));
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void Over_IsTheAreaByStrips(string name)
    {
        AcrossLine line = Of(name);
        double strips = Enumerable.Range(0, 200000).Sum(i => line.Ordinate(0.3 + (5 * (i + 0.5) / 200000)) * 5 / 200000);
        Assert.Equal(strips, line.Over(0.3, 5.3), 1e-6);
    }

    [Fact]
    public void WorstCrowd_LeavesOutWhatRelieves()
    {
        AcrossLine line = Of("hogging");
        double adverse = Enumerable.Range(0, 50000).Sum(i => Math.Max(0, line.Ordinate(0.3 + (5.5 * (i + 0.5) / 50000))) * 5.5 / 50000);
        Assert.True(line.Over(0.3, 5.8) < 0.9 * adverse);
        Assert.Equal(adverse, line.WorstCrowd(0.3, 5.8, 5.5), 2e-3 * adverse);
    }

    private static AcrossLine Of(string name) => name switch
    {
        "rod" => Beam.RodLine,
        "sagging" => Beam.MomentLine(2.6, false, 1, 0.1),
        "hogging" => Beam.MomentLine(2.0, true, 1.3, 0),
        _ => Beam.ShearLine(Beam.EndField, false, false),
    };

    private static double Both(AcrossLine line, double at, double gauge) => (line.Ordinate(at) + line.Ordinate(at + gauge)) / 2;
}
