namespace SpanRater.Tests;

/// <summary>Marks by the stated tolerance, and what wrong numbers look like.</summary>
public class MarkingTests
{
    private static readonly MistakenValue[] Mistakes =
        [new(Mistake.SenseFlipped, null, -67_500), new(Mistake.SineForCosine, null, 50_625), new(Mistake.ReactionLeftOut, "L0", 0)];

    [Theory]
    [InlineData(67_500, 50, true)]
    [InlineData(67_800, 50, true)]
    [InlineData(67_850, 50, false)]
    [InlineData(68_000, 500, true)]
    [InlineData(67_000, 500, true)]
    [InlineData(70_000, 5_000, true)]
    [InlineData(72_000, 50_000, false)]
    public void Of_AnswerNearTheKey_IsRightWithinHalfAPerCentOrTheDigitsGiven(double answer, double rounding, bool right) =>
        Assert.Equal(right, Marking.Of(answer, rounding, 67_500, true, Mistakes).IsRight);

    [Theory]
    [InlineData(-67_500, "SenseFlipped")]
    [InlineData(50_600, "SineForCosine")]
    [InlineData(0, "ReactionLeftOut")]
    [InlineData(67_500_000, "Thousandfold")]
    [InlineData(67.5, "Thousandfold")]
    [InlineData(15_174.6, "KipForKilonewton")]
    [InlineData(300_255, "KipForKilonewton")]
    [InlineData(-50_625, "SineForCosine+SenseFlipped")]
    [InlineData(-67_500_000, "SenseFlipped+Thousandfold")]
    [InlineData(12_345, "")]
    public void Of_WrongAnswer_LooksLikeItsMistake(double answer, string expected)
    {
        AnswerMark mark = Marking.Of(answer, 50, 67_500, true, Mistakes);
        Assert.False(mark.IsRight);
        Assert.Equal(expected, string.Join(" or ", mark.Fits.Select(f => string.Join('+', f.Mistakes.Select(m => m.Mistake)))));
    }

    [Fact]
    public void Of_SeveralMistakesWithOneNumber_AllThatFitAreNamed()
    {
        AnswerMark mark = Marking.Of(-67_400, 50, 67_500, true, [.. Mistakes, new(Mistake.OtherReaction, null, -67_500)]);
        Assert.Equal([Mistake.SenseFlipped, Mistake.OtherReaction], mark.Fits.Select(f => Assert.Single(f.Mistakes).Mistake));
    }

    [Fact]
    public void Of_Ordinate_KnowsNoUnits() => Assert.Empty(Marking.Of(853.7, 0.05, 0.8537, false, []).Fits);
}
