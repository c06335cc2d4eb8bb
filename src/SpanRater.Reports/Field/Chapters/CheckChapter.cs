using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The input as it was understood, its rank and condition number opened to the singular values that they come from.</summary>
internal static class CheckChapter
{
    private const string Id = "singular-values";

    /// <summary>The chapter.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="findings">What its reading found.</param>
    /// <param name="units">The units to show.</param>
    public static ReportChapter Of(Bridge bridge, FindingList findings, DisplayUnits units) => new("check", "Input as understood", [])
    {
        Parts =
        [
            .. FieldReport.Body(CheckPage.Of(bridge, findings, units)).Select(b => b is ResultBlock.Grid { Content: var table } ? OpeningOf(table) : (ReportPart)new ReportPart.Said([b])),
            new ReportPart.Fold(Id, "Rank and condition number: the singular values of the equations", [new ReportPart.Said([.. Values(Stability.Of(bridge.Truss))])]),
        ],
    };

    private static ReportPart.Opening OpeningOf(ResultTable table) => new(
        table,
        null,
        Enumerable.Range(0, table.Rows.Count).Where(r => table.Rows[r][0] is CheckPage.Rank or CheckPage.Condition).ToDictionary(r => (r, 1), _ => Id));

    private static IEnumerable<ResultBlock> Values(Stability stability)
    {
        int columns = stability.MemberCount + stability.ReactionCount;
        double largest = stability.SingularValues[0], smallest = stability.SingularValues[^1], squares = stability.SingularValues.Sum(s => s * s);
        yield return new ResultBlock.Paragraph(string.Create(
            CultureInfo.InvariantCulture,
            $"A is the matrix of the equations of all joints, {stability.EquationCount} rows, two a joint, by {columns} columns: in the column of a member its direction at one joint and the opposite at the other, in that of a reaction its direction. With loads p the forces q follow from A·q = −p. A singular value of A is the size of the load, as the root of the sum of squares, that a pattern of forces of size 1 balances, for as many patterns at right angles to each other as A has values:"));
        yield return new ResultBlock.Paragraph(string.Join(", ", stability.SingularValues.Select(s => Figure(s))));
        yield return SheetUnits.Step(string.Create(
            CultureInfo.InvariantCulture,
            $"sum of their squares = {ResultTable.Figure(squares, 3)} = 2·{stability.MemberCount} + {stability.ReactionCount}, as it must be: every entry of A squared makes 2 a member and 1 a reaction"));
        yield return SheetUnits.Step(string.Create(
            CultureInfo.InvariantCulture,
            $"rank = values above {Stability.ZeroSingularValue:0e+0}·{Figure(largest)}: {stability.Rank} of {stability.SingularValues.Count}"));
        if (stability.Condition is not { } condition)
        {
            yield return new ResultBlock.Paragraph("The condition number is told of a truss whose forces statics alone gives, every member acting: this is none.");
            yield break;
        }

        yield return new ResultBlock.Paragraph("The condition number is the largest over the smallest (that of the 2-norm, ‖A‖·‖A⁻¹‖: definition of linear algebra). It is how many times larger the part by which forces are off may be than the part by which coordinates or loads are.");
        yield return SheetUnits.Step(string.Create(CultureInfo.InvariantCulture, $"condition number = ‖A‖·‖A⁻¹‖ = {Figure(largest)}·(1/{Figure(smallest)}) = {condition:0.0}"));
        yield return new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"It is warned of above {WeakGeometry.Limit:0e+0}."));
    }

    private static string Figure(double value) => value >= 1e-4 ? ResultTable.Figure(value, 5) : value.ToString("0.0e+0", CultureInfo.InvariantCulture).Replace('-', '−');
}
