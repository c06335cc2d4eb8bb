namespace SpanRater.Pictures;

/// <summary>Draws forces as arrows in pixels, each with its words where they overprint least.</summary>
internal sealed class ForceArrows
{
    /// <summary>Size of the words at an arrow [px].</summary>
    public const double Size = 15;

    private const double HeadLength = 17;
    private const double HeadWidth = 7;

    private readonly Crowding crowding;
    private readonly Crowding[] others;
    private readonly List<DrawingPart> arrows = [];
    private readonly List<(string Shows, DrawingPoint Tail, DrawingPoint Head, DrawingPoint At, string Words)> words = [];

    /// <summary>Begins with what is drawn already.</summary>
    /// <param name="crowding">Counts what is drawn, and finds the words their places.</param>
    /// <param name="others">Take the arrows as well.</param>
    public ForceArrows(Crowding crowding, params Crowding[] others) => (this.crowding, this.others) = (crowding, others);

    /// <summary>Lays an arrow down.</summary>
    /// <param name="shows">Name of what it shows.</param>
    /// <param name="tail">Its tail [px].</param>
    /// <param name="head">Its head [px].</param>
    /// <param name="style">Its line.</param>
    /// <param name="text">The words at it; empty for none.</param>
    /// <param name="atTail">True where the words stand at the tail, since the head touches a joint.</param>
    public void Add(string shows, DrawingPoint tail, DrawingPoint head, LineStyle style, string text, bool atTail)
    {
        double length = double.Hypot(head.X - tail.X, head.Y - tail.Y), dx = (head.X - tail.X) / length, dy = (head.Y - tail.Y) / length;
        DrawingPoint On(double back, double aside) => new(head.X - (back * dx) - (aside * dy), head.Y - (back * dy) + (aside * dx));
        arrows.Add(new Stroke(shows, [tail, On(HeadLength - 3, 0)], style.Ink, style.Weight, style.Dash));
        arrows.Add(new Area(shows, [head, On(HeadLength, HeadWidth), On(HeadLength, -HeadWidth)], style.Ink));
        DrawingPoint tip = On(HeadLength / 2, 0);
        foreach (Crowding each in (Crowding[])[crowding, .. others])
        {
            each.Take(tail, head);
            each.Take(new Box(tip.X, tip.Y, HeadLength + 4, HeadLength + 4, Math.Atan2(dy, dx) * 180 / Math.PI));
        }

        if (text.Length > 0)
        {
            words.Add((shows, tail, head, atTail ? tail : head, text));
        }
    }

    /// <summary>The arrows, and their words above them.</summary>
    /// <param name="width">Width of the drawing, which words do not leave [px].</param>
    /// <param name="height">Height of the drawing [px].</param>
    public IEnumerable<DrawingPart> Parts(double width, double height)
    {
        foreach (DrawingPart part in arrows)
        {
            yield return part;
        }

        foreach ((string shows, DrawingPoint tail, DrawingPoint head, DrawingPoint at, string text) in words)
        {
            Box box = Box.Of(text, Size, at);
            double length = double.Hypot(head.X - tail.X, head.Y - tail.Y);
            double outward = at == head ? 1 : -1, dx = outward * (head.X - tail.X) / length, dy = outward * (head.Y - tail.Y) / length;
            double reach = (Math.Abs(dx) * box.Width / 2) + (Math.Abs(dy) * box.Height / 2);
            IEnumerable<Box> places =
                from along in (double[])[5, 10, -12, -24, -36, 18, -48, 28, 44, 62]
                from aside in along < 0 ? (double[])[1, -1, 1.3, -1.3, 1.8, -1.8] : [0, 0.5, -0.5, 1, -1, 1.6, -1.6]
                let across = (Math.Abs(dy) * box.Width / 2) + (Math.Abs(dx) * box.Height / 2) + 7
                let forth = along < 0 ? along : along + reach
                select box with { X = at.X + (forth * dx) - (aside * across * dy), Y = at.Y + (forth * dy) + (aside * across * dx) };
            Box[] within = [.. places.Where(b => b.X - (b.Width / 2) >= 0 && b.X + (b.Width / 2) <= width && b.Y - (b.Height / 2) >= 0 && b.Y + (b.Height / 2) <= height)];

            // Words nearer to another arrow would be read as its own.
            Box[] nearest = [.. within.Where(b => words.All(w => w.Shows == shows || Distance(b, w.Tail, w.Head) > Distance(b, tail, head)))];
            Box chosen = crowding.Choose(within.Length > 0 ? nearest.Concat(within.Except(nearest)) : [Inside(box, width, height)], reluctance: 0.03);
            yield return new Text(shows, new(chosen.X, chosen.Y), text, Size, Ink.Black, OnPaper: true);
        }
    }

    /// <summary>A drawing in pixels that is no higher than what stands in it.</summary>
    /// <param name="width">Its width [px].</param>
    /// <param name="parts">Its parts.</param>
    public static Drawing Cropped(double width, IReadOnlyList<DrawingPart> parts)
    {
        double[] ys =
        [
            .. parts.SelectMany(p => p switch
            {
                Stroke stroke => stroke.Points.Select(q => q.Y),
                Text text => [text.At.Y - (text.Size * 0.7), text.At.Y + (text.Size * 0.7)],
                Mark mark => [mark.At.Y - (mark.Size / 2), mark.At.Y + (mark.Size / 2)],
                _ => [],
            }),
        ];
        double bottom = ys.Min() - 8, top = ys.Max() + 8;
        return new View(0, bottom, 1, 1).Drawing(width, top - bottom, parts);
    }

    private static double Distance(Box box, DrawingPoint from, DrawingPoint to)
    {
        double dx = to.X - from.X, dy = to.Y - from.Y;
        double along = Math.Clamp((((box.X - from.X) * dx) + ((box.Y - from.Y) * dy)) / ((dx * dx) + (dy * dy)), 0, 1);
        return double.Hypot(from.X + (along * dx) - box.X, from.Y + (along * dy) - box.Y);
    }

    private static Box Inside(Box box, double width, double height) => box with
    {
        X = Math.Clamp(box.X, box.Width / 2, Math.Max(box.Width / 2, width - (box.Width / 2))),
        Y = Math.Clamp(box.Y, box.Height / 2, Math.Max(box.Height / 2, height - (box.Height / 2))),
    };
}
