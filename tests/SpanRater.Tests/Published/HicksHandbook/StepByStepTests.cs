using SpanRater.Tests.Learning;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.HicksHandbook;

/// <summary>
/// Hicks, Handbook of Civil Engineering Calculations, 2nd ed., pages 1.70 to 1.75: ordinates at panel points, worked joint by
/// joint under a load of 1, and by a section.
/// </summary>
public class StepByStepTests
{
    [Fact]
    public void Figure48_ShearOfPanelCd_IsHalfUnderALoadAtD()
    {
        SolvedTruss truss = ParallelChordTruss.Pratt(6, 20 * Foot, 25 * Foot);
        AssertBothWays(truss.Truss, "L3", "U2L3", 0.5 / truss.Sine("U2L3"), 1e-9);
    }

    // The moment about the lower joint b is what the upper chord above it carries, on the height of 20 ft.
    [Theory]
    [InlineData("C", "IL Mb at C")]
    [InlineData("B", "IL Mb at B")]
    public void Figure50_MomentAboutB_IsThePrintedOrdinate(string joint, string quantity)
    {
        PublishedRow row = PublishedTable.Read("HicksHandbook/examples.csv").Single(r => r["case"] == "HICKS50" && r["quantity"] == quantity);
        AssertBothWays(HicksTests.WarrenDeckTruss().Truss, joint, "BC", -row.Number("value") / 20, row.Number("tolerance") / 20);
    }

    private static void AssertBothWays(Truss truss, string joint, string member, double expected, double tolerance)
    {
        int m = truss.FindMember(member)!.Value;
        var loads = new LoadCase("1 down", [new JointLoad(joint, 0, -1)]);
        WorkedSolution worked = WorkedClaims.Worked(truss, loads);
        WorkedClaims.AssertFollows(worked);
        Assert.Equal(expected, worked.Forces[m], tolerance);
        Assert.True(SectionCheck.Of(truss, loads, m).TryGet(out SectionCheck? check, out _));
        Assert.Equal(expected, check.BySections!.Value, tolerance);
    }
}
