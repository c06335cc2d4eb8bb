using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells of a line that a section gives by one equation.</summary>
internal static class SectionTelling
{
    /// <summary>The cut, the equation, a load on either side, and all panel points.</summary>
    public static IEnumerable<ResultBlock> Of(InfluenceNarration narration, LineSection section, Truss truss, DisplayUnits units)
    {
        string name = truss.Members[narration.Member].Name;
        string[] others = [.. section.Cut.Where(m => m != narration.Member && m != section.Twin?.Other).Select(m => truss.Members[m].Name)];
        yield return new ResultBlock.Heading("The cut");
        yield return new ResultBlock.Paragraph($"Cut the truss in two through {Told.List(section.Cut.Select(m => truss.Members[m].Name))}{Panel(section, truss)}. A part that bears no load is held by its reactions and by the members cut, and nothing else.{(narration.Lines.Slack is { Count: > 0 } ? " Slack rods hold nothing and are passed over." : "")}");
        if (section.Twin is { } twin)
        {
            foreach (ResultBlock block in JointTelling.Tied(narration.Member, twin, truss, narration.Lines.Slack))
            {
                yield return block;
            }
        }

        yield return new ResultBlock.Paragraph(Reason(section, name, others, truss, units));
        yield return Equation(section, name, truss);
        foreach (int point in (int[])[section.PanelLeft + 1, section.PanelLeft])
        {
            if (point >= 0 && point < section.Steps.Count)
            {
                yield return new ResultBlock.Paragraph(Sentence(section, section.Steps[point], name, truss, units));
            }
        }

        yield return new ResultBlock.Paragraph(
            section.Centre is null ? "All panel points, upward positive:" : "All panel points, moments anticlockwise positive:");
        string unit = section.Centre is null ? "" : $" [{units.Symbol(Quantity.Length)}]";
        yield return new ResultBlock.Grid(new ResultTable(
            [new("load at"), new("stands"), new("the bare part's reactions"), new(EffectName(section) + unit), new((section.Centre is null ? "a unit of F adds" : "lever of F") + unit), new(section.Centre is null ? "F = −V/s" : "F = −M/h", Quantity.Number, 4)],
            [.. section.Steps.Select(s => Row(section, s, truss, units))]));
    }

    /// <summary>One panel point: load at, where it stands, reactions, effect, lever, force.</summary>
    public static IReadOnlyList<object?> Row(LineSection section, SectionStep step, Truss truss, DisplayUnits units) =>
    [
        InfluenceExplanation.Point(truss, step.PanelPoint),
        step.LoadIsLeft ? "left of the cut" : "right of the cut",
        Reactions(step, truss),
        Told.Number(Shown(section, step.Effect, units), section.Centre is null ? 4 : 3),
        Told.Number(Shown(section, step.Lever, units), section.Centre is null ? 4 : 3),
        step.Force,
    ];

    private static string Panel(LineSection section, Truss truss) =>
        section.PanelLeft >= 0 && section.PanelLeft + 1 < truss.PanelPoints.Count
            ? $"; the cut crosses the deck between {InfluenceExplanation.Point(truss, section.PanelLeft)} and {InfluenceExplanation.Point(truss, section.PanelLeft + 1)}"
            : "";

    private static string Reason(LineSection section, string name, string[] others, Truss truss, DisplayUnits units)
    {
        string share = section.Twin is null ? $"{name} alone" : $"the two of them";
        string meet = others.Length == 1 ? $"{others[0]}" : Told.List(others);
        if (section.Centre is { } centre)
        {
            return $"{meet} {(others.Length == 1 ? "passes through" : "meet in")} {Place(centre, truss, units)}, about which they have no moment: there {name} alone balances the reactions, so its line is a line of moments over its lever.";
        }

        string level = others.Length == 1 ? "is level and holds" : "are level and hold";
        return section.IsShear
            ? $"{meet} {level} nothing upward: {share} must carry the shear of the part, the sum of its reactions, by {(section.Twin is null ? "its" : "their")} slope. So it is a line of shear."
            : $"{meet} {(others.Length == 1 ? "holds" : "are parallel and hold")} nothing across {(others.Length == 1 ? "its" : "their")} line: across it {share} must balance the reactions.";
    }

    private static ResultBlock.Equation Equation(LineSection section, string name, Truss truss)
    {
        string f = $"F_{{{Told.Tex(name)}}}";
        if (section.Centre is { } centre)
        {
            string about = At(centre, truss) ?? "that point";
            return new ResultBlock.Equation($"F({name}) = −M / h,  M: moment of the reactions about {about},  h: lever of F", $"{f} = -\\frac{{M}}{{h}},\\quad M\\text{{: moment of the reactions about {about}}},\\quad h\\text{{: lever of F}}");
        }

        string sum = section.IsShear ? "sum of the upward reactions" : "sum of the reactions across that line";
        return new ResultBlock.Equation($"F({name}) = −V / s,  V: {sum},  s: what a unit of F adds to it", $"{f} = -\\frac{{V}}{{s}},\\quad V\\text{{: {sum}}},\\quad s\\text{{: what a unit of F adds to it}}");
    }

    private static string Sentence(LineSection section, SectionStep step, string name, Truss truss, DisplayUnits units)
    {
        string side = step.LoadIsLeft ? "left" : "right", bare = step.LoadIsLeft ? "right" : "left", load = InfluenceExplanation.Point(truss, step.PanelPoint);
        string held = step.Reactions.Count == 0 ? "not even a reaction" : $"only {Reactions(step, truss)}";
        string unit = section.Centre is null ? "" : $" {units.Symbol(Quantity.Length)}";
        string effect = Told.Number(Shown(section, step.Effect, units), section.Centre is null ? 4 : 3) + unit, lever = Told.Number(Shown(section, step.Lever, units), section.Centre is null ? 4 : 3) + unit;
        string what = section.Centre is { } centre ? $"about {At(centre, truss) ?? "the point"} that makes {effect}" : section.IsShear ? $"that makes a shear of {effect}" : $"across the line that makes {effect}";
        string sense = step.Force > 0 ? ": tension" : step.Force < 0 ? ": compression" : "";
        return $"One unit at {load}, {side} of the cut: the {bare} part bears {held}; {what}, and a unit of tension in {name} makes {lever}. To balance, F = −({Told.Number(Shown(section, step.Effect, units), section.Centre is null ? 4 : 3)}) / ({Told.Number(Shown(section, step.Lever, units), section.Centre is null ? 4 : 3)}) = {Told.Number(step.Force)}{sense}.";
    }

    private static double Shown(LineSection section, double value, DisplayUnits units) => section.Centre is null ? value : units.From(Quantity.Length, value);

    private static string EffectName(LineSection section) => section.Centre is not null ? "moment" : section.IsShear ? "shear" : "sum across";

    private static string Reactions(SectionStep step, Truss truss)
    {
        IEnumerable<string> parts =
            from reaction in step.Reactions
            from part in ((string Way, double Size)[])[("right", reaction.Right), ("up", reaction.Up)]
            where Math.Abs(part.Size) > 1e-12
            select $"{truss.Joints[reaction.Joint].Name} {part.Way} {Told.Number(part.Size)}";
        return string.Join(", ", parts.DefaultIfEmpty("none"));
    }

    private static string? At((double X, double Y) centre, Truss truss)
    {
        double near = 1e-6 * (truss.Joints.Max(j => j.X) - truss.Joints.Min(j => j.X));
        return truss.Joints.FirstOrDefault(j => double.Hypot(j.X - centre.X, j.Y - centre.Y) <= near)?.Name;
    }

    private static string Place((double X, double Y) centre, Truss truss, DisplayUnits units) =>
        At(centre, truss) is { } joint ? $"joint {joint}" : $"the point x = {Told.Length(centre.X, units)}, y = {Told.Length(centre.Y, units)}";
}
