using CsCheck;

namespace SpanRater.Tests.Properties;

/// <summary>Trains of one to nine axles, of lengths below and above the span, with either treatment of relieving axles.</summary>
internal static class RandomTrains
{
    private static readonly Gen<double> Load = Gen.Int[1, 40].Select(n => n * 5_000.0);

    /// <param name="unit">Every gap is a whole number of it [m].</param>
    /// <param name="varying">Whether up to three gaps may vary.</param>
    public static Gen<AxleTrain> Of(double unit, bool varying)
    {
        Gen<AxleGap> gap = Gen.Select(Gen.Int[1, 6], Gen.Int[1, 20], (scale, n) => AxleGap.Fixed(scale * n * unit));
        return Gen.Int[1, 9].SelectMany(axles => Gen.Select(
            Load.Array[axles],
            gap.Array[axles - 1],
            Gen.Bool,
            Gen.Int[0, varying ? 3 : 0],
            Gen.Int[0, 7],
            Gen.Int[1, 40],
            (loads, gaps, leftOut, count, first, range) =>
                new AxleTrain(loads, Vary(gaps, count, first, range * unit), leftOut ? RelievingAxles.LeftOut : RelievingAxles.Counted)));
    }

    public static string Text(AxleTrain train) => string.Join(
        " ",
        [train.RelievingAxles.ToString(), .. train.Loads.Select(l => FormattableString.Invariant($"{l}")), .. train.Gaps.Select(g => FormattableString.Invariant($"[{g.Least},{g.Most}]"))]);

    private static AxleGap[] Vary(AxleGap[] gaps, int count, int first, double range) =>
        [.. gaps.Select((gap, g) => (g + gaps.Length - (first % Math.Max(1, gaps.Length))) % gaps.Length < count ? new AxleGap(gap.Least, gap.Least + range) : gap)];
}
