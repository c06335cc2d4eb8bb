namespace SpanRater.Files;

/// <summary>members.csv: the members and the capacities given for them.</summary>
internal sealed class MembersTable
{
    private static readonly (string Column, GivenCapacity Capacity)[] CapacityColumns =
    [
        ("tension capacity", GivenCapacity.Tension),
        ("compression capacity", GivenCapacity.Compression),
        ("inventory tension", GivenCapacity.InventoryTension),
        ("operating tension", GivenCapacity.OperatingTension),
        ("inventory compression", GivenCapacity.InventoryCompression),
        ("operating compression", GivenCapacity.OperatingCompression),
    ];

    private static readonly TableColumn[] Columns =
    [
        new("member", Required: true),
        new("from", Required: true),
        new("to", Required: true),
        new("role"),
        new("area", Quantity.Area),
        new("modulus", Quantity.Stress),
        new("tension only"),
        .. CapacityColumns.Select(c => new TableColumn(c.Column, Quantity.Force)),
    ];

    private readonly List<TableRow> rows = [];

    private MembersTable()
    {
    }

    public List<Member> Members { get; } = [];

    public List<GivenCapacities> Capacities { get; } = [];

    /// <summary>The column of members.csv that gives a capacity.</summary>
    public static string ColumnOf(GivenCapacity capacity) => CapacityColumns.First(c => c.Capacity == capacity).Column;

    /// <summary>The members; null where the table cannot be used.</summary>
    public static MembersTable? Read(string text, string file, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        bool usable = true;
        var members = new MembersTable();
        foreach (TableRow row in table.Rows)
        {
            string? name = row.Required("member"), from = row.Required("from"), to = row.Required("to");
            double? area = row.PositiveValue("area", "area"), modulus = row.PositiveValue("modulus", "modulus");
            bool tensionOnly = row.YesOrNo("tension only") ?? false;
            GivenCapacities capacities = CapacitiesOf(row);
            if (name is null || from is null || to is null)
            {
                usable = false;
                continue;
            }

            members.Members.Add(new Member(name, from, to, row["role"].Text, area, modulus, tensionOnly));
            members.Capacities.Add(capacities);
            members.rows.Add(row);
        }

        return usable ? members : null;
    }

    public Place PlaceOf(int member, string column) => rows[member][column].Where;

    public int LineOf(int member) => rows[member].Where.Line!.Value;

    private static GivenCapacities CapacitiesOf(TableRow row)
    {
        var values = new Dictionary<GivenCapacity, double>();
        foreach ((string column, GivenCapacity capacity) in CapacityColumns)
        {
            if (row.PositiveValue(column, column) is { } value)
            {
                values.Add(capacity, value);
            }
        }

        return new GivenCapacities(values);
    }
}
