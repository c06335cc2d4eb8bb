namespace SpanRater.Files;

/// <summary>packing.csv: what is packed on the pins, a bar a row, in the order in which it stands along the pin.</summary>
internal sealed class PackingTable
{
    private static readonly TableColumn[] Columns =
    [
        new("pin", Required: true),
        new("bar", Required: true),
        new("thickness", Quantity.Length, Required: true, Units: "in or mm"),
        new("gap", Quantity.Length, Units: "in or mm"),
    ];

    private PackingTable()
    {
    }

    /// <summary>The bars, pin by pin in the order of the rows.</summary>
    public List<(TableRow Row, string Pin, string Bar, double Thickness, double Gap)> Bars { get; } = [];

    /// <summary>The table; null where it cannot be used.</summary>
    public static PackingTable? Read(string text, string file, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var packing = new PackingTable();
        foreach (TableRow row in table.Rows)
        {
            string? pin = row.Required("pin"), bar = row.Required("bar");
            double? thickness = row["thickness"].IsBlank ? null : row.PositiveValue("thickness", "thickness"), gap = row.Value("gap") ?? 0;
            if (row["thickness"].IsBlank)
            {
                findings.Error(row["thickness"].Where, $"thickness of bar \"{bar}\" on the pin is missing: write how thick it is along the pin.");
            }

            if (gap < 0)
            {
                findings.Error(row["gap"].Where, $"gap = {row["gap"].Text}: write the clear distance from the bar before it, 0 where they touch.");
                gap = null;
            }

            if (pin is not null && bar is not null && thickness is not null && gap is not null)
            {
                packing.Bars.Add((row, pin, bar, thickness.Value, gap.Value));
            }
        }

        return table.HasBrokenRows ? null : packing;
    }
}
