using System.Globalization;

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
        new("weight", Quantity.LineLoad, Units: "plf or kN/m"),
        new("tension only"),
        new("material"),
        .. MemberHold.Columns,
        .. CapacityColumns.Select(c => new TableColumn(c.Column, Quantity.Force)),
    ];

    /// <summary>Above the heaviest chord of the largest bridges, 5 kip per foot [N/m].</summary>
    private const double HeaviestMember = 73_000;

    /// <summary>An area is often rounded, or that of the bare bar.</summary>
    private const double LeastOfSteel = 0.9;

    /// <summary>Words for what a member is of, without a strength.</summary>
    public static readonly string[] PlainMaterials = ["steel", "wrought iron", "timber"];

    private readonly List<TableRow> rows = [];

    private MembersTable()
    {
    }

    public List<Member> Members { get; } = [];

    public List<GivenCapacities> Capacities { get; } = [];

    /// <summary>Weight per length of each member [N/m]; null where none is written.</summary>
    public List<double?> Weights { get; } = [];

    /// <summary>What each row says of the member's make.</summary>
    public List<MemberHold> Holds { get; } = [];

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

            if (tensionOnly && CapacityColumns.Any(c => c.Column.Contains("compression", StringComparison.Ordinal) && capacities[c.Capacity] is not null))
            {
                findings.Warning(row["tension only"].Where, $"member \"{name}\" is marked tension only, and its capacity in compression is never used. Right for a rod; a member that can also press is not marked.");
            }

            members.Members.Add(new Member(name, from, to, row["role"].Text, area, modulus, tensionOnly) { IsTimber = string.Equals(row["material"].Text, "timber", StringComparison.OrdinalIgnoreCase) });
            members.Holds.Add(MemberHold.Read(row, findings));
            members.Capacities.Add(capacities);
            members.Weights.Add(WeightOf(row, name, area, modulus, findings));
            members.rows.Add(row);
        }

        return usable && !table.HasBrokenRows ? members : null;
    }

    /// <summary>Ends of members that name no joint.</summary>
    public IEnumerable<TrussFault.UnknownJoint> UnknownJoints(IReadOnlyCollection<string> joints)
    {
        for (int m = 0; m < Members.Count; m++)
        {
            foreach ((bool atFrom, string joint) in ((bool, string)[])[(true, Members[m].From), (false, Members[m].To)])
            {
                if (!joints.Contains(joint))
                {
                    yield return new TrussFault.UnknownJoint(m, atFrom, joint);
                }
            }
        }
    }

    public Place PlaceOf(int member, string column) => rows[member][column].Where;

    public string CellText(int member, string column) => rows[member][column].Text;

    /// <summary>What the member's material is called; null where none is named.</summary>
    public string? MaterialNameOf(int member) => rows[member]["material"].IsBlank ? null : rows[member]["material"].Text;

    /// <summary>Whether a word stands for a material without a strength, which says no more than what it is.</summary>
    public static bool IsPlainMaterial(string word) => PlainMaterials.Contains(word.ToLowerInvariant());

    /// <summary>Takes from sections and materials what the table leaves blank: areas, moduli, what is of timber.</summary>
    public void Complete(SectionsTable? sections, MaterialsToml? materials)
    {
        for (int m = 0; m < Members.Count; m++)
        {
            Material? material = MaterialNameOf(m) is { } name ? materials?.Find(name) : null;
            Members[m] = Members[m] with
            {
                Area = Members[m].Area ?? (Holds[m].Section is { } section ? sections?.Find(section)?.Area : null),
                Modulus = Members[m].Modulus ?? material switch { MetalMaterial metal => metal.GivenModulus, TimberMaterial timber => timber.Values.Modulus, _ => null },
                IsTimber = Members[m].IsTimber || material is TimberMaterial,
            };
        }
    }

    public bool IsBlank(int member, string column) => rows[member][column].IsBlank;

    public int LineOf(int member) => rows[member].Where.Line!.Value;

    // A member of steel weighs at least its area, wrought iron at 480 lb/ft³ included; lacing and rivets come on top.
    private static double? WeightOf(TableRow row, string name, double? area, double? modulus, FindingList findings)
    {
        double? weight = row.Value("weight");
        string text = row["weight"].Text;
        if (weight < 0)
        {
            findings.Error(row["weight"].Where, $"member \"{name}\" weighs {text}: a weight is written without a sign, 0 where it is counted elsewhere.");
            return null;
        }

        if (weight > HeaviestMember)
        {
            findings.Error(row["weight"].Where, string.Create(CultureInfo.InvariantCulture, $"member \"{name}\" weighs {weight / Unit.Find("plf")!.Size:#,0} plf ({weight / 1000:0.#} kN/m), which no member does: check the number and the unit in the heading."));
            return null;
        }

        if (weight > 0 && modulus is null && area is { } steel && weight < LeastOfSteel * steel * 480 * PublishedUnitWeight.PoundPerCubicFoot)
        {
            findings.Warning(row["weight"].Where, $"member \"{name}\" weighs {text}, less than its area of steel does (a blank modulus is steel): check weight, area and their units. Steel lost to rust is no relief.");
        }

        return weight;
    }

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
