namespace SpanRater.Tests.Trusses.Forms;

/// <summary>Counts, names and forces of the forms; the forces are worked by hand with joints and sections.</summary>
public class TrussFormTests
{
    private const double Panel = 4, Height = 3;

    public static TheoryData<TrussForm, int, int> Determinate => new()
    {
        { new KingPostTruss(Panel, Height), 4, 5 },
        { new QueenPostTruss(Panel, Height), 6, 9 },
        { new PrattTruss(6, Panel, Height), 12, 21 },
        { new PrattTruss(7, Panel, Height), 14, 25 },
        { new PrattTruss(6, Panel, Height, DeckChord.Top), 14, 25 },
        { new HoweTruss(6, Panel, Height), 12, 21 },
        { new HoweTruss(5, Panel, Height, DeckChord.Top), 12, 21 },
        { new WarrenTruss(4, Panel, Height), 9, 15 },
        { new WarrenTrussWithVerticals(6, Panel, Height), 12, 21 },
        { new WarrenTrussWithVerticals(6, Panel, Height, DeckChord.Top), 14, 25 },
        { new ParkerTruss(Panel, [3, 4, 5, 4, 3]), 12, 21 },
        { new KTruss(6, Panel, Height), 16, 29 },
    };

    [Theory]
    [MemberData(nameof(Determinate))]
    public void Build_DeterminateForm_HasTheCountOfADeterminateTruss(TrussForm form, int joints, int members)
    {
        Truss truss = form.Build();

        Assert.Equal((joints, members), (truss.Joints.Count, truss.Members.Count));
        Assert.Equal(2 * joints, members + truss.ReactionCount);
        Assert.Equal(StabilityVerdict.Determinate, Stability.Of(truss).Verdict);
        Assert.All(truss.Members, m => Assert.Equal(m.From + m.To, m.Name));
        Assert.All(truss.Members, m => Assert.NotEqual("", m.Role));
        Assert.Equal(form.Panels + 1, truss.PanelPoints.Count);
        Assert.Equal(form.Span, truss.Stations[^1]);
        Assert.Empty(Truss.Create(truss.Joints, truss.Members).Faults);
    }

    [Fact]
    public void Build_QueenPostOpen_IsAMechanism() =>
        Assert.Equal(StabilityVerdict.Mechanism, Stability.Of(new QueenPostTruss(Panel, Height, CentrePanel.Open).Build()).Verdict);

    [Fact]
    public void Build_QueenPostWithCrossedRods_IsRedundantOnceInTheCentrePanel()
    {
        Truss truss = new QueenPostTruss(Panel, Height, CentrePanel.CrossedRods).Build();
        Stability stability = Stability.Of(truss);

        Assert.Equal((StabilityVerdict.Redundant, 1), (stability.Verdict, stability.Redundancy));
        Assert.Equal(["L1L2", "U1U2", "U1L1", "U2L2", "U1L2", "L1U2"], stability.StressedMembers.Select(m => truss.Members[m].Name));
        Assert.Equal(["U1L2", "L1U2"], truss.Members.Where(m => m.TensionOnly).Select(m => m.Name));
    }

    [Theory]
    [InlineData(CentrePanel.Open, StabilityVerdict.Mechanism)]
    [InlineData(CentrePanel.OneDiagonal, StabilityVerdict.Determinate)]
    [InlineData(CentrePanel.CrossedRods, StabilityVerdict.Redundant)]
    public void Build_PrattOfFivePanels_StandsAsItsCentrePanelIsBraced(CentrePanel centre, StabilityVerdict verdict) =>
        Assert.Equal(verdict, Stability.Of(new PrattTruss(5, Panel, Height, DeckChord.Bottom, centre).Build()).Verdict);

    // Load 10 at L1: reactions 5 each; the end posts rise 3 on 4, so 5 / (3/5) = 25/3 in compression; tie 25/3 · 4/5 = 20/3.
    [Fact]
    public void Build_KingPostLoadedInTheMiddle_PostHangsTheLoad()
    {
        Truss truss = new KingPostTruss(Panel, Height).Build();

        Assert.Equal(10, Force(truss, "U1L1", ("L1", 10)), 1e-12);
        Assert.Equal(-25.0 / 3, Force(truss, "L0U1", ("L1", 10)), 1e-12);
        Assert.Equal(20.0 / 3, Force(truss, "L1L2", ("L1", 10)), 1e-12);
    }

    // Load 10 at each of the posts: both carry 10, the strut 10 · 4/3, and the diagonal nothing.
    [Fact]
    public void Build_QueenPostLoadedAlike_DiagonalIsIdle()
    {
        Truss truss = new QueenPostTruss(Panel, Height).Build();

        Assert.Equal(0, Force(truss, "U1L2", ("L1", 10), ("L2", 10)), 1e-12);
        Assert.Equal(10, Force(truss, "U1L1", ("L1", 10), ("L2", 10)), 1e-12);
        Assert.Equal(-40.0 / 3, Force(truss, "U1U2", ("L1", 10), ("L2", 10)), 1e-12);
    }

    // Load 6 at midspan of six panels of 4 m: reactions 3; moment at L2 3 · 8 = 24, at L3 36, at L1 12; chord = M / h;
    // shear 3 in every panel to the left, so a diagonal of 3 on 4 carries 3 · 5/3 = 5.
    [Fact]
    public void Build_PrattLoadedAtMidspan_ChordsAreMomentOverHeight()
    {
        Truss truss = new PrattTruss(6, Panel, Height).Build();

        Assert.Equal(12.0 / 3, Force(truss, "L0L1", ("L3", 6)), 1e-12);
        Assert.Equal(24.0 / 3, Force(truss, "L2L3", ("L3", 6)), 1e-12);
        Assert.Equal(-24.0 / 3, Force(truss, "U1U2", ("L3", 6)), 1e-12);
        Assert.Equal(-36.0 / 3, Force(truss, "U2U3", ("L3", 6)), 1e-12);
        Assert.Equal(5, Force(truss, "U2L3", ("L3", 6)), 1e-12);
        Assert.Equal(-3, Force(truss, "U2L2", ("L3", 6)), 1e-12);
        Assert.Equal(0, Force(truss, "U1L1", ("L3", 6)), 1e-12);
    }

    [Fact]
    public void Build_HoweLoadedAtMidspan_DiagonalsPressAndVerticalsPull()
    {
        Truss truss = new HoweTruss(6, Panel, Height).Build();

        Assert.Equal(-5, Force(truss, "L2U3", ("L3", 6)), 1e-12);
        Assert.Equal(3, Force(truss, "U2L2", ("L3", 6)), 1e-12);
        Assert.Equal(6, Force(truss, "U3L3", ("L3", 6)), 1e-12);
    }

    // A deck truss hands a load over its pin straight down its end post.
    [Fact]
    public void Build_PrattDeckTrussLoadedOverThePin_OnlyTheEndPostWorks()
    {
        Truss truss = new PrattTruss(6, Panel, Height, DeckChord.Top).Build();

        Assert.Equal(-6, Force(truss, "U0L0", ("U0", 6)), 1e-12);
        Assert.Equal(0, Force(truss, "U0L1", ("U0", 6)), 1e-12);
        Assert.True(truss.Joints.Where(j => j.IsPanelPoint).All(j => j.Name[0] == 'U'));
    }

    // Two panels of 4 m, height 2 over the middle of each: reactions 5 under 10 at midspan, M at U1 = 5 · 2.
    [Fact]
    public void Build_WarrenLoadedAtMidspan_BottomChordIsMomentUnderTheApexOverHeight()
    {
        Truss truss = new WarrenTruss(2, Panel, 2).Build();

        Assert.Equal(["L0", "L2", "L4", "U1", "U3"], truss.Joints.Select(j => j.Name));
        Assert.Equal(5 * 2 / 2.0, Force(truss, "L0L2", ("L2", 10)), 1e-12);
        Assert.Equal(-5 * 4 / 2.0, Force(truss, "U1U3", ("L2", 10)), 1e-12);
    }

    [Fact]
    public void Build_WarrenWithVerticals_VerticalsCarryOnlyTheirOwnPanelPoint()
    {
        Truss truss = new WarrenTrussWithVerticals(4, Panel, Height).Build();

        Assert.Equal(7, Force(truss, "U3L3", ("L3", 7), ("L2", 9)), 1e-12);
        Assert.Equal(0, Force(truss, "U2L2", ("L3", 7), ("L2", 9)), 1e-12);
    }

    // Load 6 at midspan, reactions 3. U2U3 rises 1 on 4 to 5 m: its moment arm about L3 is 5 · 4/√17, M = 36.
    [Fact]
    public void Build_ParkerLoadedAtMidspan_InclinedChordIsMomentOverItsArm()
    {
        Truss truss = new ParkerTruss(Panel, [3, 4, 5, 4, 3]).Build();

        Assert.Equal(-36 / (5 * 4 / Math.Sqrt(17)), Force(truss, "U2U3", ("L3", 6)), 1e-12);
        Assert.Equal(24.0 / 4, Force(truss, "L2L3", ("L3", 6)), 1e-12);
    }

    // The two diagonals of a mid-joint share the shear of 3 alike, with opposite signs: each takes 1.5 over its rise of 1.5 on 4.
    [Fact]
    public void Build_KTrussLoadedAtMidspan_MidJointDiagonalsShareTheShear()
    {
        Truss truss = new KTruss(6, Panel, Height).Build();
        double length = Math.Sqrt((1.5 * 1.5) + (4 * 4));

        Assert.Equal(-1.5 * length / 1.5, Force(truss, "M1U2", ("L3", 6)), 1e-12);
        Assert.Equal(1.5 * length / 1.5, Force(truss, "M1L2", ("L3", 6)), 1e-12);

        // At L3 the two diagonals lift 1.5 each; the whole vertical takes the rest of the 6.
        Assert.Equal(6 - (2 * 1.5), Force(truss, "U3L3", ("L3", 6)), 1e-12);
    }

    [Fact]
    public void PrattTruss_PanelsOutOfRange_NamesTheParameterAndTheRange()
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(() => new PrattTruss(2, Panel, Height));

        Assert.Equal(("panels", 2), (e.ParamName, e.ActualValue));
        Assert.Contains("from 3 to 200 panels", e.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void HoweTruss_PanelWithoutLength_IsRefused(double panelLength) =>
        Assert.Throws<ArgumentOutOfRangeException>(nameof(panelLength), () => new HoweTruss(4, panelLength, Height));

    [Theory]
    [InlineData(0.03)]
    [InlineData(401)]
    [InlineData(double.NaN)]
    public void KTruss_HeightOutOfRange_NamesTheRange(double height)
    {
        var e = Assert.Throws<ArgumentOutOfRangeException>(nameof(height), () => new KTruss(4, Panel, height));

        Assert.Contains("from 0.04 to 400 m", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void WarrenTrussWithVerticals_OddPanels_IsRefused() =>
        Assert.Throws<ArgumentOutOfRangeException>("panels", () => new WarrenTrussWithVerticals(5, Panel, Height));

    [Fact]
    public void ParkerTruss_OneHeightOutOfRange_NamesTheList() =>
        Assert.Throws<ArgumentOutOfRangeException>("heights", () => new ParkerTruss(Panel, [3, 0, 3]));

    private static double Force(Truss truss, string member, params (string Joint, double Weight)[] loads)
    {
        Assert.True(DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _));
        var weights = new LoadCase("weights", [.. loads.Select(l => new JointLoad(l.Joint, 0, -l.Weight))]);
        Assert.True(system.Solve(weights).TryGet(out ForceSolution? solution, out _));
        return solution.MemberForces[truss.FindMember(member)!.Value];
    }
}
