using System.Numerics;

namespace SpanRater;

/// <summary>
/// The influence lines of many effects over the same stations, laid out for crossing many trains. Immutable; shared by threads,
/// each of which has a <see cref="CrossingSearch"/> of its own.
/// </summary>
public sealed class CrossedLines
{
    /// <summary>Shapes that are crossed together: two vectors of them, so that one need not wait for the other's sum.</summary>
    internal static readonly int Width = 2 * Vector<double>.Count;

    private CrossedLines(double[] stations, LineShapes shapes)
    {
        Stations = stations;
        Shaped = shapes;
        Blocks = (shapes.Shapes.Count + Width - 1) / Width;
        Ordinates = new double[Blocks * BlockLength];
        Slopes = new double[Ordinates.Length];
        Bends = new double[Ordinates.Length];
        for (int s = 0; s < shapes.Shapes.Count; s++)
        {
            LayOut(shapes.Shapes[s], (s / Width * BlockLength) + (s % Width));
        }
    }

    /// <summary>Number of lines.</summary>
    public int Count => Shaped.Right.Length;

    /// <summary>
    /// Number of distinct shapes among the lines, on which the time of a crossing depends: lines that are multiples of one another have
    /// one. Where the deck is its own mirror image, the mirror images of the lines are counted too, and one direction does for both.
    /// </summary>
    public int Shapes => Shaped.Shapes.Count;

    /// <summary>x of the panel points, strictly increasing [m].</summary>
    internal double[] Stations { get; }

    /// <summary>The distinct shapes of the lines.</summary>
    internal LineShapes Shaped { get; }

    /// <summary>Number of blocks of <see cref="Width"/> shapes; those beyond the last shape are zero.</summary>
    internal int Blocks { get; }

    /// <summary>Numbers of a block in each of the tables.</summary>
    internal int BlockLength => Stations.Length * Width;

    /// <summary>Ordinates [blocks × panel points × width].</summary>
    internal double[] Ordinates { get; }

    /// <summary>Slope to the right of each panel point, zero at the last [blocks × panel points × width].</summary>
    internal double[] Slopes { get; }

    /// <summary>Change of slope at each panel point, the ends included [blocks × panel points × width].</summary>
    internal double[] Bends { get; }

    /// <summary>Whether a line jumps at the left or right end of the deck.</summary>
    internal bool Jumps { get; private set; }

    /// <summary>Lays out lines for the search.</summary>
    /// <param name="stations">x of the panel points, strictly increasing, at least two [m].</param>
    /// <param name="lines">The lines, each over these stations; none is allowed.</param>
    /// <exception cref="ArgumentException">The stations are no deck, or a line has other stations.</exception>
    public static CrossedLines Of(IReadOnlyList<double> stations, IReadOnlyList<InfluenceLine> lines)
    {
        double[] deck = DeckStations.Checked(stations);
        ArgumentNullException.ThrowIfNull(lines);
        for (int i = 0; i < lines.Count; i++)
        {
            if (!lines[i].Stations.SequenceEqual(deck))
            {
                throw new ArgumentException($"Line {i} must have the stations given.", nameof(lines));
            }
        }

        // A line this low cannot bring an effect that counts as one.
        return new CrossedLines(deck, new LineShapes(deck, [.. lines.Select(line => line.Ordinates.ToArray())], RollingPlan.ZeroEffect));
    }

    private void LayOut(double[] shape, int at)
    {
        double before = 0;
        for (int i = 0; i < shape.Length; i++)
        {
            double after = i + 1 < shape.Length ? (shape[i + 1] - shape[i]) / (Stations[i + 1] - Stations[i]) : 0;
            Ordinates[at + (i * Width)] = shape[i];
            Slopes[at + (i * Width)] = after;
            Bends[at + (i * Width)] = after - before;
            before = after;
        }

        Jumps |= shape[0] != 0 || shape[^1] != 0;
    }
}
