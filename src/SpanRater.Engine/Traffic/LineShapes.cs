namespace SpanRater;

/// <summary>
/// The distinct shapes among influence lines. Lines that are multiples of one another have one shape: of a simple truss the
/// chords above and below a panel, or a diagonal and the post beside it. Of a deck that is its own mirror image the mirrored
/// lines are shaped as well, since a train that drives left over a line does what it does driving right over the line's mirror
/// image, and that is mostly the line of another member.
/// </summary>
internal sealed class LineShapes
{
    /// <summary>Lines that differ by less than this part of their greatest ordinate have one shape [-].</summary>
    private const double SameShape = 1e-13;

    /// <summary>Distances between panel points that differ by less than this part of the deck's length are equal [-].</summary>
    private const double SameLength = 1e-15;

    private readonly List<double[]> shapes = [];
    private readonly List<int> peaks = [];

    /// <param name="stations">x of the panel points [m].</param>
    /// <param name="ordinates">Effect of a unit load [lines × panel points].</param>
    /// <param name="nothing">Lines with no ordinate above this have no shape.</param>
    public LineShapes(double[] stations, double[][] ordinates, double nothing)
    {
        Mirrored = IsItsOwnMirrorImage(stations);
        Right = [.. ordinates.Select(y => ShapeOf(y, nothing))];
        Left = Mirrored ? [.. ordinates.Select(y => ShapeOf([.. y.Reverse()], nothing))] : Right;
    }

    /// <summary>The shapes [shapes × panel points].</summary>
    public IReadOnlyList<double[]> Shapes => shapes;

    /// <summary>Whether the shapes of the mirrored lines are among them.</summary>
    public bool Mirrored { get; }

    /// <summary>The shape of each line.</summary>
    public ShapedLine[] Right { get; }

    /// <summary>The shape of the mirror image of each line where <see cref="Mirrored"/>, else that of the line.</summary>
    public ShapedLine[] Left { get; }

    private static bool IsItsOwnMirrorImage(double[] stations)
    {
        double ends = stations[0] + stations[^1], equal = SameLength * (stations[^1] - stations[0]);
        for (int i = 0; i < stations.Length; i++)
        {
            if (Math.Abs(stations[i] + stations[^(i + 1)] - ends) > equal)
            {
                return false;
            }
        }

        return true;
    }

    private ShapedLine ShapeOf(double[] line, double nothing)
    {
        int peak = 0;
        for (int i = 1; i < line.Length; i++)
        {
            peak = Math.Abs(line[i]) > Math.Abs(line[peak]) ? i : peak;
        }

        double greatest = Math.Abs(line[peak]);
        if (greatest <= nothing)
        {
            return ShapedLine.None;
        }

        for (int s = 0; s < shapes.Count; s++)
        {
            double factor = line[peaks[s]] / shapes[s][peaks[s]];
            if (IsMultiple(line, factor, shapes[s], SameShape * greatest))
            {
                return new ShapedLine(s, factor);
            }
        }

        shapes.Add(line);
        peaks.Add(peak);
        return new ShapedLine(shapes.Count - 1, 1);
    }

    private static bool IsMultiple(double[] line, double factor, double[] shape, double equal)
    {
        for (int i = 0; i < line.Length; i++)
        {
            if (!(Math.Abs(line[i] - (factor * shape[i])) <= equal))
            {
                return false;
            }
        }

        return true;
    }
}

/// <summary>A line as a multiple of a shape.</summary>
/// <param name="Shape">Position of the shape; -1 for a line on which nothing has an effect.</param>
/// <param name="Factor">Ordinates of the line over those of the shape [-].</param>
internal readonly record struct ShapedLine(int Shape, double Factor)
{
    public static ShapedLine None => new(-1, 0);
}
