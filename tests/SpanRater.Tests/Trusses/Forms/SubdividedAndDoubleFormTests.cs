using static SpanRater.Tests.PanelPointLoads;

namespace SpanRater.Tests;

/// <summary>
/// Baltimore and double-intersection truss against forces found by hand: panel shear over the sine, moment over height, and the
/// rule that a sub-diagonal takes half the load of its sub-panel point (method of sections and joints; common practice).
/// </summary>
public class SubdividedAndDoubleFormTests
{
    private static readonly string[] SevenPoints = ["L1", "L2", "L3", "L4", "L5", "L6", "L7"];

    // Eight panels of 3 m, 8 m high: main panels of 6 m, main diagonals 10 m long, sin 0.8. 1 N on each inner panel point:
    // reactions 3.5 N; the shear beside L3 is 1.5 N to its left, of which the sub-strut
    // brings 0.5 N to L2; moments 3.5 × 6 − 3 = 18 Nm at L2 and 3.5 × 12 − 9 − 6 − 3 = 24 Nm at L4.
    [Fact]
    public void BaltimoreBuild_LoadOnEveryPanelPoint_SubVerticalsHangItAndSubStrutsTakeHalf() => AssertForces(
        ForcesUnder(new BaltimoreTruss(8, 3, 8), SevenPoints),
        ("M1L1", 1),
        ("M3L3", 1),
        ("M1L2", -0.5 / 0.8),
        ("M3L2", -0.5 / 0.8),
        ("L0M1", -3.5 / 0.8),
        ("M1U2", -(3.5 - 1 + 0.5) / 0.8),
        ("U2M3", (3.5 - 2 - 0.5) / 0.8),
        ("M3L4", 0.5 / 0.8),
        ("L0L1", 3.5 * 6 / 8),
        ("L1L2", 3.5 * 6 / 8),
        ("U2U4", -24.0 / 8),
        ("U4L4", 0));

    [Fact]
    public void BaltimoreBuild_SubTies_PullWithHalfTheLoad() => AssertForces(
        ForcesUnder(new BaltimoreTruss(8, 3, 8, DeckChord.Bottom, SubDiagonal.Tie), SevenPoints),
        ("M3L3", 1),
        ("M3U4", 0.5 / 0.8),
        ("M1L2", -0.5 / 0.8),
        ("U2M3", 1.5 / 0.8),
        ("L2L3", 18.0 / 8),
        ("L3L4", 18.0 / 8),
        ("U4L4", -1));

    // Sub-strut, lower half of the diagonal and chord are a small truss that brings the load of the sub-panel point to the main panel
    // points beside it by halves: nothing else knows of it.
    [Fact]
    public void BaltimoreBuild_LoadOnOneSubPanelPoint_FarMembersSeeHalvesAtTheMainPoints()
    {
        Dictionary<string, double> one = ForcesUnder(new BaltimoreTruss(8, 3, 8), "L3"), halves = HalvesUnder(new BaltimoreTruss(8, 3, 8), "L2", "L4");
        Assert.All(one.Keys.Where(m => m is not ("M3L3" or "M3L2" or "M3L4" or "L2L3" or "L3L4")), m => Assert.Equal(halves[m], one[m], 1e-12));
        AssertForces(one, ("M3L3", 1), ("M3L2", -0.5 / 0.8));
    }

    // The deck above: the sub-vertical is a post and takes the load in compression; the end post takes the reaction.
    [Fact]
    public void BaltimoreBuild_DeckOnTopChord_SubVerticalsPress() => AssertForces(
        ForcesUnder(new BaltimoreTruss(8, 3, 8, DeckChord.Top), "U1", "U2", "U3", "U4", "U5", "U6", "U7"),
        ("M1U1", -1),
        ("M3U3", -1),
        ("M1L0", -0.5 / 0.8),
        ("M1L2", 2.5 / 0.8),
        ("U0U1", -3.0 * 6 / 8),
        ("U3U4", -24.0 / 8));

    // Eight panels of 3 m, 8 m high: a diagonal over two panels is 10 m long, sin 0.8. Each vertical belongs to one of two webs.
    // Load on every point: U2L4 alone cuts the panel beside midspan, with shear 0.5 N; L3 hangs on U1L3 alone; the short
    // diagonal U1L2 takes what the post U2L2 brings down and the load on L2.
    [Fact]
    public void DoubleIntersectionBuild_LoadOnEveryPanelPoint_TwoWebsShareTheShear() => AssertForces(
        ForcesUnder(new DoubleIntersectionTruss(8, 3, 8), SevenPoints),
        ("U2L4", 0.5 / 0.8),
        ("U1L3", 1 / 0.8),
        ("U2L2", -0.5),
        ("U1L2", 1.5 * Math.Sqrt(73) / 8),
        ("U1L1", 1),
        ("U3L3", 0),
        ("U4L4", 0),
        ("L0U1", -3.5 * Math.Sqrt(73) / 8),
        ("L0L1", 3.5 * 3 / 8),
        ("L1L2", 3.5 * 3 / 8));

    // A section through any panel: the upright parts of all diagonals cut make up the shear of that panel.
    [Theory]
    [InlineData(6)]
    [InlineData(8)]
    [InlineData(10)]
    [InlineData(14)]
    public void DoubleIntersectionBuild_AnyPanelCut_DiagonalsMakeUpTheShear(int panels)
    {
        var form = new DoubleIntersectionTruss(panels, 3, 4);
        string[] loaded = [.. Enumerable.Range(1, 2).Select(i => $"L{i}")];
        Dictionary<string, double> forces = ForcesUnder(form, loaded);
        Truss truss = form.Build();
        double left = loaded.Select((_, i) => (panels - (i + 1)) / (double)panels).Sum();
        for (int panel = 0; panel < panels; panel++)
        {
            double cut = (panel + 0.5) * 3, shear = left - loaded.Where((_, i) => (i + 1) * 3 < cut).Count(), carried = 0;
            for (int m = 0; m < truss.Members.Count; m++)
            {
                Joint a = truss.Joints[truss.FromJoint(m)], b = truss.Joints[truss.ToJoint(m)];
                if (a.X > b.X)
                {
                    (a, b) = (b, a);
                }

                // What stands left of the cut is pulled towards b: up where b is higher.
                carried += a.X < cut && b.X > cut ? forces[truss.Members[m].Name] * (b.Y - a.Y) / truss.Length(m) : 0;
            }

            Assert.Equal(-shear, carried, 1e-9);
        }
    }

    [Fact]
    public void DoubleIntersectionBuild_DiagonalAcrossMidspan_IsRedundantAndCarriesTheArea()
    {
        Truss one = new DoubleIntersectionTruss(8, 3, 8, centre: CentrePanel.OneDiagonal, area: 0.004).Build();
        Truss crossed = new DoubleIntersectionTruss(8, 3, 8, centre: CentrePanel.CrossedRods, area: 0.004).Build();
        Assert.Equal(1, Stability.Of(one).Redundancy);
        Assert.Equal(2, Stability.Of(crossed).Redundancy);
        Assert.All(one.Members.Concat(crossed.Members), m => Assert.Equal(0.004, m.Area));
        Assert.Equal(["U3L5", "U5L3"], crossed.Members.Where(m => m.TensionOnly).Select(m => m.Name));
    }

    [Fact]
    public void DoubleIntersectionConstructor_RedundantWithoutArea_IsRefused()
    {
        Assert.Equal("area", Assert.Throws<ArgumentNullException>(() => new DoubleIntersectionTruss(8, 3, 8, centre: CentrePanel.OneDiagonal)).ParamName);
        Assert.Equal("area", Assert.Throws<ArgumentOutOfRangeException>(() => new DoubleIntersectionTruss(8, 3, 8, centre: CentrePanel.CrossedRods, area: 0)).ParamName);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(10)]
    [InlineData(0)]
    public void BaltimoreConstructor_PanelsThatAreNoMultipleOfFour_AreRefused(int panels)
    {
        var error = Assert.Throws<ArgumentOutOfRangeException>(() => new BaltimoreTruss(panels, 3, 8));
        Assert.Equal("panels", error.ParamName);
    }

    [Fact]
    public void Find_EveryKindByKeyNameAndCase_IsFoundAndMakesItsForm()
    {
        Assert.All(FormKind.All, kind =>
        {
            Assert.Same(kind, FormKind.Find(kind.Key));
            Assert.Same(kind, FormKind.Find(kind.Name.ToUpperInvariant()));
            int panels = kind.Fewest;
            Assert.True(kind.Allows(panels));
            TrussForm form = kind.Make(new FormMeasures(panels, 5, [.. Enumerable.Repeat(6.0, kind.TakesHeights ? panels - 1 : 1)], Centre: kind.UsualCentre));
            Assert.Equal((kind.Name, panels), (form.Name, form.Panels));
            Assert.Equal(StabilityVerdict.Determinate, Stability.Of(form.Build()).Verdict);
        });
        Assert.Equal("double-intersection", FormKind.Find("Whipple")!.Key);
        Assert.Null(FormKind.Find("pratl"));
    }

    private static Dictionary<string, double> HalvesUnder(TrussForm form, string one, string other)
    {
        Dictionary<string, double> first = ForcesUnder(form, one), second = ForcesUnder(form, other);
        return first.Keys.ToDictionary(m => m, m => (first[m] + second[m]) / 2);
    }
}
