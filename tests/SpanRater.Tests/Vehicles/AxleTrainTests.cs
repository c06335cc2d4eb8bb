namespace SpanRater.Tests;

public class AxleTrainTests
{
    private static readonly AxleGap Varying = new(2, 5);

    [Fact]
    public void Constructor_ThreeAxles_KeepsThemAndWeighsThem()
    {
        var train = new AxleTrain([10, 20, 30], [AxleGap.Fixed(3), Varying], RelievingAxles.LeftOut);
        Assert.Equal([10.0, 20.0, 30.0], train.Loads);
        Assert.Equal([AxleGap.Fixed(3), Varying], train.Gaps);
        Assert.Equal((60.0, RelievingAxles.LeftOut), (train.Weight, train.RelievingAxles));
    }

    [Fact]
    public void Constructor_ListChangedAfterwards_TrainStays()
    {
        double[] loads = [10, 20];
        var train = new AxleTrain(loads, [Varying]);
        loads[0] = 99;
        Assert.Equal(10, train.Loads[0]);
    }

    [Fact]
    public void Constructor_FaultyLoads_NamesLoads()
    {
        foreach (double[] loads in (double[][])[[], [0], [-1], [double.NaN], [double.PositiveInfinity]])
        {
            Assert.Equal("loads", Assert.Throws<ArgumentException>(() => new AxleTrain(loads, [])).ParamName);
        }
    }

    [Fact]
    public void Constructor_GapsThatDoNotMatch_SaysHowMany()
    {
        var error = Assert.Throws<ArgumentException>(() => new AxleTrain([1, 2, 3], [Varying]));
        Assert.Equal("gaps", error.ParamName);
        Assert.Contains("1 gaps for 3 axles", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_GapWithoutLength_NamesGaps() =>
        Assert.Equal("gaps", Assert.Throws<ArgumentException>(() => new AxleTrain([1, 2], [default])).ParamName);

    [Fact]
    public void Constructor_FourVaryingGaps_SaysAtMostThree()
    {
        var error = Assert.Throws<ArgumentException>(() => new AxleTrain([1, 2, 3, 4, 5], [Varying, Varying, Varying, Varying]));
        Assert.Contains("At most 3 gaps", error.Message, StringComparison.Ordinal);
        Assert.Equal(3, new AxleTrain([1, 2, 3, 4], [Varying, Varying, Varying]).Gaps.Count);
    }

    [Fact]
    public void Constructor_NullLists_Throw()
    {
        Assert.Equal("loads", Assert.Throws<ArgumentNullException>(() => new AxleTrain(null!, [])).ParamName);
        Assert.Equal("gaps", Assert.Throws<ArgumentNullException>(() => new AxleTrain([1], null!)).ParamName);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Gap_LeastThatIsNoLength_NamesIt(double least) =>
        Assert.Equal("least", Assert.Throws<ArgumentOutOfRangeException>(() => new AxleGap(least, 5)).ParamName);

    [Theory]
    [InlineData(1.9)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Gap_MostBelowLeastOrNotFinite_NamesIt(double most) =>
        Assert.Equal("most", Assert.Throws<ArgumentOutOfRangeException>(() => new AxleGap(2, most)).ParamName);

    [Fact]
    public void Gap_FixedAndVarying_KnowTheirKind()
    {
        Assert.False(AxleGap.Fixed(3).Varies);
        Assert.True(Varying.Varies);
        Assert.Equal((3.0, 3.0), (AxleGap.Fixed(3).Least, AxleGap.Fixed(3).Most));
    }
}
