using SpanRater.Files;

namespace SpanRater.Tests.Files;

public class NearestNameTests
{
    [Theory]
    [InlineData("U33", "U3")]
    [InlineData("u3", "U3")]
    [InlineData("L9", "L8")]
    [InlineData("roadwy", "roadway")]
    [InlineData("lods.csv", "loads.csv")]
    [InlineData("Tpye 3", "Type 3")]
    public void Find_Typo_IsTheNameMeant(string typed, string expected) =>
        Assert.Equal(expected, NearestName.Find(typed, ["L0", "L8", "U3", "roadway", "loads.csv", "Type 3", "Type 3S2"]));

    [Fact]
    public void Find_NothingNear_IsNull() => Assert.Null(NearestName.Find("zebra", ["L0", "roadway"]));
}
