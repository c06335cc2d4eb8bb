using SpanRater.Tests.Learning;

namespace SpanRater.Tests;

/// <summary>Every line of a worked solution follows from lines above it, and sections give the same, on random trusses simple and compound.</summary>
public class WorkedSolutionProperties
{
    private const int Compound = 600;

    [Fact]
    public void Of_RandomSimpleTrusses_EveryLineFollowsFromLinesAbove() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        WorkedSolution worked = WorkedClaims.Worked(truss.System.Truss, truss.One);
        WorkedClaims.AssertFollows(worked);

        // A subdivided or a double web leaves more than two unknowns at a joint, and takes a section.
        if (truss.Form is not (BaltimoreTruss or DoubleIntersectionTruss))
        {
            Assert.All(worked.Steps.Skip(1), s => Assert.Equal(StepKind.Joint, s.Kind));
            Assert.Equal(3, worked.LeftOver.Count);
        }
    });

    [Fact]
    public void Of_RandomCompoundTrusses_TakesASectionAndEveryLineFollows() => SeededCases.Check(CompoundTrusses.Random(), Compound, c =>
    {
        WorkedSolution worked = WorkedClaims.Worked(c.Truss, c.Loads);
        WorkedClaims.AssertFollows(worked);
        Assert.Contains(worked.Steps, s => s.Kind == StepKind.Section);
        Assert.DoesNotContain(worked.Steps, s => s.Kind == StepKind.Group);
    });

    // One member a truss, another for each truss, so that chords, webs and posts all come.
    [Fact]
    public void SectionCheck_RandomSimpleTrusses_GivesTheForceOfTheJoints()
    {
        int found = 0;
        SolvedTruss[] some = [.. RandomTrusses.All.Where((_, i) => i % 4 == 0)];
        SeededCases.CheckEach([.. some.Select((truss, i) => (truss, i))], c =>
        {
            Truss geometry = c.truss.System.Truss;
            found += AssertAgrees(geometry, c.truss.One, c.i % geometry.Members.Count) ? 1 : 0;
        });
        Assert.InRange(found, 9 * some.Length / 10, some.Length);
    }

    [Fact]
    public void SectionCheck_RandomCompoundTrusses_GivesTheForceOfTheJoints()
    {
        int found = 0, number = 0;
        SeededCases.Check(CompoundTrusses.Random(), 200, c => found += AssertAgrees(c.Truss, c.Loads, number++ % c.Truss.Members.Count) ? 1 : 0);
        Assert.InRange(found, 100, 200);
    }

    [Fact]
    public void ZeroMembers_RandomTrusses_AreZeroInTheSolution() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        foreach (ZeroMember zero in ZeroMembers.UnderEveryDeckLoad(truss.System.Truss))
        {
            Assert.All(truss.Lines.Members[zero.Member].Line.Ordinates, y => Assert.Equal(0, y, 1e-12));
        }
    });

    private static bool AssertAgrees(Truss truss, LoadCase loads, int member)
    {
        Assert.True(SectionCheck.Of(truss, loads, member).TryGet(out SectionCheck? check, out _));
        if (check.Cuts.Count == 0)
        {
            Assert.Null(check.BySections);
            return false;
        }

        Assert.InRange(check.Difference!.Value, 0, 1e-9);
        Assert.All(check.Cuts, cut =>
        {
            // A cut parts the truss: no member joins the two sides but those cut, and nothing in the equation is unknown but the member.
            int[] crossing = [.. Enumerable.Range(0, truss.Members.Count).Where(m => cut.Balance.Joints.Contains(truss.FromJoint(m)) != cut.Balance.Joints.Contains(truss.ToJoint(m)))];
            Assert.Equal(cut.Cut, crossing);
            Assert.InRange(cut.Cut.Count, 1, 4);
            IEnumerable<int> inEquation = cut.Balance.Terms.Select(t => t.Force).Where(f => f < truss.Members.Count && f != cut.Member);
            Assert.Equal(cut.Before.Order(), inEquation.Order());
        });
        return true;
    }
}
