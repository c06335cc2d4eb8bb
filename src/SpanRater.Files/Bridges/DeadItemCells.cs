using System.Globalization;

namespace SpanRater.Files;

/// <summary>Reads what a row of dead.csv weighs and where it stands.</summary>
internal static class DeadItemCells
{
    /// <summary>No layer of a deck is as thick as this, 3 ft [m].</summary>
    private const double TooThick = (3 * 0.3048) - 1e-9;

    /// <summary>From here up a layer is worth a second look, 1 ft [m].</summary>
    private const double Thick = 0.3048 - 1e-9;

    /// <summary>Above steel [N/m³].</summary>
    private const double Heaviest = 520 * PublishedUnitWeight.PoundPerCubicFoot;

    /// <summary>Below the lightest timber [N/m³].</summary>
    private const double Lightest = 20 * PublishedUnitWeight.PoundPerCubicFoot;

    /// <summary>Above any deck, 500 psf [Pa].</summary>
    private const double HeaviestArea = 500 * 47.88025898033584;

    private static readonly string[] Sizes = ["thickness", "area load", "line load", "load"];

    /// <summary>What gives the item its weight; null with a finding.</summary>
    public static DeadWeight? WeightOf(TableRow row, string name, FindingList findings)
    {
        string[] given = [.. Sizes.Where(s => !row[s].IsBlank)];
        if (given.Length == 0)
        {
            findings.Error(row.Where, $"item \"{name}\" has nothing that gives weight: write thickness, width and unit weight or material; or area load and width; or line load; or load.");
            return null;
        }

        if (given.Length > 1)
        {
            findings.Error(row[given[1]].Where, $"item \"{name}\" has {string.Join(" and ", given)}: one of them gives the weight. Clear the others, or make a row of each.");
            return null;
        }

        foreach (string idle in (string[])[.. given[0] == "thickness" ? (string[])[] : ["unit weight"], .. given[0] is "thickness" or "area load" ? (string[])[] : ["width"]])
        {
            if (!row[idle].IsBlank)
            {
                findings.Error(row[idle].Where, $"item \"{name}\" has {given[0]}, and {idle} has no meaning beside it: clear it.");
            }
        }

        return given[0] switch
        {
            "thickness" => LayerOf(row, name, findings),
            "area load" => AreaOf(row, name, findings),
            "line load" => NotNegative(row, "line load", name, findings) is { } line ? new DeadWeight.Line(line) : null,
            _ => row.PositiveValue("load", $"item \"{name}\": load") is { } load ? new DeadWeight.AtJoints(load) : null,
        };
    }

    /// <summary>The joints that carry the item; null for the panel points.</summary>
    public static IReadOnlyList<string>? JointsOf(TableRow row, string name, JointsTable? joints, FindingList findings, out bool good)
    {
        string[] named = row["joints"].Text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        good = true;
        foreach (string joint in named.Where(j => joints is not null && !joints.Names.Contains(j)))
        {
            findings.Error(row["joints"].Where, $"item \"{name}\" names joint \"{joint}\", which joints.csv does not have.{NearestName.Question(joint, joints!.Names)} Joints are parted by spaces.");
            good = false;
        }

        if (named.GroupBy(j => j).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            findings.Error(row["joints"].Where, $"item \"{name}\" names joint \"{twice.Key}\" twice: name it once, and write count where there are several.");
            good = false;
        }

        return named.Length == 0 ? null : named;
    }

    /// <summary>From where to where the item runs, as far as that is given. False with a finding.</summary>
    public static bool StretchOf(TableRow row, string name, JointsTable? joints, IReadOnlyList<string>? named, bool isPoint, FindingList findings, out double? from, out double? to)
    {
        (from, to) = (null, null);
        if (isPoint)
        {
            foreach (string end in (string[])["from", "to"])
            {
                if (!row[end].IsBlank)
                {
                    findings.Error(row[end].Where, $"item \"{name}\" is a load at each joint, and {end} has no meaning beside it: name the joints under joints.");
                }
            }
        }

        if (joints is not { IsWhole: true })
        {
            return true;
        }

        double[] x = [.. joints.Joints.Where(j => named is null ? j.IsPanelPoint : named.Contains(j.Name)).Select(j => j.X).Order()];
        if (x.Length < (isPoint ? 1 : 2))
        {
            findings.Error(row.Where, $"item \"{name}\" has {(isPoint ? "no joint" : "no two joints")} to rest on: {(named is null ? "mark the panel points with deck = yes in joints.csv, or name joints under joints" : "it spans from joint to joint; name two or more under joints")}.");
            return false;
        }

        if (isPoint)
        {
            return true;
        }

        if (x.Zip(x.Skip(1)).Any(p => p.First == p.Second))
        {
            findings.Error(row["joints"].Where, $"item \"{name}\" spans from joint to joint, and two of those named stand one above the other: name one of them.");
            return false;
        }

        bool good = EndOf(row, "from", name, joints, findings, out from) & EndOf(row, "to", name, joints, findings, out to);
        string reach = string.Create(CultureInfo.InvariantCulture, $"which run from {x[0]:0.###} to {x[^1]:0.###} m ({x[0] / 0.3048:0.##} to {x[^1] / 0.3048:0.##} ft)");
        foreach ((string end, double? value) in ((string, double?)[])[("from", from), ("to", to)])
        {
            if (good && value is { } station && !(station >= x[0] - 1e-9 && station <= x[^1] + 1e-9))
            {
                findings.Error(row[end].Where, $"item \"{name}\": {end} {row[end].Text} is beyond the joints that carry it, {reach}.");
                good = false;
            }
        }

        // What differs in the last bits only is the joint itself.
        (from, to) = (from is { } f ? Math.Clamp(f, x[0], x[^1]) : null, to is { } t ? Math.Clamp(t, x[0], x[^1]) : null);
        if (good && (from ?? x[0]) >= (to ?? x[^1]))
        {
            findings.Error(row[row["to"].IsBlank ? "from" : "to"].Where, $"item \"{name}\" ends where it starts, or before: from is the left end, to the right one.");
            good = false;
        }

        return good;
    }

    // A joint by its name, or a station; where a cell could be both, it is asked which.
    private static bool EndOf(TableRow row, string end, string name, JointsTable joints, FindingList findings, out double? x)
    {
        x = null;
        TableCell cell = row[end];
        if (cell.IsBlank)
        {
            return true;
        }

        Joint? joint = joints.Joints.Find(j => j.Name == cell.Text);
        bool isNumber = QuantityText.LooksLikeTape(cell.Text) || QuantityText.ReadNumber(cell.Text, commaIsDecimalMark: true).Value is not null;
        if (joint is not null && isNumber && row.HasUnit(end))
        {
            findings.Error(cell.Where, $"item \"{name}\": {end} {cell.Text} is the name of a joint and could be a station as well: take the unit out of the heading, and name joints; or write the station with its unit in the cell, as 16 ft.");
            return false;
        }

        if (joint is null && !isNumber)
        {
            findings.Error(cell.Where, $"item \"{name}\": {end} \"{cell.Text}\" is no joint of joints.csv and no station.{NearestName.Question(cell.Text, joints.Names)}");
            return false;
        }

        x = joint?.X ?? row.Value(end);
        return x is not null;
    }

    private static DeadWeight.Layer? LayerOf(TableRow row, string name, FindingList findings)
    {
        double? thickness = row.PositiveValue("thickness", $"item \"{name}\": thickness"), width = WidthOf(row, name, findings);
        (double? unitWeight, PublishedUnitWeight? published) = UnitWeightOf(row, name, findings);
        string shown = string.Create(CultureInfo.InvariantCulture, $"{thickness / 0.3048:0.00} ft ({thickness:0.00} m)");
        if (thickness >= TooThick)
        {
            findings.Error(row["thickness"].Where, $"item \"{name}\" would be {shown} thick, which no layer of a deck is: is {row["thickness"].Text} in inches or millimetres? Then head the column thickness [in] or thickness [mm].");
            return null;
        }

        if (thickness >= Thick)
        {
            findings.Warning(row["thickness"].Where, $"item \"{name}\" is {shown} thick, much for a layer of a deck: check the number and the unit in the heading.");
        }

        return thickness is { } t && width is { } w && unitWeight is { } u ? new DeadWeight.Layer(t, w, u, published) : null;
    }

    private static DeadWeight.Area? AreaOf(TableRow row, string name, FindingList findings)
    {
        double? pressure = NotNegative(row, "area load", name, findings), width = WidthOf(row, name, findings);
        if (pressure > HeaviestArea)
        {
            findings.Error(row["area load"].Where, string.Create(CultureInfo.InvariantCulture, $"item \"{name}\": area load {row["area load"].Text} is {pressure / HeaviestArea * 500:#,0} psf ({pressure / 1000:#,0.0} kPa), more than any deck: check the number and the unit in the heading."));
            return null;
        }

        return pressure is { } p && width is { } w ? new DeadWeight.Area(p, w) : null;
    }

    private static double? WidthOf(TableRow row, string name, FindingList findings)
    {
        if (row["width"].IsBlank)
        {
            findings.Error(row.Where, $"item \"{name}\" has no width: write how wide it is across the deck.");
            return null;
        }

        return row.PositiveValue("width", $"item \"{name}\": width");
    }

    private static (double? Weight, PublishedUnitWeight? Published) UnitWeightOf(TableRow row, string name, FindingList findings)
    {
        TableCell cell = row["unit weight"], material = row["material"];
        if (!cell.IsBlank)
        {
            double? given = row.PositiveValue("unit weight", $"item \"{name}\": unit weight");
            string shown = string.Create(CultureInfo.InvariantCulture, $"{given / PublishedUnitWeight.PoundPerCubicFoot:#,0.#} pcf ({given / 1000:0.0#} kN/m3)");
            if (given > Heaviest)
            {
                findings.Error(cell.Where, $"item \"{name}\" would weigh {shown}, more than steel: check the number and the unit in the heading.");
                return (null, null);
            }

            if (given < Lightest)
            {
                findings.Warning(cell.Where, $"item \"{name}\" weighs {shown}, less than any timber: check the number and the unit in the heading.");
            }

            return (given, null);
        }

        string[] known = [.. PublishedUnitWeight.All.Select(u => u.Material)];
        if (material.IsBlank)
        {
            findings.Error(row.Where, $"item \"{name}\" has no unit weight: write it, or a material whose weight is known: {string.Join(", ", known)}.");
            return (null, null);
        }

        if (PublishedUnitWeight.Find(material.Text) is { } published)
        {
            return (published.Weight, published);
        }

        findings.Error(material.Where, $"item \"{name}\": the weight of \"{material.Text}\" is not known.{NearestName.Question(material.Text, known)} Write its unit weight, or one of: {string.Join(", ", known)}.");
        return (null, null);
    }

    private static double? NotNegative(TableRow row, string column, string name, FindingList findings)
    {
        double? value = row.Value(column);
        if (value < 0)
        {
            findings.Error(row[column].Where, $"item \"{name}\": {column} = {row[column].Text}: a weight is written without a sign.");
            return null;
        }

        return value;
    }
}
