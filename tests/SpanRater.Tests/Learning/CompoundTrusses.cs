using CsCheck;

namespace SpanRater.Tests.Learning;

/// <summary>Trusses that joints alone do not solve: compound ones, and one that is not even compound.</summary>
internal static class CompoundTrusses
{
    private static readonly string[] HalfOfAFink = ["A-P1", "P1-P2", "P2-P3", "P3-C", "A-Q1", "Q1-D", "P1-Q1", "Q1-P2", "P2-D", "P2-Q2", "P3-Q2", "D-Q2", "Q2-C"];

    /// <summary>A Fink roof truss of 12 m, 4 m high: two simple trusses that share the ridge C and a tie from D to E.</summary>
    internal static Truss Fink() => Fink(6, 4, 2 / 3.0, 0);

    /// <summary>A Fink truss of any measures.</summary>
    /// <param name="half">Half the span [m].</param>
    /// <param name="rise">Height of the ridge [m].</param>
    /// <param name="foot">Place of D between the support and midspan [-].</param>
    /// <param name="lift">Height of D over the supports [m].</param>
    internal static Truss Fink(double half, double rise, double foot, double lift)
    {
        (double X, double Y) d = (foot * half, lift), c = (half, rise);
        (string Name, double X, double Y)[] left =
        [
            ("A", 0, 0), ("P1", half / 4, rise / 4), ("P2", half / 2, rise / 2), ("P3", 3 * half / 4, 3 * rise / 4),
            ("Q1", d.X / 2, d.Y / 2), ("D", d.X, d.Y), ("Q2", (d.X + c.X) / 2, (d.Y + c.Y) / 2),
        ];
        Joint[] joints =
        [
            .. left.Select(j => new Joint(j.Name, j.X, j.Y, j.Name == "A" ? Support.Pin : null)),
            new Joint("C", half, rise),
            .. left.Select(j => new Joint(Mirrored(j.Name), (2 * half) - j.X, j.Y, j.Name == "A" ? Support.Roller() : null)),
        ];
        return Made(joints, [.. HalfOfAFink, .. HalfOfAFink.Select(Mirrored), "D-E"]);
    }

    /// <summary>Two triangles joined by three bars: every joint has three members, so none has two unknown forces.</summary>
    internal static Truss TwoTriangles(double apart, double wide, double lean) => Made(
        [
            new Joint("A", 0, 0, Support.Pin), new Joint("B", 1, 2), new Joint("C", -1, 2.5),
            new Joint("D", apart, lean, Support.Roller()), new Joint("E", apart + wide, 2 + lean), new Joint("F", apart - 0.3, 3.2),
        ],
        ["A-B", "B-C", "C-A", "D-E", "E-F", "F-D", "A-D", "B-E", "C-F"]);

    /// <summary>
    /// A hexagon with its three long diagonals: no cut through three members frees more than a joint. Its corners lie on no
    /// conic, where it would move. (A complete bipartite graph of three and three joints, from memory: W. Whiteley, 1984.)
    /// </summary>
    /// <param name="lift">How far E lies above the line through C and D [m]; 0 lets two members at D lie in one line.</param>
    internal static Truss Hexagon(double lift) => Made(
        [
            new Joint("A", 0, 0, Support.Pin), new Joint("B", 4, -0.5, Support.Roller()), new Joint("C", 6, 3),
            new Joint("D", 3.5, 4), new Joint("E", 1, 5 + lift), new Joint("F", -2, 2),
        ],
        ["A-B", "B-C", "C-D", "D-E", "E-F", "F-A", "A-D", "B-E", "C-F"]);

    /// <summary>Random compound trusses with a random load at every joint.</summary>
    internal static Gen<(Truss Truss, LoadCase Loads)> Random() =>
        from truss in Gen.OneOf(
            Gen.Select(Gen.Double[3, 20], Gen.Double[0.4, 1.2], Gen.Double[0.4, 0.9], Gen.Double[-0.2, 0.3], (half, rise, foot, lift) => Fink(half, rise * half, foot, lift * rise * half)),
            Gen.Select(Gen.Double[3, 8], Gen.Double[1, 3], Gen.Double[-0.5, 0.5], TwoTriangles))
        from loads in Gen.Select(Gen.Double[-5e4, 5e4], Gen.Double[-5e4, 5e4]).Array[truss.Joints.Count]
        select (truss, new LoadCase("random", [.. loads.Select((l, j) => new JointLoad(truss.Joints[j].Name, l.Item1, l.Item2))]));

    internal static Truss Made(Joint[] joints, string[] members) => Truss.Create(joints, [.. members.Select(Between)]).Truss!;

    private static string Mirrored(string name) => name.Replace('A', 'B').Replace('P', 'R').Replace('Q', 'S').Replace('D', 'E');

    private static Member Between(string ends)
    {
        string[] names = ends.Split('-');
        return new Member(names[0] + names[1], names[0], names[1]);
    }
}
