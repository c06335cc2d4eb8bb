namespace SpanRater.Pictures;

/// <summary>How far the deck has risen or sunk: a tinted strip between where it was and where it is, with figures.</summary>
internal sealed class DeckMovement
{
    private const double Size = 14;

    private readonly Truss truss;
    private readonly InfluenceLine rise;
    private readonly double scale;

    /// <summary>Takes a movement.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="rise">The deck's rise along the stations.</param>
    /// <param name="scale">Metres drawn for a rise of 1.</param>
    public DeckMovement(Truss truss, InfluenceLine rise, double scale)
    {
        this.truss = truss;
        this.rise = rise;
        this.scale = scale;
    }

    /// <summary>The strip, which lies under the displaced truss.</summary>
    /// <param name="view">The view of the drawing.</param>
    public IEnumerable<DrawingPart> Strip(View view)
    {
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            foreach (DeckStretch region in rise.Regions(sense))
            {
                double[] stations = Breaks(region);
                yield return new Area("deck movement", [.. stations.Select(s => Deck(s, 0)), .. stations.Reverse().Select(s => Deck(s, rise.OrdinateAt(s)))], sense == Sense.Tension ? Ink.TensionTint : Ink.CompressionTint);
                double step = Hatching.Spacing / view.ScaleX;
                for (double x = region.Left + (step / 2); x < region.Right && sense == Sense.Compression; x += step)
                {
                    yield return new Stroke("hatching", [Deck(x, 0), Deck(x, rise.OrdinateAt(x))], InfluenceStrokes.StyleOf(sense, 1).Ink, Hatching.Weight * 0.7);
                }
            }
        }
    }

    /// <summary>The moved deck and its figures, which lie over the displaced truss.</summary>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="crowding">Takes what is drawn.</param>
    public IEnumerable<DrawingPart> Line(View view, Crowding crowding)
    {
        var parts = new List<DrawingPart>();
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            LineStyle style = InfluenceStrokes.StyleOf(sense, 3.4);
            parts.AddRange(rise.Regions(sense).Select(r => new Stroke("deck, moved", [.. Breaks(r).Select(s => Deck(s, rise.OrdinateAt(s)))], style.Ink, style.Weight, style.Dash)));
        }

        for (int i = 0; i < rise.Stations.Count; i++)
        {
            double y = rise.Ordinates[i];
            string text = Figures.Plain(y);
            DrawingPoint at = view.Pixels(Deck(rise.Stations[i], y));
            Box box = Box.Of(text, Size, at);
            int outward = y < 0 ? -1 : 1;
            Box chosen = crowding.Choose(
                from up in (double[])[16, 22, -18, 30]
                from right in (double[])[0, -0.9, 0.9]
                select box with { X = at.X + (right * box.Width), Y = at.Y + (outward * up) });
            parts.Add(new Stroke($"ordinate {i}", [Deck(rise.Stations[i], 0), Deck(rise.Stations[i], y)], Ink.Black, 1.6));
            parts.Add(new Text($"ordinate {i}", new(view.Left + (chosen.X / view.ScaleX), view.Bottom + (chosen.Y / view.ScaleY)), text, Size, Ink.Black, OnPaper: true));
        }

        return parts;
    }

    private double[] Breaks(DeckStretch region) => [region.Left, .. rise.Stations.Where(s => s > region.Left && s < region.Right), region.Right];

    private DrawingPoint Deck(double station, double moved) => new(station, DeckLine.HeightAt(truss, station) + (moved * scale));
}
