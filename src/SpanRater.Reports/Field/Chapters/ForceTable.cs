using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>A worked solution in short: a line for every force, with the free body and the equation that gives it, what is known put in.</summary>
internal static class ForceTable
{
    /// <summary>The table.</summary>
    /// <param name="worked">The solution.</param>
    /// <param name="notation">How numbers are shown.</param>
    /// <param name="value">What the column of the forces is called.</param>
    public static ResultTable Of(WorkedSolution worked, ForceNotation notation, string value) => new(
        [new("name"), new(value, notation.ForceQuantity, notation.Decimals), new("free body"), new("equation")],
        [.. worked.Steps.SelectMany(step => step.Equations.SelectMany(e => Rows(worked, step, e, notation)))]);

    private static IEnumerable<IReadOnlyList<object?>> Rows(WorkedSolution worked, WorkedStep step, WorkedEquations equations, ForceNotation notation)
    {
        for (int e = 0; e < equations.Found.Count; e++)
        {
            int force = equations.Found[e];
            var lines = new EquationLines(worked, equations.Balances[e], worked.Forces, notation);
            string together = equations.Found.Count > 1 ? $", solved together with {equations.Found.Count - 1} more" : "";
            yield return [worked.Names[force], worked.Forces[force], WorkedSolutionPage.Place(worked, step), $"{lines.Name}: {lines.WithNumbers(equations.Found).Text}{together}"];
        }
    }
}
