using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Free bodies of a worked solution and of a section.</summary>
public static class FreeBodyPicture
{
    private const string Convention = "Member arrows point away from the free body: tension is positive, and a negative number is compression. Dashed with a question mark: not known yet.";

    /// <summary>The free body of one step.</summary>
    /// <param name="title">Title, such as the bridge's name and the step's.</param>
    /// <param name="worked">The solution.</param>
    /// <param name="step">Position of the step.</param>
    /// <param name="notation">How forces are shown.</param>
    public static Picture OfStep(string title, WorkedSolution worked, int step, ForceNotation notation)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(worked);
        ArgumentNullException.ThrowIfNull(notation);
        WorkedStep shown = worked.Steps[step];
        var sheet = new Sheet(title);
        sheet.Place(Body(worked, step, notation));
        if (shown.Kind == StepKind.Joint)
        {
            sheet.Space(6);
            sheet.Paragraph("where", "Where it stands:", Sheet.TextSize, Ink.Black);
            sheet.Place(Elevation(worked, shown, notation.Units));
        }

        sheet.Space(8);
        sheet.Paragraph("signs", Signs(shown.Kind, notation), 14);
        return sheet.ToPicture();
    }

    /// <summary>How the arrows of a free body of one step are to be read, in words.</summary>
    /// <param name="kind">The kind of step.</param>
    /// <param name="notation">How forces are shown.</param>
    public static string SignsOf(StepKind kind, ForceNotation notation)
    {
        ArgumentNullException.ThrowIfNull(notation);
        return Signs(kind, notation);
    }

    /// <summary>The free body of one step alone, without the page around it.</summary>
    /// <param name="worked">The solution.</param>
    /// <param name="step">Position of the step.</param>
    /// <param name="notation">How forces are shown.</param>
    public static Drawing DrawingOfStep(WorkedSolution worked, int step, ForceNotation notation)
    {
        ArgumentNullException.ThrowIfNull(worked);
        ArgumentNullException.ThrowIfNull(notation);
        return Cropping.ToParts(Body(worked, step, notation));
    }

    /// <summary>The part that a cut leaves, for the member sought there, without the page around it.</summary>
    /// <param name="check">The check.</param>
    /// <param name="cut">Position of the cut.</param>
    /// <param name="notation">How forces are shown.</param>
    public static Drawing DrawingOfCut(SectionCheck check, int cut, ForceNotation notation)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(notation);
        return Cropping.ToParts(CutBody(check, cut, notation));
    }

    /// <summary>The part that a section cuts off, for the member sought.</summary>
    /// <param name="title">Title, such as the bridge's name and the member's.</param>
    /// <param name="check">The check.</param>
    /// <param name="notation">How forces are shown.</param>
    /// <exception cref="ArgumentException">No cut finds the member.</exception>
    public static Picture OfSection(string title, SectionCheck check, ForceNotation notation)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(notation);
        if (check.Cuts.Count == 0)
        {
            throw new ArgumentException("No cut finds the member, so there is none to draw.", nameof(check));
        }

        var sheet = new Sheet(title);
        for (int c = 0; c < check.Cuts.Count; c++)
        {
            SectionCut cut = check.Cuts[c];
            sheet.Paragraph("cut", $"Cut {c + 1} of {check.Cuts.Count}, for {check.Worked.Truss.Members[cut.Member].Name}:", Sheet.TextSize, Ink.Black);
            sheet.Place(CutBody(check, c, notation));
            sheet.Space(8);
        }

        sheet.Paragraph("signs", Signs(StepKind.Section, notation), 14);
        return sheet.ToPicture();
    }

    private static Drawing Body(WorkedSolution worked, int step, ForceNotation notation)
    {
        WorkedStep shown = worked.Steps[step];
        int[] sought = [.. shown.Found, .. worked.Steps.Skip(step + 1).SelectMany(s => s.Found)];
        var forces = new BodyForces(worked, notation, worked.Forces, sought);
        return shown.Kind == StepKind.Joint
            ? JointDrawing.Of(forces, shown.Joints[0])
            : new BodyDrawing { Forces = forces, Joints = shown.Joints, Centre = shown.Kind == StepKind.Section ? CentreOf(worked, shown.Equations[0].Balances[0], notation) : null }.Draw();
    }

    private static Drawing CutBody(SectionCheck check, int index, ForceNotation notation)
    {
        SectionCut cut = check.Cuts[index];
        int[] found = [.. check.Cuts.Take(index).Select(b => b.Member)];
        var forces = new BodyForces(check.Worked, notation, check.Forces, cut.Cut.Where(m => !found.Contains(m)));
        return new BodyDrawing { Forces = forces, Joints = cut.Balance.Joints, Centre = CentreOf(check.Worked, cut.Balance, notation) }.Draw();
    }

    private static string Signs(StepKind kind, ForceNotation notation)
    {
        string cut = kind == StepKind.Section ? " The line of dashes and dots is the cut, the diamond the centre of moments." : "";
        string unit = notation.ForceUnit.Length == 0 ? " Forces are per unit load." : "";
        return $"{Convention} Broad grey arrows are loads, broad black ones reactions, which bear their names.{cut}{unit}";
    }

    private static (double X, double Y, string Words)? CentreOf(WorkedSolution worked, Balance balance, ForceNotation notation) => balance.Kind != BalanceKind.Moment
        ? null
        : (balance.X, balance.Y, $"moments about {worked.Truss.Joints.FirstOrDefault(j => j.X == balance.X && j.Y == balance.Y)?.Name ?? $"x = {notation.Length(balance.X)}, y = {notation.Length(balance.Y)} {notation.LengthUnit}"}");

    private static Drawing Elevation(WorkedSolution worked, WorkedStep step, DisplayUnits units)
    {
        int[] found = [.. step.Found];
        Truss truss = worked.Truss;
        return new ElevationDrawing
        {
            Truss = truss,
            Units = units,
            Width = Sheet.InnerWidth,
            StyleOf = m => found.Contains(m) ? new LineStyle(Ink.Black, 4, Dash.Dashed)
                : step.Known.Contains(m) ? new LineStyle(Ink.Black, 4)
                : new LineStyle(Ink.Grey, 1.4),
            LabelOf = m => found.Contains(m) || step.Known.Contains(m) ? truss.Members[m].Name : "",
        }.Draw().Drawing;
    }
}
