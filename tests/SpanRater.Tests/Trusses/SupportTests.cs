namespace SpanRater.Tests;

public class SupportTests
{
    [Fact]
    public void Roller_NormalStraightUp_HasNoSidewaysPart() => Assert.Equal(0, Support.Roller(90).NormalX);
}
