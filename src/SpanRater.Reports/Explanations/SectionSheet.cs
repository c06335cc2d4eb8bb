using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The section of a member or a beam: its parts, its material, and as built and as found side by side at every cut.</summary>
internal static class SectionSheet
{
    /// <summary>The sheet of a truss member as a chapter of its own.</summary>
    public static IEnumerable<ResultBlock> Of(MemberMake make, string member, string? truss, DisplayUnits units) =>
        Sheet(make.Section, make.Material, $"{member} is made of{(truss is null ? "" : $", {truss} truss")}", "x runs across the member, out of the plane of the truss; y in that plane", isBeam: false, units);

    /// <summary>The sheets of a part of the floor: of the beam or the bars, and of the rod of a trussed one; none where it names no section.</summary>
    public static IEnumerable<ResultBlock> Of(FloorPart part, DisplayUnits units)
    {
        BeamMake? beam = part switch { DeckPart deck => deck.Make, StringerPart stringer => stringer.Make, FloorbeamPart floorbeam => floorbeam.Make, _ => null };
        MemberMake? bars = part switch { HangerPart hanger => hanger.Make, FloorbeamPart { Trussed: { } trussed } => trussed.Rod, _ => null };
        string one = part is DeckPart or HangerPart { Count: > 1 } ? $"one of {part.Name} is made of" : part is HangerPart ? $"{part.Name} are made of" : $"{part.Name} are made of";
        IEnumerable<ResultBlock> ofBeam = beam is null ? [] : Sheet(beam.Section, beam.Material, one, "x runs across the beam, y upward", isBeam: true, units);
        IEnumerable<ResultBlock> ofBars = bars is null ? [] : Sheet(bars.Section, bars.Material, part is HangerPart ? one : $"the rod of {part.Name} is made of", "x and y run across it", isBeam: false, units);
        return ofBeam.Concat(ofBars);
    }

    private static IEnumerable<ResultBlock> Sheet(FoundSection found, Material? material, string what, string axes, bool isBeam, DisplayUnits units)
    {
        var sheet = new SheetUnits(units);
        MemberSection section = found.AsBuilt;
        yield return new ResultBlock.Heading($"What {what}: section {section.Name}");
        yield return new ResultBlock.Paragraph(Material(material, sheet, units));
        yield return new ResultBlock.Paragraph($"{axes}. Dimensions and positions in {sheet.SmallUnit}. A and I of a piece are those of its outline, or of its table where its shape is published. Together A = ΣA, centroid x = ΣA·x/A, Ix = Σ(Ix of a piece + A·(its y − y)²), the same across; r = √(I/A), S = Ix over the distance to the fibre.");
        yield return new ResultBlock.Grid(Parts(section, sheet));
        yield return new ResultBlock.Grid(SideBySide(found, isBeam, sheet));
        if (found.AllAlong.Properties is null)
        {
            yield return new ResultBlock.Paragraph("Where parts lie is not given for all of them, so that there is an area and no centroid, moment of inertia or radius of gyration.");
        }

        if (section.NetArea is null)
        {
            yield return new ResultBlock.Paragraph($"Net area: not known, since holes, head or thread are not given for {Told.List(section.PartsWithoutNetArea)}.");
        }

        Observation[] seen = [.. found.Observations];
        yield return seen.Length == 0
            ? new ResultBlock.Paragraph("Nothing was written down as seen on it: as found is as built.")
            : new ResultBlock.Items("What was seen, and made these:", [.. seen.Select(MakeWording.Of)]);
        if (found.Cuts.MinBy(c => c.AsRead.Area) is { } worst && worst.AsRead.Area < section.Area * (1 - 1e-9))
        {
            yield return new ResultBlock.Paragraph($"Least area: at {worst.Place}, {sheet.Area(worst.AsRead.Area)} of {sheet.Area(section.Area)} as built. What is left at a cut is counted as if it were so all along the member.");
        }
    }

    /// <summary>Columns of the comparison: as built, away from the cuts where pieces are slack, and each cut.</summary>
    public static IEnumerable<(string Name, MemberSection Section, FoundCut? Cut)> Places(FoundSection found)
    {
        yield return ("as built", found.AsBuilt, null);
        if (found.Slack.Any())
        {
            yield return ("all along", found.AllAlong, null);
        }

        foreach (FoundCut cut in found.Cuts)
        {
            yield return (cut.Place, cut.AsRead, cut);
        }
    }

    private static string Material(Material? material, SheetUnits sheet, DisplayUnits units) => material switch
    {
        null => $"{MissingDatumWording.Of(new MissingDatum.NoMaterial())}.",
        MetalMaterial metal => $"Material {metal.Name}: {MakeWording.StrengthOf(metal, units)}. E = {(metal.Modulus is { } e ? $"{sheet.Stress(e)}{(metal.GivenModulus is null ? ", that of steel" : ", as given")}" : "not known")}.",
        TimberMaterial timber => $"Material {timber.Name}: {MakeWording.StrengthOf(timber)}. Before any adjustment Fb {sheet.Stress(timber.Values.Bending)}, Ft {sheet.Stress(timber.Values.Tension)}, Fc {sheet.Stress(timber.Values.Compression)}, Emin {sheet.Stress(timber.Values.LeastModulus)}.",
        _ => $"Material {material.Name}.",
    };

    private static ResultTable Parts(MemberSection section, SheetUnits sheet) => new(
        [new("part"), new("shape"), new("pieces"), new("dimensions"), new("centroid of each"), new($"Ix, Iy of each [{sheet.InertiaUnit}]"), new($"area of all [{sheet.AreaUnit}]"), new("holes")],
        [
            .. section.Parts.Select(p => (IReadOnlyList<object?>)
            [
                p.Name, ShapeOf(p), p.Pieces.Count.ToString(CultureInfo.InvariantCulture), Dimensions(p.Pieces[0].Shape, sheet), Positions(p, section.Parts.Count == 1, sheet), Moments(p, sheet), sheet.AreaFigure(p.Area), Holes(p, sheet),
            ]),
        ]);

    private static string ShapeOf(SectionPart part) => part.Pieces[0].Shape is { Published: { } row } ? row.Name : part.Pieces[0].Shape.Kind.Name;

    private static string Dimensions(SectionShape shape, SheetUnits sheet) => string.Join(", ", shape.Kind.Needed.Concat(shape.Kind.Optional)
        .Select(d => (d, Value: shape.AsBuilt(d))).Where(d => d.Value is not null).Select(d => $"{MakeWording.Of(d.d)} {sheet.SmallFigure(d.Value!.Value)}"));

    private static string Positions(SectionPart part, bool alone, SheetUnits sheet) => part.Pieces.Any(p => p.Placement is null)
        ? part.Pieces.Count == 1 && alone ? "alone" : "not given"
        : string.Join("; ", part.Pieces.Select(p => $"({sheet.SmallFigure(p.Placed!.X)}, {sheet.SmallFigure(p.Placed.Y)})"));

    // Those as it lies; pieces of one part are alike but for how they are turned.
    private static string Moments(SectionPart part, SheetUnits sheet) => string.Join("; ", part.Pieces
        .Select(p => p.Placed is { } placed ? $"{sheet.InertiaFigure(placed.Ix)}, {sheet.InertiaFigure(placed.Iy)}" : "–").Distinct());

    private static string Holes(SectionPart part, SheetUnits sheet) => part.Holes switch
    {
        null => part.NetArea is null ? "not given" : "by the shape",
        { Count: 0 } => "none",
        { } path => $"{path.Count.ToString(CultureInfo.InvariantCulture)} of {sheet.SmallFigure(path.Diameter)} in each piece{string.Concat(path.Staggers.Select(s => $", stagger s {sheet.SmallFigure(s.Pitch)} g {sheet.SmallFigure(s.Gauge)}"))}",
    };

    private static ResultTable SideBySide(FoundSection found, bool isBeam, SheetUnits sheet)
    {
        (string Name, MemberSection Section, FoundCut? Cut)[] places = [.. Places(found)];
        IReadOnlyList<object?> Row(string what, Func<(string Name, MemberSection Section, FoundCut? Cut), string?> of) => [what, .. places.Select(p => (object?)(of(p) ?? "–"))];
        IReadOnlyList<object?> Property(string what, Func<SectionProperties, string> of) => Row(what, p => p.Section.Properties is { } properties ? of(properties) : null);
        return new ResultTable(
            [new(""), .. places.Select(p => new ResultColumn(p.Name))],
            [
                Row($"area A [{sheet.AreaUnit}]", p => sheet.AreaFigure(p.Section.Area)),
                Row($"net area An [{sheet.AreaUnit}]", p => p.Section.NetArea is { } net ? sheet.AreaFigure(net) : null),
                Property($"centroid x [{sheet.SmallUnit}]", p => sheet.SmallFigure(p.X)),
                Property($"centroid y [{sheet.SmallUnit}]", p => sheet.SmallFigure(p.Y)),
                Row($"shift in x [{sheet.SmallUnit}]", p => p.Cut?.ShiftX is { } shift ? sheet.SmallFigure(shift) : null),
                Row($"shift in y [{sheet.SmallUnit}]", p => p.Cut?.ShiftY is { } shift ? sheet.SmallFigure(shift) : null),
                Property($"Ix [{sheet.InertiaUnit}]", p => sheet.InertiaFigure(p.Ix)),
                Property($"Iy [{sheet.InertiaUnit}]", p => sheet.InertiaFigure(p.Iy)),
                .. isBeam
                    ? (IReadOnlyList<object?>[])[Property($"to the top fibre [{sheet.SmallUnit}]", p => sheet.SmallFigure(p.Ix / p.TopModulus)), Property($"to the bottom fibre [{sheet.SmallUnit}]", p => sheet.SmallFigure(p.Ix / p.BottomModulus)), Property($"S of the top fibre [{sheet.ModulusUnit}]", p => sheet.ModulusFigure(p.TopModulus)), Property($"S of the bottom fibre [{sheet.ModulusUnit}]", p => sheet.ModulusFigure(p.BottomModulus))]
                    : [],
                Property($"rx [{sheet.SmallUnit}]", p => sheet.SmallFigure(p.Rx)),
                Property($"ry [{sheet.SmallUnit}]", p => sheet.SmallFigure(p.Ry)),
            ]);
    }
}
