namespace SpanRater.Files;

/// <summary>A table that has been read: rows of cells that know where they stand.</summary>
internal sealed class Table
{
    private readonly Dictionary<string, HeaderCell> header;

    public Table(string file, Dictionary<string, HeaderCell> header, char separator, FindingList findings)
    {
        File = file;
        this.header = header;
        Separator = separator;
        Findings = findings;
    }

    public string File { get; }

    public char Separator { get; }

    public FindingList Findings { get; }

    public List<TableRow> Rows { get; } = [];

    /// <summary>True where a row could not be taken apart: what depends on all rows is not worth a look yet.</summary>
    public bool HasBrokenRows { get; set; }

    /// <summary>The decimal mark that the file has used so far.</summary>
    private char? DecimalMark { get; set; }

    public HeaderCell? Header(string column) => header.GetValueOrDefault(column);

    /// <summary>Says once that a column has no unit.</summary>
    public void SayThatUnitIsMissing(HeaderCell column)
    {
        if (column.UnitMissingSaid)
        {
            return;
        }

        column.UnitMissingSaid = true;
        string[] units = column.Column.Suggestion.Split(" or ");
        Findings.Error(
            new Place(File, column.Line, column.CharacterColumn),
            $"column \"{column.Column.Name}\" has no unit: write {string.Join(" or ", units.Select(u => $"{column.Column.Name} [{u}]"))}.");
    }

    /// <summary>A number by the file's rules, or null with a finding.</summary>
    public double? ReadNumber(TableCell cell)
    {
        char? mark = cell.Text.Contains(',', StringComparison.Ordinal) ? ',' : cell.Text.Contains('.', StringComparison.Ordinal) ? '.' : null;
        (double? value, string? wrong) = QuantityText.ReadNumber(cell.Text, commaIsDecimalMark: Separator == ';');
        if (wrong is not null)
        {
            Findings.Error(cell.Where, wrong);
            return null;
        }

        DecimalMark ??= mark;
        if (mark is not null && mark != DecimalMark)
        {
            Findings.Error(cell.Where, $"\"{cell.Text}\" has a decimal {NameOf(mark.Value)}, and the file used a decimal {NameOf(DecimalMark!.Value)} before: use one throughout.");
            return null;
        }

        return value;
    }

    private static string NameOf(char mark) => mark == ',' ? "comma" : "point";

    /// <summary>A column as the header names it.</summary>
    internal sealed class HeaderCell(TableColumn column, Unit? unit, int line, int characterColumn)
    {
        public TableColumn Column => column;

        public Unit? Unit => unit;

        public int Line => line;

        public int CharacterColumn => characterColumn;

        public bool UnitMissingSaid { get; set; }
    }
}

/// <summary>A cell and where it stands.</summary>
internal readonly record struct TableCell(string Text, Place Where)
{
    public bool IsBlank => Text.Length == 0;
}

/// <summary>A row of a table.</summary>
internal sealed class TableRow(Table table, int line, Dictionary<string, TableCell> cells, (int Cells, int Header)? isShort)
{
    /// <summary>Where the row starts.</summary>
    public Place Where => new(table.File, line, 1);

    /// <summary>The cell of a column; blank where the row or the table does not have it.</summary>
    public TableCell this[string column] => cells.GetValueOrDefault(column, new TableCell("", new Place(table.File, line, 1)));

    /// <summary>Whether the header gives a column a unit.</summary>
    public bool HasUnit(string column) => table.Header(column)?.Unit is not null;

    /// <summary>The text of a cell that must not be blank; null with a finding.</summary>
    public string? Required(string column)
    {
        TableCell cell = this[column];
        if (!cell.IsBlank)
        {
            return cell.Text;
        }

        table.Findings.Error(
            cell.Where,
            isShort is { } counts && !cells.ContainsKey(column)
                ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $"\"{column}\" is missing: the row has {counts.Cells} cells and the header {counts.Header}.")
                : $"\"{column}\" is blank: every row needs one.");
        return null;
    }

    /// <summary>The value of a cell in SI (degrees for angles); null where it is blank or wrong, the latter with a finding.</summary>
    public double? Value(string column)
    {
        TableCell cell = this[column];
        if (cell.IsBlank || table.Header(column) is not { } header)
        {
            return null;
        }

        if (header.Column.Quantity == Quantity.Length && QuantityText.LooksLikeTape(cell.Text))
        {
            (double? metres, string? wrong) = QuantityText.ReadTape(cell.Text);
            if (wrong is not null)
            {
                table.Findings.Error(cell.Where, wrong);
            }

            return metres;
        }

        // Under a heading in inches a tape's fraction needs no mark: 7/8, 2-1/2.
        if (header.Unit?.Symbol == "in" && cell.Text.Contains('/', StringComparison.Ordinal) && QuantityText.ReadTape(cell.Text + " in").Metres is { } fraction)
        {
            return fraction;
        }

        double? number = table.ReadNumber(cell);
        if (header.Column.Quantity == Quantity.Number)
        {
            if (Math.Abs(number ?? 0) > QuantityText.LargestValue)
            {
                table.Findings.Error(cell.Where, $"\"{cell.Text}\" is too large to be true: check the number.");
                return null;
            }

            return number;
        }

        if (header.Unit is null)
        {
            table.SayThatUnitIsMissing(header);
            return null;
        }

        double? value = number * header.Unit.Size;
        if (Math.Abs(value ?? 0) > QuantityText.LargestValue)
        {
            table.Findings.Error(cell.Where, $"\"{cell.Text}\" is too large to be true: check the number and the unit in the heading.");
            return null;
        }

        return value;
    }

    /// <summary>A value that must be above zero; null where it is blank or wrong, the latter with a finding.</summary>
    public double? PositiveValue(string column, string what)
    {
        double? value = Value(column);
        if (value <= 0)
        {
            table.Findings.Error(this[column].Where, $"{what} = {this[column].Text}: it must be above zero.");
            return null;
        }

        if (value < QuantityText.LeastAboveZero)
        {
            table.Findings.Error(this[column].Where, $"\"{this[column].Text}\" is too small to be true: check the number and the unit in the heading.");
            return null;
        }

        return value;
    }

    /// <summary>Yes or no; null where it is blank or wrong, the latter with a finding.</summary>
    public bool? YesOrNo(string column)
    {
        TableCell cell = this[column];
        switch (cell.Text.ToUpperInvariant())
        {
            case "":
                return null;
            case "YES" or "Y" or "TRUE":
                return true;
            case "NO" or "N" or "FALSE":
                return false;
            default:
                table.Findings.Error(cell.Where, $"\"{column}\" is \"{cell.Text}\": write yes or no.");
                return null;
        }
    }
}
