namespace SpanRater.Tests;

public class TrussCreateTests
{
    // A triangle A-B-C, held by a pin and a roller, with the deck from A to B.
    private static readonly Joint[] Corners =
    [
        new("A", 0, 0, Support.Pin, true),
        new("B", 8, 0, Support.Roller(), true),
        new("C", 4, 3),
    ];

    private static readonly Member[] Sides = [new("AB", "A", "B"), new("BC", "B", "C"), new("CA", "C", "A")];

    [Fact]
    public void Create_Triangle_HasNoFaults()
    {
        TrussCheck check = Truss.Create(Corners, Sides);
        Assert.Empty(check.Faults);
        Assert.Equal([0.0, 8.0], check.Truss!.Stations);
        Assert.Equal(5, check.Truss.Length(1), 12);
        Assert.Equal((1, 2), (check.Truss.FromJoint(1), check.Truss.ToJoint(1)));
        Assert.Equal((2, null), (check.Truss.FindJoint("C"), check.Truss.FindJoint("c")));
        Assert.Equal((2, null), (check.Truss.FindMember("CA"), check.Truss.FindMember("AC")));
    }

    [Fact]
    public void Create_NothingGiven_NoJointsAndNoMembers() =>
        AssertRefused([], [], new TrussFault.NoJoints(), new TrussFault.NoMembers());

    [Fact]
    public void Create_NoSupport_IsNamed() =>
        AssertRefused([.. Corners.Select(j => j with { Support = null })], Sides, new TrussFault.NoSupport());

    [Fact]
    public void Create_JointNamedTwice_NamesBoth() => AssertRefused([.. Corners, new("B", 4, -3)], Sides, new TrussFault.DuplicateJoint(3, 1));

    [Fact]
    public void Create_TwoJointsAtOnePoint_NamesBoth() =>
        AssertRefused([.. Corners, new("D", 4, 3)], [.. Sides, new("AD", "A", "D")], new TrussFault.CoincidentJoints(3, 2));

    [Fact]
    public void Create_JointWithoutMember_IsLoose() => AssertRefused([.. Corners, new("D", 4, 6)], Sides, new TrussFault.LooseJoint(3));

    [Fact]
    public void Create_MemberNamedTwice_NamesBoth() =>
        AssertRefused([.. Corners, new("D", 4, -3)], [.. Sides, new("AB", "A", "D")], new TrussFault.DuplicateMember(3, 0));

    [Fact]
    public void Create_UnknownJoints_NamesEachEnd() => AssertRefused(
        Corners,
        [.. Sides, new("x", "Q", "A"), new("y", "A", "R")],
        new TrussFault.UnknownJoint(3, true, "Q"),
        new TrussFault.UnknownJoint(4, false, "R"));

    [Fact]
    public void Create_MemberFromAJointToItself_HasNoLength() => AssertRefused(Corners, [.. Sides, new("AA", "A", "A")], new TrussFault.NoLength(3));

    [Fact]
    public void Create_SameJointsJoinedTwice_EvenTheOtherWayRound() =>
        AssertRefused(Corners, [.. Sides, new("BA", "B", "A")], new TrussFault.JoinedTwice(3, 0));

    [Fact]
    public void Create_PanelPointOnAMember_LoadWouldBendIt() => AssertRefused(
        [.. Corners, new("M", 4, 0, null, true)],
        [.. Sides, new("MC", "M", "C")],
        new TrussFault.LoadBetweenJoints(0, 3),
        new TrussFault.PanelPointsOutOfOrder(3, 1));

    [Fact]
    public void Create_PanelPointsAboveOneAnother_NamesBoth() => AssertRefused(
        [Corners[0], new("D", 0, 7, null, true), Corners[1], Corners[2]],
        [.. Sides, new("AD", "A", "D"), new("CD", "C", "D")],
        new TrussFault.PanelPointsAbove(1, 0));

    [Fact]
    public void Create_CrossingMembers_IsAWarning() => AssertAccepted(
        [.. Corners, new("D", 12, 3), new("E", 4, -3)],
        [.. Sides, new("BD", "B", "D"), new("CD", "C", "D"), new("CE", "C", "E"), new("AE", "A", "E")],
        new TrussFault.CrossingMembers(5, 0));

    [Fact]
    public void Create_JointPassed_IsAWarning() =>
        AssertAccepted([.. Corners, new("M", 2, 1.5), new("D", 0, 5)], [.. Sides, new("MD", "M", "D"), new("AD", "A", "D")], new TrussFault.PassesJoint(2, 3));

    [Fact]
    public void Create_PanelPointsOutOfOrder_AreSortedWithAWarning()
    {
        TrussCheck check = AssertAccepted([Corners[1], Corners[0], Corners[2]], Sides, new TrussFault.PanelPointsOutOfOrder(1, 0));
        Assert.Equal([1, 0], check.Truss!.PanelPoints);
    }

    [Fact]
    public void Create_JointOnTheDeckLineSkipped_IsAWarning() => AssertAccepted(
        [.. Corners, new("M", 4, 0)],
        [new("AM", "A", "M"), new("MB", "M", "B"), new("BC", "B", "C"), new("CA", "C", "A"), new("MC", "M", "C")],
        new TrussFault.DeckJointSkipped(3, 0, 1));

    [Fact]
    public void Create_DeckShortOfBothSupports_WarnsAtEach() => AssertAccepted(
        [
            new("A", 0, 0, Support.Pin), new("B", 4, 0, null, true), new("C", 8, 0, null, true), new("D", 12, 0, Support.Roller()),
            new("T", 6, 5),
        ],
        [
            new("AB", "A", "B"), new("BC", "B", "C"), new("CD", "C", "D"), new("AT", "A", "T"), new("BT", "B", "T"), new("CT", "C", "T"),
            new("DT", "D", "T"),
        ],
        new TrussFault.DeckEndsShort(0, 1),
        new TrussFault.DeckEndsShort(3, 2));

    [Fact]
    public void Create_CoordinateNotFinite_Throws()
    {
        var error = Assert.Throws<ArgumentException>(() => Truss.Create([new("A", double.NaN, 0)], []));
        Assert.Equal("joints", error.ParamName);
        Assert.Contains("Joint \"A\"", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Create_NullLists_Throw()
    {
        Assert.Equal("joints", Assert.Throws<ArgumentNullException>(() => Truss.Create(null!, [])).ParamName);
        Assert.Equal("members", Assert.Throws<ArgumentNullException>(() => Truss.Create([], null!)).ParamName);
    }

    private static void AssertRefused(Joint[] joints, Member[] members, params TrussFault[] faults)
    {
        TrussCheck check = Truss.Create(joints, members);
        Assert.Equal(faults, check.Faults);
        Assert.Null(check.Truss);
    }

    private static TrussCheck AssertAccepted(Joint[] joints, Member[] members, params TrussFault[] faults)
    {
        TrussCheck check = Truss.Create(joints, members);
        Assert.Equal(faults, check.Faults);
        Assert.NotNull(check.Truss);
        return check;
    }
}
