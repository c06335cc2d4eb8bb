using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>
/// Lays out one cross-section: trusses, floorbeam, deck and kerbs, the load on it and the reaction that is sought, with the measures
/// below.
/// </summary>
internal sealed class CrossSectionDrawing
{
    private const double PostTop = 214;
    private const double DeckDepth = 12;

    private readonly DisplayUnits units;
    private readonly CrossSectionFrame frame;
    private readonly double top;
    private readonly IReadOnlyList<string>[] names;
    private readonly List<DrawingPart> parts = [];

    /// <summary>Begins a drawing.</summary>
    /// <param name="deck">The deck; its truss spacing and roadway must be given.</param>
    /// <param name="section">What stands on it.</param>
    /// <param name="units">Units shown.</param>
    public CrossSectionDrawing(Deck deck, CrossSection section, DisplayUnits units)
    {
        this.units = units;
        frame = new CrossSectionFrame(deck, section);
        names = [.. deck.TrussNames.Select(n => Lettering.Wrap($"{n} truss", CrossSectionFrame.TextSize + 1, (Sheet.InnerWidth / 2) - 40))];
        top = PostTop + 16 + (names.Max(n => n.Count) * 19);
    }

    /// <summary>The drawing.</summary>
    public Drawing Draw()
    {
        var measures = new CrossSectionMeasures(frame, units);
        parts.AddRange(measures.Guides());
        Floor();
        Trusses();
        Centre();
        foreach (LateralStrip strip in frame.Section.Strips)
        {
            Block(strip);
        }

        for (int w = 0; w < frame.Section.Wheels.Count; w += 2)
        {
            Vehicle(w);
        }

        Reaction();
        parts.AddRange(measures.Parts());
        double width = Sheet.InnerWidth / frame.Scale;
        return new Drawing(-width / 2, CrossSectionMeasures.Foot / frame.Scale, width, (top - CrossSectionMeasures.Foot) / frame.Scale, frame.Scale, frame.Scale, parts);
    }

    private DrawingPoint[] Rectangle(double left, double foot, double right, double head, double wider = 0) =>
        [frame.At(left - (wider / frame.Scale), foot), frame.At(right + (wider / frame.Scale), foot), frame.At(right + (wider / frame.Scale), head), frame.At(left - (wider / frame.Scale), head)];

    private void Trusses()
    {
        for (int t = 0; t < 2; t++)
        {
            double x = (t - 0.5) * frame.Spacing, half = Sheet.InnerWidth / 2;
            bool considered = t == frame.Section.Truss;
            string shows = $"truss {t}";
            DrawingPoint[] post = Rectangle(x, CrossSectionFrame.BeamFoot, x, frame.Overhangs ? -DeckDepth : PostTop, 5);
            if (frame.Overhangs)
            {
                parts.Add(CrossSectionFrame.Line(shows, frame.At(x, 0), frame.At(x, PostTop), considered ? Ink.Black : Ink.Grey, 1, Dash.DashDot));
            }

            parts.Add(new Area(shows, post, considered ? Ink.Black : Ink.Paper));
            parts.Add(new Stroke(shows, post, considered ? Ink.Black : Ink.Grey, 1.6, Closed: true));
            for (int line = 0; line < names[t].Count; line++)
            {
                // Above its post, but within its own half of the drawing.
                double room = (Lettering.Width(names[t][line], CrossSectionFrame.TextSize + 1) / 2) + 6;
                double pixels = t == 0 ? Math.Clamp(x * frame.Scale, room - half, -room) : Math.Clamp(x * frame.Scale, room, half - room);
                parts.Add(new Text(shows, frame.At(pixels / frame.Scale, top - 10 - (line * 19)), names[t][line], CrossSectionFrame.TextSize + 1, considered ? Ink.Black : Ink.Grey));
            }

            if (!considered)
            {
                DrawingPoint[] pivot = [frame.At(x, CrossSectionFrame.BeamFoot - 2), frame.At(x - (13 / frame.Scale), CrossSectionFrame.BeamFoot - 24), frame.At(x + (13 / frame.Scale), CrossSectionFrame.BeamFoot - 24)];
                parts.Add(new Area("pivot", pivot, Ink.Paper));
                parts.Add(new Stroke("pivot", pivot, Ink.Grey, 1.6, Closed: true));
            }
        }
    }

    private void Floor()
    {
        DrawingPoint[] beam = Rectangle(-frame.Spacing / 2, CrossSectionFrame.BeamFoot, frame.Spacing / 2, -DeckDepth);
        parts.Add(new Area("floorbeam", beam, Ink.Paper));
        parts.Add(new Stroke("floorbeam", beam, Ink.Black, 1.6, Closed: true));
        parts.Add(new Text("floorbeam", frame.At(0, (CrossSectionFrame.BeamFoot - DeckDepth) / 2), "floorbeam", CrossSectionFrame.TextSize, Ink.Grey, OnPaper: true));
        parts.Add(new Area("deck", Rectangle(frame.LeftKerb, -DeckDepth, frame.RightKerb, 0, 14), Ink.Pale));
        foreach ((string shows, double kerb, double outward) in ((string, double, double)[])[("left kerb", frame.LeftKerb, -14), ("right kerb", frame.RightKerb, 14)])
        {
            parts.Add(new Area(shows, [frame.At(kerb, 0), frame.At(kerb + (outward / frame.Scale), 0), frame.At(kerb + (outward / frame.Scale), 18), frame.At(kerb, 18)], Ink.Grey));
        }
    }

    private void Centre()
    {
        const double Head = 182;
        double offset = frame.Deck.RoadwayOffset;
        parts.Add(CrossSectionFrame.Line("roadway centre", frame.At(offset, 2), frame.At(offset, Head), Ink.Grey, 1.2, Dash.DashDot));
        string words = "centre of the roadway, in the middle between the trusses";
        if (Math.Abs(offset) > 1e-9)
        {
            parts.Add(CrossSectionFrame.Line("middle", frame.At(0, 2), frame.At(0, Head), Ink.Grey, 1.2, Dash.Dotted));
            parts.Add(CrossSectionFrame.Line("offset", frame.At(0, Head - 4), frame.At(offset, Head - 4), Ink.Black, 1.4));
            foreach (double end in (double[])[0, offset])
            {
                parts.Add(frame.Slash("offset", end, Head - 4));
            }

            words = $"centre of the roadway, {Figures.Length(Math.Abs(offset), units)} to the {(offset > 0 ? "right" : "left")} of the middle between the trusses (dotted)";
        }

        double room = (Lettering.Width(words, CrossSectionFrame.TextSize) / 2) + 8, most = (Sheet.InnerWidth / 2) - CrossSectionFrame.Margin - room;
        parts.Add(new Text("roadway centre", frame.At(Math.Clamp(offset * frame.Scale, -Math.Max(0, most), Math.Max(0, most)) / frame.Scale, Head + 14), words, CrossSectionFrame.TextSize, Ink.Grey, OnPaper: true));
    }

    private void Vehicle(int wheel)
    {
        double one = frame.From(frame.Section.Wheels[wheel]), other = frame.From(frame.Section.Wheels[wheel + 1]);
        double left = Math.Min(one, other), right = Math.Max(one, other);
        DrawingPoint[] body = Rectangle(left, 24, right, 92, 9);
        parts.Add(new Area("vehicle", body, Ink.Paper));
        parts.Add(new Stroke("vehicle", body, Ink.Grey, 1.4, Closed: true));
        string number = Figures.OnAxis((wheel / 2) + 1), words = frame.Section.Wheels.Count == 2 ? "vehicle" : $"vehicle {number}";
        bool fits = Lettering.Width(words, CrossSectionFrame.TextSize) + 14 < (right - left) * frame.Scale;
        parts.Add(new Text("vehicle", frame.At((left + right) / 2, 58), fits ? words : number, CrossSectionFrame.TextSize, Ink.Grey, OnPaper: true));
        foreach (double x in (double[])[one, other])
        {
            parts.Add(new Area("wheel", Rectangle(x, 0, x, 40, 7), Ink.Black));
            Arrow("wheel load", x, 132, 42, Ink.Black, 2.4);
            parts.Add(new Text("wheel load", frame.At(x + Clear("½ P", x), 144), "½ P", CrossSectionFrame.TextSize, Ink.Black, OnPaper: true));
        }
    }

    // How far a text at a post moves toward the middle, so that it does not overprint the post [m].
    private double Clear(string words, double x)
    {
        double over = (Lettering.Width(words, CrossSectionFrame.TextSize) / 2) + 10 - (((frame.Spacing / 2) - Math.Abs(x)) * frame.Scale);
        return over > 0 ? -Math.Sign(x) * over / frame.Scale : 0;
    }

    private void Block(LateralStrip strip)
    {
        double left = Math.Min(frame.From(strip.From), frame.From(strip.To)), right = Math.Max(frame.From(strip.From), frame.From(strip.To));
        DrawingPoint[] block = Rectangle(left, 2, right, 54);
        parts.Add(new Area("strip", block, Ink.Paper));
        for (double x = left + (Hatching.Spacing / frame.Scale); x < right; x += Hatching.Spacing / frame.Scale)
        {
            parts.Add(CrossSectionFrame.Line("strip hatching", frame.At(x, 2), frame.At(x, 54), Ink.Grey, Hatching.Weight));
        }

        parts.Add(new Stroke("strip", block, Ink.Black, 1.6, Closed: true));
        parts.Add(new Text("strip", frame.At((left + right) / 2, 70), $"{frame.Section.StripWords} {Figures.Length(strip.Width, units)}", CrossSectionFrame.TextSize, Ink.Black, OnPaper: true));
    }

    private void Reaction()
    {
        double x = frame.From(0);
        Arrow("reaction", x, -112, CrossSectionFrame.BeamFoot - 2, Ink.Black, 4);
        double half = Sheet.InnerWidth / 2, room = Lettering.Width(frame.Section.Reaction, CrossSectionFrame.TextSize + 1), at = (x * frame.Scale) - (frame.Toward * 14);

        // Outside the trusses where it fits, else inside.
        bool outside = half - Math.Abs(at) > room + 4;
        at = outside ? at : (x * frame.Scale) + (frame.Toward * 14);
        TextAnchor anchor = outside == frame.Toward > 0 ? TextAnchor.Right : TextAnchor.Left;
        parts.Add(new Text("reaction", frame.At(at / frame.Scale, -92), frame.Section.Reaction, CrossSectionFrame.TextSize + 1, Ink.Black, anchor, OnPaper: true));
    }

    private void Arrow(string shows, double x, double tail, double head, Ink ink, double weight)
    {
        double back = tail > head ? 14 : -14, half = 3 + weight;
        parts.Add(CrossSectionFrame.Line(shows, frame.At(x, tail), frame.At(x, head + (back * 0.8)), ink, weight));
        parts.Add(new Area(shows, [frame.At(x, head), frame.At(x - (half / frame.Scale), head + back), frame.At(x + (half / frame.Scale), head + back)], ink));
    }
}
