using System.Globalization;

namespace SpanRater.Files;

/// <summary>Reads the vehicles of a catalogue table: one row an axle, from the front axle back.</summary>
internal static class VehicleTable
{
    /// <summary>No axle is heavier than this, 1,000 kN [N]: pounds typed as kips are.</summary>
    private const double HeaviestAxle = 1_000_000;

    private static readonly TableColumn[] Columns =
    [
        new("vehicle", Required: true),
        new("class"),
        new("load", Quantity.Force, Required: true),
        new("spacing", Quantity.Length),
        new("spacing max", Quantity.Length),
        new("gauge", Quantity.Length),
        new("relieving axles"),
        new("source"),
    ];

    /// <summary>The vehicles of a text, each with the place of its name. Adds every name, faulty ones among them.</summary>
    public static List<CatalogueEntry> Read(string text, string file, FindingList findings, HashSet<string> named)
    {
        var entries = new List<CatalogueEntry>();
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return entries;
        }

        if (table.Rows.Count == 0)
        {
            findings.Error(new Place(file), "has no vehicle: write one row an axle.");
        }

        var groups = new List<(string Name, List<TableRow> Rows)>();
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (TableRow row in table.Rows)
        {
            if (row.Required("vehicle") is not { } name)
            {
                continue;
            }

            if (groups.Count > 0 && groups[^1].Name == name)
            {
                groups[^1].Rows.Add(row);
            }
            else if (!places.TryAdd(name, groups.Count))
            {
                int earlier = places[name];
                findings.Error(row["vehicle"].Where, $"vehicle \"{name}\" was left on line {groups[earlier].Rows[^1].Where.Line} and goes on here: its rows stand together, from the front axle back.");
            }
            else
            {
                groups.Add((name, [row]));
            }
        }

        foreach ((string name, List<TableRow> rows) in groups)
        {
            named.Add(name);
            if (ReadVehicle(name, rows, groups.Select(g => g.Name).Where(n => n != name), findings) is { } vehicle)
            {
                entries.Add(new CatalogueEntry(vehicle, rows[0]["vehicle"].Where));
            }
        }

        return entries;
    }

    private static Vehicle? ReadVehicle(string name, List<TableRow> rows, IEnumerable<string> others, FindingList findings)
    {
        if (rows.Count > InputLimits.MostAxles)
        {
            findings.Error(rows[0]["vehicle"].Where, string.Create(CultureInfo.InvariantCulture, $"\"{name}\" has {rows.Count:N0} axles, and at most {InputLimits.MostAxles} are rolled: one row is one axle."));
            return null;
        }

        VehicleClass? vehicleClass = ClassOf(rows[0]["class"], name, others, findings);
        double gauge = rows[0].PositiveValue("gauge", "gauge") ?? Vehicle.StandardGauge;
        UnlikelyLoads.SayIfGaugeIsOdd(name, gauge, "wheel lines", rows[0]["gauge"].Where, findings);
        RelievingAxles? relieving = RelievingOf(rows[0]["relieving axles"], findings);
        foreach (TableRow row in rows.Skip(1))
        {
            foreach (string column in (string[])["class", "gauge", "relieving axles", "source"])
            {
                if (!row[column].IsBlank && row[column].Text != rows[0][column].Text)
                {
                    findings.Error(row[column].Where, $"\"{column}\" of \"{name}\" stands in its first row (line {rows[0].Where.Line}): clear it here.");
                }
            }
        }

        var loads = new List<double>();
        var gaps = new List<AxleGap>();
        bool whole = true;
        for (int axle = 0; axle < rows.Count; axle++)
        {
            double? load = LoadOf(rows[axle], name, axle + 1, findings);
            AxleGap? gap = GapOf(rows[axle], name, axle + 1, findings);
            whole &= load is not null && (axle == 0 || gap is not null);
            if (load is { } l)
            {
                loads.Add(l);
            }

            if (gap is { } g)
            {
                gaps.Add(g);
            }
        }

        if (loads.Count == rows.Count)
        {
            UnlikelyLoads.SayIfLight(name, loads.Sum(), "check its axle loads, and the unit in the heading of load", rows[0]["load"].Where, findings);
        }

        if (gaps.Count(g => g.Varies) > AxleTrain.MostVaryingGaps)
        {
            findings.Error(rows[0]["vehicle"].Where, $"\"{name}\" has more than {AxleTrain.MostVaryingGaps} gaps that vary: fix some of them, or make several vehicles.");
            return null;
        }

        return whole && vehicleClass is { } c && relieving is { } r && loads.Count == rows.Count && gaps.Count == rows.Count - 1
            ? new Vehicle(name, c, new AxleTrain(loads, gaps, r), gauge, rows[0]["source"].Text)
            : null;
    }

    private static double? LoadOf(TableRow row, string name, int axle, FindingList findings)
    {
        if (row.Required("load") is null || row.Value("load") is not { } load)
        {
            return null;
        }

        TableCell cell = row["load"];
        if (load <= 0)
        {
            findings.Error(cell.Where, $"axle {axle} of \"{name}\" weighs {cell.Text}: axle loads must be above zero.");
            return null;
        }

        if (load > HeaviestAxle)
        {
            double kips = load / Unit.Find("kip")!.Size;
            findings.Error(
                cell.Where,
                string.Create(CultureInfo.InvariantCulture, $"axle {axle} of \"{name}\" weighs {kips:#,0} kip ({load / 1000:#,0} kN), which no axle does: is {cell.Text} in lb? Then head the column load [lb]."));
            return null;
        }

        return load;
    }

    private static AxleGap? GapOf(TableRow row, string name, int axle, FindingList findings)
    {
        TableCell cell = row["spacing"], maxCell = row["spacing max"];
        if (axle == 1)
        {
            if (!cell.IsBlank || !maxCell.IsBlank)
            {
                findings.Error((cell.IsBlank ? maxCell : cell).Where, $"axle 1 of \"{name}\" has a spacing: the first axle follows none. Leave it blank; a spacing is the distance from the axle ahead.");
            }

            return null;
        }

        if (cell.IsBlank)
        {
            findings.Error(cell.Where, $"axle {axle} of \"{name}\" has no spacing: write its distance from the axle ahead.");
            return null;
        }

        double? least = row.PositiveValue("spacing", "spacing"), most = row.PositiveValue("spacing max", "spacing max");
        if (least is not { } from || (most is null && !maxCell.IsBlank))
        {
            return null;
        }

        if (most < from)
        {
            findings.Error(maxCell.Where, $"axle {axle} of \"{name}\": spacing {cell.Text} to {maxCell.Text} is reversed: low value first.");
            return null;
        }

        return new AxleGap(from, most ?? from);
    }

    private static VehicleClass? ClassOf(TableCell cell, string name, IEnumerable<string> others, FindingList findings)
    {
        if (cell.IsBlank)
        {
            findings.Error(cell.Where, $"vehicle \"{name}\" has no class: write one of {VehicleClassNames.List} in its first row.{NearestName.Question(name, others)}");
            return null;
        }

        return VehicleClassNames.Read(cell.Text, cell.Where, findings);
    }

    private static RelievingAxles? RelievingOf(TableCell cell, FindingList findings)
    {
        switch (cell.Text.ToUpperInvariant())
        {
            case "" or "COUNTED":
                return RelievingAxles.Counted;
            case "LEFT OUT":
                return RelievingAxles.LeftOut;
            default:
                findings.Error(cell.Where, $"relieving axles \"{cell.Text}\": write \"left out\", or leave it blank where they count.");
                return null;
        }
    }
}
