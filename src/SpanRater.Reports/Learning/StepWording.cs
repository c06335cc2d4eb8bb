using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Says what a step of a worked solution does: its title, its free body, what is put off, what it finds.</summary>
internal static class StepWording
{
    /// <summary>The step's title.</summary>
    public static string Title(WorkedSolution worked, WorkedStep step) => step.Kind switch
    {
        StepKind.WholeTruss => "Reactions, from the whole truss",
        StepKind.Joint => $"Joint {JointNames(worked, step)}",
        StepKind.Section => $"Section through {BalanceWording.List([.. step.Unknown.Select(f => worked.Names[f])])}",
        _ => $"Joints {JointNames(worked, step)} together",
    };

    /// <summary>Why the step is taken here: joints put off, a new start, a section.</summary>
    public static IEnumerable<string> Before(WorkedSolution worked, WorkedStep step)
    {
        bool isPart = step.Kind == StepKind.Joint && step.Unknown.Count > step.Found.Count();
        if (isPart || step.Kind is StepKind.Section or StepKind.Group)
        {
            string left = string.Join("; ", step.Waiting.GroupBy(w => w.Forces.Count).OrderBy(g => g.Key).Select(g =>
                $"{Count(g.Key)} unknown forces{(g.Key == 2 ? " in one line" : "")} at {BalanceWording.List([.. g.Select(w => worked.Truss.Joints[w.Joint].Name)])}"));
            yield return $"No joint is left whose unknown forces can all be found: {left}.";
            yield return isPart
                ? $"At {JointNames(worked, step)} all unknown forces but {BalanceWording.List([.. step.Found.Select(f => worked.Names[f])])} lie in one line, so that one can be found; the others wait."
                : step.Kind == StepKind.Section
                ? $"So the truss is cut in two through {BalanceWording.List([.. step.Unknown.Select(f => worked.Names[f])])}, and the part with {JointNames(worked, step)} is taken as one free body: members within it do not appear."
                : $"No cut through three unknown forces helps either, so the joints {JointNames(worked, step)} are solved together: their equations hold as many unknown forces as are taken from them.";
            yield break;
        }

        foreach (WaitingJoint waiting in step.Waiting)
        {
            yield return $"{Waits(worked, waiting)}.";
        }

        if (step.IsAfresh)
        {
            yield return $"No joint beside the finished ones can be solved yet, so the work goes on from the other end, at {JointNames(worked, step)}.";
        }
    }

    /// <summary>The free body: what is unknown, what is known, what loads it.</summary>
    public static string FreeBody(WorkedSolution worked, WorkedStep step, ForceNotation notation)
    {
        string unknown = BalanceWording.List([.. step.Unknown.Select(f => worked.Names[f])]);
        string known = step.Known.Count == 0 ? "" : $" Known: {string.Join(", ", step.Known.Select(f => $"{worked.Names[f]} {notation.WithUnit(worked.Forces[f])}"))}.";
        return $"Unknown: {unknown}.{known} {Loads(worked, step.Joints, notation)}";
    }

    /// <summary>The loads on the joints of a free body; equal ones are named together.</summary>
    public static string Loads(WorkedSolution worked, IReadOnlyList<int> joints, ForceNotation notation)
    {
        string[] loads =
        [
            .. joints.SelectMany(j => LoadsAt(worked, j, notation).Select(load => (Joint: worked.Truss.Joints[j].Name, Load: load))).GroupBy(l => l.Load)
                .Select(same => joints.Count == 1 ? same.Key : $"{same.Key} at {BalanceWording.List([.. same.Select(l => l.Joint)])}"),
        ];
        return loads.Length == 0 ? "No load." : $"Load: {string.Join("; ", loads)}.";
    }

    /// <summary>A force that was found, in words.</summary>
    public static string Result(WorkedSolution worked, int force, double value, ForceNotation notation)
    {
        string name = worked.Names[force];
        if (worked.Names.IsMember(force))
        {
            return notation.IsZero(value) ? $"{name} carries nothing." : $"{name}: {notation.MemberInWords(value)}.";
        }

        string turned = value < 0 && !notation.IsZero(value) ? " (the support pulls the other way)" : "";
        return $"{name}: {notation.WithUnit(value)}{turned}.";
    }

    /// <summary>Names of the joints of a step.</summary>
    public static string JointNames(WorkedSolution worked, WorkedStep step) => BalanceWording.List([.. step.Joints.Select(j => worked.Truss.Joints[j].Name)]);

    /// <summary>A whole number in words up to ten.</summary>
    public static string Count(int number) => number switch
    {
        0 => "no",
        1 => "one",
        2 => "two",
        3 => "three",
        4 => "four",
        5 => "five",
        6 => "six",
        7 => "seven",
        8 => "eight",
        9 => "nine",
        10 => "ten",
        _ => number.ToString(System.Globalization.CultureInfo.InvariantCulture),
    };

    private static string Waits(WorkedSolution worked, WaitingJoint waiting)
    {
        string joint = worked.Truss.Joints[waiting.Joint].Name, forces = BalanceWording.List([.. waiting.Forces.Select(f => worked.Names[f])]);
        return waiting.Forces.Count == 2 ? $"{joint} waits: its two unknown forces lie in one line: {forces}" : $"{joint} waits: {Count(waiting.Forces.Count)} unknown forces: {forces}";
    }

    private static IEnumerable<string> LoadsAt(WorkedSolution worked, int joint, ForceNotation notation)
    {
        (double right, double up) = worked.JointLoads[joint];
        if (up != 0)
        {
            yield return $"{notation.WithUnit(Math.Abs(up))} {(up < 0 ? "down" : "up")}";
        }

        if (right != 0)
        {
            yield return $"{notation.WithUnit(Math.Abs(right))} to the {(right < 0 ? "left" : "right")}";
        }
    }
}
