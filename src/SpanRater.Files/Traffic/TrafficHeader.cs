using System.Text;
using CsvHelper;

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
        using CsvReader cells = CsvReader.Create(line.ToArray(), CsvCells.Options((char)separator) with { TrimInsideQuotes = true });
        string[] names = cells.Read() ? [.. Enumerable.Range(0, cells.FieldCount).Select(cells.GetString)] : [];

        if (names.Length > 0 && names.Any(n => TrafficTime.TryRead(Encoding.UTF8.GetBytes(n), out _, out _)))
        {
            findings.Error(new Place(file, number, 1), "is a record, and above it is no header: write a line such as time,loads [kip],spacings [ft] above it, with the units in which the station wrote.");
            return null;
        }

        string[] further = [.. names.Where(n => n.Length > 0 && !IsMeantAsOwn(n)).Distinct(StringComparer.OrdinalIgnoreCase)];

        // The reader of all tables finds the columns, and says what is wrong with them; blank lines bring the header to its own. What a further column is in is no matter of its.
        string asked = further.Aggregate(Encoding.UTF8.GetString(line), (text, name) => text.Replace(name, WithoutUnit(name), StringComparison.Ordinal));
        var found = new FindingList();
        Table? table = TableReader.Read($"{new string('\n', number - 1)}{asked}", file, [.. Columns, .. further.Select(n => new TableColumn(string.Join(' ', WithoutUnit(n).Split(' ', StringSplitOptions.RemoveEmptyEntries))))], found);
        foreach (Table.HeaderCell column in table is null ? [] : ((string[])[Loads, Spacings]).Select(c => table.Header(c)!).Where(h => h.Unit is null))
        {
            table!.SayThatUnitIsMissing(column);
        }

        if (table is null && further.Count(n => char.IsAsciiDigit(n[^1])) > 1)
        {
            found.Error(new Place(file, number, 1), "the axles seem to have a column each: write all axle loads of a truck into one cell, separated by spaces, and its spacings into another.");
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

    // "load [kip]" is meant as loads and not as a column of its own, and so is "spacings (ft)".
    private static bool IsMeantAsOwn(string name) => Columns.Any(c =>
        (NameOf(name).StartsWith(c.Name, StringComparison.OrdinalIgnoreCase) && (NameOf(name).Length == c.Name.Length || !char.IsLetter(NameOf(name)[c.Name.Length])))
        || NearestName.Find(NameOf(name), [c.Name]) is not null);

    // As long as it was, so that places stay.
    private static string WithoutUnit(string name) => name.Replace('[', '(').Replace(']', ')');

    private static string NameOf(string cell)
    {
        int bracket = cell.IndexOf('[', StringComparison.Ordinal);
        return (bracket < 0 ? cell : cell[..bracket]).Trim();
    }
}
