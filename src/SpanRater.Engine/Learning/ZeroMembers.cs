namespace SpanRater;

/// <summary>The rules by which a member is seen to be zero without an equation.</summary>
public enum ZeroRule
{
    /// <summary>All other bars of a joint without load or reaction being zero, the last one is.</summary>
    OneBar,

    /// <summary>Two bars not in one line meet at a joint without load or reaction: both are zero.</summary>
    TwoBars,

    /// <summary>Two bars meet at a joint whose load lies in line with one of them: the other is zero.</summary>
    TwoBarsLoadInLine,

    /// <summary>Three bars meet at a joint without load or reaction, two of them in one line: the third is zero.</summary>
    ThreeBars,
}

/// <summary>A member that a rule gives as zero.</summary>
/// <param name="Member">The member, by position in <see cref="Truss.Members"/>.</param>
/// <param name="Joint">The joint at which the rule holds, by position in <see cref="Truss.Joints"/>.</param>
/// <param name="Rule">The rule.</param>
/// <param name="After">Members of that joint already known to be zero, which the rule leaves out of the count.</param>
public sealed record ZeroMember(int Member, int Joint, ZeroRule Rule, IReadOnlyList<int> After);

/// <summary>Finds the members that the two-bar and three-bar rules give as zero, one after another as bars drop out.</summary>
public static class ZeroMembers
{
    /// <summary>Bars within this of one line count as in line, and a load within it of a bar [-, sine of the angle].</summary>
    private const double InLine = 1e-9;

    /// <summary>The members under given loads.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="loads">Load to the right and upward at each joint [N].</param>
    /// <exception cref="ArgumentException">There is not one load a joint.</exception>
    public static IReadOnlyList<ZeroMember> Of(Truss truss, IReadOnlyList<(double Right, double Up)> loads)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(loads);
        if (loads.Count != truss.Joints.Count)
        {
            throw new ArgumentException($"{loads.Count} loads for {truss.Joints.Count} joints; there must be one each.", nameof(loads));
        }

        var terms = new JointTerms(truss, new EquilibriumSystem(truss));
        var zero = new List<ZeroMember>();
        int before;
        do
        {
            before = zero.Count;
            for (int j = 0; j < truss.Joints.Count; j++)
            {
                if (truss.Joints[j].Support is null)
                {
                    zero.AddRange(At(j, terms[j], loads[j], [.. zero.Select(z => z.Member)]));
                }
            }
        }
        while (zero.Count > before);
        return zero;
    }

    /// <summary>The members under loads at every panel point, each downward and of any size.</summary>
    /// <param name="truss">The truss.</param>
    public static IReadOnlyList<ZeroMember> UnderEveryDeckLoad(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        return Of(truss, [.. truss.Joints.Select(j => (0.0, j.IsPanelPoint ? -1.0 : 0.0))]);
    }

    private static IEnumerable<ZeroMember> At(int joint, (int Force, double X, double Y)[] all, (double Right, double Up) load, HashSet<int> zero)
    {
        (int Force, double X, double Y)[] bars = [.. all.Where(t => !zero.Contains(t.Force))];
        int[] after = [.. all.Select(t => t.Force).Where(zero.Contains)];
        double size = double.Hypot(load.Right, load.Up);
        if (bars.Length == 2 && Math.Abs(Sine(bars[0], bars[1])) > InLine)
        {
            if (size == 0)
            {
                return bars.Select(b => new ZeroMember(b.Force, joint, ZeroRule.TwoBars, after));
            }

            var push = (0, X: load.Right / size, Y: load.Up / size);
            return bars.Where((_, b) => Math.Abs(Sine(bars[1 - b], push)) <= InLine).Select(b => new ZeroMember(b.Force, joint, ZeroRule.TwoBarsLoadInLine, after));
        }

        if (bars.Length == 3 && size == 0)
        {
            for (int third = 0; third < 3; third++)
            {
                (int Force, double X, double Y) one = bars[(third + 1) % 3], other = bars[(third + 2) % 3];
                if (Math.Abs(Sine(one, other)) <= InLine && Math.Abs(Sine(one, bars[third])) > InLine)
                {
                    return [new ZeroMember(bars[third].Force, joint, ZeroRule.ThreeBars, after)];
                }
            }
        }

        return bars.Length == 1 && size == 0 ? [new ZeroMember(bars[0].Force, joint, ZeroRule.OneBar, after)] : [];
    }

    private static double Sine((int Force, double X, double Y) one, (int Force, double X, double Y) other) => (one.X * other.Y) - (one.Y * other.X);
}
