namespace SpanRater.Tests.Published;

/// <summary>A determinate truss that the engine has solved, with its lines by name.</summary>
internal sealed class SolvedTruss
{
    private readonly DeterminateTruss system;

    private SolvedTruss(DeterminateTruss system, InfluenceLines lines)
    {
        this.system = system;
        Lines = lines;
    }

    public Truss Truss => system.Truss;

    public InfluenceLines Lines { get; }

    /// <summary>Solves a truss that must be without fault and determinate.</summary>
    public static SolvedTruss Of(IReadOnlyList<Joint> joints, IEnumerable<(string From, string To)> members)
    {
        TrussCheck check = Truss.Create(joints, [.. members.Select(m => new Member(m.From + m.To, m.From, m.To))]);
        Assert.Empty(check.Faults);
        Assert.NotNull(check.Truss);
        Assert.True(DeterminateTruss.Of(check.Truss).TryGet(out DeterminateTruss? system, out Refusal? refusal), $"{refusal}");
        Assert.True(InfluenceLines.Of(system).TryGet(out InfluenceLines? lines, out refusal), $"{refusal}");
        return new SolvedTruss(system, lines);
    }

    /// <summary>The influence line of a member, named by its two joints.</summary>
    public InfluenceLine Line(string member) => Lines.Members.Single(e => e.Name == member).Line;

    /// <summary>The influence line of a reaction, such as <c>L0 up</c>.</summary>
    public InfluenceLine Reaction(string name) => Lines.Reactions.Single(e => e.Name == name).Line;

    /// <summary>Height of a member over its length [-].</summary>
    public double Sine(string member)
    {
        (Joint from, Joint to, double length) = Ends(member);
        return Math.Abs(to.Y - from.Y) / length;
    }

    /// <summary>Force in a member under downward loads on joints, tension positive [N].</summary>
    public double Force(string member, IEnumerable<(string Joint, double Down)> loads)
    {
        var loadCase = new LoadCase("loads", [.. loads.Select(l => new JointLoad(l.Joint, 0, -l.Down))]);
        Assert.True(system.Solve(loadCase).TryGet(out ForceSolution? solution, out Refusal? refusal), $"{refusal}");
        return solution.MemberForces[Truss.FindMember(member)!.Value];
    }

    /// <summary>The largest effects of a train on a member.</summary>
    public PeakPair Peaks(string member, AxleTrain train) => new RollingPlan(Truss.Stations, train).PeaksOf(Line(member));

    private (Joint From, Joint To, double Length) Ends(string member)
    {
        int m = Truss.FindMember(member)!.Value;
        return (Truss.Joints[Truss.FromJoint(m)], Truss.Joints[Truss.ToJoint(m)], Truss.Length(m));
    }
}
