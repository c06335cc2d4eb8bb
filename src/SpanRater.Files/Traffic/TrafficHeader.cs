using System.Text;

namespace SpanRater.Files;

/// <summary>The header of a traffic record: where its columns stand and in which units; further columns are kept by name.</summary>
internal sealed class TrafficHeader
{
    private const string Time = "time", Loads = "loads", Spacings = "spacings";

    private static readonly TableColumn[] Columns = [new(Time, Required: true), new(Loads, Quantity.Force, Required: true), new(Spacings, Quantity.Length, Required: true)];

    private TrafficHeader(byte separator, int cells, int[] places, double loadUnit, double spacingUnit, IReadOnlyList<string> further, int[] furtherPlaces)
    {
        Separator = separator;
        Cells = cells;
        (TimeCell, LoadsCell, SpacingsCell) = (places[0], places[1], places[2]);
        LoadUnit = loadUnit;
        SpacingUnit = spacingUnit;
        Further = further;
        FurtherCells = furtherPlaces;
    }

    /// <summary>Comma, semicolon or tab.</summary>
    public byte Separator { get; }

    /// <summary>Number of cells.</summary>
    public int Cells { get; }

    /// <summary>Place of the time.</summary>
    public int TimeCell { get; }

    /// <summary>Place of the axle loads.</summary>
    public int LoadsCell { get; }

    /// <summary>Place of the spacings.</summary>
    public int SpacingsCell { get; }

    /// <summary>Newtons of a load as written.</summary>
    public double LoadUnit { get; }

    /// <summary>Metres of a spacing as written.</summary>
    public double SpacingUnit { get; }

    /// <summary>Names of the further columns.</summary>
    public IReadOnlyList<string> Further { get; }

    /// <summary>Their places.</summary>
    public IReadOnlyList<int> FurtherCells { get; }

    /// <summary>Whether a comma is a decimal mark.</summary>
    public bool CommaIsDecimalMark => Separator == ';';

    /// <summary>Reads the header; null, with what is wrong, where it cannot be used.</summary>
    /// <param name="line">Its line.</param>
    /// <param name="number">Number of the line, from 1.</param>
    /// <param name="file">Name of the file in findings.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static TrafficHeader? Read(ReadOnlySpan<byte> line, int number, string file, FindingList findings)
    {
        byte separator = TableReader.SeparatorOf(Encoding.UTF8.GetString(line)) switch { ';' => (byte)';', '\t' => (byte)'\t', _ => (byte)',' };
        var cells = new TrafficCells(line, separator, MostCells);
        var names = new string[cells.Count];
        for (int c = 0; c < names.Length; c++)
        {
            names[c] = cells.Text(c);
        }

        string[] further = [.. names.Where(n => n.Length > 0 && !IsMeantAsOwn(n)).Distinct(StringComparer.OrdinalIgnoreCase)];

        // The reader of all tables finds the columns, and says what is wrong with them; blank lines bring the header to its own.
        var found = new FindingList();
        Table? table = TableReader.Read($"{new string('\n', number - 1)}{Encoding.UTF8.GetString(line)}", file, [.. Columns, .. further.Select(n => new TableColumn(n))], found);
        foreach (Table.HeaderCell column in table is null ? [] : ((string[])[Loads, Spacings]).Select(c => table.Header(c)!).Where(h => h.Unit is null))
        {
            table!.SayThatUnitIsMissing(column);
        }

        findings.AddAll(found);
        if (table is null || found.HasErrors)
        {
            return null;
        }

        int PlaceOf(string column) => Array.FindIndex(names, n => string.Equals(NameOf(n), column, StringComparison.OrdinalIgnoreCase));
        return new TrafficHeader(
            separator, names.Length, [PlaceOf(Time), PlaceOf(Loads), PlaceOf(Spacings)], table.Header(Loads)!.Unit!.Size, table.Header(Spacings)!.Unit!.Size,
            further, [.. further.Select(n => Array.FindIndex(names, m => string.Equals(m, n, StringComparison.OrdinalIgnoreCase)))]);
    }

    /// <summary>More cells than a record has.</summary>
    public const int MostCells = 200;

    // "load [kip]" is meant as loads and not as a column of its own, and so is "spacings (ft)".
    private static bool IsMeantAsOwn(string name) => Columns.Any(c =>
        (NameOf(name).StartsWith(c.Name, StringComparison.OrdinalIgnoreCase) && (NameOf(name).Length == c.Name.Length || !char.IsLetter(NameOf(name)[c.Name.Length])))
        || NearestName.Find(NameOf(name), [c.Name]) is not null);

    private static string NameOf(string cell)
    {
        int bracket = cell.IndexOf('[', StringComparison.Ordinal);
        return (bracket < 0 ? cell : cell[..bracket]).Trim();
    }
}
