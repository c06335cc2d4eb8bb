namespace SpanRater.Files;

/// <summary>Reads the holes in the worst path of a part.</summary>
internal static class SectionHoleCells
{
    private const int MostHoles = 50;

    private static readonly string[] OfHoles = ["hole", "through", "staggers", "pitch", "gauge"];

    /// <summary>The path, null where it is not given; false with findings where the cells cannot be used.</summary>
    public static bool HolesOf(TableRow row, string name, SectionShape shape, FindingList findings, out HolePath? path)
    {
        path = null;
        int before = findings.All.Count;
        int? count = SectionCells.CountOf(row, "holes", 0, MostHoles, findings, blank: null);
        int staggers = SectionCells.CountOf(row, "staggers", 0, MostHoles, findings, blank: 0) ?? 0;
        double? diameter = row.PositiveValue("hole", $"part \"{name}\": hole");
        double? pitch = row.PositiveValue("pitch", $"part \"{name}\": pitch"), gauge = row.PositiveValue("gauge", $"part \"{name}\": gauge");
        ShapeDimension? wall = WallOf(row, name, shape, findings);
        if (findings.All.Count > before)
        {
            return false;
        }

        if (count is null or 0)
        {
            return WithoutHoles(row, name, shape, count, findings, out path);
        }

        if (shape.Kind.Walls.Count == 0 || shape.Kind == ShapeKind.Eyebar)
        {
            findings.Error(row["holes"].Where, shape.Kind == ShapeKind.Eyebar
                ? $"part \"{name}\" is an eyebar: write head width and pin hole, and clear holes."
                : $"part \"{name}\": holes are not taken through {SectionWords.WithArticle(shape.Kind)}: clear them{(shape.Kind == ShapeKind.Pipe ? "" : "; write root or root area where its ends are threaded and not upset")}.");
            return false;
        }

        if (diameter is null)
        {
            findings.Error(row["holes"].Where, $"part \"{name}\" has holes and no hole: write the diameter that each takes away, allowance for punching in it.");
            return false;
        }

        if (wall is null && shape.Kind.Walls.Count > 1 && shape.Kind != ShapeKind.Angle)
        {
            findings.Error(row["holes"].Where, $"part \"{name}\": holes through what? Write web or flange under through.");
            return false;
        }

        if (staggers >= count.Value)
        {
            findings.Error(row["staggers"].Where, $"part \"{name}\": {staggers} staggers between {count} holes: there is one less than holes at most.");
            return false;
        }

        if ((staggers > 0) != (pitch is not null && gauge is not null) || (pitch is null) != (gauge is null))
        {
            findings.Error(row[staggers > 0 ? "staggers" : pitch is null ? "gauge" : "pitch"].Where, $"part \"{name}\": staggers, pitch and gauge go together: how many steps of the path are aslant, how far each goes along the member (s) and across it (g).");
            return false;
        }

        path = new HolePath(count.Value, diameter.Value, [.. Enumerable.Repeat(new Stagger(pitch ?? 0, gauge ?? 1), staggers)], wall);
        if (shape.NetArea(path) <= 0)
        {
            findings.Error(row["hole"].Where, $"part \"{name}\": the holes leave nothing of it: check holes, hole and the unit in the heading.");
            return false;
        }

        return true;
    }

    private static bool WithoutHoles(TableRow row, string name, SectionShape shape, int? count, FindingList findings, out HolePath? path)
    {
        path = count is null ? null : HolePath.None;
        if (OfHoles.FirstOrDefault(c => !row[c].IsBlank) is { } stray)
        {
            findings.Error(row[stray].Where, $"part \"{name}\": {stray} says nothing without holes: write how many are in the worst path.");
            return false;
        }

        if (count is null || (shape.OwnNetArea is null && shape.Kind != ShapeKind.Eyebar))
        {
            return true;
        }

        findings.Error(row["holes"].Where, shape.Kind == ShapeKind.Eyebar
            ? $"part \"{name}\" is an eyebar: write head width and pin hole, and clear holes."
            : $"part \"{name}\" has a root of the thread, and holes = 0 says that its ends are upset: clear one of them.");
        return false;
    }

    private static ShapeDimension? WallOf(TableRow row, string name, SectionShape shape, FindingList findings)
    {
        TableCell cell = row["through"];
        if (cell.IsBlank)
        {
            return null;
        }

        ShapeDimension[] known = [.. shape.Kind.Walls, .. shape.Kind.Needed.Where(d => shape.Kind.FinerOfIsWalls(d))];
        if (SectionWords.FindDimension(cell.Text) is { } wall && known.Contains(wall))
        {
            return wall;
        }

        findings.Error(cell.Where, known.Length == 0
            ? $"part \"{name}\": holes are not taken through {SectionWords.WithArticle(shape.Kind)}: clear it."
            : $"part \"{name}\": holes cannot go through \"{cell.Text}\".{NearestName.Question(cell.Text, known.Select(SectionWords.Of))} Of {SectionWords.WithArticle(shape.Kind)} it is {string.Join(" or ", known.Distinct().Select(SectionWords.Of))}.");
        return null;
    }

    // Both legs, or both flanges.
    private static bool FinerOfIsWalls(this ShapeKind kind, ShapeDimension dimension) =>
        dimension is ShapeDimension.Flange || (dimension == ShapeDimension.Thickness && kind == ShapeKind.Angle);
}
