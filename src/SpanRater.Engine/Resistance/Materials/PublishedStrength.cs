namespace SpanRater;

/// <summary>
/// Strength that is published for material of which only its kind and the year of building are known. Using a row is an assumption,
/// and is made only where the user asks for it.
/// </summary>
public sealed record PublishedStrength
{
    /// <summary>One pound per square inch [Pa]; exact by definition (international yard and pound, 1959).</summary>
    public const double PoundPerSquareInch = 4.4482216152605 / (0.0254 * 0.0254);

    /// <summary>Modulus of elasticity in the published column stresses, 29,000,000 psi [Pa]. Source: AASHTO MBE, Table 6B.5.2.1-1, from memory.</summary>
    public const double Modulus = 29e6 * PoundPerSquareInch;

    private PublishedStrength(MaterialKind kind, int? from, int? last, string period, double yield, double? ultimate, Clause clause)
    {
        (Kind, From, Last, Period, Clause) = (kind, from, last, period, clause);
        Yield = Ksi(yield);
        Ultimate = ultimate is { } fu ? Ksi(fu) : null;
    }

    /// <summary>Every row, by kind and year. Source: AASHTO MBE, 3rd ed. (2018), 6A.6.2 and 6B.5.2, from memory.</summary>
    public static IReadOnlyList<PublishedStrength> All { get; } =
    [
        Steel(null, 1904, "before 1905", 26, 52, 14, 19.5, new AllowableColumn(12_260, 0.28, 148.4)),
        Steel(1905, 1935, "1905 to 1936", 30, 60, 16, 22.5, new AllowableColumn(14_150, 0.37, 138.1)),
        Steel(1936, 1963, "1936 to 1963", 33, 66, 18, 24.5, new AllowableColumn(15_570, 0.45, 131.7)),
        Steel(1964, null, "after 1963", 36, 66, 20, 27, new AllowableColumn(16_980, 0.53, 126.1)),
        new(MaterialKind.Pin, null, 1904, "before 1905", 25.5, null, StrengthClauses.UnknownPins),
        new(MaterialKind.Pin, 1905, 1935, "1905 through 1935", 30, null, StrengthClauses.UnknownPins),
        new(MaterialKind.Pin, 1936, 1963, "1936 through 1963", 33, null, StrengthClauses.UnknownPins),
        new(MaterialKind.Pin, 1964, null, "after 1963", 36, null, StrengthClauses.UnknownPins),
        new(MaterialKind.WroughtIron, null, null, "any year", 26, 48, StrengthClauses.WroughtIron)
        {
            AllowableTension = (Ksi(14.6), Ksi(20.0)), AllowableClause = StrengthClauses.AllowableIron,
        },
    ];

    /// <summary>The kind.</summary>
    public MaterialKind Kind { get; }

    /// <summary>First year of building, or null.</summary>
    public int? From { get; }

    /// <summary>Last year of building, or null.</summary>
    public int? Last { get; }

    /// <summary>The years as the table heads them.</summary>
    public string Period { get; }

    /// <summary>Yield [Pa].</summary>
    public double Yield { get; }

    /// <summary>Tensile strength [Pa]; null where none is published.</summary>
    public double? Ultimate { get; }

    /// <summary>Allowable stress in tension on the gross section as printed, at inventory and operating level [Pa]; null where none is.</summary>
    public (double Inventory, double Operating)? AllowableTension { get; private init; }

    /// <summary>Where that stress is from; null where none is printed.</summary>
    public Clause? AllowableClause { get; private init; }

    /// <summary>Allowable stress of columns as printed, at inventory level; null where none is.</summary>
    public AllowableColumn? AllowableColumn { get; private init; }

    /// <summary>Where yield and tensile strength are from.</summary>
    public Clause Clause { get; }

    /// <summary>Whether any row of a kind is told apart by the year of building.</summary>
    /// <param name="kind">The kind.</param>
    public static bool GoesByYear(MaterialKind kind) => All.Any(r => r.Kind == kind && (r.From ?? r.Last) is not null);

    /// <summary>
    /// The row of a kind and year; of two rows that name a year in their headings the later one. Null where there is none: rivets and timber
    /// have no strength by year.
    /// </summary>
    /// <param name="kind">The kind.</param>
    /// <param name="built">Year of building; null where it is not known, which only a kind that holds for any year allows.</param>
    public static PublishedStrength? Find(MaterialKind kind, int? built) => All.FirstOrDefault(r =>
        r.Kind == kind && ((r.From ?? r.Last) is null || (built is { } year && year >= (r.From ?? year) && year <= (r.Last ?? year))));

    private static PublishedStrength Steel(int? from, int? last, string period, double yield, double ultimate, double inventory, double operating, AllowableColumn psi) =>
        new(MaterialKind.Steel, from, last, period, yield, ultimate, StrengthClauses.UnknownSteel)
        {
            AllowableTension = (Ksi(inventory), Ksi(operating)),
            AllowableClause = StrengthClauses.AllowableByYear,
            AllowableColumn = new AllowableColumn(psi.AtZero * PoundPerSquareInch, psi.Fall * PoundPerSquareInch, psi.Limit),
        };

    private static double Ksi(double stress) => stress * 1000 * PoundPerSquareInch;
}
