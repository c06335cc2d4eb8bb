using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>What the arrows of a free body say, and how they are drawn: forces sought dashed with a question mark, known ones with their number.</summary>
internal sealed class BodyForces
{
    private readonly WorkedSolution worked;
    private readonly ForceNotation notation;
    private readonly IReadOnlyList<double> forces;
    private readonly HashSet<int> sought;

    /// <summary>Makes the words.</summary>
    /// <param name="worked">The solution.</param>
    /// <param name="notation">How numbers are shown.</param>
    /// <param name="forces">The forces, of which those known are shown.</param>
    /// <param name="sought">Forces not known yet.</param>
    public BodyForces(WorkedSolution worked, ForceNotation notation, IReadOnlyList<double> forces, IEnumerable<int> sought) =>
        (this.worked, this.notation, this.forces, this.sought) = (worked, notation, forces, [.. sought]);

    /// <summary>The truss.</summary>
    public Truss Truss => worked.Truss;

    /// <summary>Names and directions.</summary>
    public ForceNames Names => worked.Names;

    /// <summary>The words at a force.</summary>
    public string WordsOf(int force) => $"{Names[force]} = {(sought.Contains(force) ? "?" : notation.WithUnit(forces[force]))}";

    /// <summary>The line of a force.</summary>
    public LineStyle StyleOf(int force) => sought.Contains(force) ? new LineStyle(Ink.Black, 2.6, Dash.Dashed) : new LineStyle(Ink.Black, 2.6);

    /// <summary>Loads and reactions at a joint: direction as a unit vector, words, line.</summary>
    public IEnumerable<(string Shows, double X, double Y, string Words, LineStyle Style, bool IsReaction)> ExternalAt(int joint)
    {
        (double right, double up) = worked.JointLoads[joint];
        foreach ((double load, double x, double y) in ((double, double, double)[])[(up, 0, Math.Sign(up)), (right, Math.Sign(right), 0)])
        {
            if (load != 0)
            {
                yield return ($"load {Truss.Joints[joint].Name}", x, y, $"load {notation.WithUnit(Math.Abs(load))}", new LineStyle(Ink.Grey, 3.4), false);
            }
        }

        for (int f = Truss.Members.Count; f < Names.Count; f++)
        {
            if (Names.JointOf(f) == joint)
            {
                (double x, double y, _) = Names.DirectionAt(f, joint);
                yield return ($"reaction {Names[f]}", x, y, WordsOf(f), StyleOf(f) with { Weight = 3.4 }, true);
            }
        }
    }
}
