using CsCheck;

namespace SpanRater.Tests;

/// <summary>A deck with lines of many kinds, and a train with fixed gaps.</summary>
internal sealed record RandomCrossing(double[] Stations, InfluenceLine[] Lines, double[] Loads, double[] Gaps);

/// <summary>
/// Random decks of one to sixteen panels, even, uneven, or uneven and their own mirror image; lines that jump at the ends, that
/// overhang supports, of simple spans, and multiples and mirror images of one another; trains of one to forty axles, with gaps of zero
/// and gaps that put several axles on panel points at once, shorter and longer than the deck.
/// </summary>
internal static class RandomCrossings
{
    internal static Gen<RandomCrossing> All() =>
        from stations in Decks()
        from lines in Lines(stations).Array[1, 8]
        from partners in Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Bool, Gen.Double[-3, 3]).Array[0, 6]
        from axles in Gen.Frequency((1, Gen.Const(1)), (6, Gen.Int[2, 9]), (1, Gen.Const(40)))
        from loads in Gen.Double[1e3, 1.2e5].Array[axles]
        from gaps in Gaps(stations).Array[axles - 1]
        select new RandomCrossing(
            stations,
            [.. lines.Select(y => new InfluenceLine(stations, y)), .. partners.Select(p => new InfluenceLine(stations, Partner(lines[p.Item1], p.Item2, p.Item3)))],
            loads,
            gaps);

    private static Gen<double[]> Decks() =>
        from panels in Gen.Int[1, 16]
        from start in Gen.Double[-20, 20]
        from kind in Gen.Int[0, 2]
        from lengths in Gen.Double[1, 8].Array[panels]
        let even = lengths.Select((length, i) => kind switch { 0 => lengths[0], 1 => length, _ => lengths[Math.Min(i, panels - 1 - i)] }).ToArray()
        select Enumerable.Range(0, panels + 1).Select(i => start + even.Take(i).Sum()).ToArray();

    private static Gen<double[]> Lines(double[] stations) => Gen.OneOf(
        Gen.Double[-2, 2].Array[stations.Length],
        Gen.Double[-2, 2].Array[stations.Length].Select(y => y.Select((o, i) => i == 0 || i == y.Length - 1 ? 0 : o).ToArray()),
        Gen.Int[0, stations.Length - 1].Select(at => stations.Select(s => Moment(stations, stations[at], s)).ToArray()),

        // A reaction of a beam that overhangs both of its supports.
        Gen.Select(Gen.Int[0, stations.Length - 2], Gen.Int[1, stations.Length - 1]).Where((left, right) => left < right)
            .Select((left, right) => stations.Select(s => (stations[right] - s) / (stations[right] - stations[left])).ToArray()));

    private static Gen<double> Gaps(double[] stations) => Gen.OneOf(
        Gen.Const(0.0),
        Gen.Double[0.9, 12],
        Gen.Double[0.01, 1.5].Select(share => share * (stations[^1] - stations[0])),
        Gen.Select(Gen.Int[0, stations.Length - 1], Gen.Int[0, stations.Length - 1]).Select((a, b) => Math.Abs(stations[a] - stations[b])));

    private static double[] Partner(double[] line, bool mirrored, double factor) => [.. (mirrored ? line.Reverse() : line).Select(y => factor * y)];

    private static double Moment(double[] stations, double at, double x) =>
        (stations[^1] - Math.Max(at, x)) * (Math.Min(at, x) - stations[0]) / (stations[^1] - stations[0]);
}
