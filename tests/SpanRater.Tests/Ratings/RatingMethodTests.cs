namespace SpanRater.Tests.Ratings;

public class RatingMethodTests
{
    // AASHTO LRFD 3.6.1.1.2 and Standard Specifications, 17th ed. (2002), 3.12, both from memory.
    [Theory]
    [InlineData("LRFR", new[] { 1.20, 1.00, 0.85, 0.65, 0.65 })]
    [InlineData("LFR", new[] { 1.00, 1.00, 0.90, 0.75, 0.75 })]
    [InlineData("ASR", new[] { 1.00, 1.00, 0.90, 0.75, 0.75 })]
    public void Presence_LanesFromOneUp_FallsAndThenHolds(string method, double[] factors) =>
        Assert.Equal(factors, Enumerable.Range(1, factors.Length).Select(RatingMethod.Find(method)!.Presence));

    [Fact]
    public void Presence_NoLane_IsTheCallersMistake() =>
        Assert.Equal("lanes", Assert.Throws<ArgumentOutOfRangeException>(() => RatingMethod.Find("LRFR")!.Presence(0)).ParamName);

    [Theory]
    [InlineData("lrfr", "LRFR")]
    [InlineData("Lfr", "LFR")]
    [InlineData("ASR", "ASR")]
    [InlineData("LRFD", null)]
    public void Find_ShortName_TakesAnyCase(string name, string? found) => Assert.Equal(found, RatingMethod.Find(name)?.Name);

    [Theory]
    [InlineData("LRFR", 0.33)]
    [InlineData("LFR", 50 / 225.0)]
    [InlineData("ASR", 50 / 225.0)]
    public void Impact_OfAHundredFeet_IsTheMethodsOwn(string method, double impact) =>
        Assert.Equal(impact, RatingMethod.Find(method)!.Impact(100 * 0.3048), 1e-12);
}
