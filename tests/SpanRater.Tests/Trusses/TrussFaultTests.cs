namespace SpanRater.Tests.Trusses;

/// <summary>Every fault that a truss's geometry can have, found alone and by position.</summary>
public class TrussFaultTests
{
    private static readonly Joint A = new("A", 0, 0, Support.Pin, true), B = new("B", 8, 0, Support.Roller(), true), C = new("C", 4, 3);
    private static readonly Member Ab = new("AB", "A", "B"), Bc = new("BC", "B", "C"), Ca = new("CA", "C", "A");

    public static TheoryData<string, Joint[], Member[], TrussFault> One => new()
    {
        { "no members", [A, B, C], [], new TrussFault.NoMembers() },
        { "no support", [A with { Support = null }, B with { Support = null }, C], [Ab, Bc, Ca], new TrussFault.NoSupport() },
        { "joint twice", [A, B, C, C with { Y = 6 }], [Ab, Bc, Ca], new TrussFault.DuplicateJoint(3, 2) },
        { "same point", [A, B, C, new("D", 4, 3 + 7e-6)], [Ab, Bc, Ca, new("DA", "D", "A")], new TrussFault.CoincidentJoints(3, 2) },
        { "loose joint", [A, B, C, new("D", 4, 6)], [Ab, Bc, Ca], new TrussFault.LooseJoint(3) },
        { "member twice", [A, B, C], [Ab, Bc, Ca with { Name = "AB" }], new TrussFault.DuplicateMember(2, 0) },
        { "unknown to", [A, B, C], [Ab, Bc, Ca, new("CX", "C", "X")], new TrussFault.UnknownJoint(3, false, "X") },
        { "unknown from", [A, B, C], [Ab, Bc, Ca, new("XC", "X", "C")], new TrussFault.UnknownJoint(3, true, "X") },
        { "no length", [A, B, C], [Ab, Bc, Ca, new("CC", "C", "C")], new TrussFault.NoLength(3) },
        { "joined twice", [A, B, C], [Ab, Bc, Ca, new("AC", "A", "C")], new TrussFault.JoinedTwice(3, 2) },
        { "crossing", [A, B, C, new("D", 3, -3)], [Ab, Bc, Ca, new("CD", "C", "D")], new TrussFault.CrossingMembers(3, 0) },
        { "passes a joint", [A, B, C, new("D", 2, 1.5)], [Ab, Bc, Ca, new("DB", "D", "B")], new TrussFault.PassesJoint(2, 3) },
        { "load between joints", [A, new("D", 4, 0, null, true), B, C], [Ab, Bc, Ca, new("CD", "C", "D")], new TrussFault.LoadBetweenJoints(0, 1) },
        { "panel points above", [A, B, C, new("D", 8, 3, null, true)], [Ab, Bc, Ca, new("CD", "C", "D")], new TrussFault.PanelPointsAbove(3, 1) },
        { "out of order", [B, A, C], [Ab, Bc, Ca], new TrussFault.PanelPointsOutOfOrder(1, 0) },
        { "skipped", [A, B, C, new("D", 4, 0)], [new("AD", "A", "D"), new("DB", "D", "B"), Bc, Ca], new TrussFault.DeckJointSkipped(3, 0, 1) },
        { "short left", [A with { IsPanelPoint = false }, C with { IsPanelPoint = true }, B], [Ab, Bc, Ca], new TrussFault.DeckEndsShort(0, 1) },
        { "short right", [A, B with { IsPanelPoint = false }, C with { IsPanelPoint = true }], [Ab, Bc, Ca], new TrussFault.DeckEndsShort(1, 2) },
    };

    [Theory]
    [MemberData(nameof(One))]
    public void Create_OneFault_IsFoundAloneAndByPosition(string what, Joint[] joints, Member[] members, TrussFault fault)
    {
        TrussCheck check = Truss.Create(joints, members);

        Assert.True(check.Faults.SequenceEqual([fault]), $"{what}: {string.Join(", ", check.Faults)}");
        Assert.Equal(fault.Severity == FaultSeverity.Error, check.Truss is null);
    }

    [Fact]
    public void Create_NothingAtAll_SaysThatBothAreMissing() =>
        Assert.Equal([new TrussFault.NoJoints(), new TrussFault.NoMembers()], Truss.Create([], []).Faults);

    [Fact]
    public void Create_EveryKindOfFault_HasACase()
    {
        var tried = One.Select(row => row.Data.Item4.GetType()).Append(typeof(TrussFault.NoJoints)).ToHashSet();

        Assert.Equal(typeof(TrussFault).GetNestedTypes().Select(t => t.Name).Order(), tried.Select(t => t.Name).Order());
    }

    [Fact]
    public void Create_SeveralFaults_FindsAllAtOnce()
    {
        IReadOnlyList<TrussFault> faults = Truss.Create([A, B, C, new("D", 4, 6)], [Ab, Bc, new("CX", "C", "X"), new("CC", "C", "C")]).Faults;

        Assert.Equal([new TrussFault.UnknownJoint(2, false, "X"), new TrussFault.NoLength(3), new TrussFault.LooseJoint(3)], faults);
    }

    [Fact]
    public void Create_SoundTriangle_HasNoFaultAndKeepsItsOrder()
    {
        TrussCheck check = Truss.Create([A, B, C], [Ab, Bc, Ca]);

        Assert.Empty(check.Faults);
        Assert.Equal([0, 8], check.Truss!.Stations);
        Assert.Equal((1, 2, 5.0), (check.Truss.FromJoint(1), check.Truss.ToJoint(1), check.Truss.Length(1)));
        Assert.Null(check.Truss.FindJoint("a"));
    }

    [Fact]
    public void Create_CoordinateThatIsNoNumber_NamesTheJoint()
    {
        var e = Assert.Throws<ArgumentException>("joints", () => Truss.Create([A with { Y = double.NaN }, B, C], [Ab, Bc, Ca]));

        Assert.Contains("\"A\"", e.Message, StringComparison.Ordinal);
    }
}
