using CsCheck;

namespace SpanRater.Tests;

/// <summary>The exact search held against a stepped sweep, on lines of real trusses and on lines that jump at the deck's ends.</summary>
public class PeakProperties
{
    private const int FixedGapCases = 2_000;
    private const int VaryingGapCases = 150;

    [Fact]
    public void PeaksOf_LinesOfTrussesAndFixedGaps_MatchTheSweep() => SeededCases.Check(
        from truss in RandomTrusses.Forms()
        from train in RandomTrains.For(truss.Build().Stations, 0)
        from member in Gen.Double.Unit
        select (truss, train, member),
        FixedGapCases,
        c => PeakClaims.AssertMatchesSweep(LineOf(c.truss, c.member), c.train, c.truss.PanelLength / 20, 1));

    [Fact]
    public void PeaksOf_LinesOfTrussesAndVaryingGaps_MatchTheSweep() => SeededCases.Check(
        from truss in RandomTrusses.Forms()
        from train in RandomTrains.For(truss.Build().Stations, AxleTrain.MostVaryingGaps)
        from member in Gen.Double.Unit
        select (truss, train, member),
        VaryingGapCases,
        c => PeakClaims.AssertMatchesSweep(LineOf(c.truss, c.member), c.train, c.truss.PanelLength / 16, 6));

    [Fact]
    public void PeaksOf_LinesThatJumpAtTheEndsAndFixedGaps_MatchTheSweep() => SeededCases.Check(
        from line in JumpingLines()
        from train in RandomTrains.For(line.Stations, 0)
        select (line, train),
        FixedGapCases,
        c => PeakClaims.AssertMatchesSweep(c.line, c.train, MeanPanel(c.line) / 20, 1));

    [Fact]
    public void PeaksOf_LinesThatJumpAtTheEndsAndVaryingGaps_MatchTheSweep() => SeededCases.Check(
        from line in JumpingLines()
        from train in RandomTrains.For(line.Stations, AxleTrain.MostVaryingGaps)
        select (line, train),
        VaryingGapCases,
        c => PeakClaims.AssertMatchesSweep(c.line, c.train, MeanPanel(c.line) / 16, 6));

    // Whole numbers let many axles stand on panel points and ends at once, where ties and jumps meet.
    [Fact]
    public void PeaksOf_WholeNumbersThroughout_MatchTheSweep() => SeededCases.Check(
        from panels in Gen.Int[1, 5]
        from ordinates in Gen.Int[-2, 2].Array[panels + 1]
        from gaps in Gen.Select(Gen.Int[1, 4], Gen.Int[0, 2]).Array[0, 3]
        from loads in Gen.Int[1, 5].Array[gaps.Length + 1]
        from leftOut in Gen.Bool
        select (
            Line: new InfluenceLine([.. Enumerable.Range(0, panels + 1).Select(i => (double)i)], [.. ordinates.Select(y => (double)y)]),
            Train: new AxleTrain(
                [.. loads.Select(load => (double)load)],
                [.. gaps.Select(g => new AxleGap(g.Item1, g.Item1 + g.Item2))],
                leftOut ? RelievingAxles.LeftOut : RelievingAxles.Counted)),
        FixedGapCases,
        c => PeakClaims.AssertMatchesSweep(c.Line, c.Train, 0.125, 8));

    private static InfluenceLine LineOf(TrussForm form, double member)
    {
        InfluenceLines lines = InfluenceLines.Of(DeterminateTruss.Of(form.Build()).Value!).Value!;
        return lines.Members[Math.Min((int)(member * lines.Members.Count), lines.Members.Count - 1)].Line;
    }

    private static double MeanPanel(InfluenceLine line) => (line.Stations[^1] - line.Stations[0]) / (line.Stations.Count - 1);

    private static Gen<InfluenceLine> JumpingLines() =>
        from panels in Gen.Int[1, 12]
        from start in Gen.Double[-20, 20]
        from lengths in Gen.Double[1, 8].Array[panels]
        from ordinates in Gen.Double[-2, 2].Array[panels + 1]
        select new InfluenceLine(
            [.. Enumerable.Range(0, panels + 1).Select(i => start + lengths.Take(i).Sum())],
            ordinates);
}
