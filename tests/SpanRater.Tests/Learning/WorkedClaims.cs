namespace SpanRater.Tests.Learning;

/// <summary>What must hold of every worked solution, summed here from the joints' coordinates alone.</summary>
internal static class WorkedClaims
{
    private const double Near = 1e-9;

    internal static WorkedSolution Worked(Truss truss, LoadCase loads)
    {
        Assert.True(WorkedSolution.Of(truss, loads).TryGet(out WorkedSolution? worked, out Refusal? refusal), $"{refusal}");
        return worked;
    }

    /// <summary>Each step has at most two unknowns (a section three), each equation one; each result follows from what was known before; the rest closes.</summary>
    internal static void AssertFollows(WorkedSolution worked)
    {
        var known = new HashSet<int>();
        double largest = worked.Forces.Concat(worked.JointLoads.Select(l => double.Hypot(l.Right, l.Up))).Max(Math.Abs);
        double size = worked.Truss.Joints.Max(j => double.Hypot(j.X, j.Y));
        foreach (WorkedStep step in worked.Steps)
        {
            if (step.Kind != StepKind.Group)
            {
                Assert.InRange(step.Found.Count(), 1, step.Kind == StepKind.Joint ? 2 : 3);
                Assert.All(step.Equations, e => Assert.Single(e.Balances));
            }

            foreach (WorkedEquations equations in step.Equations)
            {
                Assert.Equal(equations.Found.Count, equations.Balances.Count);
                foreach (Balance balance in equations.Balances)
                {
                    // Nothing but what is known already and what is found now.
                    Assert.All(balance.Terms, t => Assert.True(known.Contains(t.Force) || equations.Found.Contains(t.Force), worked.Names[t.Force]));
                    Assert.InRange(Sum(worked, balance, null), -Near * largest * Scale(balance, size), Near * largest * Scale(balance, size));
                }

                if (equations.Found is [var force])
                {
                    Balance balance = equations.Balances[0];
                    double found = -Sum(worked, balance, force) / Coefficient(worked, balance, force);
                    Assert.Equal(worked.Forces[force], found, Near * largest * Math.Max(1, Scale(balance, size) / Math.Abs(Coefficient(worked, balance, force))));
                }

                known.UnionWith(equations.Found);
            }
        }

        Assert.Equal(worked.Forces.Count, known.Count);
        AssertAgrees(worked, largest);
        Assert.InRange(worked.LargestResidual, 0, Near);
        Assert.All(worked.LeftOver, closing => Assert.InRange(Sum(worked, closing.Balance, null), -Near * largest, Near * largest));
        int taken = worked.Steps.Where(s => s.Kind is StepKind.Joint or StepKind.Group).Sum(s => s.Equations.Sum(e => e.Balances.Count));
        Assert.Equal((2 * worked.Truss.Joints.Count) - taken, worked.LeftOver.Count);
    }

    private static void AssertAgrees(WorkedSolution worked, double largest)
    {
        for (int m = 0; m < worked.Truss.Members.Count; m++)
        {
            Assert.Equal(worked.Solution.MemberForces[m], worked.Forces[m], Near * largest);
        }
    }

    private static double Scale(Balance balance, double size) => balance.Kind == BalanceKind.Moment ? Math.Max(1, size) : 1;

    // The sum over every joint of the body of every force there; members within the body act twice and cancel.
    private static double Sum(WorkedSolution worked, Balance balance, int? without)
    {
        Truss truss = worked.Truss;
        double sum = 0;
        foreach (int j in balance.Joints)
        {
            Joint joint = truss.Joints[j];
            (double right, double up) = worked.JointLoads[j];
            sum += Part(balance, joint, right, up);
            for (int m = 0; m < truss.Members.Count; m++)
            {
                if (m == without || (truss.Members[m].From != joint.Name && truss.Members[m].To != joint.Name))
                {
                    continue;
                }

                (double x, double y) = Away(truss, m, joint);
                sum += Part(balance, joint, worked.Forces[m] * x, worked.Forces[m] * y);
            }

            for (int r = truss.Members.Count; r < worked.Forces.Count; r++)
            {
                if (r != without && worked.Names.JointOf(r) == j)
                {
                    (double x, double y) = worked.Names[r].EndsWith(" up", StringComparison.Ordinal) ? (0, 1) : worked.Names[r].EndsWith(" right", StringComparison.Ordinal) ? (1, 0) : (joint.Support!.NormalX, joint.Support.NormalY);
                    sum += Part(balance, joint, worked.Forces[r] * x, worked.Forces[r] * y);
                }
            }
        }

        return sum;
    }

    private static double Coefficient(WorkedSolution worked, Balance balance, int force)
    {
        if (force >= worked.Truss.Members.Count)
        {
            return balance.CoefficientOf(force);
        }

        Member member = worked.Truss.Members[force];
        Joint joint = balance.Joints.Select(j => worked.Truss.Joints[j]).Single(j => j.Name == member.From || j.Name == member.To);
        (double x, double y) = Away(worked.Truss, force, joint);
        return Part(balance, joint, x, y);
    }

    private static (double X, double Y) Away(Truss truss, int member, Joint joint)
    {
        string far = truss.Members[member].From == joint.Name ? truss.Members[member].To : truss.Members[member].From;
        Joint end = truss.Joints.Single(j => j.Name == far);
        double dx = end.X - joint.X, dy = end.Y - joint.Y, length = Math.Sqrt((dx * dx) + (dy * dy));
        return (dx / length, dy / length);
    }

    private static double Part(Balance balance, Joint joint, double right, double up) =>
        balance.Kind == BalanceKind.Moment ? ((joint.X - balance.X) * up) - ((joint.Y - balance.Y) * right) : (balance.X * right) + (balance.Y * up);
}
