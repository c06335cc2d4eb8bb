using SpanRater.Files;

namespace SpanRater.Tests;

/// <summary>
/// Which panel sways, how supports fail. Each claim of the engine is held against the definition of a mechanism, worked from
/// coordinates here: no member of the truss lengthens, the supports hold, and the bar proposed would have to change its length.
/// </summary>
public class MechanismTests
{
    [Fact]
    public void WaysToMove_QueenPostWithoutRods_IsTheSwayOfTheMiddlePanel()
    {
        Truss truss = Changed(new QueenPostTruss(12, 10).Build(), ["U1L2", "L1U2"]);
        Stability stability = Stability.Of(truss);

        // The textbook case of a frame that hangs on its proportions: 8 + 3 = 11 < 12.
        Assert.Equal((11, 12, 1), (stability.MemberCount + stability.ReactionCount, stability.EquationCount, stability.Movements));
        Movement movement = AssertIsMovement(truss, Assert.Single(stability.WaysToMove));
        Assert.Equal(MovementKind.Panels, movement.Kind);
        Assert.Equal("L1-L2-U2-U1", MechanismWording.Name(Assert.Single(movement.Panels), truss));
        Assert.Equal(["L1-U2", "L2-U1"], Bars(movement, truss));
        Assert.Equal(["L1", "L2", "U1", "U2"], movement.Joints.Select(j => truss.Joints[j].Name).Order(StringComparer.Ordinal));

        // Antisymmetric: what the left half sinks the right half rises.
        Assert.Equal(0, Up(movement, truss, "L1") + Up(movement, truss, "L2"), 1e-12);
        Assert.Null(stability.SupportFault);
        Assert.Contains("Panel L1-L2-U2-U1 can sway: add its diagonal, L1 to U2 or L2 to U1.", Sentence(truss), StringComparison.Ordinal);
    }

    [Fact]
    public void WaysToMove_CountRightAndRankWrong_NamesThePanelWithTheSpareBarAndTheOneWithout()
    {
        Truss truss = Changed(Pratt(), ["L4U5"], new Member("L1U2", "L1", "U2"));
        Stability stability = Stability.Of(truss);
        Assert.Equal((24, 24, 23), (stability.MemberCount + stability.ReactionCount, stability.EquationCount, stability.Rank));
        Movement movement = AssertIsMovement(truss, Assert.Single(stability.WaysToMove));
        Assert.Equal("L4-L5-U5-U4", MechanismWording.Name(Assert.Single(movement.Panels), truss));
        Assert.Equal("L1-L2-U2-U1", MechanismWording.Name(Assert.Single(stability.SparePanels), truss));
        Assert.Contains(
            "The count is 24 = 24, but panel L1-L2-U2-U1 has a spare bar (one of L1L2, U1U2, U1L1, U2L2, U1L2, L1U2) and panel L4-L5-U5-U4 has none: the count is deceived, the rank is not.",
            Sentence(truss),
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("U1L2", "L4U5")]
    [InlineData("U1L2", "U2L3")]
    [InlineData("U2L3", "L3U4")]
    public void WaysToMove_TwoDiagonalsGone_EachMovementBelongsToOnePanel(string one, string other)
    {
        Truss truss = Changed(Pratt(), [one, other]);
        Stability stability = Stability.Of(truss);
        Assert.Equal((2, 2), (stability.Movements, stability.WaysToMove.Count));
        Assert.All(stability.WaysToMove, w => Assert.Single(AssertIsMovement(truss, w).Panels));
        Assert.Equal(2, stability.WaysToMove.SelectMany(w => w.Panels).Distinct().Count());
        Assert.Contains("It can move in 2 independent ways, and as many bars or reactions are missing.", Sentence(truss), StringComparison.Ordinal);
    }

    // Whatever bar goes from a determinate truss, one movement is left; the bar itself would stop it, and what is proposed does.
    [Fact]
    public void WaysToMove_AnyOneMemberOfAnyFormTakenOut_ProposesABarThatStopsIt()
    {
        TrussForm[] forms = [new PrattTruss(6, 5, 6), new WarrenTruss(5, 5, 4), new KTruss(6, 5, 8), new ParkerTruss(5, [5, 6, 7, 7, 6, 5]), new KingPostTruss(4, 3), new HoweTruss(4, 4, 4, DeckChord.Top)];
        foreach (Truss full in forms.Select(f => f.Build()))
        {
            foreach (Member gone in full.Members)
            {
                if (Truss.Create(full.Joints, [.. full.Members.Where(m => m != gone)]).Truss is not { } truss)
                {
                    continue;
                }

                Movement movement = AssertIsMovement(truss, Assert.Single(Stability.Of(truss).WaysToMove));
                Assert.NotEqual(MovementKind.WholeTruss, movement.Kind);
                Assert.NotEmpty(movement.Mends);
                foreach (MissingBar bar in movement.Mends)
                {
                    Truss mended = Changed(truss, [], new Member("mend", truss.Joints[bar.From].Name, truss.Joints[bar.To].Name));
                    Assert.Equal(0, Stability.Of(mended).Movements);
                }
            }
        }
    }

    [Fact]
    public void WaysToMove_HangerGone_TheJointIsLoose()
    {
        Truss truss = Changed(Pratt(), ["U1L1"]);
        Movement movement = AssertIsMovement(truss, Assert.Single(Stability.Of(truss).WaysToMove));
        Assert.Equal(MovementKind.LooseJoint, movement.Kind);
        Assert.Equal((0.0, -1.0), (movement.Shifts[movement.Joints[0]].Right, movement.Shifts[movement.Joints[0]].Up));
        Assert.Contains("Joint L1 is held by bars in one line (L0L1 and L1L2), and nothing holds it square to them: add a bar to it, such as one from L1 to U1.", Sentence(truss), StringComparison.Ordinal);
    }

    [Fact]
    public void WaysToMove_ChordGone_PiecesTurnAboutTheJointLeft()
    {
        Truss truss = Changed(Pratt(), ["L2L3"]);
        Movement movement = AssertIsMovement(truss, Assert.Single(Stability.Of(truss).WaysToMove));
        Assert.Equal(MovementKind.Pieces, movement.Kind);
        Assert.Contains("Pieces of it turn against one another about joint U2: add a bar between them, such as one from L2 to L3.", Sentence(truss), StringComparison.Ordinal);
    }

    // A ring of six sides on a pin and a roller: three bars are missing in one panel, which is said once.
    [Fact]
    public void WaysToMove_RingOfSixSides_OnePanelInThreeWays()
    {
        Truss truss = Truss.Create(
            [new("A", 0, 0, Support.Pin), new("B", 10, 0, Support.Roller()), new("C", 15, 8), new("D", 10, 16), new("E", 0, 16), new("F", -5, 8)],
            [new("AB", "A", "B"), new("BC", "B", "C"), new("CD", "C", "D"), new("DE", "D", "E"), new("EF", "E", "F"), new("FA", "F", "A")]).Truss!;
        Assert.All(Stability.Of(truss).WaysToMove, w => Assert.Equal("A-B-C-D-E-F", MechanismWording.Name(Assert.Single(AssertIsMovement(truss, w).Panels), truss)));
        Assert.Equal(3, Stability.Of(truss).WaysToMove.Count);
        Assert.Single(Sentence(truss).Split("Panel A-B-C-D-E-F can change its shape: add a bar").Skip(1));
    }

    [Fact]
    public void WaysToMove_PieceThatNothingJoins_IsNamedWhole()
    {
        Truss full = Pratt();
        Truss truss = Truss.Create([.. full.Joints, new("A", 10, 40), new("B", 20, 40), new("C", 15, 50)], [.. full.Members, new("AB", "A", "B"), new("BC", "B", "C"), new("AC", "A", "C")]).Truss!;
        Assert.Equal(3, Stability.Of(truss).WaysToMove.Count);
        Assert.Contains("A piece with joints A, B and C is loose from the rest: join it with more bars", Sentence(truss), StringComparison.Ordinal);
    }

    [Fact]
    public void SupportFault_TwoRollers_TheReactionsAreParallelAndTheTrussSlides()
    {
        Truss truss = Supported(Support.Roller(), null, Support.Roller());
        Stability stability = Stability.Of(truss);
        Assert.Equal(new SupportFault.Parallel(1, 0), stability.SupportFault);
        Movement movement = AssertIsMovement(truss, Assert.Single(stability.WaysToMove));
        Assert.Equal(MovementKind.WholeTruss, movement.Kind);
        Assert.All(movement.Shifts, s => Assert.Equal((1, 0), (s.Right, s.Up)));
        Assert.Empty(movement.Members);
        Assert.Contains("The reactions are all parallel, straight up (supports at L0 and L6): the truss can slide to the right or the left.", Sentence(truss), StringComparison.Ordinal);
    }

    // Normals of 45° at L0 and 135° at L6 meet at midspan, 48 above the deck, and the third is upright below that point.
    [Fact]
    public void SupportFault_ThreeRollersThroughOnePoint_TheTrussTurnsAboutIt()
    {
        Truss truss = Supported(Support.Roller(45), Support.Roller(), Support.Roller(135));
        Stability stability = Stability.Of(truss);
        Assert.Equal((24, 24), (stability.MemberCount + stability.ReactionCount, stability.EquationCount));
        SupportFault.Concurrent fault = Assert.IsType<SupportFault.Concurrent>(stability.SupportFault);
        Assert.Equal(48, fault.X, 1e-9);
        Assert.Equal(48, fault.Y, 1e-9);

        // A turn moves each joint square to its distance from the point.
        Movement movement = AssertIsMovement(truss, Assert.Single(stability.WaysToMove));
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            Assert.Equal(0, (movement.Shifts[j].Right * (truss.Joints[j].X - 48)) + (movement.Shifts[j].Up * (truss.Joints[j].Y - 48)), 1e-9);
        }

        Assert.Contains("All reactions pass through one point (x = 48.00 m, y = 48.00 m; supports at L0, L3 and L6): the truss can turn about it.", Sentence(truss), StringComparison.Ordinal);
        Assert.Contains("The supports at L0, L3 and L6 only strain against one another: the count is deceived, the rank is not.", Sentence(truss), StringComparison.Ordinal);
    }

    [Fact]
    public void SupportFault_PinAlone_NamesItsJoint()
    {
        Truss truss = Supported(Support.Pin, null, null);
        Assert.Contains("All reactions pass through one point (joint L0; support at L0): the truss can turn about it.", Sentence(truss), StringComparison.Ordinal);
    }

    [Fact]
    public void SupportFault_InclinedParallelRollers_SlidesAcrossThem()
    {
        SupportFault.Parallel fault = Assert.IsType<SupportFault.Parallel>(SupportFault.Of(Supported(Support.Roller(60), Support.Roller(60), Support.Roller(60))));
        Assert.Equal(Math.Cos(-Math.PI / 6), fault.Right, 1e-12);
        Assert.Equal(Math.Sin(-Math.PI / 6), fault.Up, 1e-12);
        Assert.Contains("at -30° to the horizontal", MechanismWording.Of(fault, Pratt(), DisplayUnits.Si), StringComparison.Ordinal);
    }

    [Fact]
    public void SupportFault_RollersOnOneUprightLine_SlidesAndTurns()
    {
        Truss full = Pratt();
        Truss truss = Truss.Create([.. full.Joints.Select(j => j with { Support = j.Name is "L2" or "U2" ? Support.Roller() : null })], full.Members).Truss!;
        Assert.Equal(new SupportFault.OneLine(), SupportFault.Of(truss));
        Assert.Equal(2, Stability.Of(truss).WaysToMove.Count(w => w.Kind == MovementKind.WholeTruss));
        Assert.Contains("All reactions act along one line (supports at L2 and U2): the truss can slide across it and turn.", Sentence(truss), StringComparison.Ordinal);
    }

    [Fact]
    public void SupportFault_LevelRollers_SlidesUpAndDown()
    {
        Truss truss = Supported(Support.Roller(0), null, Support.Roller(0));
        Assert.IsType<SupportFault.OneLine>(SupportFault.Of(truss));
        Truss full = Pratt();
        Truss three = Truss.Create([.. full.Joints.Select(j => j with { Support = j.Name is "L0" or "U1" or "L6" ? Support.Roller(0) : null })], full.Members).Truss!;
        Assert.Equal(new SupportFault.Parallel(0, 1), SupportFault.Of(three));
        Assert.Contains("the truss can slide up or down", Sentence(three), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PinsAtBothEndsAndAPanelWithoutDiagonal_SaysThatTheSpareOneIsAReaction()
    {
        Truss full = Pratt();
        Truss truss = Truss.Create([.. full.Joints.Select(j => j.Support is null ? j : j with { Support = Support.Pin })], [.. full.Members.Where(m => m.Name != "L4U5")]).Truss!;
        Assert.Contains("Elsewhere there is a member or a reaction too many, among L0L1, L1L2, L2L3, L3L4, L4L5, L5L6 and the supports at L0 and L6: the count is deceived, the rank is not.", Sentence(truss), StringComparison.Ordinal);
    }

    // Two flat bars between two pins carry P / (2 sin e) at a rise of e: the flatter, the nearer to a mechanism.
    [Theory]
    [InlineData(1e-2, false)]
    [InlineData(1e-3, false)]
    [InlineData(1e-4, true)]
    [InlineData(1e-5, true)]
    public void WeakGeometry_FlatJoint_IsToldBeforeDigitsAreLost(double rise, bool weak)
    {
        Truss truss = Truss.Create(
            [new("A", 0, 0, Support.Pin), new("B", 5, 5 * rise), new("C", 10, 0, Support.Pin)],
            [new("AB", "A", "B"), new("BC", "B", "C")]).Truss!;
        Assert.True(DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _));
        double expected = -1 / (2 * Math.Sin(Math.Atan(rise)));
        Assert.Equal(1, system.Solve(new LoadCase("P", [new JointLoad("B", 0, -1)])).Value!.MemberForces[0] / expected, 1e-12);

        Stability stability = Stability.Of(truss);
        Assert.Equal(weak, stability.WeakGeometry is not null);
        Assert.Equal(1.848, stability.Condition!.Value * rise, 0.01);
        if (stability.WeakGeometry is { } facts)
        {
            Assert.Equal("B", truss.Joints[facts.Joint].Name);
            Assert.Equal([0, 1], facts.Members);
            Assert.Equal(2 * Math.Atan(rise), facts.OffLine, 1e-12);
            Assert.StartsWith("warning: the geometry is near to a mechanism, condition number ", MechanismWording.Of(facts, truss), StringComparison.Ordinal);
            Assert.Contains("of one line; AB and BC take the most.", MechanismWording.Of(facts, truss), StringComparison.Ordinal);
        }
    }

    // A slip of one part in 10,000 of a member's length, at the limit, changes the force by about its own size.
    [Fact]
    public void WeakGeometry_AtTheLimit_ASlipOfTheTapeIsAsLargeAsTheForce()
    {
        double rise = 1.848 / WeakGeometry.Limit;
        double force = 1 / (2 * Math.Sin(Math.Atan(rise))), slipped = 1 / (2 * Math.Sin(Math.Atan(rise - 1e-4)));
        Assert.InRange((slipped - force) / force, 0.5, 2);
    }

    [Theory]
    [InlineData(0.3)]
    [InlineData(1.0)]
    public void WeakGeometry_OrdinaryTrussesUpToFortyPanels_AreNotTold(double height)
    {
        foreach (int panels in (int[])[4, 8, 12, 20, 40])
        {
            Assert.All((TrussForm[])[new PrattTruss(panels, 6, 6 * height), new WarrenTruss(panels, 6, 6 * height), new KTruss(panels, 6, 6 * height)], f => Assert.Null(Stability.Of(f.Build()).WeakGeometry));
        }
    }

    [Fact]
    public void Panel_PrattWithACrossedPanel_AreItsTrianglesAndTheCrossedOneWhole()
    {
        Truss truss = Changed(Pratt(), [], new Member("L1U2", "L1", "U2"));
        Assert.Equal(
            ["L0-L1-U1", "L1-L2-U2-U1", "L2-L3-U2", "L3-U3-U2", "L3-U4-U3", "L3-L4-U4", "L4-U5-U4", "L4-L5-U5", "L5-L6-U5"],
            TrussPanel.Of(truss).Select(p => MechanismWording.Name(p, truss)));
    }

    private static Truss Pratt() => new PrattTruss(6, 16, 18).Build();

    private static Truss Changed(Truss truss, string[] without, params Member[] with) =>
        Truss.Create(truss.Joints, [.. truss.Members.Where(m => !without.Contains(m.Name)), .. with]).Truss!;

    private static Truss Supported(Support? left, Support? middle, Support? right)
    {
        Truss full = Pratt();
        return Truss.Create([.. full.Joints.Select(j => j with { Support = j.Name switch { "L0" => left, "L3" => middle, "L6" => right, _ => null } })], full.Members).Truss!;
    }

    private static string Sentence(Truss truss) => MechanismWording.Of(Stability.Of(truss), truss, DisplayUnits.Si);

    private static string[] Bars(Movement movement, Truss truss) => [.. movement.Mends.Select(b => $"{truss.Joints[b.From].Name}-{truss.Joints[b.To].Name}")];

    private static double Up(Movement movement, Truss truss, string joint) => movement.Shifts[truss.FindJoint(joint)!.Value].Up;

    private static Movement AssertIsMovement(Truss truss, Movement movement)
    {
        Assert.Equal(1, movement.Shifts.Max(s => s.Size), 1e-12);
        double Lengthening(int a, int b)
        {
            double dx = truss.Joints[b].X - truss.Joints[a].X, dy = truss.Joints[b].Y - truss.Joints[a].Y;
            return ((dx * (movement.Shifts[b].Right - movement.Shifts[a].Right)) + (dy * (movement.Shifts[b].Up - movement.Shifts[a].Up))) / Math.Sqrt((dx * dx) + (dy * dy));
        }

        for (int m = 0; m < truss.Members.Count; m++)
        {
            Assert.Equal(0, Lengthening(truss.FromJoint(m), truss.ToJoint(m)), 1e-9);
        }

        for (int j = 0; j < truss.Joints.Count; j++)
        {
            switch (truss.Joints[j].Support)
            {
                case { Kind: SupportKind.Pin }:
                    Assert.Equal(0, movement.Shifts[j].Size, 1e-9);
                    break;
                case { } roller:
                    Assert.Equal(0, (movement.Shifts[j].Right * roller.NormalX) + (movement.Shifts[j].Up * roller.NormalY), 1e-9);
                    break;
            }
        }

        Assert.All(movement.Mends, b => Assert.True(Math.Abs(Lengthening(b.From, b.To)) > 0.05));
        return movement;
    }
}
