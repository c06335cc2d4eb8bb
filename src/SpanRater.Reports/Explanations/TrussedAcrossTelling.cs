using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How what stands across a trussed floorbeam acts on it: the geometry of beam, posts and rod, the rod's level pull for a load at each place, and the ordinate that follows.</summary>
internal static class TrussedAcrossTelling
{
    /// <summary>The working; nothing where the beam with its rod is not known.</summary>
    /// <param name="part">The load on the line of the effect.</param>
    /// <param name="row">The row.</param>
    /// <param name="rating">The rating.</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<ResultBlock> Of(PartLive.OnTrussed part, PartRow row, BridgeRating rating, DisplayUnits units)
    {
        double span = rating.Bridge.Deck.TrussSpacing!.Value;
        if (rating.Bridge.Floor?.Parts.FirstOrDefault(p => p.Name == row.Name) is not FloorbeamPart { Trussed: { } trussed } of || trussed.With(of.Make, span) is not { } beam)
        {
            yield break;
        }

        foreach (ResultBlock block in Geometry(beam, new SheetUnits(units), units))
        {
            yield return block;
        }

        Quantity quantity = row.ActsAs == PartEffect.Moment ? Quantity.Length : Quantity.Number;
        (string formula, AcrossLine line, (ResultColumn, Func<double, object?>)[] columns) = LineOf(part, row, beam, units);
        (ResultColumn, Func<double, object?>)[] all =
        [
            (new ResultColumn($"∫ M0·y dx [{units.Symbol(Quantity.Length)}3]"), x => SheetUnits.Plain(Cubed(beam.MomentTimesDepth(x), units))), (new ResultColumn("H", Quantity.Number, 5), x => beam.Compression(x)), .. columns,
        ];
        yield return new ResultBlock.Paragraph($"For a load of 1 at a from that truss, ordinate = {formula}:");
        AcrossPlacement place = part.Placement;
        if (place.Wheels.Count > 0)
        {
            yield return AcrossTelling.Wheels(place, row, quantity, line.Ordinate, all);
            yield break;
        }

        // What is spread brings the area of the line below it.
        (double From, double To)[] strips = place.Strips.Count > 0 ? [.. place.Strips.Select(s => (s.From, s.To))] : [(0, span)];
        double[] at = [.. strips.SelectMany(s => (double[])[s.From, s.To]).Concat(line.Breaks).Distinct().Order()];
        yield return new ResultBlock.Grid(new ResultTable(
            [new("a", Quantity.Length), .. all.Select(c => c.Item1), new("ordinate", quantity, 4)],
            [.. at.Select(x => (IReadOnlyList<object?>)[x, .. all.Select(c => c.Item2(x)), line.Ordinate(x)])]));
        if (place.Strips.Count > 0)
        {
            yield return new ResultBlock.Paragraph($"Each lane brings the mean of the line over its width (cubic between these places), times presence {Told.Number(place.Presence, 2)}: {string.Join(" + ", place.Strips.Select(s => Told.Number(units.From(quantity, place.Presence * line.Over(s.From, s.To) / s.Width))))} = {Told.Number(units.From(quantity, place.Moment))}.");
        }
        else
        {
            yield return new ResultBlock.Paragraph($"The crowd brings the area of the line where that adds, between the kerbs: {Told.Number(units.From(quantity, units.From(Quantity.Length, place.Moment)))}, and times what comes of each length of its width {PartTelling.Value(part.Effect, row, units)}.");
        }
    }

    private static IEnumerable<ResultBlock> Geometry(TrussedBeam beam, SheetUnits sheet, DisplayUnits units)
    {
        string length = units.Symbol(Quantity.Length), force = units.Symbol(Quantity.Force);
        double a = beam.EndField, s = beam.PostSpacing, d = beam.Drop, cosine = beam.Cosine;
        double shortening = beam.BendingStiffness / beam.AxialStiffness * beam.Span, rod = beam.BendingStiffness / beam.RodStiffness * ((2 * a / (cosine * cosine * cosine)) + s);
        double whole = beam.DepthSquared + shortening + rod;
        yield return new ResultBlock.Paragraph($"The beam with its rod: from one truss at 0 to the other at L = {sheet.Length(beam.Span)}, where the rod is fastened at the beam's axis; {(beam.Posts == 1 ? "one post" : "two posts")}, a = {sheet.Length(a)} from {(beam.Posts == 1 ? "both ends" : "the nearer end")}, s = {sheet.Length(s)} from post to post; the rod d = {sheet.Length(d)} below the axis at a post, its slope d/a = {SheetUnits.Plain(d / a)}, cos θ = a/√(a² + d²) = {SheetUnits.Plain(cosine)}; y is its depth below the axis, up to d. Sections as built: EI = {SheetUnits.Plain(units.From(Quantity.Force, beam.BendingStiffness) * Squared(1, units))} {force}·{length}2, EA = {sheet.Force(beam.AxialStiffness)}, rod ErAr = {sheet.Force(beam.RodStiffness)}. H, the rod's level pull, presses the beam; by virtual work");
        yield return SheetUnits.Step($"H = ∫ M0·y dx / K, K = ∫ y² dx + EI·L/EA + EI·(2·a/cos³θ + s)/ErAr = {Cube(beam.DepthSquared, units)} + {Cube(shortening, units)} + {Cube(rod, units)} = {Cube(whole, units)} {length}3");
        yield return SheetUnits.Step("∫ y² dx = (2·a/3 + s)·d²; for a load at u from the nearer truss ∫ M0·y dx = d·(a + s)/2·u − d·u³/(6·a) up to a post, and beyond it by v = u − a that of a post + d·s/2·v − d·v²/2");
    }

    private static (string Formula, AcrossLine Line, (ResultColumn, Func<double, object?>)[] Columns) LineOf(PartLive.OnTrussed part, PartRow row, TrussedBeam beam, DisplayUnits units)
    {
        double section = part.Placement.Section;
        switch (row.ActsAs)
        {
            case PartEffect.Moment:
                var pressed = row.Resistance as TrussedResistance;
                double times = part.IsHogging ? pressed?.HoggingCounts ?? 1 : 1, arm = pressed?.Arm ?? 0;
                string sign = part.IsHogging ? "−" : "", by = times == 1 ? "" : $"{SheetUnits.Plain(times)}·";
                return (
                    $"{sign}{by}(M0 − H·y) + {Told.Number(units.From(Quantity.Length, arm))} {units.Symbol(Quantity.Length)}·H, y = {Told.Number(units.From(Quantity.Length, beam.Depth(section)))} {units.Symbol(Quantity.Length)} at x = {Told.Length(section, units)}, M0 that of the simple beam there, a·(L − x)/L or x·(L − a)/L",
                    beam.MomentLine(section, part.IsHogging, times, arm),
                    [(new ResultColumn("M0", Quantity.Length, 4), x => beam.Moment(section, x) + (beam.Depth(section) * beam.Compression(x)))]);
            case PartEffect.Shear:
                // Beside an end or a post, and up or down: the side that gives what is told.
                bool isRight = Math.Abs(Brings(part, beam.ShearLine(section, true, true)) - part.Across) <= Math.Abs(Brings(part, beam.ShearLine(section, false, false)) - part.Across), isUp = isRight;
                double rise = beam.Slope(section, isRight);
                return (
                    $"{(isUp ? "" : "−")}(V0 − H·y′), V0 that of the simple beam {(isRight ? "right" : "left")} of x = {Told.Length(section, units)}, (L − a)/L, less 1 for a load before it; y′ = {SheetUnits.Plain(rise)} the rod's slope there",
                    beam.ShearLine(section, isRight, isUp),
                    [(new ResultColumn("V0", Quantity.Number, 4), x => beam.Shear(section, isRight, x) + (rise * beam.Compression(x)))]);
            default:
                return ($"H/cos θ, cos θ = {SheetUnits.Plain(beam.Cosine)}", beam.RodLine, []);
        }
    }

    // The wheels of the vehicle rated are the first two or the last; of lanes the mean of the line.
    private static double Brings(PartLive.OnTrussed part, AcrossLine line)
    {
        AcrossPlacement place = part.Placement;
        return place.Wheels.Count > 0 ? place.Presence * place.Wheels.Sum(line.Ordinate) / 2 : place.Presence * place.Strips.Sum(s => line.Over(s.From, s.To) / s.Width);
    }

    private static string Cube(double cube, DisplayUnits units) => SheetUnits.Plain(Cubed(cube, units));

    private static double Cubed(double cube, DisplayUnits units) => units.From(Quantity.Length, 1) * Squared(cube, units);

    private static double Squared(double value, DisplayUnits units) => value * units.From(Quantity.Length, 1) * units.From(Quantity.Length, 1);
}
