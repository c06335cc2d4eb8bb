using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The dead forces of a redundant truss by cutting members until statics is enough, and closing the cuts: a route beside those by which it is rated.</summary>
internal static class RedundantForces
{
    /// <summary>The parts of a case; null where the truss is worked otherwise.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="asked">The case.</param>
    /// <param name="slack">Positions of the members that are slack.</param>
    /// <param name="id">Anchor of the fold that holds them.</param>
    /// <param name="units">The units to show.</param>
    public static IReadOnlyList<ReportPart>? Of(Truss truss, LoadAsked asked, IReadOnlyList<int> slack, string id, DisplayUnits units)
    {
        if (!ReleasedTruss.Of(truss, asked.Loads, slack).TryGet(out ReleasedTruss? released, out _) || released.Cut.Count == 0)
        {
            return null;
        }

        string[] cut = [.. released.Cut.Select(c => released.Truss.Members[c].Name)];
        return
        [
            new ReportPart.Said([.. Closing(released, cut, units)]),
            Worked(released, asked.Loads, $"{id}-cut", ReportPart.Brief($"N0: {Told.List(cut)} cut, case {asked.Loads.Name} on it"), worked => asked.Notation(worked, units)),
            .. released.Cut.Select((c, i) => Worked(released, Pull(released.Truss, c), $"{id}-pull-{i + 1}", ReportPart.Brief($"n{i + 1}: a pull of 1 in {cut[i]} on the joints at its ends"), _ => new ForceNotation(units, isUnitLoad: true, 1))),
        ];
    }

    private static IEnumerable<ResultBlock> Closing(ReleasedTruss released, string[] cut, DisplayUnits units)
    {
        var sheet = new SheetUnits(units);
        bool several = cut.Length > 1;
        string force = units.Symbol(Quantity.Force);
        yield return new ResultBlock.Paragraph($"This truss has {(several ? $"{cut.Length} forces" : "one force")} more than statics can find. {Told.List(cut)} {(several ? "are" : "is")} cut: statics gives N0 of what is left under the loads, and n of each member for a pull of 1 in {(several ? "each cut member" : "it")}. No cut opens or laps where, over all members,");
        for (int i = 0; i < cut.Length; i++)
        {
            int at = i;
            string left = string.Join(" + ", cut.Select((_, k) => $"X{k + 1}·Σ n{at + 1}·n{k + 1}·L/EA")), numbers = string.Join(" + ", cut.Select((_, k) => $"X{k + 1}·{Flexibility(released.Flexibilities[at, k])}"));
            double right = released.Moved[i] - released.Gaps[i];
            yield return SheetUnits.Step($"{left} = {(released.Moved[i] == 0 ? "" : "Σ r·d ")}− Σ n{i + 1}·N0·L/EA: {numbers} = {(released.Moved[i] == 0 ? "" : $"{Exact(released.Moved[i])} − ({Exact(released.Gaps[i])}) = ")}{Exact(right)}");
        }

        yield return SheetUnits.Step(string.Join("; ", cut.Select((name, i) => $"X{i + 1} = {name} = {SheetUnits.Plain(units.From(Quantity.Force, released.Redundants[i]))} {force}")));
        yield return new ResultBlock.Paragraph($"N = N0 + {string.Join(" + ", cut.Select((_, i) => $"n{i + 1}·X{i + 1}"))}; a member without L/EA is reached by no pull:");
        yield return new ResultBlock.Grid(new ResultTable(
            [
                new("name"), new("N", Quantity.Force, 3), new("N0", Quantity.Force, 3), .. cut.Select((_, i) => new ResultColumn($"n{i + 1}", Quantity.Number, 5)), new($"L/EA [{sheet.SmallUnit}/{force}]"),
                .. cut.Select((_, i) => new ResultColumn($"n{i + 1}·N0·L/EA [{sheet.SmallUnit}]")),
            ],
            [
                .. released.Members.Select(m => (IReadOnlyList<object?>)
                [
                    m.Name, m.Force, m.Released, .. m.Unit.Select(n => (object?)n), m.Flexibility is { } l ? Flexibility(l) : "",
                    .. m.Unit.Select(n => n == 0 || m.Released == 0 ? "" : sheet.SmallFigure(n * m.Released * (m.Flexibility ?? 0), isExact: true)),
                ]),
                ["sum", null, null, .. cut.Select(_ => (object?)null), "", .. released.Gaps.Select(g => sheet.SmallFigure(g, isExact: true))],
            ]));
        yield return new ResultBlock.Paragraph($"The forces that are rated are found in two other ways, by self-stresses and by the stiffness of the whole truss: N differs from them by {released.Difference.ToString("0.0e+0", System.Globalization.CultureInfo.InvariantCulture)} of the largest force; above {ForceSolution.RouteLimit.ToString("0e+0", System.Globalization.CultureInfo.InvariantCulture)} this would not stand here.");

        string Exact(double value) => $"{sheet.SmallFigure(value, isExact: true)} {sheet.SmallUnit}";
        string Flexibility(double metresPerNewton) => SheetUnits.Plain(units.From(Quantity.Deflection, metresPerNewton) / units.From(Quantity.Force, 1));
    }

    private static ReportPart.Fold Worked(ReleasedTruss released, LoadCase loads, string id, string title, Func<WorkedSolution, ForceNotation> notation)
    {
        Outcome<WorkedSolution> outcome = WorkedSolution.OfSet(released.Truss, loads with { Movements = [] }, released.Cut);
        ResultBlock told = outcome.Value is { } worked
            ? new ResultBlock.Grid(ForceTable.Of(worked, notation(worked), "force"))
            : new ResultBlock.Paragraph("There is no solution joint by joint here; the equations of all joints at once give it.");
        return new ReportPart.Fold(id, title, [new ReportPart.Said([told])]);
    }

    // As the bar would pull its two joints towards each other.
    private static LoadCase Pull(Truss truss, int member)
    {
        Joint from = truss.Joints[truss.FromJoint(member)], to = truss.Joints[truss.ToJoint(member)];
        double length = truss.Length(member), x = (to.X - from.X) / length, y = (to.Y - from.Y) / length;
        return new LoadCase($"a pull of 1 in {truss.Members[member].Name}", [new JointLoad(from.Name, x, y), new JointLoad(to.Name, -x, -y)]);
    }
}
