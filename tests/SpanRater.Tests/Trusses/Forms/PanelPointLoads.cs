namespace SpanRater.Tests;

/// <summary>The load of the hand checks: one newton down on inner panel points, the forces found by sections and joints.</summary>
internal static class PanelPointLoads
{
    /// <summary>Forces of a form with 1 N down on each of the named joints [N], by name of member.</summary>
    internal static Dictionary<string, double> ForcesUnder(TrussForm form, params string[] joints)
    {
        Truss truss = form.Build();
        DeterminateTruss system = DeterminateTruss.Of(truss).Value!;
        ForceSolution solution = system.Solve(new LoadCase("unit", [.. joints.Select(j => new JointLoad(j, 0, -1))])).Value!;
        return truss.Members.Select((m, i) => (m.Name, Force: solution.MemberForces[i])).ToDictionary(p => p.Name, p => p.Force);
    }

    /// <summary>Forces equal hand values to twelve digits.</summary>
    internal static void AssertForces(Dictionary<string, double> forces, params (string Member, double Force)[] hand)
    {
        foreach ((string member, double force) in hand)
        {
            Assert.True(Math.Abs(forces[member] - force) < 1e-12, FormattableString.Invariant($"{member}: {forces[member]:R}, by hand {force:R}"));
        }
    }
}
