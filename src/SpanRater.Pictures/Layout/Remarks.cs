namespace SpanRater.Pictures;

/// <summary>The small print below pictures.</summary>
internal static class Remarks
{
    private const double Size = 14;

    /// <summary>Says what the numbers at members stand for.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="key">The entries; none where every label fitted.</param>
    public static void Key(Sheet sheet, IReadOnlyList<string> key)
    {
        if (key.Count > 0)
        {
            sheet.Paragraph("key", $"Numbers at members: {string.Join("; ", key)}.", Size, Ink.Black);
        }
    }

    /// <summary>Says what filled and open joints and the pale band mean.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="truss">The truss.</param>
    public static void Signs(Sheet sheet, Truss truss) =>
        sheet.Paragraph(
            "signs",
            truss.PanelPoints.Count == 0
                ? "No joint is a panel point: the deck's load does not reach this truss."
                : "Filled joints are panel points, where the deck (pale band) brings its load to the truss; open joints are not.",
            Size);

    /// <summary>How a member is drawn that is not pointed out: a slack rod in dashes.</summary>
    public static LineStyle StyleOf(InfluenceLines lines, int member) =>
        lines.Slack?.Contains(member) == true ? new LineStyle(Ink.Grey, 1.4, Dash.Dashed) : new LineStyle(Ink.Grey, 1.8);

    /// <summary>Says for which set of rods the lines hold, where there are rods.</summary>
    public static void Rods(Sheet sheet, InfluenceLines lines)
    {
        if (lines.Slack is { } slack)
        {
            string names = slack.Count == 0 ? "none" : string.Join(", ", slack.Select(m => lines.Truss.Members[m].Name));
            sheet.Paragraph("rods", $"Slack here, drawn in dashes: {names}. The line holds while just these are slack; forces of different sets do not add up.", 14);
        }
    }
}
