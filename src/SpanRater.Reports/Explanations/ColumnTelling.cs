using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The column that a member is: lengths, slenderness, what binds its parts, what holds a pony chord.</summary>
internal static class ColumnTelling
{
    /// <summary>K, L, r, KL/r and Pe about both axes at every cut.</summary>
    public static ResultTable Table(MemberResistance resistance, SheetUnits sheet) => new(
        [new("at"), new("buckling"), new("K"), new("L"), new("r"), new("KL/r"), new("Pe"), new("with")],
        [
            .. resistance.Modes.Where(m => m.Axes is not null).DistinctBy(m => m.Place).SelectMany(m => ((string Plane, BucklingAxis Axis)[])[("in plane", m.Axes!.InPlane), ("out of plane", m.Axes.OutOfPlane)],
                (m, a) => (IReadOnlyList<object?>)
                [
                    m.Place ?? "all along", a.Plane, a.Axis.Factor is { } k ? SheetUnits.Plain(k) : "by rule", sheet.Length(a.Axis.Length), sheet.Small(a.Axis.Radius),
                    SheetUnits.Plain(a.Axis.Slenderness), sheet.Force(a.Axis.ElasticForce), With(a.Axis),
                ]),
        ]);

    /// <summary>Where K is from, and the steps to Pe at the cut that governs.</summary>
    public static IEnumerable<ResultBlock> Of(MemberResistance resistance, ModeAtCut governing, SheetUnits sheet)
    {
        MemberMake make = resistance.Make;
        ColumnAxes axes = governing.Axes!;
        double area = governing.Section.Area, modulus = ((MetalMaterial)make.Material!).Modulus!.Value;
        if (make.Section.AsBuilt.IsSingleAngle)
        {
            yield return SingleAngleStep(axes.InPlane, governing.Section, sheet);
        }
        else
        {
            yield return new ResultBlock.Paragraph($"{WhereK(make)}{(governing.Place is { } place ? $" At {place}:" : "")}");
        }

        foreach ((string plane, BucklingAxis axis) in ((string, BucklingAxis)[])[("in plane", axes.InPlane), ("out of plane", axes.OutOfPlane)])
        {
            if (ReferenceEquals(axis, axes.OutOfPlane) && ReferenceEquals(axes.InPlane, axes.OutOfPlane))
            {
                yield break;
            }

            foreach (ResultBlock step in axis.Pony is { } pony ? Pony(pony, make.Pony!, axis, resistance, sheet) : Euler(axis, plane, area, modulus, sheet))
            {
                yield return step;
            }

            foreach (ResultBlock step in axis is { Binding: { } binding, Bound: { } bound } ? Bound(binding, bound, axis, plane, area, modulus, resistance, sheet) : [])
            {
                yield return step;
            }
        }
    }

    private static string With(BucklingAxis axis) => string.Join(", ", new[]
    {
        axis.Pony is null ? "" : "elastic frames",
        axis.Binding switch { Binding.Laced => "lacing", Binding.Battened => "battens", Binding.Stitched => "stitches", _ => "" },
    }.Where(w => w.Length > 0));

    private static string WhereK(MemberMake make)
    {
        string rule = make.Ends is { } ends ? $"K = {SheetUnits.Plain(EffectiveLength.Factor(ends == EndFastening.Pinned ? MemberEnds.Pinned : MemberEnds.Riveted))} for {ends.ToString().ToLowerInvariant()} ends ({ResistanceClauses.EffectiveLength.CitationWithMark})" : "";
        string[] given =
        [
            .. new[] { make.InPlaneFactor is { } x ? $"K in plane = {SheetUnits.Plain(x)} as given" : "", make.OutOfPlaneFactor is { } y && make.Pony is null ? $"K out of plane = {SheetUnits.Plain(y)} as given" : "" }.Where(t => t.Length > 0),
        ];
        return given.Length == 2 ? $"{Told.List(given)} in members.csv." : given.Length == 1 ? $"{given[0]} in members.csv; else {rule}." : $"{rule}.";
    }

    private static IEnumerable<ResultBlock> Euler(BucklingAxis axis, string plane, double area, double modulus, SheetUnits sheet)
    {
        double slenderness = axis.Bound?.WholeSlenderness ?? axis.Slenderness;
        string length = axis.Factor is { } k ? $"KL/r = {SheetUnits.Plain(k)}·{sheet.Small(axis.Length)}/{sheet.Small(axis.Radius)} = {SheetUnits.Plain(slenderness)}" : $"KL/r = {SheetUnits.Plain(slenderness)} by the rule";
        yield return SheetUnits.Step($"{plane}: {length}; Pe = π²·E·A/(KL/r)² = π²·{sheet.Stress(modulus)}·{sheet.Area(area)}/{SheetUnits.Plain(slenderness)}² = {sheet.Force(axis.Bound?.WholeForce ?? axis.ElasticForce)}");
    }

    private static IEnumerable<ResultBlock> Bound(Binding binding, BoundParts bound, BucklingAxis axis, string plane, double area, double modulus, MemberResistance resistance, SheetUnits sheet)
    {
        string part = SheetUnits.Plain(bound.FreeLength / bound.LegRadius), slender = $"a/ri = {sheet.Small(bound.FreeLength)}/{sheet.Small(bound.LegRadius)} = {part}";
        if (binding is Binding.Stitched)
        {
            string share = bound.Separation is { } h ? $"0.82·α²/(1 + α²)·(a/ri)² with α = h/(2·ri) = {SheetUnits.Plain(h / (2 * bound.LegRadius))}" : "(a/ri)²";
            yield return SheetUnits.Step($"{plane}, stitched parts: {slender}; √((KL/r)² + {share}) = {SheetUnits.Plain(axis.Slenderness)}; Pe = {sheet.Force(axis.ElasticForce)}");
            if (BuiltUpColumn.PartIsTooSlender(bound.WholeSlenderness, bound.FreeLength, bound.LegRadius))
            {
                yield return new ResultBlock.Paragraph($"The parts are more slender between stitches than {SheetUnits.Plain(BuiltUpColumn.MostOfPart)} of the member ({ResistanceClauses.PartSlenderness.CitationWithMark}): the rule is used beyond what it is made for.", Strong: true);
            }

            yield return new ResultBlock.Paragraph($"({ResistanceClauses.BuiltUp.CitationWithMark})");
            yield break;
        }

        if (binding is Binding.Laced { Lacing: var lacing } laced)
        {
            yield return SheetUnits.Step($"{plane}, lacing: a = {sheet.Small(lacing.Pitch)}, b = {sheet.Small(lacing.Separation)}, d = √(a² + b²) = {sheet.Small(lacing.BarLength)}, Ad = {(lacing.BarsCut == 1 ? "" : $"{lacing.BarsCut.ToString(CultureInfo.InvariantCulture)}·")}{sheet.Area(lacing.BarArea)}; f = d³/(a·b²·E·Ad) = {sheet.Flexibility(bound.ShearFlexibility!.Value)}");
            if (laced.MissingInRow > 0)
            {
                yield return new ResultBlock.Paragraph($"{laced.MissingInRow.ToString(CultureInfo.InvariantCulture)} missing next to each other lengthen the legs' free length to {sheet.Small(bound.FreeLength)}.", Strong: true);
            }
        }
        else if (binding is Binding.Battened battened)
        {
            yield return SheetUnits.Step($"{plane}, battens: a = {sheet.Small(battened.Pitch)}, b = {sheet.Small(battened.Separation)}, Ib = {sheet.Inertia(battened.BattenInertia)}, Ic = {sheet.Inertia(bound.LegInertia!.Value)}; f = a·b/(12·E·Ib) + a²/(24·E·Ic) = {sheet.Flexibility(bound.ShearFlexibility!.Value)}");
        }

        yield return SheetUnits.Step($"Pe/(1 + f·Pe) = {sheet.Force(BuiltUpColumn.ElasticForce(bound.WholeForce, bound.ShearFlexibility!.Value))}; legs between connections: {slender}, π²·E·A/(a/ri)² = {sheet.Force(axis.LegForce!.Value)}; the lesser, Pe = {sheet.Force(axis.ElasticForce)}, as if KL/r = {SheetUnits.Plain(axis.Slenderness)}");
        yield return new ResultBlock.Paragraph($"({(binding is Binding.Laced ? ResistanceClauses.LacedColumns : ResistanceClauses.BattenedColumns).CitationWithMark})");
        if (binding is Binding.Laced { Lacing: var bars })
        {
            yield return new ResultBlock.Paragraph($"At the capacity each lacing bar has to carry {sheet.Force(bars.BarForce(resistance.Value))}, from 2.5 % of the compression as a shear (common practice); bars and their rivets are not rated here.");
        }
    }

    private static IEnumerable<ResultBlock> Pony(PonyChord chord, PonyHold hold, BucklingAxis axis, MemberResistance resistance, SheetUnits sheet)
    {
        PonyFrame frame = hold.Frame;
        string free = frame.KneeHeight > 0 ? "(h − knee)³" : "h³";
        yield return SheetUnits.Step($"out of plane, a frame of two posts and a floorbeam: h = {sheet.Small(frame.PostHeight)}{(frame.KneeHeight > 0 ? $", knee {sheet.Small(frame.KneeHeight)}" : "")}, Ic = {sheet.Inertia(frame.PostInertia)}, b = {sheet.Small(frame.BeamLength)}, Ib = {sheet.Inertia(frame.BeamInertia)}, E = {sheet.Stress(frame.Modulus)}");
        yield return SheetUnits.Step($"C = E/({free}/(3·Ic) + h²·b/(2·Ib)) = {sheet.Stiffness(frame.Stiffness)}");
        yield return SheetUnits.Step($"Engesser: 2·√(C·E·I/d) = 2·√({sheet.Stiffness(chord.FrameStiffness)}·{sheet.Stress(chord.Modulus)}·{sheet.Inertia(chord.Inertia)}/{sheet.Small(chord.PanelLength)}) = {sheet.Force(chord.EngesserForce)}; one panel: π²·E·I/d² = {sheet.Force(chord.PanelForce)}; K = √({sheet.Force(chord.PanelForce)}/{sheet.Force(chord.EngesserForce)}) = {SheetUnits.Plain(chord.EffectiveLengthFactor)}");
        yield return new ResultBlock.Paragraph(chord.ElasticForce is null
            ? $"K below {SheetUnits.Plain(PonyChord.LeastFactor)}: the formula does not hold, and K = {SheetUnits.Plain(axis.Factor!.Value)}, given under [pony] as read in the guide, is used: Pe = {sheet.Force(axis.Bound?.WholeForce ?? axis.ElasticForce)}."
            : $"Pe = {sheet.Force(axis.Bound?.WholeForce ?? axis.ElasticForce)} ({PonyClauses.FrameStiffness.CitationWithMark}; {PonyClauses.Engesser.CitationWithMark}).");
        double factor = Math.Max(1, axis.Factor ?? 1);
        yield return new ResultBlock.Paragraph($"At the capacity each post has to hold max(0.01/K, 0.003)·P = {sheet.Force(PonyChord.PostForce(resistance.Value, factor))} across the bridge at its top ({PonyClauses.FrameForce.CitationWithMark}); posts and their connections are not rated for it here.", Strong: true);
    }

    private static ResultBlock.Equation SingleAngleStep(BucklingAxis axis, MemberSection section, SheetUnits sheet)
    {
        double plain = axis.Length / axis.Radius;
        SectionShape shape = section.Parts[0].Pieces[0].Shape;
        double connected = shape.AsBuilt(ShapeDimension.Depth)!.Value, outstanding = shape.AsBuilt(ShapeDimension.Width)!.Value;
        string rule = plain <= 80 ? $"72 + 0.75·{SheetUnits.Plain(plain)}" : $"32 + 1.25·{SheetUnits.Plain(plain)}";
        if (connected < outstanding)
        {
            rule = $"the larger of {rule} + 4·(({sheet.SmallFigure(outstanding)}/{sheet.SmallFigure(connected)})² − 1) and 0.95·L/rz = 0.95·{sheet.SmallFigure(axis.Length)}/{sheet.SmallFigure(section.Properties!.LeastRadius)}";
        }

        return SheetUnits.Step($"single angle held by its upright leg: L/r = {sheet.Small(axis.Length)}/{sheet.Small(axis.Radius)} = {SheetUnits.Plain(plain)}; KL/r = {rule} = {SheetUnits.Plain(axis.Slenderness)} ({ResistanceClauses.SingleAngles.CitationWithMark})");
    }
}
