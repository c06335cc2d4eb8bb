namespace SpanRater.Tests.Statics;

public class StabilityTests
{
    [Fact]
    public void Of_Triangle_IsDeterminate()
    {
        Stability stability = Of([new("A", 0, 0, Support.Pin), new("B", 4, 0, Support.Roller()), new("C", 2, 3)], "AB", "BC", "CA");

        Assert.Equal(StabilityVerdict.Determinate, stability.Verdict);
        Assert.Equal((3, 3, 6, 6), (stability.MemberCount, stability.ReactionCount, stability.EquationCount, stability.Rank));
        Assert.Empty(stability.MovingJoints);
        Assert.Empty(stability.StressedMembers);
        Assert.InRange(stability.Condition!.Value, 1, 100);
    }

    // Four panels' worth of joints, the count right: the left panel has both diagonals, the right one none.
    [Fact]
    public void Of_CountRightAndRankWrong_IsAMechanismWithTheMovingJointsNamed()
    {
        Stability stability = Of(
            [new("A", 0, 0, Support.Pin), new("B", 4, 0, Support.Roller()), new("C", 8, 0), new("D", 0, 3), new("E", 4, 3), new("F", 8, 3)],
            "AB", "BC", "DE", "EF", "AD", "BE", "CF", "AE", "BD");

        Assert.Equal(stability.EquationCount, stability.MemberCount + stability.ReactionCount);
        Assert.Equal((StabilityVerdict.Mechanism, 1, 1), (stability.Verdict, stability.Movements, stability.Redundancy));
        Assert.Equal([2, 5], stability.MovingJoints);
        Assert.Equal([0, 2, 4, 5, 7, 8], stability.StressedMembers);
        Assert.Null(stability.Condition);
    }

    [Fact]
    public void Of_PanelWithBothDiagonals_IsRedundantOnce()
    {
        Stability stability = Of(
            [new("A", 0, 0, Support.Pin), new("B", 4, 0, Support.Roller()), new("C", 4, 3), new("D", 0, 3)],
            "AB", "BC", "CD", "DA", "AC", "BD");

        Assert.Equal((StabilityVerdict.Redundant, 1), (stability.Verdict, stability.Redundancy));
        Assert.Equal([0, 1, 2, 3, 4, 5], stability.StressedMembers);
    }

    // Two rollers with the same normal let the whole truss slide, every joint alike.
    [Fact]
    public void Of_TwoParallelRollers_EveryJointMoves()
    {
        Stability stability = Of([new("A", 0, 0, Support.Roller()), new("B", 4, 0, Support.Roller()), new("C", 2, 3)], "AB", "BC", "CA");

        Assert.Equal((StabilityVerdict.Mechanism, 1), (stability.Verdict, stability.Movements));
        Assert.Equal([0, 1, 2], stability.MovingJoints);
    }

    private static Stability Of(Joint[] joints, params string[] members) =>
        Stability.Of(Truss.Create(joints, [.. members.Select(m => new Member(m, m[..1], m[1..]))]).Truss!);
}
