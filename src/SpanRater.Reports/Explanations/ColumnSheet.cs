using System.Globalization;
using SpanRater.Files;
using static SpanRater.Reports.CapacitySheet;

namespace SpanRater.Reports;

/// <summary>A column on the capacity sheet: slenderness about both axes, what holds the parts together, and the curve.</summary>
internal static class ColumnSheet
{
    public static IEnumerable<ResultBlock> Of(ColumnAxes axes, ColumnStrength column, MemberMake make, MemberSection section, DisplayUnits units)
    {
        double modulus = (make.Material as MetalMaterial)!.Modulus!.Value;
        yield return new ResultBlock.Items(
            $"Buckling, with A = {Area(column.Area, units)} and E = {ResultTable.Figure(units.From(Quantity.Stress, modulus), 0)} {units.Symbol(Quantity.Stress)}:",
            [$"in the plane of the truss: {Axis(axes.InPlane, column.Area, modulus, units)}", $"out of the plane of the truss: {Axis(axes.OutOfPlane, column.Area, modulus, units)}"]);
        foreach (string line in new[] { axes.InPlane, axes.OutOfPlane }.SelectMany(a => Pony(a, units)).Distinct())
        {
            yield return new ResultBlock.Paragraph(line);
        }

        yield return new Equation($"Po = A Fy = {Area(column.Area, units)} × {SectionWording.Stress(column.Yield, units)} = {Force(column.SquashForce, units)}").Block;
        yield return new Equation($"Pe = {Force(column.ElasticForce, units)}, the lesser of both; Pe/Po = {Number(column.ElasticForce / column.SquashForce)}").Block;
        yield return new Equation($"{Curve(column, make, units)} = {Bare(column.Nominal, units)}{Factors(column)} = {Force(column.Value, units)}").Block;
    }

    private static string Axis(BucklingAxis axis, double area, double modulus, DisplayUnits units)
    {
        string length = Told.Length(axis.Length, units), radius = SectionWording.Length(axis.Radius, units), pe = Force(axis.ElasticForce, units);
        double pony = axis.Pony is { } chord ? chord.ElasticForce ?? chord.ElasticForceFor(axis.Factor!.Value) : 0;
        string plain = axis.Pony is not null
            ? string.Create(CultureInfo.InvariantCulture, $"a chord on the springs of its frames, {Force(pony, units)} as below, KL/r = π √(E A/Pe) = {ElasticBuckling.Slenderness(modulus, area, pony):0.0}")
            : axis.Factor is { } factor
            ? string.Create(CultureInfo.InvariantCulture, $"KL/r = {Number(factor)} × {length} / {radius} = {factor * axis.Length / axis.Radius:0.0}")
            : string.Create(CultureInfo.InvariantCulture, $"a single angle fastened by one leg, L/r = {length} / {radius} = {axis.Length / axis.Radius:0.0}, taken as KL/r = {axis.Slenderness:0.0}");
        double whole = axis.Pony is not null ? ElasticBuckling.Slenderness(modulus, area, pony) : axis.Factor is { } k ? k * axis.Length / axis.Radius : axis.Slenderness;
        double one = ElasticBuckling.Force(modulus, area, whole);
        return axis.Binding switch
        {
            null when axis.Pony is not null => $"{plain}, Pe = {pe}",
            null => $"{plain}, Pe = π² E A/(KL/r)² = {pe}",
            Binding.Stitched stitched => string.Create(CultureInfo.InvariantCulture, $"{plain} as one piece; a part between connectors {SectionWording.Length(stitched.Pitch, units)} apart has a/ri = {Math.Sqrt(Math.Max(0, (axis.Slenderness * axis.Slenderness) - (whole * whole))):0.0}, together √((KL/r)² + (a/ri)²) = {axis.Slenderness:0.0}, Pe = {pe}"),
            Binding.Laced laced => $"{plain} as one piece, {Force(one, units)}; {Lacing(laced, modulus, one, units)}{Legs(axis, units)}; the lesser, Pe = {pe}",
            _ => $"{plain} as one piece, {Force(one, units)}; with the give of battens{Legs(axis, units)}; the lesser, Pe = {pe}",
        };
    }

    private static string Lacing(Binding.Laced laced, double modulus, double one, DisplayUnits units)
    {
        Lacing lacing = laced.Lacing;
        double give = lacing.ShearFlexibility(modulus) * one;
        return $"with lacing a = {SectionWording.Length(lacing.Pitch, units)}, b = {SectionWording.Length(lacing.Separation, units)}, d = {SectionWording.Length(lacing.BarLength, units)}, {(lacing.BarsCut == 1 ? "one bar" : string.Create(CultureInfo.InvariantCulture, $"{lacing.BarsCut} bars"))} of {Area(lacing.BarArea, units)} at a cut{Missing(laced)}, "
            + $"f Pe = d³ Pe/(a b² E Ad) = {Number(give)}, Pe/(1 + f Pe) = {Force(one / (1 + give), units)}";
    }

    private static string Missing(Binding.Laced laced) => laced.MissingInRow == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $", {laced.MissingInRow} missing next to each other");

    private static string Legs(BucklingAxis axis, DisplayUnits units) => axis.LegForce is { } legs ? $"; the legs alone buckle between them at {Force(legs, units)}" : "";

    private static IEnumerable<string> Pony(BucklingAxis axis, DisplayUnits units)
    {
        if (axis.Pony is { } chord)
        {
            yield return $"The frames of floorbeam and posts hold the chord with {Stiffness(chord.FrameStiffness, units)} each, {Told.Length(chord.PanelLength, units)} apart. "
                + $"A panel held at both ends would take π² E I/d² = {Force(chord.PanelForce, units)}, the chord on its frames 2 √(C E I/d) = {Force(chord.EngesserForce, units)}: K = {Number(chord.EffectiveLengthFactor)}. It is an elastic force that goes into the curve, no capacity ({PonyClauses.Engesser.CitationWithMark}). "
                + $"Each post must hold {(axis.Factor is { } k ? $"{Number(Math.Max(0.01 / k, 0.003))} of the compression" : "part of the compression")} across the bridge at its top; that is not rated here.";
        }
    }

    private static string Stiffness(double value, DisplayUnits units) => units == DisplayUnits.Us
        ? $"{ResultTable.Figure(value / 175_126.835, 3)} kip/in"
        : $"{ResultTable.Figure(value / 1000, 1)} N/mm";

    // The form is told by the clause that it rests on.
    private static string Curve(ColumnStrength column, MemberMake make, DisplayUnits units)
    {
        Clause clause = column.Clauses[0];
        bool inelastic = column.Range == ColumnRange.Inelastic;
        double ratio = column.SquashForce / column.ElasticForce;
        if (clause == ResistanceClauses.ColumnLrfr)
        {
            return inelastic ? $"Pe/Po is 0.44 or more: 0.658^(Po/Pe) Po = 0.658^{Number(ratio)} × {Bare(column.SquashForce, units)}" : $"Pe/Po is below 0.44: 0.877 Pe = 0.877 × {Bare(column.ElasticForce, units)}";
        }

        if (clause == ResistanceClauses.ColumnAsrByYear && (make.Material as MetalMaterial)?.Strength?.Row?.AllowableColumn is { } printed)
        {
            double slenderness = ElasticBuckling.Slenderness(PublishedStrength.Modulus, column.Area, column.ElasticForce);
            string at = string.Create(CultureInfo.InvariantCulture, $"KL/r = π √(E A/Pe) = {slenderness:0.0}");
            return inelastic
                ? string.Create(CultureInfo.InvariantCulture, $"{at}: A (a − b (KL/r)²), a = {printed.AtZero / PublishedStrength.PoundPerSquareInch:0} psi, b = {printed.Fall / PublishedStrength.PoundPerSquareInch:0.00} psi")
                : $"{at}: A × 135,008,740 psi/(KL/r)², not above the end of the parabola";
        }

        return clause == FactorClauses.EuropeanBuckling
            ? $"λ = √(Po/Pe) = {Number(Math.Sqrt(ratio))}: χ A fy = {Number(column.Nominal / column.SquashForce)} × {Bare(column.SquashForce, units)}"
            : inelastic ? $"Pe/Po is 0.5 or more: Po (1 − Po/(4 Pe)) = {Bare(column.SquashForce, units)} × (1 − {Number(ratio)}/4)" : "Pe/Po is below 0.5: Pe";
    }
}
