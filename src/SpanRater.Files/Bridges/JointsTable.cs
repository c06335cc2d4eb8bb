namespace SpanRater.Files;

/// <summary>joints.csv: the joints, how they are supported, and which carry the deck.</summary>
internal sealed class JointsTable
{
    private static readonly TableColumn[] Columns =
    [
        new("joint", Required: true),
        new("x", Quantity.Length, Required: true),
        new("y", Quantity.Length, Required: true),
        new("support"),
        new("roller normal", Quantity.Angle),
        new("deck"),
        new("held sideways"),
    ];

    /// <summary>No joint is farther from the origin than this [m].</summary>
    private const double Farthest = 10_000;

    private readonly List<TableRow> rows = [];

    private JointsTable(DisplayUnits units) => Units = units;

    /// <summary>The joints that could be read whole.</summary>
    public List<Joint> Joints { get; } = [];

    /// <summary>The names of all joints, those with a bad cell among them.</summary>
    public List<string> Names { get; } = [];

    /// <summary>True when no joint is missing from <see cref="Joints"/>.</summary>
    public bool IsWhole { get; private set; }

    public DisplayUnits Units { get; }

    /// <summary>The joints; null where not even their names are known.</summary>
    public static JointsTable? Read(string text, string file, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var joints = new JointsTable(UnitsOf(table));
        foreach (TableRow row in table.Rows)
        {
            string? name = row.Required("joint");
            double? x = row.Required("x") is null ? null : row.Value("x"), y = row.Required("y") is null ? null : row.Value("y");
            SayIfTooFar(row, "x", x, findings);
            SayIfTooFar(row, "y", y, findings);
            Support? support = SupportOf(row, findings);
            bool isPanelPoint = row.YesOrNo("deck") ?? false;
            if (name is not null)
            {
                joints.Names.Add(name);
            }

            if (name is not null && x is { } atX && y is { } atY)
            {
                joints.Joints.Add(new Joint(name, atX, atY, support, isPanelPoint) { Braced = row.YesOrNo("held sideways") });
                joints.rows.Add(row);
            }
        }

        joints.IsWhole = joints.Joints.Count == table.Rows.Count && !table.HasBrokenRows;
        return table.HasBrokenRows ? null : joints;
    }

    public Place PlaceOf(int joint, string column) => rows[joint][column].Where;

    public int LineOf(int joint) => rows[joint].Where.Line!.Value;

    private static void SayIfTooFar(TableRow row, string column, double? metres, FindingList findings)
    {
        if (Math.Abs(metres ?? 0) > Farthest)
        {
            findings.Error(row[column].Where, $"{column} = {row[column].Text} is more than 10 km away: check the number and the unit in the heading.");
        }
    }

    private static DisplayUnits UnitsOf(Table table) =>
        table.Header("x")?.Unit is { } unit ? (unit.Symbol is "ft" or "in" ? DisplayUnits.Us : DisplayUnits.Si) : DisplayUnits.Us;

    private static Support? SupportOf(TableRow row, FindingList findings)
    {
        TableCell cell = row["support"], normal = row["roller normal"];
        double? degrees = row.Value("roller normal");
        string word = cell.Text.ToUpperInvariant();
        if (word != "ROLLER" && !normal.IsBlank)
        {
            findings.Error(normal.Where, "a roller normal belongs to a roller: write roller under support, or clear it.");
        }

        switch (word)
        {
            case "":
                return null;
            case "PIN":
                return Support.Pin;
            case "ROLLER":
                return Support.Roller(degrees ?? 90);
            default:
                findings.Error(cell.Where, $"support \"{cell.Text}\": write pin or roller, or leave it blank.{NearestName.Question(cell.Text, ["pin", "roller"])}");
                return null;
        }
    }
}
