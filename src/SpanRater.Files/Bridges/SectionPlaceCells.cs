namespace SpanRater.Files;

/// <summary>Reads where the pieces of a part lie.</summary>
internal static class SectionPlaceCells
{
    private static readonly string[] Arrangements = ["backs in", "backs out", "row", "stack"];

    /// <summary>The place of each piece, null where positions are not given; no list, with findings, where the cells cannot be used.</summary>
    public static IReadOnlyList<PiecePlacement?>? PlacesOf(TableRow row, string name, SectionShape shape, int count, FindingList findings)
    {
        int before = findings.All.Count;
        double? x = row.Value("x"), y = row.Value("y"), turned = row.Value("turned"), gap = row.Value("gap"), rise = row.PositiveValue("rise", $"part \"{name}\": rise");
        bool upsideDown = row.YesOrNo("upside down") ?? false;
        string word = row["arrangement"].Text.ToLowerInvariant();
        if (gap < 0)
        {
            findings.Error(row["gap"].Where, $"part \"{name}\": gap = {row["gap"].Text}: a distance is not negative; 0 where they touch.");
        }

        if (word.Length > 0 && !Arrangements.Contains(word))
        {
            findings.Error(row["arrangement"].Where, $"arrangement \"{row["arrangement"].Text}\" is not known.{NearestName.Question(word, Arrangements)} Write {string.Join(", ", Arrangements)}.");
        }

        if (findings.All.Count > before)
        {
            return null;
        }

        return word.Length == 0
            ? WithoutArrangement(row, name, count, new PiecePlacement(x ?? 0, y ?? 0, turned ?? 0, false, upsideDown), findings)
            : Arranged(row, name, shape, count, word, new PiecePlacement(x ?? 0, y ?? 0, turned ?? 0, false, upsideDown), gap, rise, findings);
    }

    private static IReadOnlyList<PiecePlacement?>? WithoutArrangement(TableRow row, string name, int count, PiecePlacement place, FindingList findings)
    {
        string? stray = ((string[])["gap", "rise"]).FirstOrDefault(c => !row[c].IsBlank);
        if (stray is not null)
        {
            findings.Error(row[stray].Where, $"part \"{name}\": {stray} says nothing without arrangement: write {string.Join(", ", Arrangements)} there, or clear {stray}.");
            return null;
        }

        bool isPlaced = !row["x"].IsBlank || !row["y"].IsBlank;
        if (isPlaced && count > 1)
        {
            findings.Error(row[row["x"].IsBlank ? "y" : "x"].Where, $"part \"{name}\": {count} pieces cannot lie at one place: write arrangement and gap, or a row each.");
            return null;
        }

        // A piece that is all of its section is turned about itself.
        bool isTurned = !row["turned"].IsBlank || !row["upside down"].IsBlank;
        return isPlaced || (isTurned && count == 1) ? [place] : [.. Enumerable.Repeat<PiecePlacement?>(null, count)];
    }

    private static IReadOnlyList<PiecePlacement>? Arranged(
        TableRow row, string name, SectionShape shape, int count, string word, PiecePlacement place, double? gap, double? rise, FindingList findings)
    {
        Place where = row["arrangement"].Where;
        if (count < 2)
        {
            findings.Error(where, $"part \"{name}\" is one piece, and {word} is of several: write count, or give x and y.");
            return null;
        }

        bool isBacks = word.StartsWith("backs", StringComparison.Ordinal);
        if (gap is null)
        {
            findings.Error(where, $"part \"{name}\" has no gap: write the {(isBacks ? $"distance between the backs, {(word == "backs out" ? "over all" : "clear")}" : "clear distance between neighbours")}; 0 where they touch.");
            return null;
        }

        if (isBacks && !shape.Kind.HasBackToTell())
        {
            findings.Error(where, $"part \"{name}\": {SectionWords.WithArticle(shape.Kind)} has no back: write row (beside each other) or stack (above each other).");
            return null;
        }

        if (isBacks && !row["turned"].IsBlank)
        {
            findings.Error(row["turned"].Where, $"part \"{name}\": {word} says how the pieces lie, and turned has no meaning beside it: clear it; write upside down = yes where flat legs are on top.");
            return null;
        }

        PieceArrangement arrangement = isBacks ? new PieceArrangement.Backs(word == "backs out", gap.Value, rise) : new PieceArrangement.Row(gap.Value, word == "stack");
        IReadOnlyList<PiecePlacement>? places = !isBacks && rise is not null ? null : arrangement.Placements(shape, count, place.X, place.Y, place.Turned, place.UpsideDown);
        if (places is null)
        {
            findings.Error(
                rise is not null ? row["rise"].Where : where,
                rise is not null ? $"part \"{name}\": rise is the distance between the heels of the lower and the upper two of four angles: clear it, or write count 4 and backs in or backs out."
                : count == 4 ? $"part \"{name}\" has no rise: of four angles write the distance between the heels of the lower and the upper two."
                : $"part \"{name}\": {word} is of two pieces{(shape.Kind == ShapeKind.Angle ? ", or of four angles" : "")}: write count 2, or a row each.");
            return null;
        }

        if (word == "backs out" && Overlap(shape, places))
        {
            findings.Error(row["gap"].Where, $"part \"{name}\": with {row["gap"].Text} over the backs they would lie in each other: gap is the distance over all here; or is it backs in?");
            return null;
        }

        return places;
    }

    private static bool HasBackToTell(this ShapeKind kind) => kind == ShapeKind.Angle || kind == ShapeKind.Channel || kind == ShapeKind.ParallelChannel;

    private static bool Overlap(SectionShape shape, IReadOnlyList<PiecePlacement> places)
    {
        SectionShape[] one = [shape];
        SectionProperties[] all = [.. places.Select(p => new MemberSection("", [new SectionPart("", [new SectionPiece(one[0], p)])]).Properties!)];
        return Enumerable.Range(0, all.Length).Any(i => Enumerable.Range(0, i).Any(j =>
            Math.Min(all[i].Right, all[j].Right) - Math.Max(all[i].Left, all[j].Left) > 1e-9 && Math.Min(all[i].Top, all[j].Top) - Math.Max(all[i].Bottom, all[j].Bottom) > 1e-9));
    }
}
