using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells the live effect on a part of the floor or a connection: the load along the span, what of it acts across, and its impact.</summary>
internal static class PartLiveTelling
{
    /// <summary>The live effect of a row; nothing where there is none.</summary>
    public static IEnumerable<ResultBlock> Of(PartRow row, BridgeRating rating, DisplayUnits units)
    {
        foreach (PartLive part in row.LiveParts)
        {
            foreach (ResultBlock block in Part(part, row, rating, units))
            {
                yield return block;
            }
        }

        if (row.Beside is { } beside)
        {
            yield return new ResultBlock.Paragraph(PartTelling.BesideOf(beside, row, units));
            foreach (ResultBlock block in Reaction(beside.Part.Part, row, units).Concat(Lateral(beside.Part.Lateral, rating)))
            {
                yield return block;
            }
        }

        if (row.Live is { } live)
        {
            string sum = PartTelling.Value(live, row, units), how = How(row, units);
            yield return SheetUnits.Step(how.Length == 0 || how == sum ? $"LL = {sum}" : $"LL = {how} = {sum}");
        }
    }

    /// <summary>The live effect as a sum of what each part brings whole, times what of it acts.</summary>
    public static string How(PartRow row, DisplayUnits units) => string.Join(" + ", row.LiveParts.Select(p => Product(p, row, units)));

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Product(PartLive part, PartRow row, DisplayUnits units) => part switch
    {
        PartLive.OnFloorbeam { Part: LivePart.OfCrowd } => PartTelling.Value(part.Effect, row, units),
        PartLive.OnTrussed trussed => TrussedTelling.Product(trussed, row, units),
        PartLive.OnFloorbeam => $"{Force(part.Along, units)}·{Told.Number(units.From(Quantity.Length, part.Across))} {units.Symbol(Quantity.Length)}",
        PartLive.OnStrip or PartLive.AtEnd { Shared.Crowd: not null } => PartTelling.Value(part.Effect, row, units),
        PartLive.AtEnd => $"{Force(part.Along, units)}·{Told.Number(part.Across)}",
        _ => $"{PartTelling.Value(part.Along, row, units)}·{Told.Number(part.Across)}",
    };

    private static IEnumerable<ResultBlock> Part(PartLive part, PartRow row, BridgeRating rating, DisplayUnits units) => part switch
    {
        PartLive.OnStringer { IsLane: true } lane => [new ResultBlock.Paragraph($"The lane load on one span brings {PartTelling.Value(lane.Along, row, units)}; one stringer takes {Told.Number(lane.Across)} of it.")],
        PartLive.OnStringer stringer => OnStringer(stringer, row, rating, units),
        PartLive.OnFloorbeam floorbeam => OnFloorbeam(floorbeam, row, rating, units),
        PartLive.OnTrussed trussed => [.. Reaction(trussed.Part, row, units), .. TrussedTelling.Live(trussed, row, units), .. TrussedAcrossTelling.Of(trussed, row, rating, units)],
        PartLive.AtEnd end => AtEnd(end, row, rating, units),
        PartLive.OnPlank plank => OnPlank(plank, row, units),
        PartLive.InTruss truss => InTruss(truss, row, units),
        PartLive.OnStrip strip => [new ResultBlock.Paragraph($"{Capital(LiveLoadWording.Name(strip.Part, units))} on its span, times {(strip.Part is LivePart.OfCrowd ? $"the width that it carries, {Told.Length(strip.Across, units)}" : $"its share, {Told.Number(strip.Across)}")}: {PartTelling.Value(strip.Effect, row, units)}.")],
        _ => [],
    };

    private static IEnumerable<ResultBlock> OnStringer(PartLive.OnStringer part, PartRow row, BridgeRating rating, DisplayUnits units)
    {
        SpanPeak peak = part.Live.Axles!;
        StringerPart stringer = rating.Bridge.Floor!.Stringers.First(s => s.Name == row.Name);
        string what = row.ActsAs == PartEffect.Moment ? "The largest moment anywhere" : peak.Section > 1e-9 ? $"The largest shear {Told.Length(peak.Section, units)} from the support" : "The largest reaction";
        yield return new ResultBlock.Paragraph($"{what} on the span of {Told.Length(stringer.Span, units)}, all axles of {part.Live.Vehicle!.Name} whole: {PartTelling.Value(peak.Effect, row, units)}{(row.ActsAs == PartEffect.Moment ? $", under an axle at {Told.Length(peak.Section, units)} from one end" : "")}, driving to the {Words.Of(peak.Direction)}. The axles on the span:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("from the end", Quantity.Length), new("load", Quantity.Force), new(row.ActsAs == PartEffect.Moment ? "moment" : "shear", PartWords.QuantityOf(row.ActsAs), 3)],
            [.. peak.Axles.Where(a => a.Effect != 0).Select(a => (IReadOnlyList<object?>)[a.Station, a.Load, a.Effect])]));
        yield return new ResultBlock.Paragraph(Take(part, row, stringer, units));
    }

    /// <summary>What one stringer takes of a vehicle, and by which rule.</summary>
    public static string Take(PartLive.OnStringer part, PartRow row, StringerPart stringer, DisplayUnits units)
    {
        StringerTake take = part.Share;
        string lanes = string.Create(CultureInfo.InvariantCulture, $"{take.Lanes} {(take.Lanes == 1 ? "lane" : "lanes")} loaded");
        string moment = take.Table is { } table
            ? $"By {table.Clause.CitationWithMark}, {lanes}, spacing {Told.Length(stringer.Spacing, units)}, one stringer takes {Told.Number(take.Share)} of a vehicle{(table.Divisor is { } divisor ? $" (S/{Told.Factor(units.From(Quantity.Length, divisor))} {(table.PresenceInIt ? "lanes, presence in it" : "wheel lines, half a vehicle each")})" : "")}."
            : $"By the lever rule between stringers {Told.Length(stringer.Spacing, units)} apart, {lanes}, presence factor {Told.Factor(take.Presence)} in it, one stringer takes {Told.Number(take.Share)} of a vehicle.";
        return row.ActsAs switch
        {
            PartEffect.Moment => moment,
            PartEffect.Shear when part.Across == TimberShear.Share(take.Presence / 2, take.Share) =>
                $"{moment} Of timber in shear half of 0.60 of one wheel line, undistributed, and of the distributed shear counts: 0.5·(0.60·{Told.Number(take.Presence / 2)} + {Told.Number(take.Share)}) = {Told.Number(part.Across)}.",
            _ => $"{moment} Of the axle over the support it takes {Told.Number(take.AtSupport)}, since there the deck spreads nothing along the span; of all together {Told.Number(part.Across)}.",
        };
    }

    private static IEnumerable<ResultBlock> OnFloorbeam(PartLive.OnFloorbeam part, PartRow row, BridgeRating rating, DisplayUnits units)
    {
        foreach (ResultBlock block in Reaction(part.Part, row, units))
        {
            yield return block;
        }

        AcrossPlacement place = part.Placement;
        if (part.Part is LivePart.OfCrowd)
        {
            yield return new ResultBlock.Paragraph($"It stands from kerb to kerb and bends the floorbeam of {Told.Length(rating.Bridge.Deck.TrussSpacing!.Value, units)} by {PartTelling.Value(part.Effect, row, units)}.");
            yield break;
        }

        string wheels = place.Wheels.Count == 0 ? "Lane loads are spread over 10 ft each" : $"Wheel lines at {string.Join(", ", place.Wheels.Select(w => Told.Length(w, units)))} from one truss, each with half of the reaction of its vehicle";
        yield return new ResultBlock.Paragraph($"{wheels}, {place.Lanes.ToString(CultureInfo.InvariantCulture)} {(place.Lanes == 1 ? "lane" : "lanes")} loaded, presence factor {Told.Factor(place.Presence)} in it: the moment of the floorbeam of {Told.Length(rating.Bridge.Deck.TrussSpacing!.Value, units)} is largest at {Told.Length(place.Section, units)}, {Told.Number(units.From(Quantity.Length, place.Moment))} {units.Symbol(Quantity.Length)} times the reaction of one vehicle.");
        foreach (ResultBlock block in AcrossTelling.Of(place, row, rating.Bridge.Deck.TrussSpacing!.Value, units))
        {
            yield return block;
        }
    }

    private static IEnumerable<ResultBlock> AtEnd(PartLive.AtEnd part, PartRow row, BridgeRating rating, DisplayUnits units)
    {
        foreach (ResultBlock block in Reaction(part.Shared.Part, row, units))
        {
            yield return block;
        }

        if (part.Shared.Lateral is { } lateral)
        {
            string wheels = lateral.Wheels.Count == 0 ? "" : $", wheel lines at {string.Join(", ", lateral.Wheels.Select(w => Told.Length(w, units)))} from that truss";
            yield return new ResultBlock.Paragraph($"The end that takes most carries {Told.Number(lateral.Value)} of one vehicle's reaction, presence factor {Told.Factor(lateral.Presence)} in it{wheels}{(part.Ends > 1 ? string.Create(CultureInfo.InvariantCulture, $", shared by {part.Ends} hangers") : "")}.");
            foreach (ResultBlock block in Lateral(lateral, rating))
            {
                yield return block;
            }
        }
        else if (part.Shared.Crowd is { } crowd)
        {
            yield return new ResultBlock.Paragraph($"The end that takes most carries {Told.Length(crowd.Width, units)} of its width.");
        }
    }

    // A wheel line, half of a vehicle, by the lever rule; nothing where the share is given or no wheels are told.
    private static IEnumerable<ResultBlock> Lateral(LateralShare? lateral, BridgeRating rating) =>
        lateral is { Wheels.Count: > 0 } && rating.Bridge.Deck.TrussSpacing is { } spacing
            ? [new ResultBlock.Paragraph("A wheel line at a from that truss brings (spacing − a) / (2 · spacing) of its vehicle to it:"), LiveTelling.WheelLines(lateral, spacing)]
            : [];

    private static IEnumerable<ResultBlock> Reaction(LivePart part, PartRow row, DisplayUnits units)
    {
        string at = row.At.Length > 0 ? $" at {row.At}" : "";
        switch (part)
        {
            case LivePart.Axles { Peak: var peak, Vehicle: var vehicle }:
                yield return new ResultBlock.Paragraph($"The floorbeam{at} gets what simple stringer spans of both panels bring: {vehicle.Name} whole, front axle at {Told.Length(peak.Station, units)}, driving to the {Words.Of(peak.Direction)}, brings {Force(peak.Force, units)}. Its axles:");
                yield return new ResultBlock.Grid(new ResultTable(
                    [new("station", Quantity.Length), new("load", Quantity.Force), new("part on the floorbeam", Quantity.Number, 4), new("reaction", Quantity.Force, 3)],
                    [.. peak.Axles.Where(a => a.Effect != 0).Select(a => (IReadOnlyList<object?>)[a.Station, a.Load, a.Ordinate, a.Effect])]));
                break;
            case LivePart.OfCrowd:
                yield return new ResultBlock.Paragraph($"A crowd on both panels beside the floorbeam{at} brings {ResultTable.Figure(units.From(Quantity.LineLoad, part.Force), 3)} {units.Symbol(Quantity.LineLoad)}: so much for each length of its width.");
                break;
            default:
                yield return new ResultBlock.Paragraph($"{LiveLoadWording.Name(part, units)}: on the floorbeam{at} it brings {Force(part.Force, units)}.");
                break;
        }
    }

    private static IEnumerable<ResultBlock> InTruss(PartLive.InTruss part, PartRow row, DisplayUnits units)
    {
        if (part.Shared.Part is LivePart.Axles { Peak: var peak, Vehicle: var vehicle })
        {
            yield return new ResultBlock.Paragraph($"{vehicle.Name} whole on one truss brings {PartTelling.Value(peak.Force, row, units)}, front axle at {Told.Length(peak.Station, units)}, driving to the {Words.Of(peak.Direction)}. Its axles on the influence line of the effect:");
            yield return new ResultBlock.Grid(new ResultTable(
                [new("station", Quantity.Length), new("load", Quantity.Force), new(row.ActsAs == PartEffect.Moment ? "ordinate" : "ordinate [-]", row.ActsAs == PartEffect.Moment ? Quantity.Length : Quantity.Number, 5), new(row.ActsAs == PartEffect.Moment ? "moment" : "force", PartWords.QuantityOf(row.ActsAs), 4)],
                [.. peak.Axles.Where(a => a.Effect != 0).Select(a => (IReadOnlyList<object?>)[a.Station, a.Load, a.Ordinate, a.Effect])]));
        }
        else
        {
            yield return new ResultBlock.Paragraph($"{LiveLoadWording.Name(part.Shared.Part, units)}: {PartTelling.Value(part.Along, row, units)} of one on one truss.");
        }

        yield return new ResultBlock.Paragraph(part.Shared.Lateral is { } lateral
            ? $"The truss carries {Told.Number(lateral.Value)} of it, presence factor {Told.Factor(lateral.Presence)} in it."
            : $"The truss carries {Told.Length(part.Across, units)} of its width.");
    }

    private static IEnumerable<ResultBlock> OnPlank(PartLive.OnPlank part, PartRow row, DisplayUnits units)
    {
        PlankWheel wheel = part.Wheel;
        string load = Force(wheel.Load, units), span = Told.Length(wheel.Span, units), contact = Told.Length(wheel.ContactWidth, units);
        yield return new ResultBlock.Paragraph($"The heaviest wheel of {part.Vehicle.Name}, P = {load}, is b = {contact} wide across traffic on a deck that spans S = {span}, and {Told.Length(wheel.Spread, units)} of deck carries it. The width is that of the formula below for every wheel, whatever the vehicle's own: where its wheel is narrower, the moment is larger, up to b = 0.");
        double onOne = part.Along / (row.ActsAs == PartEffect.Moment ? wheel.Moment : wheel.Shear);
        (string plank, string plankNumber) = Math.Abs(onOne - 1) < 1e-9 ? ("", "") : ("·w/spread", $"·{Told.Number(onOne)}");
        if (row.ActsAs == PartEffect.Moment)
        {
            bool isContinuous = wheel.Clauses.Contains(FloorClauses.ContinuousDeck), isWider = wheel.ContactWidth > wheel.Span;
            string over = isContinuous ? "0.8·" : "";
            yield return isWider
                ? SheetUnits.Step($"M = {over}(P·S/b)·S/8{plank} = {PartTelling.Value(part.Along, row, units)} on one plank, the wheel being wider than the span{(isContinuous ? ", and 0.8 for a deck over more than two spans" : "")}")
                : SheetUnits.Step($"M = {over}P·(S/4 − b/8){plank} = {over}{load}·({span}/4 − {contact}/8){plankNumber} = {PartTelling.Value(part.Along, row, units)} on one plank{(isContinuous ? ", 0.8 for a deck over more than two spans" : "")}");
        }
        else
        {
            yield return SheetUnits.Step($"V = {PartTelling.Value(part.Along, row, units)} on one plank: the reaction with the near edge of the wheel a deck's thickness from the support, and no less than P/2{plank}");
        }

        yield return new ResultBlock.Items("From:", [.. CapacitySheet.From(wheel.Clauses)]);
        if (part.Across != 1)
        {
            yield return new ResultBlock.Paragraph($"The presence factor {Told.Factor(part.Across)} of one loaded lane is not yet in it, and is put on next.");
        }
    }

    private static string Force(double value, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Force, value), 3)} {units.Symbol(Quantity.Force)}";
}
