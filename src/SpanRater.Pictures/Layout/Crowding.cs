namespace SpanRater.Pictures;

/// <summary>A rectangle that a text or mark covers [px, up positive].</summary>
/// <param name="X">x of its middle [px].</param>
/// <param name="Y">y of its middle [px].</param>
/// <param name="Width">Its width before it is turned [px].</param>
/// <param name="Height">Its height before it is turned [px].</param>
/// <param name="Angle">Turned anticlockwise [deg].</param>
internal readonly record struct Box(double X, double Y, double Width, double Height, double Angle = 0)
{
    /// <summary>The box of a line of text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Its size [px].</param>
    /// <param name="middle">Its middle [px].</param>
    /// <param name="angle">Turned anticlockwise [deg].</param>
    public static Box Of(string text, double size, DrawingPoint middle, double angle = 0) =>
        new(middle.X, middle.Y, Lettering.Width(text, size) + 6, size * 1.16, angle);

    /// <summary>A point seen from the box's middle, along its own axes.</summary>
    /// <param name="point">The point [px].</param>
    public DrawingPoint Local(DrawingPoint point)
    {
        (double sin, double cos) = Math.SinCos(Angle * Math.PI / 180);
        double x = point.X - X, y = point.Y - Y;
        return new((x * cos) + (y * sin), (y * cos) - (x * sin));
    }

    /// <summary>Its corners [px].</summary>
    public DrawingPoint[] Corners()
    {
        (double sin, double cos) = Math.SinCos(Angle * Math.PI / 180);
        Box box = this;
        DrawingPoint Corner(int right, int up)
        {
            double x = right * box.Width / 2, y = up * box.Height / 2;
            return new(box.X + (x * cos) - (y * sin), box.Y + (x * sin) + (y * cos));
        }

        return [Corner(-1, -1), Corner(1, -1), Corner(1, 1), Corner(-1, 1)];
    }
}

/// <summary>Keeps count of what is drawn already, and finds for a text the place where it overprints least.</summary>
internal sealed class Crowding
{
    private const double OverABox = 10;
    private const double OverALine = 3;

    private readonly List<Box> boxes = [];
    private readonly List<(DrawingPoint From, DrawingPoint To, int Owner)> lines = [];

    /// <summary>Counts a rectangle as taken.</summary>
    /// <param name="box">The rectangle.</param>
    public void Take(Box box) => boxes.Add(box);

    /// <summary>Counts a line as drawn.</summary>
    /// <param name="from">One end [px].</param>
    /// <param name="to">The other end [px].</param>
    /// <param name="owner">Number of what it belongs to, whose own text may stand on it; -1 for nothing.</param>
    public void Take(DrawingPoint from, DrawingPoint to, int owner = -1) => lines.Add((from, to, owner));

    /// <summary>The first of the candidates that overprints least; it is taken.</summary>
    /// <param name="candidates">Candidates, the most wanted first.</param>
    /// <param name="owner">Number of what the text belongs to; -1 for nothing.</param>
    /// <param name="reluctance">What it costs to go on to the next candidate; a line overprinted costs 3, a text 10.</param>
    public Box Choose(IEnumerable<Box> candidates, int owner = -1, double reluctance = 1e-3)
    {
        Box chosen = candidates.Select((box, rank) => (box, Cost: Cost(box, owner) + (rank * reluctance))).MinBy(c => c.Cost).box;
        Take(chosen);
        return chosen;
    }

    /// <summary>Whether nothing lies under a rectangle.</summary>
    /// <param name="box">The rectangle.</param>
    /// <param name="owner">Number of what it belongs to; -1 for nothing.</param>
    public bool IsFree(Box box, int owner = -1) => Cost(box, owner) == 0;

    private double Cost(Box box, int owner) =>
        (OverABox * boxes.Count(other => Overlap(box, other)))
        + (OverALine * lines.Count(line => (owner < 0 || line.Owner != owner) && Crosses(box, line.From, line.To)));

    // Two rectangles are apart when an edge of one of them parts them.
    private static bool Overlap(Box a, Box b) => !Parted(a, b) && !Parted(b, a);

    private static bool Parted(Box a, Box b)
    {
        DrawingPoint[] corners = [.. b.Corners().Select(a.Local)];
        return corners.All(c => c.X > a.Width / 2) || corners.All(c => c.X < -a.Width / 2)
            || corners.All(c => c.Y > a.Height / 2) || corners.All(c => c.Y < -a.Height / 2);
    }

    // Clips the line to the box, one pair of sides after the other.
    private static bool Crosses(Box box, DrawingPoint from, DrawingPoint to)
    {
        DrawingPoint a = box.Local(from), b = box.Local(to);
        double start = 0, end = 1;
        return Clip(a.X, b.X - a.X, box.Width / 2, ref start, ref end) && Clip(a.Y, b.Y - a.Y, box.Height / 2, ref start, ref end);
    }

    private static bool Clip(double at, double change, double half, ref double start, ref double end)
    {
        if (change == 0)
        {
            return Math.Abs(at) <= half;
        }

        double one = (-half - at) / change, other = (half - at) / change;
        start = Math.Max(start, Math.Min(one, other));
        end = Math.Min(end, Math.Max(one, other));
        return start <= end;
    }
}
