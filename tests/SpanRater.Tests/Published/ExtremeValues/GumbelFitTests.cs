namespace SpanRater.Tests.Published.ExtremeValues;

/// <summary>Fits held against scipy 1.10.1 (stats.gumbel_r.fit), which stops at about seven digits; <c>gumbel.py</c> beside the values made them.</summary>
public class GumbelFitTests
{
    public static TheoryData<string> Samples => [.. PublishedTable.Read("ExtremeValues/gumbel-fits.csv").Select(r => r["name"])];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Of_SampleFittedByScipy_GivesTheSameFitLevelAndStandardError(string name)
    {
        PublishedRow row = PublishedTable.Read("ExtremeValues/gumbel-fits.csv").Single(r => r["name"] == name);
        GumbelFit fit = GumbelFit.Of([.. row["maxima"].Split(' ').Select(m => double.Parse(m, System.Globalization.CultureInfo.InvariantCulture))])!;
        double scale = row.Number("scale"), level = row.Number("level");

        Assert.Equal(row.Number("location"), fit.Location, 1e-4 * scale);
        Assert.Equal(scale, fit.Scale, 1e-4 * scale);
        Assert.Equal(level, fit.ReturnLevel(row.Number("blocks")), 1e-3 * scale);

        // The information was integrated numerically there, with slopes by steps: four digits.
        Assert.Equal(row.Number("standard error"), fit.StandardError(row.Number("blocks")), 1e-3 * row.Number("standard error"));
        (double low, double high) = fit.Interval(row.Number("blocks"), 0.95);

        // 1.95996 of the normal distribution, any table.
        Assert.Equal(1.95996 * fit.StandardError(row.Number("blocks")), (high - low) / 2, 1e-5 * scale);
        Assert.Equal(fit.ReturnLevel(row.Number("blocks")), (high + low) / 2, 1e-9 * level);
    }

    [Fact]
    public void Of_FewerThanThirtyBlocks_FitsNothing()
    {
        double[] maxima = [.. Enumerable.Range(0, 30).Select(i => 50.0 + (i % 7))];
        Assert.NotNull(GumbelFit.Of(maxima));
        Assert.Null(GumbelFit.Of(maxima[1..]));
    }

    [Fact]
    public void Of_BlocksAllAlike_FitsNothing() => Assert.Null(GumbelFit.Of([.. Enumerable.Repeat(61.5, 40)]));

    // F(x) = exp(−exp(−(x − μ)/β)) put back in: one block in so many exceeds the level.
    [Theory]
    [InlineData(2)]
    [InlineData(365)]
    [InlineData(3.65e5)]
    public void ReturnLevel_PutIntoTheDistribution_GivesThePeriodBack(double blocks)
    {
        GumbelFit fit = GumbelFit.Of([.. Enumerable.Range(0, 50).Select(i => 10 + Math.Sqrt(i))])!;
        double above = -Math.Exp(-Math.Exp(-(fit.ReturnLevel(blocks) - fit.Location) / fit.Scale)) + 1;
        Assert.Equal(1 / blocks, above, 1e-6 / blocks);
    }

    [Fact]
    public void ReturnLevel_PeriodOfOneBlock_IsACallersFault()
    {
        GumbelFit fit = GumbelFit.Of([.. Enumerable.Range(0, 50).Select(i => 10 + Math.Sqrt(i))])!;
        Assert.Throws<ArgumentOutOfRangeException>(() => fit.ReturnLevel(1));
    }
}
