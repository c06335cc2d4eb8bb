using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Where the ordinates of a redundant truss come from: the movements of its joints under a load of 1, and the stretch and stiffness of each member.</summary>
internal static class StretchTelling
{
    // Along its direction; a roller whose normal is askew has both.
    private static IEnumerable<ResultBlock> Reactions(UnitStretches stretches, int joint, Support support, bool isLoaded)
    {
        Truss truss = stretches.Truss;
        (string Way, double X, double Y)[] ways = [("right", 1, 0), ("up", 0, 1)];
        foreach ((string way, double x, double y) in ways.Where(w => support.Kind == SupportKind.Pin || Math.Abs((support.NormalX * w.X) + (support.NormalY * w.Y)) > 1e-9))
        {
            (double Part, double Force)[] terms =
            [
                .. Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == joint || truss.ToJoint(m) == joint).Select(m =>
                {
                    Joint here = truss.Joints[joint], there = truss.Joints[truss.FromJoint(m) == joint ? truss.ToJoint(m) : truss.FromJoint(m)];
                    return ((((there.X - here.X) * x) + ((there.Y - here.Y) * y)) / truss.Length(m), stretches.Members[m].Force);
                }),
            ];
            double load = isLoaded ? y : 0, reaction = load - terms.Sum(t => t.Part * t.Force);
            yield return SheetUnits.Step($"{truss.Joints[joint].Name} {way} = {Told.Number(load, 0)} − ({string.Join(" + ", terms.Select(t => $"{Signed(t.Part)}·{Signed(t.Force)}"))}) = {Told.Number(reaction, 4).Replace('-', '−')}");
        }
    }

    private static string Signed(double value) => value < 0 ? $"(−{Told.Number(-value, 5)})" : Told.Number(value, 5);

    /// <summary>The solution with a load of 1 at a panel point.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="why">Why it cannot be worked joint by joint.</param>
    /// <param name="panelPoint">The panel point, by position.</param>
    /// <param name="slack">Positions of the members that are slack.</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<ResultBlock> Of(Truss truss, Refusal why, int panelPoint, IReadOnlyList<int> slack, DisplayUnits units)
    {
        if (why is not Refusal.Redundant || !UnitStretches.Of(truss, truss.PanelPoints[panelPoint], slack).TryGet(out UnitStretches? stretches, out _))
        {
            yield return new ResultBlock.Paragraph($"There is no solution joint by joint here. {RefusalWording.Sentence(why, truss, units)}");
            yield break;
        }

        Truss acting = stretches.Truss;
        string movement = $"{units.Symbol(Quantity.Deflection)} per {units.Symbol(Quantity.Force)}", stiffness = $"{units.Symbol(Quantity.Force)}/{units.Symbol(Quantity.Deflection)}";
        yield return new ResultBlock.Paragraph("This truss has more forces than equations: they divide by stiffness. The joints move until every one of them is in balance:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("joint"), new($"right [{movement}]"), new($"up [{movement}]")],
            [.. acting.Joints.Select((j, i) => (IReadOnlyList<object?>)[j.Name, Small(stretches.Displacements[i].Right), Small(stretches.Displacements[i].Up)])]));
        yield return new ResultBlock.Paragraph("Each member is stretched by what its second joint moves along it more than its first: stretch = difference to the right · right/length + difference up · up/length, and ordinate = stretch · E·A/L:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("member"), new("right/length", Quantity.Number, 5), new("up/length", Quantity.Number, 5), new($"stretch [{movement}]"), new($"E·A/L [{stiffness}]"), new("ordinate", Quantity.Number, 4)],
            [
                .. acting.Members.Select((member, m) =>
                {
                    UnitStretch stretch = stretches.Members[m];
                    Joint from = acting.Joints[acting.FromJoint(m)], to = acting.Joints[acting.ToJoint(m)];
                    double length = acting.Length(m);
                    string rate = SheetUnits.Plain(units.From(Quantity.Force, stretch.Stiffness) / units.From(Quantity.Deflection, 1));
                    return (IReadOnlyList<object?>)[member.Name, (to.X - from.X) / length, (to.Y - from.Y) / length, Small(stretch.Stretch), stretch.IsStandIn ? $"{rate}, the mean stands in" : rate, stretch.Force];
                }),
            ]));
        if (stretches.Members.Any(m => m.IsStandIn))
        {
            yield return new ResultBlock.Paragraph("Where no area is given the mean of the others stands in: no other way of dividing reaches that member, and its force does not depend on it.");
        }

        yield return new ResultBlock.Paragraph("A support holds its joint: its reaction is what the members there and the load of 1 leave over.");
        for (int j = 0; j < acting.Joints.Count; j++)
        {
            if (acting.Joints[j].Support is { } support)
            {
                foreach (ResultBlock reaction in Reactions(stretches, j, support, j == truss.PanelPoints[panelPoint]))
                {
                    yield return reaction;
                }
            }
        }

        string Small(double metresPerNewton)
        {
            double shown = units.From(Quantity.Deflection, metresPerNewton) / units.From(Quantity.Force, 1);
            return shown == 0 ? "0" : shown.ToString("0.00000E+0", CultureInfo.InvariantCulture).Replace('-', '−');
        }
    }
}
