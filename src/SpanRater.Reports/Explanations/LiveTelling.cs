using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells the live force of a rating: each part on the influence line, what of it this truss carries, and its impact.</summary>
internal static class LiveTelling
{
    /// <summary>The live force of a row; nothing where there is none.</summary>
    public static IEnumerable<ResultBlock> Of(MemberRow row, BridgeRating rating, DisplayUnits units)
    {
        if (row.Live is not { } live)
        {
            return [];
        }

        if (row.Peak is { Rods: not null } peak)
        {
            return [WithRods(row, peak, live, units), Axles(peak), .. Lateral(row.Share!, rating.Bridge.Deck, "vehicle", units)];
        }

        return row.Effect is { } effect ? OfEffect(row, effect, rating, units) : [];
    }

    /// <summary>The live force as a sum of what each part brings whole, times what of it this truss carries.</summary>
    public static string How(SharedEffect effect, DisplayUnits units) => effect.Parts is [{ Crowd: not null } crowd]
        ? $"{ResultTable.Figure(units.From(Quantity.LineLoad, crowd.Part.Force), 4).Replace('-', '−')} · {ResultTable.Figure(units.From(Quantity.Length, crowd.Share), 4)}"
        : string.Join(" + ", effect.Parts.Select(p => $"{Signed(p.Part.Force, units)} · {Told.Number(p.Share, 4)}"));

    /// <summary>Where the allowance of a row is from.</summary>
    public static string Impact(MemberRow row, BridgeRating rating, DisplayUnits units) =>
        row.Effect is { Parts.Count: > 1 } effect && effect.Parts.Select(p => p.Impact.Value).Distinct().Count() > 1
            ? "on all parts together, since they do not take the same; see below"
            : ImpactTelling.Of(row.Effect?.Parts[0].Impact.Reason ?? OfRods(row, rating), row, rating, row.LoadedLength, units);

    private static ResultBlock.Paragraph WithRods(MemberRow row, Peak peak, double live, DisplayUnits units) => new(
        $"LL = {Words.ForceInWords(live, units)}: what dead load and vehicle bring together, less what the dead load brings alone. The truss carries {Told.Number(row.Share!.Value, 4)} of every axle, and the table has these loads. The front axle stands at {Told.Length(peak.Station, units)}, driving to the {Words.Of(peak.Direction)}:");

    private static IEnumerable<ResultBlock> OfEffect(MemberRow row, SharedEffect effect, BridgeRating rating, DisplayUnits units)
    {
        foreach (SharedPart part in effect.Parts)
        {
            foreach (ResultBlock block in Part(part, row.Member.Name, rating.Crossing.Lines.Members[row.MemberIndex].Line, units))
            {
                yield return block;
            }
        }

        LateralShare? told = null;
        foreach (SharedPart part in effect.Parts)
        {
            if (part.Lateral is { } lateral && lateral != told)
            {
                foreach (ResultBlock block in Lateral(lateral, rating.Bridge.Deck, part.Part is LivePart.OfLane or LivePart.PointOfLane ? "lane" : "vehicle", units))
                {
                    yield return block;
                }

                told = lateral;
            }
            else if (part.Crowd is { } crowd)
            {
                yield return Crowd(crowd, rating.Bridge.Deck, units);
            }
        }

        if (effect.Parts.Count > 1)
        {
            yield return new ResultBlock.Paragraph("What this truss carries of each part, and with its impact:");
            yield return new ResultBlock.Grid(new ResultTable(
                [new("part"), new("whole", Quantity.Force, 3), new("share", Quantity.Number, 4), new("on this truss", Quantity.Force, 3), new("IM", Quantity.Number, 3), new("with impact", Quantity.Force, 3), new("impact from")],
                [
                    .. effect.Parts.Select(p => (IReadOnlyList<object?>)
                        [LiveLoadWording.Name(p.Part, units), p.Part.Force, p.Share, p.Force, p.Impact.Value, p.WithImpact, ImpactTelling.Of(p.Impact.Reason, row, rating, p.Part.LoadedLength, units)]),
                    ["sum", null, null, effect.Force, effect.Impact, effect.WithImpact, ""],
                ]));
        }

        string sum = $"LL = {How(effect, units)} = {Signed(effect.Force, units)}";
        yield return new ResultBlock.Equation(
            $"{sum} {units.Symbol(Quantity.Force)}",
            $"{sum.Replace("·", "\\cdot", StringComparison.Ordinal).Replace('−', '-')}\\ \\text{{{units.Symbol(Quantity.Force)}}}");
        foreach (SharedEffect other in effect.Others)
        {
            string brings = Words.ForceInWords(other.WithImpact, units);
            yield return new ResultBlock.Paragraph(Math.Abs(other.WithImpact) < Math.Abs(effect.WithImpact) * (1 - 1e-9)
                ? $"{What(other, units)} would bring {brings} to this truss with impact, less than the {Words.ForceInWords(effect.WithImpact, units)} of {What(effect, units, begins: false)}: it does not govern here."
                : $"{What(other, units)} would bring the same to this truss, {brings} with impact.");
        }

        if (row.Beside is { } beside)
        {
            yield return new ResultBlock.Paragraph(
                $"{beside.Vehicle.Name} in the next lane, at its own worst place: {Words.ForceInWords(beside.Part.Part.Force, units)} whole, times {Told.Number(beside.Part.Share, 4)} gives {Words.ForceInWords(beside.Part.Force, units)} on this truss; with γN = {Told.Factor(beside.LiveFactor)} and IM = {Told.Number(beside.Part.Impact.Value, 3)} it takes {Figure(beside.Factored, units)} {units.Symbol(Quantity.Force)} of the capacity. Its axles, front axle at {Told.Length(((LivePart.Axles)beside.Part.Part).Peak.Station, units)}, driving to the {Words.Of(((LivePart.Axles)beside.Part.Part).Peak.Direction)}, and its wheel lines:");
            yield return Axles(((LivePart.Axles)beside.Part.Part).Peak);
            yield return WheelLines(beside.Part.Lateral!, rating.Bridge.Deck.TrussSpacing!.Value);
        }
    }

    private static IEnumerable<ResultBlock> Part(SharedPart shared, string member, InfluenceLine line, DisplayUnits units)
    {
        switch (shared.Part)
        {
            case LivePart.Axles { Peak: var peak, Vehicle: var vehicle }:
                yield return new ResultBlock.Paragraph($"{vehicle.Name}: the whole vehicle on one truss brings {Words.ForceInWords(peak.Force, units)}, front axle at {Told.Length(peak.Station, units)}, driving to the {Words.Of(peak.Direction)}. Each axle, from the front back, on the influence line of {member}:");
                yield return Axles(peak);
                break;
            case LivePart.Tracks { Vehicle: var vehicle, Peak: var patch }:
                double perLength = vehicle.Weight / vehicle.Length;
                yield return new ResultBlock.Paragraph($"{vehicle.Name}: both tracks, {Told.Length(vehicle.Length, units)} long, lie {LiveLoadWording.Stretch(patch.Stretch, units)}, where the ordinates under their ends are equal or an end stands on a panel point. {LineLoad(perLength, units)} times the area of the line under them, {Area(patch.Force / perLength, units)}, gives {Words.ForceInWords(patch.Force, units)}. The line there:");
                yield return Corners(line, [patch.Stretch]);
                break;
            case LivePart.OfLane { Load: var load }:
                yield return new ResultBlock.Paragraph($"Lane load of {LineLoad(load.Intensity, units)} on every stretch of the line in this sense, {LiveLoadWording.Place(shared.Part, units)}: times the area of the line there, {Area(load.Area, units)}, it gives {Words.ForceInWords(load.Effect, units)} of one lane on one truss. The line there:");
                yield return Corners(line, load.Stretches);
                break;
            case LivePart.PointOfLane point:
                yield return new ResultBlock.Paragraph($"With the lane load, {Figure(point.Load, units)} {units.Symbol(Quantity.Force)} at {Told.Length(point.Station, units)}, where the ordinate is largest ({Told.Number(point.Ordinate, 5).Replace('-', '−')}): {Words.ForceInWords(point.Force, units)}.");
                break;
            case LivePart.OfCrowd { Crowd: var crowd, Load: var load }:
                string rule = crowd.Intensity is ConstantPressure ? "" : $", by {crowd.Intensity.Name} for a loaded length of {Told.Length(load.Length, units)} ({crowd.Intensity.Source})";
                yield return new ResultBlock.Paragraph($"Crowd of {ResultTable.Figure(units.From(Quantity.Pressure, load.Intensity), 3)} {units.Symbol(Quantity.Pressure)}{rule} on the stretches of the line in this sense, {LiveLoadWording.Place(shared.Part, units)}: times the area of the line there, {Area(load.Area, units)}, it gives {ResultTable.Figure(units.From(Quantity.LineLoad, load.Effect), 4).Replace('-', '−')} {units.Symbol(Quantity.Force)} for each {units.Symbol(Quantity.Length)} of its width. The line there:");
                yield return Corners(line, load.Stretches);
                break;
        }
    }

    private static string What(SharedEffect effect, DisplayUnits units, bool begins = true)
    {
        string name = string.Join(" with ", effect.Parts.Select(p => p.Part is LivePart.PointOfLane point ? $"its {Told.Factor(units.From(Quantity.Force, point.Load))} {units.Symbol(Quantity.Force)}" : p.Part is LivePart.OfLane ? $"the {LiveLoadWording.Name(p.Part, units)}" : LiveLoadWording.Name(p.Part, units)));
        return begins ? char.ToUpperInvariant(name[0]) + name[1..] : name;
    }

    // The line is straight between these, so that its area follows from them.
    private static ResultBlock.Grid Corners(InfluenceLine line, IEnumerable<DeckStretch> stretches) => new(new ResultTable(
        [new("station", Quantity.Length), new("ordinate", Quantity.Number, 5)],
        [
            .. stretches.SelectMany(s => line.Stations.Where(x => x > s.Left && x < s.Right).Prepend(s.Left).Append(s.Right))
                .Select(x => (IReadOnlyList<object?>)[x, line.OrdinateAt(x)]),
        ]));

    private static ResultBlock.Grid Axles(Peak peak) => new(new ResultTable(
        [new("axle"), new("station", Quantity.Length), new("load", Quantity.Force, 3), new("ordinate", Quantity.Number, 5), new("load × ordinate", Quantity.Force, 3)],
        [
            .. peak.Axles.Select((a, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), a.Station, a.Load, a.Ordinate, a.Effect]),
            .. peak.Rods is { } rods ? (IEnumerable<IReadOnlyList<object?>>)[[RodWording.DeadChange, null, null, null, rods.DeadShift]] : [],
            ["sum", null, peak.Axles.Sum(a => a.Load), null, peak.Force],
        ]));

    /// <summary>How the share of one truss follows by the lever rule, or that it is given.</summary>
    public static IEnumerable<ResultBlock> Lateral(LateralShare share, Deck deck, string what, DisplayUnits units)
    {
        if (share.Lanes == 0 || deck.TrussSpacing is not { } spacing)
        {
            yield return new ResultBlock.Paragraph($"Share of this truss: {Told.Number(share.Value, 4)}, given as truss_share in bridge.toml, presence in it.");
            yield break;
        }

        bool strips = share.Strips.Count > 0;
        yield return new ResultBlock.Paragraph(strips
            ? $"Share of this truss in the lane load by the lever rule: {(share.Lanes == 1 ? "one lane" : $"{share.Lanes} lanes")}, {Told.Length(share.Strips[0].Width, units)} wide, from the kerb on, trusses {Told.Length(spacing, units)} apart. A lane whose middle lies at a from this truss brings (spacing − a) / spacing to it:"
            : $"Share of this truss by the lever rule: {(share.Lanes == 1 ? $"one {what}" : share.Wheels.Count < 2 * share.Lanes ? $"the {what} in one of {share.Lanes} lanes" : $"{share.Lanes} {what}s abreast")}, the nearest wheel line {Told.Length(share.WheelToKerb, units)} from the kerb, which is {Kerb(share.Wheels[0] - share.WheelToKerb, units)} this truss, trusses {Told.Length(spacing, units)} apart. A wheel line, half of a vehicle, that stands at a from this truss brings (spacing − a) / (2 · spacing) to it:");
        yield return WheelLines(share, spacing);
    }

    private static string Kerb(double distance, DisplayUnits units) => distance < 0 ? $"{Told.Length(-distance, units)} beyond" : $"{Told.Length(distance, units)} from";

    /// <summary>The wheel lines or lanes of a share, what each brings, and their sum with the presence factor.</summary>
    public static ResultBlock.Grid WheelLines(LateralShare share, double spacing)
    {
        bool strips = share.Strips.Count > 0;
        (double At, double Brings)[] lines = strips
            ? [.. share.Strips.Select(s => (s.Middle, (spacing - s.Middle) / spacing))]
            : [.. share.Wheels.Select(w => (w, (spacing - w) / (2 * spacing)))];
        return new ResultBlock.Grid(new ResultTable(
            [new(strips ? "lane" : "wheel line"), new("a, from this truss", Quantity.Length), new("brings", Quantity.Number, 4)],
            [
                .. lines.Select((l, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), l.At, l.Brings]),
                ["sum", null, lines.Sum(l => l.Brings)],
                [$"times presence factor {Told.Number(share.Presence, 2)}", null, share.Value],
            ]));
    }

    private static ResultBlock.Paragraph Crowd(CrowdShare crowd, Deck deck, DisplayUnits units) => new(
        $"Across the deck the crowd stands from {Told.Length(crowd.Strip.From, units)} to {Told.Length(crowd.Strip.To, units)} from this truss, its middle at a = {Told.Length(crowd.Strip.Middle, units)}; trusses {Told.Length(deck.TrussSpacing!.Value, units)} apart. By the lever rule this truss carries width · (spacing − a) / spacing = {ResultTable.Figure(units.From(Quantity.Length, crowd.Width), 4)} {units.Symbol(Quantity.Length)} of it; no presence factor is applied to a crowd.");

    private static ImpactReason OfRods(MemberRow row, BridgeRating rating) =>
        row.Member.IsTimber ? ImpactReason.NoneOnTimber
        : rating.Bridge.Rating.Impact is not null ? ImpactReason.Given
        : !rating.Method.RuleOf(row.Vehicle.Class).HasImpact ? ImpactReason.NoneOnClass
        : rating.Bridge.Rating.CrawlSpeed is not null ? ImpactReason.AtCrawl
        : ImpactReason.OfMethod;

    private static string LineLoad(double load, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.LineLoad, load), 4)} {units.Symbol(Quantity.LineLoad)}";

    private static string Area(double area, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Length, area), 4).Replace('-', '−')} {units.Symbol(Quantity.Length)}";

    private static string Signed(double value, DisplayUnits units) => Figure(value, units).Replace('-', '−');

    private static string Figure(double value, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Force, value), 3);
}
