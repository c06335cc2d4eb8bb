using CsCheck;

namespace SpanRater.Tests;

/// <summary>Random trains of one to nine axles, shorter and longer than the deck, some with axles that meet panel points together.</summary>
internal static class RandomTrains
{
    /// <param name="stations">The deck; some gaps are distances between its panel points, so that several axles stand on panel points at once.</param>
    /// <param name="mostVarying">At most so many gaps vary.</param>
    internal static Gen<AxleTrain> For(IReadOnlyList<double> stations, int mostVarying) =>
        from axles in Gen.Int[1, 9]
        from loads in Gen.Double[1e3, 1.2e5].Array[axles]
        from stretch in Gen.Double[0.05, 1.5]
        from shares in Gen.Double[0.1, 1].Array[axles - 1]
        from meets in Gen.Int[0, 2].Array[axles - 1]
        from points in Gen.Int[1, stations.Count - 1].Array[axles - 1]
        from ranges in Gen.Double[0.05, 1.5].Array[axles - 1]
        from varying in Gen.Shuffle(Enumerable.Range(0, axles - 1).ToArray())
        from varyingCount in Gen.Int[0, mostVarying]
        from leftOut in Gen.Bool
        let length = stretch * (stations[^1] - stations[0]) / Math.Max(1, shares.Sum())
        let gaps = shares.Select((share, g) =>
        {
            double least = meets[g] == 0 ? stations[points[g]] - stations[points[g] - 1] : share * length;
            return varying.Take(varyingCount).Contains(g) ? new AxleGap(least, least * (1 + ranges[g])) : AxleGap.Fixed(least);
        })
        select new AxleTrain(loads, [.. gaps], leftOut ? RelievingAxles.LeftOut : RelievingAxles.Counted);
}
