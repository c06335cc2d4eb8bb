namespace SpanRater.Tests.Published.Mathalino;

/// <summary>mathalino.com, nodes 3439 and 3458: influence lines of two trusses, joints lettered as there.</summary>
public class MathalinoTests
{
    /// <summary>Node 3458: uniform load of 10 kN/m with a load of 30 kN.</summary>
    private const double Uniform = 10_000, Concentrated = 30_000;

    private static readonly Lazy<SolvedTruss> Node3439 = new(PrattOfSixPanels);

    private static readonly Lazy<SolvedTruss> Node3458 = new(SubdividedTriangles);

    private static readonly Dictionary<(string Case, string Quantity), Func<double>> Answers = new()
    {
        [("MATH3439", "JK at 9 m")] = () => Node3439.Value.Line("JK").OrdinateAt(9),
        [("MATH3439", "DE at 12 m")] = () => Node3439.Value.Line("DE").OrdinateAt(12),
        [("MATH3439", "DK at 9 m")] = () => Node3439.Value.Line("DK").OrdinateAt(9),
        [("MATH3439", "DK at 12 m")] = () => Node3439.Value.Line("DK").OrdinateAt(12),

        [("MATH3458", "U_JK at C")] = () => Node3458.Value.Line("JK").OrdinateAt(8),
        [("MATH3458", "U_BC at B")] = () => Node3458.Value.Line("BC").OrdinateAt(4),
        [("MATH3458", "U_CG at B")] = () => Node3458.Value.Line("CG").OrdinateAt(4),
        [("MATH3458", "U_CG at C")] = () => Node3458.Value.Line("CG").OrdinateAt(8),
        [("MATH3458", "F_JK")] = () => LargestForce("JK", Sense.Compression),
        [("MATH3458", "F_BC")] = () => LargestForce("BC", Sense.Tension),
        [("MATH3458", "F_CG compression")] = () => LargestForce("CG", Sense.Compression),
    };

    public static IEnumerable<TheoryDataRow<string, string, double, double>> Rows() =>
        PublishedTable.Read("Mathalino/examples.csv").Select(row =>
            new TheoryDataRow<string, string, double, double>(row["case"], row["quantity"], row.Number("value"), row.Number("tolerance"))
            {
                Label = row.Label($"{row["case"]}, {row["quantity"]}: {row["value"]} {row["unit"]}"),
            });

    [Theory]
    [MemberData(nameof(Rows))]
    public void Truss_OfThePage_GivesThePrintedValue(string node, string quantity, double printed, double tolerance) =>
        Assert.Equal(printed, Answers[(node, quantity)](), tolerance);

    // The page repeats the 47.63 kN of BC here by a slip of the pen; its own line of CG gives 10 x 5.333 x 0.57735 + 30 x
    // 0.57735 over the 10.667 m to the right of the neutral point.
    [Fact]
    public void Force_OfCGInTension_FollowsFromThePagesOwnLine() =>
        Assert.Equal((10 * (32 / 3.0) / 2 * 0.57735) + (30 * 0.57735), LargestForce("CG", Sense.Tension), 0.001);

    /// <summary>The truss of a node.</summary>
    internal static Truss TrussOf(string node) => (node == "MATH3439" ? Node3439 : Node3458).Value.Truss;

    // Both loads stand where they do most: the uniform load on all of one sense, the other at the largest ordinate.
    private static double LargestForce(string member, Sense sense) =>
        ((Uniform * Node3458.Value.Line(member).Area(sense))
            + Node3458.Value.Peaks(member, new AxleTrain([Concentrated], [])).Of(sense)!.Force) / 1000;

    // Node 3439: Pratt, six panels of 3 m, 3 m high; A to G below, H to L above.
    private static SolvedTruss PrattOfSixPanels() => SolvedTruss.Of(
        [
            new Joint("A", 0, 0, Support.Pin, IsPanelPoint: true),
            new Joint("B", 3, 0, IsPanelPoint: true),
            new Joint("C", 6, 0, IsPanelPoint: true),
            new Joint("D", 9, 0, IsPanelPoint: true),
            new Joint("E", 12, 0, IsPanelPoint: true),
            new Joint("F", 15, 0, IsPanelPoint: true),
            new Joint("G", 18, 0, Support.Roller(), IsPanelPoint: true),
            new Joint("H", 3, 3),
            new Joint("I", 6, 3),
            new Joint("J", 9, 3),
            new Joint("K", 12, 3),
            new Joint("L", 15, 3),
        ],
        [
            ("A", "B"), ("B", "C"), ("C", "D"), ("D", "E"), ("E", "F"), ("F", "G"),
            ("H", "I"), ("I", "J"), ("J", "K"), ("K", "L"),
            ("A", "H"), ("L", "G"),
            ("B", "H"), ("C", "I"), ("D", "J"), ("E", "K"), ("F", "L"),
            ("C", "H"), ("D", "I"), ("D", "K"), ("E", "L"),
        ]);

    // Node 3458: 16 m of equilateral triangles, 8 m on a side, each divided in four: A to E below at 4 m, F to I at half
    // height, J and K on top. The published ordinates ask for it: 4 m / (8 m sin 60°) in JK puts its moment centre at 8 m,
    // 3 m / (8 m sin 60°) in BC puts its at 4 m, and CG rises at 60°.
    private static SolvedTruss SubdividedTriangles()
    {
        double top = 8 * Math.Sin(Math.PI / 3), half = top / 2;
        return SolvedTruss.Of(
            [
                new Joint("A", 0, 0, Support.Pin, IsPanelPoint: true),
                new Joint("B", 4, 0, IsPanelPoint: true),
                new Joint("C", 8, 0, IsPanelPoint: true),
                new Joint("D", 12, 0, IsPanelPoint: true),
                new Joint("E", 16, 0, Support.Roller(), IsPanelPoint: true),
                new Joint("F", 2, half),
                new Joint("G", 6, half),
                new Joint("H", 10, half),
                new Joint("I", 14, half),
                new Joint("J", 4, top),
                new Joint("K", 12, top),
            ],
            [
                ("A", "B"), ("B", "C"), ("C", "D"), ("D", "E"),
                ("A", "F"), ("F", "J"), ("J", "G"), ("C", "G"), ("C", "H"), ("H", "K"), ("K", "I"), ("I", "E"),
                ("B", "F"), ("B", "G"), ("D", "H"), ("D", "I"),
                ("F", "G"), ("H", "I"), ("J", "K"),
            ]);
    }
}
