namespace SpanRater.Tests;

public class StabilityTests
{
    private static readonly Joint[] Square = [new("A", 0, 0, Support.Pin), new("B", 3, 0, Support.Roller()), new("C", 3, 4), new("D", 0, 4)];

    private static readonly Member[] Frame = [new("AB", "A", "B"), new("BC", "B", "C"), new("CD", "C", "D"), new("DA", "D", "A")];

    [Fact]
    public void Of_BracedSquare_IsDeterminate()
    {
        Stability stability = Of(Square, [.. Frame, new("AC", "A", "C")]);
        Assert.Equal((5, 3, 8, 8), (stability.MemberCount, stability.ReactionCount, stability.EquationCount, stability.Rank));
        Assert.Equal((StabilityVerdict.Determinate, 0, 0), (stability.Verdict, stability.Movements, stability.Redundancy));
        Assert.InRange(stability.Condition!.Value, 1, 100);
        Assert.Empty(stability.MovingJoints);
        Assert.Empty(stability.StressedMembers);
    }

    [Fact]
    public void Of_SquareWithoutDiagonal_SwaysAtTheTop()
    {
        Stability stability = Of(Square, Frame);
        Assert.Equal((StabilityVerdict.Mechanism, 1, 0), (stability.Verdict, stability.Movements, stability.Redundancy));
        Assert.Equal([2, 3], stability.MovingJoints);
        Assert.Null(stability.Condition);
    }

    [Fact]
    public void Of_SquareWithBothDiagonals_IsRedundantAndEverySideIsStressed()
    {
        Stability stability = Of(Square, [.. Frame, new("AC", "A", "C"), new("BD", "B", "D")]);
        Assert.Equal((StabilityVerdict.Redundant, 0, 1), (stability.Verdict, stability.Movements, stability.Redundancy));
        Assert.Equal([0, 1, 2, 3, 4, 5], stability.StressedMembers);
    }

    // Two squares side by side: both diagonals in the first and none in the second, so the count is right and it still moves.
    [Fact]
    public void Of_CountRightAndRankWrong_IsAMechanismThatNamesBothParts()
    {
        Stability stability = Of(
            [.. Square, new("E", 6, 0), new("F", 6, 4)],
            [.. Frame, new("AC", "A", "C"), new("BD", "B", "D"), new("BE", "B", "E"), new("EF", "E", "F"), new("FC", "F", "C")]);
        Assert.Equal(stability.EquationCount, stability.MemberCount + stability.ReactionCount);
        Assert.Equal((StabilityVerdict.Mechanism, 1, 1), (stability.Verdict, stability.Movements, stability.Redundancy));
        Assert.Equal([4, 5], stability.MovingJoints);
        Assert.Equal([0, 1, 2, 3, 4, 5], stability.StressedMembers);
    }

    // Three rollers with parallel normals: the count is right and the whole truss slides.
    [Fact]
    public void Of_RollersAllParallel_TheWholeTrussSlides()
    {
        Stability stability = Of(
            [new("A", 0, 0, Support.Roller()), new("B", 4, 0, Support.Roller()), new("C", 8, 0, Support.Roller()), new("D", 4, 3)],
            [new("AB", "A", "B"), new("BC", "B", "C"), new("AD", "A", "D"), new("BD", "B", "D"), new("CD", "C", "D")]);
        Assert.Equal(stability.EquationCount, stability.MemberCount + stability.ReactionCount);
        Assert.Equal((StabilityVerdict.Mechanism, 1), (stability.Verdict, stability.Movements));
        Assert.Equal([0, 1, 2, 3], stability.MovingJoints);
    }

    private static Stability Of(Joint[] joints, Member[] members) => Stability.Of(Truss.Create(joints, members).Truss!);
}
