namespace SpanRater;

/// <summary>Joints and members of a form while it is raised. A member takes its name from its joints.</summary>
internal sealed class TrussFrame
{
    private readonly List<Joint> joints = [];
    private readonly List<Member> members = [];

    public void AddJoint(string name, double x, double y, Support? support = null, bool isPanelPoint = false) =>
        joints.Add(new Joint(name, x, y, support, isPanelPoint));

    public void AddMember(string from, string to, string role, bool tensionOnly = false) =>
        members.Add(new Member(from + to, from, to, role, TensionOnly: tensionOnly));

    public Truss ToTruss(double? area) =>
        Truss.Create(joints, [.. members.Select(m => m with { Area = area })]).Truss ?? throw new InvalidOperationException("A form with checked measures has no faults.");
}
