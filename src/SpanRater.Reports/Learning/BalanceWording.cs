using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Says why an equation is taken, and where its factors come from.</summary>
internal static class BalanceWording
{
    /// <summary>The centre of moments: a joint, or a point with its coordinates.</summary>
    public static string Centre(Truss truss, Balance balance, ForceNotation notation) =>
        truss.Joints.FirstOrDefault(j => j.X == balance.X && j.Y == balance.Y)?.Name
        ?? $"the point {Coordinates(balance, notation)}";

    /// <summary>The centre of moments within the name of a sum, where an equals sign follows: a joint, or coordinates in brackets.</summary>
    public static string CentreInSum(Truss truss, Balance balance, ForceNotation notation) =>
        truss.Joints.FirstOrDefault(j => j.X == balance.X && j.Y == balance.Y)?.Name ?? $"({Coordinates(balance, notation)})";

    /// <summary>A number without idle zeros.</summary>
    public static string Trimmed(double value, int decimals)
    {
        string figure = ResultTable.Figure(value, decimals);
        return (figure.Contains('.', StringComparison.Ordinal) ? figure.TrimEnd('0').TrimEnd('.') : figure).Replace('-', '−');
    }

    /// <summary>Why this equation comes now: it holds one of the open forces alone.</summary>
    /// <param name="worked">The solution.</param>
    /// <param name="balance">The equation.</param>
    /// <param name="force">The force it finds.</param>
    /// <param name="open">The forces on the body that are not known, that one among them.</param>
    /// <param name="notation">How numbers are shown.</param>
    /// <param name="first">True where more equations of the same body follow.</param>
    public static string Why(WorkedSolution worked, Balance balance, int force, IReadOnlyList<int> open, ForceNotation notation, bool first)
    {
        string comes = first ? " comes first" : "", come = first ? " come first" : "";
        string name = worked.Names[force];
        string[] others = [.. open.Where(o => o != force).Select(o => worked.Names[o])];
        if (others.Length == 0)
        {
            string sum = balance.Kind switch
            {
                BalanceKind.Right => "ΣX",
                BalanceKind.Up => "ΣY",
                BalanceKind.Across => $"The sum square to {worked.Names[balance.Beside!.Value]}",
                _ => $"Moments about {Centre(worked.Truss, balance, notation)}",
            };
            return $"{sum}: {name} is the only force not known yet.";
        }

        return balance.Kind switch
        {
            BalanceKind.Right => $"ΣX{comes}: of the unknown forces only {name} has a part to the right or left; {List(others)} {Stands(others)} upright.",
            BalanceKind.Up => $"ΣY{comes}: of the unknown forces only {name} has an upright part; {List(others)} {Lies(others)} level.",
            BalanceKind.Across =>
                $"{(balance.Joints.Count == 1 ? "Neither ΣX nor ΣY holds one unknown force alone, so the axes are turned: in" : "In")} the sum square to {worked.Names[balance.Beside!.Value]}, {List(others)} {(others.Length == 1 ? "has" : "have")} no part, and {name} stands alone.",
            _ => $"Moments about {Centre(worked.Truss, balance, notation)}{come}: {List(others)} {(others.Length == 1 ? "passes" : "pass")} through it and {(others.Length == 1 ? "has" : "have")} no arm, so {name} stands alone.",
        };
    }

    /// <summary>Where the factors of a sum on turned axes, or the arms of inclined members, come from: one line each. Empty where they are plain to see.</summary>
    public static ResultBlock.Items? Factors(WorkedSolution worked, Balance balance, ForceNotation notation)
    {
        if (balance.Kind == BalanceKind.Across)
        {
            string beside = worked.Names[balance.Beside!.Value];
            return new ResultBlock.Items(
                $"Factors square to {beside}, which lies {ForceNotation.Cosine(balance.Y)} right and {ForceNotation.Cosine(-balance.X)} up: {ForceNotation.Cosine(balance.Y)} times the part of a force up, less {InSum(-balance.X)} times its part to the right:",
                [
                    .. balance.Terms.Select(t =>
                    {
                        (double run, double rise, double length) = worked.Names.DirectionAt(t.Force, t.Joint);
                        return $"{worked.Names[t.Force]}: {Product(balance.Y, rise / length)} − {Product(-balance.X, run / length)} = {ForceNotation.Cosine(t.Coefficient)}";
                    }),
                    .. LoadsAcross(worked, balance),
                ]);
        }

        if (balance.Kind != BalanceKind.Moment)
        {
            return null;
        }

        var arms = new List<string>();
        foreach (BalanceTerm term in balance.Terms)
        {
            (double run, double rise, double length) = worked.Names.DirectionAt(term.Force, term.Joint);
            if (Math.Abs(run) < 1e-9 * length || Math.Abs(rise) < 1e-9 * length)
            {
                continue;
            }

            Joint at = worked.Truss.Joints[term.Joint];
            arms.Add($"{worked.Names[term.Force]} at {at.Name}: {InBrackets(notation.Length(at.X - balance.X))}·{InBrackets(ForceNotation.Cosine(rise / length))} − {InBrackets(notation.Length(at.Y - balance.Y))}·{InBrackets(ForceNotation.Cosine(run / length))} = {notation.Length(term.Coefficient)} {notation.LengthUnit}");
        }

        return arms.Count == 0 ? null : new ResultBlock.Items($"Arms of inclined members about {Centre(worked.Truss, balance, notation)}, distance right times part up less distance up times part right:", arms);
    }

    /// <summary>Names in a row: "A, B and C".</summary>
    public static string List(IReadOnlyList<string> names) => names.Count switch
    {
        0 => "none",
        1 => names[0],
        _ => $"{string.Join(", ", names.Take(names.Count - 1))} and {names[^1]}",
    };

    // Loads have their factors on turned axes as well: one line for each direction in which any acts.
    private static IEnumerable<string> LoadsAcross(WorkedSolution worked, Balance balance)
    {
        (double Right, double Up)[] loads = [.. balance.Joints.Select(j => worked.JointLoads[j])];
        foreach ((string name, double right, double up) in ((string, double, double)[])[("down", 0, -1), ("up", 0, 1), ("to the left", -1, 0), ("to the right", 1, 0)])
        {
            double factor = (balance.X * right) + (balance.Y * up);
            if (Math.Abs(factor) > 1e-12 && loads.Any(l => (l.Right * right) + (l.Up * up) > 0))
            {
                yield return $"load {name}: {Product(balance.Y, up)} − {Product(-balance.X, right)} = {ForceNotation.Cosine(factor)}";
            }
        }
    }

    private static string Coordinates(Balance balance, ForceNotation notation) =>
        $"x = {notation.Length(balance.X)}, y = {notation.Length(balance.Y)} {notation.LengthUnit}";

    private static string Stands(string[] names) => names.Length == 1 ? "stands" : "stand";

    private static string Lies(string[] names) => names.Length == 1 ? "lies" : "lie";

    private static string Product(double one, double other) => $"{InSum(one)}·{InSum(other)}";

    private static string InSum(double value) => InBrackets(ForceNotation.Cosine(value));

    private static string InBrackets(string figure) => figure.StartsWith('−') ? $"({figure})" : figure;
}
