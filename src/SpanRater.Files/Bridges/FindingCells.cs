using System.Globalization;

namespace SpanRater.Files;

/// <summary>Reads the cells of one row of findings.csv.</summary>
internal static class FindingCells
{
    private const int MostHoles = 50;

    /// <summary>What a row may say, and the cells that go with it.</summary>
    private static readonly (string What, string[] Needed, string[] May)[] Kinds =
    [
        ("remaining", ["place", "dimension", "remaining"], ["part", "piece", "face", "doubt"]),
        ("gone", ["place"], ["part", "piece"]),
        ("hole", ["place", "hole"], ["part", "piece", "dimension", "count", "doubt"]),
        ("decay", ["place", "decay"], ["part", "piece", "face", "doubt"]),
        ("slack", [], ["part", "piece", "count"]),
        ("bow", ["bow"], ["direction", "doubt"]),
        ("crack", [], ["place", "part", "piece"]),
        ("pack rust", [], ["place", "part", "piece"]),
        ("lacing missing", [], ["place", "count"]),
    ];

    private static readonly string[] Told = ["place", "part", "piece", "dimension", "remaining", "face", "hole", "count", "decay", "bow", "direction", "doubt"];

    private static readonly (string Word, SectionFace Face)[] Faces =
        [("left", SectionFace.Left), ("right", SectionFace.Right), ("bottom", SectionFace.Bottom), ("top", SectionFace.Top)];

    /// <summary>Whether an observation cannot be used without the section of its member.</summary>
    public static bool NeedsSection(this Observation seen) => seen is not Observation.PackRust;

    /// <summary>The observation; null with findings where the row cannot be used.</summary>
    public static Observation? ObservationOf(TableRow row, int? built, FindingList findings)
    {
        int before = findings.All.Count;
        string? what = row.Required("what")?.ToLowerInvariant();
        ObservationOrigin origin = OriginOf(row, built, findings);
        if (what is null)
        {
            return null;
        }

        string[] words = [.. Kinds.Select(k => k.What)];
        int kind = Array.IndexOf(words, what);
        if (kind < 0)
        {
            findings.Error(row["what"].Where, $"what \"{row["what"].Text}\" is not known.{NearestName.Question(what, words)} Write {string.Join(", ", words)}.");
            return null;
        }

        foreach (string column in Kinds[kind].Needed.Where(c => row[c].IsBlank))
        {
            findings.Error(row["what"].Where, column == "place"
                ? $"{what} needs a place: name the cut, such as mid or 2 ft from L1. What has the same place acts together."
                : $"{what} needs {column}: write it.");
        }

        foreach (string column in Told.Except(Kinds[kind].Needed).Except(Kinds[kind].May).Where(c => !row[c].IsBlank))
        {
            findings.Error(row[column].Where, $"{column} has no meaning beside {what}: clear it, or make a row of it.");
        }

        if (what == "slack" && !row["piece"].IsBlank && !row["count"].IsBlank)
        {
            findings.Error(row["count"].Where, "piece says which is slack, and count how many where that is not known: clear one of them.");
        }

        Observation? seen = Of(row, what, findings);
        double? doubt = DoubtOf(row, findings);
        int? piece = SectionCells.CountOf(row, "piece", 1, int.MaxValue, findings, blank: null);
        return findings.All.Count > before || seen is null
            ? null
            : seen with { Place = row["place"].Text, Part = row["part"].Text, Piece = piece, Doubt = doubt ?? 0, Origin = origin };
    }

    private static Observation? Of(TableRow row, string what, FindingList findings)
    {
        SectionFace? face = FaceOf(row, findings);
        ShapeDimension? dimension = DimensionOf(row, findings);
        int count = SectionCells.CountOf(row, "count", 1, MostHoles, findings, blank: 1) ?? 1;
        return what switch
        {
            "remaining" => RemainingOf(row, findings) is { } remaining && dimension is { } told ? new Observation.Remaining(told, remaining, face) : null,
            "gone" => new Observation.Gone(),
            "hole" => row.PositiveValue("hole", "hole") is { } diameter ? new Observation.Hole(dimension, diameter, count) : null,
            "decay" => row.PositiveValue("decay", "decay") is { } depth ? new Observation.Decay(depth, face) : null,
            "slack" => new Observation.Slack(count),
            "bow" => row.PositiveValue("bow", "bow") is { } offset ? new Observation.Bow(offset, InPlaneOf(row, findings)) : null,
            "crack" => new Observation.Crack(),
            "lacing missing" => new Observation.LacingMissing(count),
            _ => new Observation.PackRust(),
        };
    }

    private static double? RemainingOf(TableRow row, FindingList findings)
    {
        if (row["remaining"].Text.Contains('%', StringComparison.Ordinal))
        {
            findings.Error(row["remaining"].Where, $"remaining \"{row["remaining"].Text}\": write what remains as a length, as measured; a part in hundred says neither where nor of what.");
            return null;
        }

        double? value = row.Value("remaining");
        if (value <= 0)
        {
            findings.Error(row["remaining"].Where, $"remaining = {row["remaining"].Text}: nothing is left of it. Enter the part as gone (what = gone), so that the way of the force is looked at again.");
            return null;
        }

        return value;
    }

    private static double? DoubtOf(TableRow row, FindingList findings)
    {
        double? doubt = row.Value("doubt");
        if (doubt < 0)
        {
            findings.Error(row["doubt"].Where, $"doubt = {row["doubt"].Text}: write how far the measurement may be off to either side, without a sign.");
            return null;
        }

        return doubt;
    }

    private static ShapeDimension? DimensionOf(TableRow row, FindingList findings)
    {
        TableCell cell = row["dimension"];
        if (cell.IsBlank)
        {
            return null;
        }

        if (SectionWords.FindDimension(cell.Text) is { } dimension)
        {
            return dimension;
        }

        string[] known = [.. Enum.GetValues<ShapeDimension>().Select(SectionWords.Of)];
        findings.Error(cell.Where, $"dimension \"{cell.Text}\" is not known.{NearestName.Question(cell.Text, known)} Write one that the shape has: {string.Join(", ", known)}.");
        return null;
    }

    private static SectionFace? FaceOf(TableRow row, FindingList findings)
    {
        TableCell cell = row["face"];
        int index = Array.FindIndex(Faces, f => string.Equals(f.Word, cell.Text, StringComparison.OrdinalIgnoreCase));
        if (!cell.IsBlank && index < 0)
        {
            findings.Error(cell.Where, $"face \"{cell.Text}\" is not known.{NearestName.Question(cell.Text, Faces.Select(f => f.Word))} Write left, right, bottom or top as the section is drawn, or leave it blank where all sides lost alike.");
        }

        return index < 0 ? null : Faces[index].Face;
    }

    private static bool? InPlaneOf(TableRow row, FindingList findings)
    {
        TableCell cell = row["direction"];
        switch (cell.Text.ToLowerInvariant())
        {
            case "":
                return null;
            case "x":
                return false;
            case "y":
                return true;
            default:
                findings.Error(cell.Where, $"direction \"{cell.Text}\": write x (out of the plane of the truss) or y (in it), or leave it blank.");
                return null;
        }
    }

    private static ObservationOrigin OriginOf(TableRow row, int? built, FindingList findings)
    {
        TableCell cell = row["date"];
        DateOnly? date = DateOnly.TryParseExact(cell.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day) ? day : null;
        if (!cell.IsBlank && date is null)
        {
            findings.Error(cell.Where, $"date \"{cell.Text}\" is no day of the calendar: write year, month and day as 2026-05-31.");
        }
        else if (date is { } told && built is { } year && told.Year < year)
        {
            findings.Error(cell.Where, string.Create(CultureInfo.InvariantCulture, $"date {cell.Text} is before the bridge was built ({year}): check it, and built in {BridgeFolder.BridgeFile}."));
        }

        return new ObservationOrigin(row["by"].Text, row["how"].Text, row["photo"].Text, row["note"].Text) { Date = date };
    }
}
