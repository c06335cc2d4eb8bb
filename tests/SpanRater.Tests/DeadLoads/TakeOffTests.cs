namespace SpanRater.Tests.DeadLoads;

/// <summary>
/// The dead load taken off by hand on a king post truss of two 4 m panels, 3 m high, whose members are 4, 4, 5, 5 and 3 m long:
/// half of each member to its ends, simple spans from joint to joint, the lever rule across. First principles, no source.
/// </summary>
public class TakeOffTests
{
    private const double Kilonewton = 1000;

    private static readonly Truss Truss = new KingPostTruss(4, 3).Build();

    private static readonly Deck Deck = new() { TrussSpacing = 4 };

    // One kN/m each: U1 bears half of 5 + 5 + 3 m, L1 half of 4 + 4 + 3 m, the ends half of 4 + 5 m.
    [Fact]
    public void JointWeights_OfMembers_AreHalfOfEachAtEitherEnd()
    {
        var items = new DeadItem[]
        {
            new("bare", DeadCase.Components, new DeadWeight.Members([.. Truss.Members.Select(_ => Kilonewton)], 1)),
            new("allowance", DeadCase.Components, new DeadWeight.Members([.. Truss.Members.Select(_ => Kilonewton)], 0.10)),
        };

        TakeOff takeOff = TakeOff.Of(Truss, Deck, items);

        AssertWeights(takeOff, DeadCase.Components, 0, ("L0", 1.1 * 4.5), ("L1", 1.1 * 5.5), ("L2", 1.1 * 4.5), ("U1", 1.1 * 6.5));
        Assert.True(takeOff.TrussesAlike(DeadCase.Components));
        Assert.Equal([2 * 21.0, 2 * 2.1], takeOff.Items.Select(i => i.Total / Kilonewton), (a, b) => Math.Abs(a - b) < 1e-9);
    }

    // 0.1 m × 3 m × 24 kN/m³ = 7.2 kN/m on the bridge, 3.6 on one truss: 2 m of it to either end, 4 m to the middle.
    [Fact]
    public void JointWeights_OfALayer_AreHalfAPanelToEitherSide()
    {
        var layer = new DeadItem("slab", DeadCase.Components, new DeadWeight.Layer(0.1, 3, 24 * Kilonewton, null));

        TakeOff takeOff = TakeOff.Of(Truss, Deck, [layer]);

        AssertWeights(takeOff, DeadCase.Components, 1, ("L0", 7.2), ("L1", 14.4), ("L2", 7.2), ("U1", 0));
        Assert.Equal(7.2, takeOff.Items[0].PerLength!.Value / Kilonewton, 1e-12);
        Assert.Equal(57.6, takeOff.Items[0].Total / Kilonewton, 1e-12);
        Assert.Null(takeOff.CaseOf(DeadCase.WearingSurface, 0));
        Assert.Equal(["L0", "L1", "L2"], takeOff.CaseOf(DeadCase.Components, 0)!.Loads.Select(l => l.Joint));
    }

    // 2 kN/m from 1 to 3 m: 4 kN at the middle of the panel. From 2 m to the end: 4 kN with its middle at 3 m give 1 and 3; 8 kN on the second panel 4 and 4.
    [Theory]
    [InlineData(1.0, 3.0, 2, 2, 0)]
    [InlineData(2.0, 8.0, 1, 7, 4)]
    [InlineData(4.0, 5.0, 0, 1.75, 0.25)]
    public void JointWeights_OfAStretchThatEndsInAPanel_AreThoseOfSimpleSpans(double from, double to, double first, double middle, double last)
    {
        var pipe = new DeadItem("pipe", DeadCase.WearingSurface, new DeadWeight.Line(2 * Kilonewton)) { From = from, To = to };

        TakeOff takeOff = TakeOff.Of(Truss, new Deck { Trusses = 1 }, [pipe]);

        AssertWeights(takeOff, DeadCase.WearingSurface, 0, ("L0", first), ("L1", middle), ("L2", last));
    }

    // Trusses 4 m apart, the rail 1 m right of the middle: 3 m from the left truss, of which the right one bears 3/4.
    [Fact]
    public void Share_OffCentre_IsTheLeverRule()
    {
        var rail = new DeadItem("rail", DeadCase.Components, new DeadWeight.Line(Kilonewton)) { Centre = 1, Count = 2 };

        TakeOff takeOff = TakeOff.Of(Truss, Deck, [rail]);

        Assert.False(takeOff.TrussesAlike(DeadCase.Components));
        AssertWeights(takeOff, DeadCase.Components, 0, ("L0", 1), ("L1", 2), ("L2", 1));
        AssertWeights(takeOff, DeadCase.Components, 1, ("L0", 3), ("L1", 6), ("L2", 3));
    }

    [Fact]
    public void JointWeights_OfFloorbeamsAndOfAPipeOnTheTopChord_AreAtTheJointsNamed()
    {
        var items = new DeadItem[]
        {
            new("floorbeam", DeadCase.Components, new DeadWeight.AtJoints(6 * Kilonewton)),
            new("lamp", DeadCase.Components, new DeadWeight.AtJoints(2 * Kilonewton)) { Joints = ["U1"] },
            new("cable", DeadCase.WearingSurface, new DeadWeight.Line(Kilonewton)) { Joints = ["U1", "L0"] },
        };

        TakeOff takeOff = TakeOff.Of(Truss, Deck, items);

        AssertWeights(takeOff, DeadCase.Components, 0, ("L0", 3), ("L1", 3), ("L2", 3), ("U1", 1));
        AssertWeights(takeOff, DeadCase.WearingSurface, 0, ("L0", 1), ("L1", 0), ("L2", 0), ("U1", 1));
        Assert.Equal(18, takeOff.Items[0].Total / Kilonewton, 1e-12);
    }

    [Fact]
    public void Of_ThreeTrusses_SharesEqually()
    {
        TakeOff takeOff = TakeOff.Of(Truss, new Deck { Trusses = 3 }, [new("deck", DeadCase.Components, new DeadWeight.Area(3 * Kilonewton, 1))]);

        AssertWeights(takeOff, DeadCase.Components, 0, ("L0", 2), ("L1", 4), ("L2", 2));
        Assert.Equal(24, takeOff.Items[0].Total / Kilonewton, 1e-12);
    }

    [Fact]
    public void Of_WhatCannotBeShared_IsRefused()
    {
        DeadItem pipe = new("pipe", DeadCase.Components, new DeadWeight.Line(1));
        Assert.Throws<ArgumentException>(() => TakeOff.Of(Truss, new Deck(), [pipe with { Centre = 1 }]));
        Assert.Throws<ArgumentException>(() => TakeOff.Of(Truss, new Deck { Trusses = 3, TrussSpacing = 4 }, [pipe with { Centre = 1 }]));
        Assert.Throws<ArgumentException>(() => TakeOff.Of(Truss, Deck, [pipe with { Joints = ["L9"] }]));
        Assert.Throws<ArgumentException>(() => TakeOff.Of(Truss, Deck, [pipe with { Joints = ["L1", "U1"] }]));
        Assert.Throws<ArgumentException>(() => TakeOff.Of(Truss, Deck, [pipe with { From = -1 }]));
        Assert.Throws<ArgumentException>(() => TakeOff.Of(Truss, Deck, [pipe with { From = 5, To = 5 }]));
    }

    // AASHTO Standard Specifications, 17th ed. (2002), 3.3.6, from memory; timber from USDA Timber Bridges, ch. 6. A pound is
    // 0.45359237 kg, standard gravity 9.80665 m/s², a foot 0.3048 m.
    [Theory]
    [InlineData("Steel", 490)]
    [InlineData("concrete", 150)]
    [InlineData("timber", 50)]
    [InlineData("rolled gravel", 140)]
    [InlineData("compacted earth", 120)]
    [InlineData("loose earth", 100)]
    public void Find_AMaterial_IsThePublishedWeight(string material, double pounds) =>
        Assert.Equal(pounds * 0.45359237 * 9.80665 / Math.Pow(0.3048, 3), PublishedUnitWeight.Find(material)!.Weight, 1e-6);

    [Fact]
    public void PlaceOf_JointsOfAKTrussAndADeckTruss_TellsTopFromBottom()
    {
        Truss k = new KTruss(4, 6, 9).Build(), deck = new PrattTruss(4, 4, 3, DeckChord.Top).Build();
        Assert.Equal([ChordPlace.Bottom, ChordPlace.Between, ChordPlace.Top], ((string[])["L0", "M1", "U1"]).Select(n => Chords.PlaceOf(k, k.FindJoint(n)!.Value)));
        Assert.All(deck.PanelPoints, p => Assert.Equal(ChordPlace.Top, Chords.PlaceOf(deck, p)));
        Assert.Equal(ChordPlace.Bottom, Chords.PlaceOf(deck, deck.FindJoint("L2")!.Value));
    }

    [Fact]
    public void Make_OfTakeOffAndLoads_AddsOrReplacesCaseByCase()
    {
        TakeOff takeOff = TakeOff.Of(Truss, Deck, [new("rail", DeadCase.Components, new DeadWeight.Line(Kilonewton)) { Centre = 1 }]);
        LoadCase given = new(Bridge.ComponentsCase, [new JointLoad("L1", 0, -5 * Kilonewton)]), wearing = new(Bridge.WearingSurfaceCase, [new JointLoad("L1", 0, -1)]);

        (DeadLoadAccount added, IReadOnlyList<LoadCase> left, IReadOnlyList<LoadCase>? right) = DeadLoadAccount.Make(takeOff, [given, wearing], instead: false);
        (DeadLoadAccount replaced, IReadOnlyList<LoadCase> leftGiven, IReadOnlyList<LoadCase>? rightGiven) = DeadLoadAccount.Make(takeOff, [given], instead: true);

        Assert.Equal((DeadOrigin.Both, DeadOrigin.Given), (added.Components, added.WearingSurface));
        Assert.Equal([-7000, -1], left.Select(c => c.TotalUp), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal([-11000, -1], right!.Select(c => c.TotalUp), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.Equal((DeadOrigin.GivenInstead, DeadOrigin.None), (replaced.Components, replaced.WearingSurface));
        Assert.Same(given, Assert.Single(leftGiven));
        Assert.Null(rightGiven);
    }

    private static void AssertWeights(TakeOff takeOff, DeadCase kind, int truss, params (string Joint, double Kilonewtons)[] expected) =>
        Assert.All(expected, e => Assert.Equal(e.Kilonewtons, takeOff.JointWeights(kind, truss)[Truss.FindJoint(e.Joint)!.Value] / Kilonewton, 1e-9));
}
