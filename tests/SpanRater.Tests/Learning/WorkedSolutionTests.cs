namespace SpanRater.Tests.Learning;

public class WorkedSolutionTests
{
    // The arms of a K carry half the shear of their panel each, over their sine, equal and opposite: a closed form of statics.
    [Fact]
    public void Of_KTruss_ArmsCarryHalfTheShearFromBothEnds()
    {
        const double Panel = 5, Height = 8, Load = 1000;
        Truss truss = new KTruss(8, Panel, Height).Build();
        var loads = new LoadCase("deck", [.. truss.PanelPoints.Select(p => new JointLoad(truss.Joints[p].Name, 0, -Load))]);
        WorkedSolution worked = WorkedClaims.Worked(truss, loads);
        double sine = Height / 2 / double.Hypot(Panel, Height / 2);
        for (int panel = 1; panel <= 3; panel++)
        {
            double shear = (4.5 - (panel + 1)) * Load;
            foreach ((int at, int next) in ((int, int)[])[(panel, panel + 1), (8 - panel, 7 - panel)])
            {
                Assert.Equal(-shear / 2 / sine, worked.Forces[truss.FindMember($"M{at}U{next}")!.Value], 1e-9 * Load);
                Assert.Equal(shear / 2 / sine, worked.Forces[truss.FindMember($"M{at}L{next}")!.Value], 1e-9 * Load);
            }
        }

        WorkedStep other = Assert.Single(worked.Steps, s => s.IsAfresh);
        Assert.Equal("L8", truss.Joints[other.Joints[0]].Name);
        Assert.Contains(other.Waiting, w => truss.Joints[w.Joint].Name == "U4" && w.Forces.Count == 3);
        WorkedClaims.AssertFollows(worked);
    }

    [Fact]
    public void Of_KTruss_TurnsTheAxesWhereBothArmsAreUnknown()
    {
        Truss truss = new KTruss(8, 5, 8).Build();
        WorkedSolution worked = WorkedClaims.Worked(truss, new LoadCase("one", [new JointLoad("L3", 0, -1)]));
        WorkedStep step = worked.Steps.Single(s => s.Kind == StepKind.Joint && truss.Joints[s.Joints[0]].Name == "M1");
        Balance turned = step.Equations[0].Balances[0];
        Assert.Equal(BalanceKind.Across, turned.Kind);
        Assert.DoesNotContain(turned.Beside!.Value, turned.Terms.Select(t => t.Force));
    }

    [Fact]
    public void Of_PinAndRoller_TakesMomentsAboutThePinFirst()
    {
        Truss truss = new PrattTruss(6, 5, 6, DeckChord.Bottom).Build();
        WorkedStep reactions = WorkedClaims.Worked(truss, new LoadCase("one", [new JointLoad("L2", 0, -3)])).Steps[0];
        Assert.Equal(StepKind.WholeTruss, reactions.Kind);
        Assert.Equal([BalanceKind.Moment, BalanceKind.Up, BalanceKind.Right], reactions.Equations.Select(e => e.Balances[0].Kind));
        Assert.Equal((0, 0), (reactions.Equations[0].Balances[0].X, reactions.Equations[0].Balances[0].Y));
    }

    [Fact]
    public void Of_ThreeHingedArch_FindsFourReactionsByParts()
    {
        // Two triangles pinned at the crown, each on a pin: the ground's four reactions are not found by the whole alone.
        // A load of 1 at the left haunch, 3 m from A, span 12 m, rise 5 m: B up = 3/12, thrust = 0.25·6/5 = 0.3.
        Truss truss = CompoundTrusses.Made(
            [new Joint("A", 0, 0, Support.Pin), new Joint("D", 3, 4), new Joint("C", 6, 5), new Joint("E", 9, 4), new Joint("B", 12, 0, Support.Pin)],
            ["A-D", "D-C", "A-C", "C-E", "E-B", "C-B"]);
        WorkedSolution worked = WorkedClaims.Worked(truss, new LoadCase("one", [new JointLoad("D", 0, -1)]));
        double[] reactions = [.. worked.Forces.Skip(truss.Members.Count)];
        Assert.Equal([0.3, 0.75, -0.3, 0.25], reactions.Select(r => Math.Round(r, 12)));
        WorkedClaims.AssertFollows(worked);
    }

    [Fact]
    public void Of_Hexagon_SolvesAGroupWhereNoSectionHelps()
    {
        WorkedSolution worked = WorkedClaims.Worked(CompoundTrusses.Hexagon(0.6), new LoadCase("one", [new JointLoad("D", 1, -2)]));
        Assert.Contains(worked.Steps, s => s.Kind == StepKind.Group);
        WorkedClaims.AssertFollows(worked);
    }

    [Fact]
    public void Of_ThreeUnknownsTwoInOneLine_FindsTheThirdAndComesBack()
    {
        Truss truss = CompoundTrusses.Hexagon(0);
        WorkedSolution worked = WorkedClaims.Worked(truss, new LoadCase("one", [new JointLoad("D", 1, -2)]));
        WorkedStep part = worked.Steps[1];
        Assert.Equal((StepKind.Joint, "AD"), (part.Kind, truss.Members[Assert.Single(part.Found)].Name));
        Assert.Equal(3, part.Unknown.Count);
        Assert.Equal(2, worked.Steps.Count(s => s.Kind == StepKind.Joint && s.Joints[0] == part.Joints[0]));
        WorkedClaims.AssertFollows(worked);
    }

    [Fact]
    public void Of_InclinedRoller_IsWorkedToo()
    {
        Truss pratt = new PrattTruss(6, 5, 6, DeckChord.Bottom).Build();
        Truss truss = Truss.Create([.. pratt.Joints.Select(j => j.Name == "L6" ? j with { Support = Support.Roller(60) } : j)], pratt.Members).Truss!;
        WorkedSolution worked = WorkedClaims.Worked(truss, new LoadCase("one", [new JointLoad("L2", 0.5, -3)]));
        Assert.Contains("L6 along the normal", Enumerable.Range(0, worked.Forces.Count).Select(f => worked.Names[f]));
        WorkedClaims.AssertFollows(worked);
    }

    // A panel crossed by two rods: of them the one pulls that the shear of the panel pulls, with the shear over its sine.
    [Theory]
    [InlineData("L2", "counter", "main", 0.5)]
    [InlineData("L1", "main", "counter", 0.25)]
    public void Of_CrossedRods_WorksTheTrussWithoutTheSlackOne(string loadAt, string slack, string acting, double shear)
    {
        Truss truss = CrossedPanel();
        LoadCase loads = new("one", [new JointLoad(loadAt, 0, -1)]);
        WorkedSolution worked = WorkedClaims.Worked(truss, loads);
        Assert.Equal([slack], worked.Slack);
        Assert.Null(worked.Truss.FindMember(slack));
        Assert.Equal(shear * Math.Sqrt(2), worked.Forces[worked.Truss.FindMember(acting)!.Value], 1e-12);
        WorkedClaims.AssertFollows(worked);

        Assert.True(SectionCheck.Of(truss, loads, truss.FindMember(acting)!.Value).TryGet(out SectionCheck? check, out _));
        Assert.Equal(shear * Math.Sqrt(2), check.BySections!.Value, 1e-12);
        Assert.True(SectionCheck.Of(truss, loads, truss.FindMember(slack)!.Value).TryGet(out SectionCheck? none, out _));
        Assert.Equal((null, null, 0.0), (none.Member, none.BySections, none.ByJoints));
    }

    [Fact]
    public void Of_RedundantTruss_IsRefused()
    {
        Truss king = new KingPostTruss(4, 3).Build();
        Truss truss = Truss.Create([.. king.Joints.Select(j => j.Name == "L2" ? j with { Support = Support.Pin } : j)], king.Members).Truss!;
        Assert.IsType<Refusal.Redundant>(WorkedSolution.Of(truss, new LoadCase("one", [])).Refusal);
    }

    [Fact]
    public void Of_NoLoadAtAll_IsZeroThroughout()
    {
        WorkedSolution worked = WorkedClaims.Worked(CompoundTrusses.Fink(), new LoadCase("none", []));
        Assert.All(worked.Forces, f => Assert.Equal(0, f));
        Assert.Equal(0, worked.LargestResidual);
    }

    [Theory]
    [InlineData("L1", ZeroRule.ThreeBars, 1)]
    [InlineData("U2", ZeroRule.ThreeBars, 2)]
    public void ZeroMembers_WarrenWithVerticals_FollowTheThreeBarRule(string at, ZeroRule rule, int vertical)
    {
        Truss truss = new WarrenTrussWithVerticals(6, 3, 1.8, DeckChord.Bottom).Build();
        WorkedSolution worked = WorkedClaims.Worked(truss, new LoadCase("one", [new JointLoad("L3", 0, -1)]));
        string[] ends = [$"L{vertical}", $"U{vertical}"];
        ZeroMember zero = Assert.Single(worked.ZeroMembers, z => ends.Contains(truss.Members[z.Member].From) && ends.Contains(truss.Members[z.Member].To));
        Assert.Equal((at, rule), (truss.Joints[zero.Joint].Name, zero.Rule));
        Assert.Equal(0, worked.Forces[zero.Member]);
    }

    [Fact]
    public void ZeroMembers_BarsThatDropOut_BringTheNextRule()
    {
        // A mast on a king post: its tip T is held by two bars, and once they are gone S is held by one.
        Truss king = new KingPostTruss(4, 3).Build();
        Truss truss = Truss.Create(
            [.. king.Joints, new Joint("S", 4, 6), new Joint("T", 7, 8)],
            [.. king.Members, new Member("U1S", "U1", "S"), new Member("SL2", "S", "L2"), new Member("ST", "S", "T"), new Member("TL2", "T", "L2")]).Truss!;
        ZeroMember[] zero = [.. ZeroMembers.Of(truss, [.. truss.Joints.Select(_ => (0.0, 0.0))])];
        Assert.Equal(ZeroRule.TwoBars, zero.First(z => truss.Members[z.Member].Name == "ST").Rule);
        ZeroMember later = zero.First(z => truss.Members[z.Member].Name == "SL2");
        Assert.Equal("ST", truss.Members[Assert.Single(later.After)].Name);

        // A load along ST leaves TL2 zero and ST not.
        double length = double.Hypot(3, 2);
        ZeroMember inLine = Assert.Single(
            ZeroMembers.Of(truss, [.. truss.Joints.Select(j => j.Name == "T" ? (3 / length, 2 / length) : (0.0, 0.0))]),
            z => truss.Joints[z.Joint].Name == "T");
        Assert.Equal(("TL2", ZeroRule.TwoBarsLoadInLine), (truss.Members[inLine.Member].Name, inLine.Rule));
    }

    [Fact]
    public void SectionCheck_KArm_TakesTheChordFirst()
    {
        Truss truss = new KTruss(8, 5, 8).Build();
        LoadCase loads = new("one", [new JointLoad("L3", 0, -1)]);
        Assert.True(SectionCheck.Of(truss, loads, truss.FindMember("M2U3")!.Value).TryGet(out SectionCheck? check, out _));
        Assert.Equal(2, check.Cuts.Count);
        Assert.Empty(check.Cuts[0].Before);
        Assert.Equal([check.Cuts[0].Member], check.Cuts[1].Before);

        // Shear of the panel under a load of 1 at L3 of 8 panels: 5/8 left of it. Half on each arm, over the sine.
        Assert.Equal(-0.625 / 2 / (4 / double.Hypot(5, 4)), check.BySections!.Value, 1e-12);
    }

    [Fact]
    public void SectionCheck_Hexagon_FindsNoCut()
    {
        Truss truss = CompoundTrusses.Hexagon(0.6);
        Assert.True(SectionCheck.Of(truss, new LoadCase("one", [new JointLoad("D", 1, -2)]), truss.FindMember("CF")!.Value).TryGet(out SectionCheck? check, out _));
        Assert.Empty(check.Cuts);
        Assert.Null(check.BySections);
        Assert.Null(check.Difference);
    }

    // Four square panels; the second one is crossed by two rods.
    internal static Truss CrossedPanel()
    {
        Truss pratt = new PrattTruss(4, 4, 4, DeckChord.Bottom).Build();
        string[] ends = ["L2", "U1"];
        Member main = pratt.Members.Single(m => ends.Contains(m.From) && ends.Contains(m.To));
        return Truss.Create(
            pratt.Joints,
            [.. pratt.Members.Select(m => m == main ? m with { Name = "main", TensionOnly = true } : m), new Member("counter", "L1", "U2", TensionOnly: true)]).Truss!;
    }
}
