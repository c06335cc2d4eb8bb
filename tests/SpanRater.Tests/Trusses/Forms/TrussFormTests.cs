namespace SpanRater.Tests;

public class TrussFormTests
{
    /// <summary>One of each form, with the numbers of joints and members counted by hand.</summary>
    public static TheoryData<TrussForm, int, int> Determinate => new()
    {
        { new KingPostTruss(3, 4), 4, 5 },
        { new QueenPostTruss(3, 4), 6, 9 },
        { new PrattTruss(6, 5, 6), 12, 21 },
        { new PrattTruss(5, 5, 6), 10, 17 },
        { new PrattTruss(4, 5, 4, DeckChord.Top), 10, 17 },
        { new HoweTruss(6, 5, 6), 12, 21 },
        { new ParkerTruss(5, [4, 6, 4]), 8, 13 },
        { new WarrenTruss(3, 4, 3), 7, 11 },
        { new WarrenTrussWithVerticals(4, 4, 3), 8, 13 },
        { new WarrenTrussWithVerticals(4, 4, 3, DeckChord.Top), 10, 17 },
        { new KTruss(4, 4, 6), 10, 17 },
        { new BaltimoreTruss(8, 5, 8), 16, 29 },
        { new BaltimoreTruss(12, 5, 8, DeckChord.Bottom, SubDiagonal.Tie), 24, 45 },
        { new BaltimoreTruss(8, 5, 8, DeckChord.Top), 18, 33 },
        { new BaltimoreTruss(8, 5, 8, DeckChord.Top, SubDiagonal.Tie), 18, 33 },
        { new DoubleIntersectionTruss(8, 5, 8), 16, 29 },
        { new DoubleIntersectionTruss(6, 5, 8, DeckChord.Top), 14, 25 },
    };

    [Theory]
    [MemberData(nameof(Determinate))]
    public void Build_EachForm_CountsBalanceAndItStands(TrussForm form, int joints, int members)
    {
        Truss truss = form.Build();
        Assert.Equal((joints, members), (truss.Joints.Count, truss.Members.Count));
        Assert.Equal(2 * joints, members + truss.ReactionCount);
        Assert.Equal(StabilityVerdict.Determinate, Stability.Of(truss).Verdict);
        Assert.Equal(form.Panels + 1, truss.PanelPoints.Count);
        Assert.Equal(form.Span, truss.Stations[^1] - truss.Stations[0], 12);
        Assert.All(truss.Members, m => Assert.Equal(m.From + m.To, m.Name));
        Assert.All(truss.Members, m => Assert.NotEqual("", m.Role));
    }

    [Theory]
    [MemberData(nameof(Determinate))]
    public void Build_EachForm_HasNoFaultNotEvenAWarning(TrussForm form, int joints, int members)
    {
        Truss truss = form.Build();
        Assert.Equal(joints + members, truss.Joints.Count + truss.Members.Count);
        IReadOnlyList<TrussFault> faults = Truss.Create(truss.Joints, truss.Members).Faults;

        // The long diagonals of a double-intersection truss do cross verticals and one another without a joint.
        Assert.Empty(form is DoubleIntersectionTruss ? faults.Where(f => f is not TrussFault.CrossingMembers) : faults);
    }

    [Fact]
    public void Build_OpenCentrePanel_IsAMechanismWithOneMovement()
    {
        Stability pratt = Stability.Of(new PrattTruss(5, 5, 6, centre: CentrePanel.Open).Build());
        Stability queen = Stability.Of(new QueenPostTruss(3, 4, CentrePanel.Open).Build());
        Assert.Equal((StabilityVerdict.Mechanism, 1), (pratt.Verdict, pratt.Movements));
        Assert.Equal((StabilityVerdict.Mechanism, 1), (queen.Verdict, queen.Movements));
    }

    [Fact]
    public void Build_CrossedRods_AreTwoCountersThatOnlyPull()
    {
        Truss truss = new PrattTruss(5, 5, 6, centre: CentrePanel.CrossedRods).Build();
        var refusal = Assert.IsType<Refusal.RodsThatOnlyPull>(DeterminateTruss.Of(truss).Refusal);
        Assert.Equal(["U2L3", "L2U3"], refusal.Members);
        Assert.Equal(1, Stability.Of(truss).Redundancy);
        Truss queen = new QueenPostTruss(3, 4, CentrePanel.CrossedRods).Build();
        Assert.Equal(["U1L2", "L1U2"], queen.Members.Where(m => m.TensionOnly).Select(m => m.Name));
    }

    [Fact]
    public void Build_DeckTruss_PanelPointsStandOnTheTopChord()
    {
        Truss truss = new HoweTruss(4, 5, 4, DeckChord.Top).Build();
        Assert.Equal(["U0", "U1", "U2", "U3", "U4"], truss.PanelPoints.Select(p => truss.Joints[p].Name));
        Assert.All(truss.PanelPoints, p => Assert.Equal(4, truss.Joints[p].Y));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(-1)]
    [InlineData(201)]
    public void Constructor_PanelsOutsideTheRange_NamesTheRange(int panels)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new PrattTruss(panels, 5, 6));
        Assert.Equal(("panels", (object)panels), (error.ParamName, error.ActualValue));
        Assert.Contains("from 3 to 200 panels", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Constructor_OddPanelsWhereEvenAreNeeded_SaysEven()
    {
        foreach (Func<TrussForm> make in (Func<TrussForm>[])[() => new KTruss(5, 4, 6), () => new WarrenTrussWithVerticals(5, 4, 3)])
        {
            var error = Assert.Throws<ArgumentOutOfRangeException>(make);
            Assert.Equal("panels", error.ParamName);
            Assert.Contains("an even number of panels", error.Message, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-5)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Constructor_PanelLengthThatIsNoLength_NamesIt(double length) => Assert.Equal(
        "panelLength",
        Assert.Throws<ArgumentOutOfRangeException>(() => new WarrenTruss(4, length, 3)).ParamName);

    [Theory]
    [InlineData(0.049)]
    [InlineData(501)]
    [InlineData(double.NaN)]
    public void Constructor_HeightOutsideTheRange_NamesTheRangeWithAPoint(double height)
    {
        foreach (Func<TrussForm> make in (Func<TrussForm>[])
            [() => new PrattTruss(6, 5, height), () => new KingPostTruss(5, height), () => new QueenPostTruss(5, height), () => new KTruss(4, 5, height), () => new WarrenTruss(4, 5, height)])
        {
            var error = Assert.Throws<ArgumentOutOfRangeException>(make);
            Assert.Equal("height", error.ParamName);
            Assert.Contains("from 0.05 to 500 m where panels are 5 m long", error.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void ParkerConstructor_FaultyHeights_NamesThem()
    {
        Assert.Equal("heights", Assert.Throws<ArgumentOutOfRangeException>(() => new ParkerTruss(5, [4, -6, 4])).ParamName);
        Assert.Equal("heights", Assert.Throws<ArgumentNullException>(() => new ParkerTruss(5, null!)).ParamName);
        Assert.Equal("panels", Assert.Throws<ArgumentOutOfRangeException>(() => new ParkerTruss(5, [4])).ParamName);
    }
}
