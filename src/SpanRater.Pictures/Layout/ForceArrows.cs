namespace SpanRater.Pictures;

/// <summary>Draws forces as arrows in pixels, each with its words where they overprint least.</summary>
internal sealed class ForceArrows
{
    /// <summary>Size of the words at an arrow [px].</summary>
    public const double Size = 15;

    private const double HeadLength = 17;
    private const double HeadWidth = 7;

    private readonly Crowding crowding;
    private readonly List<DrawingPart> arrows = [];
    private readonly List<(string Shows, DrawingPoint Tail, DrawingPoint Head, DrawingPoint At, string Words)> words = [];

    /// <summary>Begins with what is drawn already.</summary>
    /// <param name="crowding">Counts what is drawn.</param>
    public ForceArrows(Crowding crowding) => this.crowding = crowding;

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
        crowding.Take(tail, head);
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
                from along in (double[])[6, 12, -14, 20, -30, -48, 30]
                from aside in along < 0 ? (double[])[1, -1] : [0, 0.6, -0.6, 1.2, -1.2]
                let across = (Math.Abs(dy) * box.Width / 2) + (Math.Abs(dx) * box.Height / 2) + 8
                let forth = along < 0 ? along : along + reach
                select box with { X = at.X + (forth * dx) - (aside * across * dy), Y = at.Y + (forth * dy) + (aside * across * dx) };
            Box[] within = [.. places.Where(b => b.X - (b.Width / 2) >= 0 && b.X + (b.Width / 2) <= width && b.Y - (b.Height / 2) >= 0 && b.Y + (b.Height / 2) <= height)];
            Box chosen = crowding.Choose(within.Length > 0 ? within : [Inside(box, width, height)], reluctance: 0.05);
            yield return new Text(shows, new(chosen.X, chosen.Y), text, Size, Ink.Black, OnPaper: true);
        }
    }

    private static Box Inside(Box box, double width, double height) => box with
    {
        X = Math.Clamp(box.X, box.Width / 2, Math.Max(box.Width / 2, width - (box.Width / 2))),
        Y = Math.Clamp(box.Y, box.Height / 2, Math.Max(box.Height / 2, height - (box.Height / 2))),
    };
}
