using SpanRater.Tests.Learning;

namespace SpanRater.Tests.Published.Mathalino;

/// <summary>The ordinates that mathalino.com (nodes 3439 and 3458) prints at panel points, worked joint by joint under a load of 1, and by a section.</summary>
public class StepByStepTests
{
    public static TheoryData<string, string, string, string> Ordinates() => new()
    {
        { "MATH3439", "JK at 9 m", "D", "JK" },
        { "MATH3439", "DE at 12 m", "E", "DE" },
        { "MATH3439", "DK at 9 m", "D", "DK" },
        { "MATH3439", "DK at 12 m", "E", "DK" },
        { "MATH3458", "U_JK at C", "C", "JK" },
        { "MATH3458", "U_BC at B", "B", "BC" },
        { "MATH3458", "U_CG at B", "B", "CG" },
        { "MATH3458", "U_CG at C", "C", "CG" },
    };

    [Theory]
    [MemberData(nameof(Ordinates))]
    public void Member_UnderALoadOfOne_HasThePrintedOrdinate(string node, string quantity, string joint, string member)
    {
        PublishedRow row = PublishedTable.Read("Mathalino/examples.csv").Single(r => r["case"] == node && r["quantity"] == quantity);
        Truss truss = MathalinoTests.TrussOf(node);
        int m = truss.FindMember(member)!.Value;
        var loads = new LoadCase("1 down", [new JointLoad(joint, 0, -1)]);
        WorkedSolution worked = WorkedClaims.Worked(truss, loads);

        WorkedClaims.AssertFollows(worked);
        Assert.Equal(row.Number("value"), worked.Forces[m], row.Number("tolerance"));
        Assert.True(SectionCheck.Of(truss, loads, m).TryGet(out SectionCheck? check, out _));
        Assert.Equal(row.Number("value"), check.BySections!.Value, row.Number("tolerance"));
    }
}
