using System.Globalization;
using System.Text;
using CsvHelper;

namespace SpanRater.Files;

/// <summary>Reads a CSV table by the rules of the bridge folder; CsvHelper finds the cells.</summary>
internal sealed class TableReader
{
    private static readonly TableColumn Note = new("note");

    private readonly string file;
    private readonly IReadOnlyList<TableColumn> columns;
    private readonly FindingList findings;
    private readonly char separator;
    private readonly List<(int Index, Table.HeaderCell Header)> known = [];
    private readonly Dictionary<int, Place> nameless = [];
    private int headerCells;

    private TableReader(string file, IReadOnlyList<TableColumn> columns, FindingList findings, char separator)
    {
        this.file = file;
        this.columns = [.. columns, Note];
        this.findings = findings;
        this.separator = separator;
    }

    /// <summary>The table in a text; null where its header cannot be used.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name in findings.</param>
    /// <param name="columns">The columns it may have; each table may have a note as well.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static Table? Read(string text, string file, IReadOnlyList<TableColumn> columns, FindingList findings) =>
        new TableReader(file, columns, findings, SeparatorOf(text)).Read(text);

    private Table? Read(string text)
    {
        CsvReaderOptions options = CsvCells.Options(separator) with { TrackLineNumbers = true, OnMalformedRecord = Malformed };
        using CsvReader reader = CsvReader.Create(Encoding.UTF8.GetBytes(text), options);
        Table? table = null;
        while (reader.Read())
        {
            if (reader.FieldCount > InputLimits.MostColumns)
            {
                findings.Error(new Place(file, (int)reader.LineNumber, 1), string.Create(CultureInfo.InvariantCulture, $"the row has {reader.FieldCount:N0} cells, and no table has more than {InputLimits.MostColumns}: check what the file is."));
                return null;
            }

            List<TableCell> cells = CellsOf(reader);
            if (cells.TrueForAll(c => c.IsBlank) || cells[0].Text.StartsWith('#'))
            {
                continue;
            }

            if (table is null)
            {
                table = ReadHeader(cells);
                if (table is null)
                {
                    return null;
                }
            }
            else if (table.Rows.Count == InputLimits.MostRows)
            {
                findings.Error(new Place(file, (int)reader.LineNumber, 1), string.Create(CultureInfo.InvariantCulture, $"the table has more than {InputLimits.MostRows:N0} rows, and what follows is not read: no table of a bridge is as long. Leave out what does not belong to it."));
                return null;
            }
            else if (cells.Find(c => c.Text.Length > InputLimits.LongestCell) is { Text.Length: > 0 } longest)
            {
                findings.Error(longest.Where, string.Create(CultureInfo.InvariantCulture, $"the cell is {longest.Text.Length:N0} characters long, and {InputLimits.LongestCell:N0} are read: shorten it, or close its quotes."));
                table.HasBrokenRows = true;
            }
            else
            {
                AddRow(table, (int)reader.LineNumber, cells);
            }
        }

        if (table is null)
        {
            findings.Error(new Place(file), "has no header: the first line that is not a comment names the columns.");
        }

        return table;
    }

    // The header decides: the first line that is not blank and not a comment.
    internal static char SeparatorOf(string text)
    {
        foreach (ReadOnlySpan<char> line in text.AsSpan().EnumerateLines())
        {
            ReadOnlySpan<char> trimmed = line.Trim();
            if (trimmed.IsEmpty || trimmed[0] == '#' || trimmed.Trim(",;\t ").IsEmpty)
            {
                continue;
            }

            int semicolons = trimmed.Count(';'), tabs = trimmed.Count('\t'), commas = trimmed.Count(',');
            return semicolons > commas && semicolons >= tabs ? ';' : tabs > commas ? '\t' : ',';
        }

        return ',';
    }

    // A quote in the middle of a cell is an inch mark and welcome; the rest is broken quoting.
    private void Malformed(CsvMalformedRecord record)
    {
        if (record.Reason == CsvMalformedReason.StrayQuote)
        {
            return;
        }

        findings.Error(
            new Place(file, (int)record.LineNumber, 1),
            record.Reason switch
            {
                CsvMalformedReason.LineBreakInQuotes => "a quoted cell does not end on its line: close the quotes; a cell holds no line break.",
                CsvMalformedReason.UnterminatedQuote => "a quoted cell is never closed: close the quotes.",
                CsvMalformedReason.TextAfterClosingQuote => "there is text after the closing quote of a cell: quote the whole cell, and double the quotes within it.",
                _ => "the quotes in this line do not pair.",
            });
    }

    private List<TableCell> CellsOf(CsvReader reader)
    {
        int[] columns = CsvCells.ColumnsOf(reader);
        var cells = new List<TableCell>(columns.Length);
        for (int i = 0; i < columns.Length; i++)
        {
            cells.Add(new TableCell(SpreadsheetText.Read(reader.GetString(i).Trim()), new Place(file, (int)reader.LineNumber, columns[i])));
        }

        return cells;
    }

    private Table? ReadHeader(List<TableCell> cells)
    {
        headerCells = cells.Count;
        var header = new Dictionary<string, Table.HeaderCell>(StringComparer.Ordinal);
        bool usable = true;
        var misnamed = new List<string>();
        for (int i = 0; i < cells.Count; i++)
        {
            if (cells[i].IsBlank)
            {
                nameless[i] = cells[i].Where;
                continue;
            }

            (string name, string? spelling) = Split(cells[i].Text);
            TableColumn? column = columns.FirstOrDefault(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase));
            if (column is null)
            {
                if (UnitWithoutBrackets(cells[i].Text) is { } mend)
                {
                    findings.Error(cells[i].Where, $"column \"{cells[i].Text}\": write {mend}: the unit stands in square brackets.");
                    usable = false;
                    misnamed.Add(mend[..mend.IndexOf(" [", StringComparison.Ordinal)]);
                    continue;
                }

                findings.Error(cells[i].Where, $"unknown column \"{name}\".{NearestName.Question(name, columns.Select(c => c.Name))} The columns are: {string.Join(", ", columns.Select(c => c.Name))}.");
                usable = false;
                continue;
            }

            var headerCell = new Table.HeaderCell(column, UnitOf(column, spelling, cells[i].Where), cells[i].Where.Line!.Value, cells[i].Where.Column!.Value);
            if (!header.TryAdd(column.Name, headerCell))
            {
                findings.Error(cells[i].Where, $"column \"{column.Name}\" is there twice: keep one.");
                usable = false;
                continue;
            }

            known.Add((i, headerCell));
        }

        foreach (TableColumn column in columns.Where(c => c.Required && !header.ContainsKey(c.Name) && !misnamed.Contains(c.Name)))
        {
            string unit = column.Quantity is null ? "" : $" [{column.Suggestion.Split(' ')[0]}]";
            findings.Error(new Place(file, cells[0].Where.Line, 1), $"column \"{column.Name}\" is missing: add a column headed {column.Name}{unit}.");
            usable = false;
        }

        return usable ? new Table(file, header, separator, findings) : null;
    }

    // "x [ft]" is a name and a unit.
    private static (string Name, string? Unit) Split(string text)
    {
        int bracket = text.IndexOf('[', StringComparison.Ordinal);
        string name = bracket < 0 ? text : text[..bracket];
        string? unit = bracket < 0 ? null : text[(bracket + 1)..].TrimEnd().TrimEnd(']').Trim();
        return (string.Join(' ', name.Split(' ', StringSplitOptions.RemoveEmptyEntries)), unit);
    }

    // "load (kip)" and "load kip" are meant as "load [kip]".
    private string? UnitWithoutBrackets(string text)
    {
        foreach (TableColumn column in columns.Where(c => c.Quantity is not null && text.StartsWith(c.Name, StringComparison.OrdinalIgnoreCase)).OrderByDescending(c => c.Name.Length))
        {
            string rest = text[column.Name.Length..].Trim(' ', '(', ')', ',', ':');
            if (Unit.Find(rest)?.Quantity == column.Quantity)
            {
                return $"{column.Name} [{rest}]";
            }
        }

        return null;
    }

    private Unit? UnitOf(TableColumn column, string? spelling, Place where)
    {
        if (spelling is null)
        {
            return null;
        }

        if (column.Quantity is not { } quantity || quantity == Quantity.Number)
        {
            findings.Error(where, $"column \"{column.Name}\" takes no unit: write {column.Name} alone.");
            return null;
        }

        if (Unit.Find(spelling) is { } unit && unit.Quantity == quantity)
        {
            return unit;
        }

        findings.Error(where, $"column \"{column.Name}\": {QuantityText.WrongUnit(spelling, quantity, column.Suggestion)}");

        // Some unit, so that the cells are not blamed as well; the table is refused anyway.
        return Unit.All.First(u => u.Quantity == quantity);
    }

    private void AddRow(Table table, int line, List<TableCell> cells)
    {
        for (int i = headerCells; i < cells.Count; i++)
        {
            if (!cells[i].IsBlank)
            {
                string comma = separator == ',' ? " A decimal comma? Write a point, or separate the columns with semicolons." : "";
                findings.Error(cells[i].Where, string.Create(CultureInfo.InvariantCulture, $"the row has {cells.Count} cells and the header {headerCells}.{comma}"));
                table.HasBrokenRows = true;
                return;
            }
        }

        foreach ((int index, Place where) in nameless)
        {
            if (index < cells.Count && !cells[index].IsBlank)
            {
                findings.Error(cells[index].Where, $"the column of \"{cells[index].Text}\" has no name: name it in the header (line {where.Line}), or clear the cell.");
            }
        }

        var named = new Dictionary<string, TableCell>(StringComparer.Ordinal);
        foreach ((int index, Table.HeaderCell header) in known)
        {
            if (index < cells.Count)
            {
                named[header.Column.Name] = cells[index];
            }
        }

        table.Rows.Add(new TableRow(table, line, named, cells.Count < headerCells ? (cells.Count, headerCells) : null));
    }
}
