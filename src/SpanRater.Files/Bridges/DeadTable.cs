using System.Globalization;

namespace SpanRater.Files;

/// <summary>dead.csv: what the dead load is made of, one item a row.</summary>
internal sealed class DeadTable
{
    private static readonly TableColumn[] Columns =
    [
        new("item", Required: true),
        new("case", Required: true),
        new("material"),
        new("thickness", Quantity.Length, Units: "in or mm"),
        new("width", Quantity.Length),
        new("unit weight", Quantity.UnitWeight),
        new("area load", Quantity.Stress, Units: "psf or kPa"),
        new("line load", Quantity.LineLoad, Units: "plf or kN/m"),
        new("load", Quantity.Force),
        new("count", Quantity.Number),
        new("centre", Quantity.Length),
        new("from", Quantity.Length),
        new("to", Quantity.Length),
        new("joints"),
        new("source"),
    ];

    private readonly List<Place> places = [];

    /// <summary>The items that could be read.</summary>
    public List<DeadItem> Items { get; } = [];

    /// <summary>Where an item stands.</summary>
    public Place PlaceOf(DeadItem item) => places[Items.FindIndex(i => ReferenceEquals(i, item))];

    /// <summary>The items; null where the table cannot be used.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name in findings.</param>
    /// <param name="joints">The joints; null where they could not be read.</param>
    /// <param name="deck">The deck; null where it could not be read.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static DeadTable? Read(string text, string file, JointsTable? joints, Deck? deck, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var dead = new DeadTable();
        foreach (TableRow row in table.Rows)
        {
            if (ItemOf(row, joints, deck, findings) is { } item)
            {
                if (dead.Items.Exists(i => i.Name == item.Name && i.Case == item.Case))
                {
                    findings.Warning(row["item"].Where, $"item \"{item.Name}\" of {CaseName(item.Case)} is there a second time: both count. If one row is a slip, remove it.");
                }

                dead.Items.Add(item);
                dead.places.Add(row.Where);
            }
        }

        if (table.Rows.Count == 0)
        {
            findings.Warning(new Place(file), "holds no item: there is no dead load in it. Write a row an item, or remove the file.");
        }

        int wearing = dead.Items.FindIndex(i => i.Case == DeadCase.WearingSurface);
        if (wearing >= 0 && !dead.Items.Exists(i => i is { Case: DeadCase.WearingSurface, Weight: DeadWeight.Layer or DeadWeight.Area }))
        {
            findings.Warning(dead.places[wearing], $"case {Bridge.WearingSurfaceCase} has no layer: is the wearing surface missing? Where the deck bears none, write a row with area load 0.");
        }

        return table.HasBrokenRows ? null : dead;
    }

    private static string CaseName(DeadCase kind) => kind == DeadCase.Components ? Bridge.ComponentsCase : Bridge.WearingSurfaceCase;

    // Every cell is looked at, so that all that is wrong with a row is told in one go.
    private static DeadItem? ItemOf(TableRow row, JointsTable? joints, Deck? deck, FindingList findings)
    {
        string? name = row.Required("item");
        DeadCase? kind = CaseOf(row, findings);
        string told = name ?? "";
        DeadWeight? weight = DeadItemCells.WeightOf(row, told, findings);
        int? count = CountOf(row, told, findings);
        double centre = row.Value("centre") ?? 0;
        SayIfOffTheTrusses(row, told, centre, deck, findings);
        bool isPoint = !row["load"].IsBlank;
        IReadOnlyList<string>? named = DeadItemCells.JointsOf(row, told, joints, findings, out bool jointsAreGood);
        bool stretchIsGood = DeadItemCells.StretchOf(row, told, joints, named, isPoint, findings, out double? from, out double? to);
        return name is null || kind is null || weight is null || count is null || !jointsAreGood || !stretchIsGood
            ? null
            : new DeadItem(name, kind.Value, weight) { Count = count.Value, Centre = centre, From = from, To = to, Joints = named, Source = row["source"].Text };
    }

    private static DeadCase? CaseOf(TableRow row, FindingList findings)
    {
        if (row.Required("case") is not { } word)
        {
            return null;
        }

        switch (word)
        {
            case Bridge.ComponentsCase:
                return DeadCase.Components;
            case Bridge.WearingSurfaceCase:
                return DeadCase.WearingSurface;
            default:
                findings.Error(row["case"].Where, $"case \"{word}\": dead load is DC (components) or DW (wearing surface and utilities).{NearestName.Question(word, ["DC", "DW"])}");
                return null;
        }
    }

    private static int? CountOf(TableRow row, string name, FindingList findings)
    {
        if (row["count"].IsBlank)
        {
            return 1;
        }

        double? count = row.Value("count");
        if (count is null || (count >= 1 && count <= 1000 && count == Math.Floor(count.Value)))
        {
            return (int?)count;
        }

        findings.Error(row["count"].Where, $"item \"{name}\": count = {row["count"].Text}: write how many there are, a whole number from 1.");
        return null;
    }

    private static void SayIfOffTheTrusses(TableRow row, string name, double centre, Deck? deck, FindingList findings)
    {
        if (deck is null)
        {
            return;
        }

        Place where = row["centre"].Where;
        if (centre != 0 && deck.Trusses != 2)
        {
            findings.Error(where, string.Create(CultureInfo.InvariantCulture, $"item \"{name}\" is off centre, and the lever rule is for two trusses, not {deck.Trusses}: clear centre, and the trusses share it equally."));
        }
        else if (centre != 0 && deck.TrussSpacing is null)
        {
            findings.Error(where, $"item \"{name}\" is off centre, and truss_spacing is missing in {BridgeFolder.BridgeFile} [deck]: the lever rule needs it.");
        }
        else if (deck.TrussSpacing is { } spacing && Math.Abs(centre) > spacing)
        {
            findings.Error(where, $"item \"{name}\": centre {row["centre"].Text} is farther from the middle than the trusses are from each other: check centre, its unit and truss_spacing.");
        }
        else if (deck.TrussSpacing is { } between && Math.Abs(centre) > between / 2)
        {
            findings.Warning(where, $"item \"{name}\" hangs outside a truss: by the lever rule it lifts the other one. Right for a bracket that goes on from the floorbeam; else check centre and truss_spacing.");
        }

        if (deck is { Trusses: 2, TrussSpacing: { } apart } && !row["width"].IsBlank && row.Value("width") > apart + 1e-9)
        {
            findings.Warning(row["width"].Where, $"item \"{name}\" is wider than the trusses are apart. Right for a deck that overhangs them; else check width and truss_spacing.");
        }
    }
}
