using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The load that a worked solution is asked for: a case of the bridge, or a load of 1 downward at a joint.</summary>
/// <param name="Loads">The load.</param>
/// <param name="UnitLoadAt">The joint that bears the load of 1; null for a case.</param>
public sealed record LoadAsked(LoadCase Loads, string? UnitLoadAt)
{
    /// <summary>What stands in a title: "case DC", "a load of 1 downward at L3".</summary>
    public string Title => UnitLoadAt is null ? $"case {Loads.Name}" : $"a load of 1 downward at {UnitLoadAt}";

    /// <summary>A case of the bridge.</summary>
    /// <param name="loads">The case.</param>
    public static LoadAsked Case(LoadCase loads) => new(loads, null);

    /// <summary>A load of 1 downward at a joint; forces are numbers without unit.</summary>
    /// <param name="joint">Name of the joint.</param>
    public static LoadAsked UnitLoad(string joint) => new(new LoadCase($"unit load at {joint}", [new JointLoad(joint, 0, -1)]), joint);

    /// <summary>How forces under this load are shown.</summary>
    /// <param name="worked">The forces.</param>
    /// <param name="units">The units to show.</param>
    public ForceNotation Notation(WorkedSolution worked, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(worked);
        double largest = worked.Forces.Concat(worked.JointLoads.SelectMany(l => (double[])[l.Right, l.Up])).Max(Math.Abs);
        return new ForceNotation(units, UnitLoadAt is not null, largest);
    }
}
