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
}
