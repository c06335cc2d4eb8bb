using System.Globalization;

namespace SpanRater.Files;

/// <summary>Puts the floor together: floor.csv, [floor], sections.csv, materials.toml, findings.csv and the weights of dead.csv, on a truss.</summary>
internal sealed class FloorParts(FloorTable table, Truss truss, BridgeToml said, FindingsTable? seen, DeadTable? dead, IReadOnlyList<LoadCase> cases, FindingList findings)
{
    /// <summary>A floorbeam nearer to a panel point than this stands on it, 1 cm [m].</summary>
    private const double OnPanelPoint = 0.01;

    /// <summary>Floorbeams farther apart than this have a system factor of their own, 12 ft [m].</summary>
    private const double WideApart = 12 * 0.3048;

    private readonly double[] panels = [.. truss.Stations.Zip(truss.Stations.Skip(1), (a, b) => b - a)];

    /// <summary>The floor.</summary>
    public Floor Put()
    {
        var parts = new List<FloorPart>();
        foreach (FloorRow row in table.Rows)
        {
            parts.Add(row.Kind switch
            {
                PartKind.Deck => new DeckPart(row.Name, parts.Count, row.Deck ?? DeckType.Plank) { Make = MakeOf(row, row.Span ?? 0, SystemKind.Stringer), Span = row.Span, IsContinuous = row.IsContinuous },
                PartKind.Stringer => StringerOf(row, parts.Count),
                PartKind.Floorbeam => FloorbeamOf(row, parts.Count),
                _ => HangerOf(row, parts.Count),
            });
        }

        SayWhereNoneIs(parts);
        FloorSettings? own = said.Floor;
        foreach (PartKind both in own?.Without.Where(k => parts.Exists(p => p.Kind == k)) ?? [])
        {
            findings.Error(own!.PlaceOfWithout, $"without names {FloorWords.Kinds.First(k => k.Kind == both).Word}, and {BridgeFolder.FloorFile} gives one: remove one of the two.");
        }

        (double? components, string fromComponents) = PressureOf(own?.Components, DeadCase.Components, "deck_dc");
        (double? wearing, string fromWearing) = PressureOf(own?.WearingSurface, DeadCase.WearingSurface, "deck_dw");
        return new Floor(parts)
        {
            Without = own?.Without ?? [],
            Components = components,
            WearingSurface = wearing,
            Edge = own?.Edge,
            WeightSource = $"DC {fromComponents}, DW {fromWearing}{(own?.Edge is null ? ", and no kerbs and railings, since edge_dc is not given under [floor]" : "")}",
        };
    }

    private StringerPart StringerOf(FloorRow row, int index)
    {
        double longest = panels.Max(), span = row.Span ?? longest;
        if (row.Span > longest * 1.001)
        {
            findings.Warning(row.Row["span"].Where, string.Create(CultureInfo.InvariantCulture, $"stringer \"{row.Name}\" spans {row.Row["span"].Text}, more than the longest panel ({longest / 0.3048:0.00} ft, {longest:0.00} m): stringers span from floorbeam to floorbeam. Check span, or the panel points."));
        }

        BeamMake? make = MakeOf(row, span, SystemKind.Stringer);
        double top = TopWidthOf(row.Section);
        if (row.Spacing <= top)
        {
            findings.Error(row.Row["spacing"].Where, string.Create(CultureInfo.InvariantCulture, $"stringer \"{row.Name}\" has a spacing of {row.Row["spacing"].Text}, not more than its own width ({top / 0.0254:0.0#} in, {top * 1000:0} mm): write the distance from the middle of one to the middle of the next, and check its unit."));
        }

        return new StringerPart(row.Name, index, row.Spacing ?? 0, span) { Make = make, Count = row.Count, OwnWeight = WeightOf(row), TopWidth = top };
    }

    private FloorbeamPart FloorbeamOf(FloorRow row, int index) => new(row.Name, index, At(row))
    {
        Make = MakeOf(row, said.Deck.TrussSpacing ?? 0, panels.Max() > WideApart + 1e-9 ? SystemKind.WideFloorbeam : SystemKind.OtherFloorPart),
        OwnWeight = WeightOf(row),
        Trussed = row.Trussing is null ? null : TrussingOf(row, row.Trussing),
    };

    private Trussing TrussingOf(FloorRow row, FloorTrussing told)
    {
        TableCell between = row.Row["post spacing"], drop = row.Row["drop"];
        if (said.Deck.TrussSpacing is { } span)
        {
            string spans = string.Create(CultureInfo.InvariantCulture, $"the span of the floorbeam, truss_spacing, {span / 0.3048:0.00} ft ({span:0.00} m)");
            if (told.Spacing >= span)
            {
                findings.Error(between.Where, $"post spacing = {between.Text} is not less than {spans}: posts stand between the trusses. Check it and its unit.");
            }

            if (told.Drop >= span)
            {
                findings.Error(drop.Where, $"drop = {drop.Text} is not less than {spans}: the rod cannot be so deep. Check it and its unit.");
            }
        }

        return new Trussing(told.Posts, told.Drop, told.Posts == 2 ? told.Spacing : null, told.Rod is null ? null : BarsOf(FloorTrussing.RodOf(row.Name), told.Rod, told.Material)) { HeldBelow = told.HeldBelow };
    }

    private MemberMake BarsOf(string name, MemberSection section, Material? material) => new()
    {
        Section = seen?.Find(name, 0) ?? FoundSection.Sound(section),
        Material = material,
        InPlaneLength = 1,
        ShearLag = 1,
    };

    private HangerPart HangerOf(FloorRow row, int index) => new(row.Name, index, At(row))
    {
        Count = row.Count ?? 1,
        Make = row.Section is null ? null : BarsOf(row.Name, row.Section, row.Material),
    };

    private BeamMake? MakeOf(FloorRow row, double span, SystemKind system) => row.Section is null ? null : new BeamMake
    {
        Section = seen?.Find(row.Name, 0) ?? FoundSection.Sound(row.Section),
        Material = row.Material,
        Unbraced = row.Kind == PartKind.Deck ? 0 : row.Unbraced,
        Bearing = row.Bearing,
        DepthAtEnd = row.EndDepth,
        NotchIsTapered = row.IsTapered,
        System = system,
        Span = span,
    };

    // Weight as built: what is lost to rust or decay is no relief.
    private static double WeightOf(FloorRow row) => row is { Section: { } section, Material: { } material } ? section.Area * MemberMakes.UnitWeightOf(material.Kind) : 0;

    private static double TopWidthOf(MemberSection? section) =>
        section?.Parts is [{ Pieces: [{ Shape: var shape }] }] ? shape.AsBuilt(ShapeDimension.Width) ?? 0 : 0;

    // The panel points where a part is: those named, or all that no bearing carries.
    private int[] At(FloorRow row)
    {
        string[] names = [.. truss.PanelPoints.Select(j => truss.Joints[j].Name)];
        if (row.X is { } x)
        {
            int nearest = Array.IndexOf(truss.Stations.Select(s => Math.Abs(s - x)).ToArray(), truss.Stations.Min(s => Math.Abs(s - x)));
            if (Math.Abs(truss.Stations[nearest] - x) <= OnPanelPoint)
            {
                return [nearest];
            }

            findings.Error(row.Row["x"].Where, BetweenPanelPoints(row, x, names));
            return [];
        }

        if (row.At.Count == 0)
        {
            return [.. Enumerable.Range(0, names.Length).Where(p => truss.Joints[truss.PanelPoints[p]].Support is null)];
        }

        var at = new List<int>();
        foreach (string joint in row.At)
        {
            int index = Array.IndexOf(names, joint);
            if (index >= 0 && !at.Contains(index))
            {
                at.Add(index);
            }
            else if (index >= 0)
            {
                findings.Error(row.Row["at"].Where, $"\"{row.Name}\" names panel point \"{joint}\" twice: name it once.");
            }
            else if (truss.FindJoint(joint) is not null)
            {
                findings.Error(row.Row["at"].Where, $"\"{row.Name}\" is at joint \"{joint}\", which is no panel point: write yes under deck in {BridgeFolder.JointsFile} where the floor's load comes onto the truss there.");
            }
            else
            {
                findings.Error(row.Row["at"].Where, $"\"{row.Name}\" is at panel point \"{joint}\", which {BridgeFolder.JointsFile} does not have.{NearestName.Question(joint, names)} Panel points are parted by spaces; a place that is no joint is written under x.");
            }
        }

        return [.. at];
    }

    private string BetweenPanelPoints(FloorRow row, double x, string[] names)
    {
        string At(double station) => string.Create(CultureInfo.InvariantCulture, $"{station / 0.3048:0.00} ft ({station:0.00} m)");
        int right = truss.Stations.ToList().FindIndex(s => s > x);
        if (right <= 0)
        {
            return $"{row.Name} at {At(x)} stands off the deck, which runs from {names[0]} at {At(truss.Stations[0])} to {names[^1]} at {At(truss.Stations[^1])}: check x and its unit.";
        }

        return $"{row.Name} at {At(x)} stands between panel points {names[right - 1]} ({At(truss.Stations[right - 1])}) and {names[right]} ({At(truss.Stations[right])}): its load bends the chord there, and pin-joint forces alone are not enough, so that this truss is not rated. If the chord is jointed there, add the joint and split the member; if the floorbeam is clamped to a chord that runs through, have the chord rated for bending by an engineer before anything crosses.";
    }

    private void SayWhereNoneIs(List<FloorPart> parts)
    {
        foreach ((PartKind kind, Func<FloorPart, IReadOnlyList<int>?> at) in ((PartKind, Func<FloorPart, IReadOnlyList<int>?>)[])[(PartKind.Floorbeam, p => (p as FloorbeamPart)?.At), (PartKind.Hanger, p => (p as HangerPart)?.At)])
        {
            FloorRow? row = table.Rows.Find(r => r.Kind == kind);
            HashSet<int> covered = [.. parts.SelectMany(p => at(p) ?? [])];
            string[] bare = [.. Enumerable.Range(0, truss.PanelPoints.Count).Where(p => truss.Joints[truss.PanelPoints[p]].Support is null && !covered.Contains(p)).Select(p => truss.Joints[truss.PanelPoints[p]].Name)];
            if (row is not null && bare.Length > 0 && !findings.HasErrors)
            {
                findings.Warning(row.Row["at"].Where, $"no {FloorWords.Kinds.First(k => k.Kind == kind).Word} is given at {string.Join(", ", bare)}: what is there is not rated. Name {(bare.Length == 1 ? "it" : "them")} under at, or write a row for {(bare.Length == 1 ? "it" : "them")}.");
            }
        }
    }

    // What is given; else the layers of dead.csv; else the deck itself, and for a wearing surface nothing where the bridge has none.
    private (double? Pressure, string Source) PressureOf(double? given, DeadCase kind, string key)
    {
        if (given is { } own)
        {
            return (own, $"by {key} under [floor]");
        }

        double[] layers = [.. dead?.Items.Where(i => i.Case == kind).Select(i => i.Weight switch
        {
            DeadWeight.Layer layer => layer.Thickness * layer.UnitWeight,
            DeadWeight.Area area => area.Pressure,
            _ => (double?)null,
        } * i.Count).OfType<double>() ?? []];
        if (layers.Length > 0)
        {
            return (layers.Sum(), $"by the layers of {BridgeFolder.DeadFile}");
        }

        if (kind == DeadCase.WearingSurface)
        {
            return cases.Any(c => c.Name == Bridge.WearingSurfaceCase) ? (null, "not known") : (0, "none");
        }

        return table.Rows.Find(r => r.Kind == PartKind.Deck) is { Section: { } section, Material: { } material } && section.Parts is [{ Pieces: [{ Shape: var plank }] }] && plank.AsBuilt(ShapeDimension.Depth) is { } thickness
            ? (thickness * MemberMakes.UnitWeightOf(material.Kind), "by the deck's own thickness")
            : (null, "not known");
    }
}
