using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>
/// Lays out one cross-section: trusses, floorbeam, deck and kerbs, the load with its distances, the line of the lever rule below.
/// x is from the middle between the trusses, right positive [m]; heights are pixels above the deck, carried over into metres.
/// </summary>
internal sealed class CrossSectionDrawing
{
    private const double Margin = 132;
    private const double Size = 14;
    private const double PostTop = 214;
    private const double DeckDepth = 12;
    private const double BeamFoot = -46;
    private const double KerbRow = -138;
    private const double TrussRow = -182;
    private const double LineFoot = -320;
    private const double LineHeight = 62;
    private const double RoadwayRow = -374;
    private const double SpacingRow = -408;
    private const double Foot = -422;

    private readonly Deck deck;
    private readonly CrossSection section;
    private readonly DisplayUnits units;
    private readonly double spacing;
    private readonly double leftKerb;
    private readonly double rightKerb;
    private readonly double toward;
    private readonly double scale;
    private readonly double top;
    private readonly IReadOnlyList<string>[] names;
    private readonly Crowding crowding = new();
    private readonly List<DrawingPart> parts = [];

    /// <summary>Begins a drawing.</summary>
    /// <param name="deck">The deck; its truss spacing and roadway must be given.</param>
    /// <param name="section">What stands on it.</param>
    /// <param name="units">Units shown.</param>
    public CrossSectionDrawing(Deck deck, CrossSection section, DisplayUnits units)
    {
        (this.deck, this.section, this.units) = (deck, section, units);
        spacing = deck.TrussSpacing ?? throw new ArgumentException("The spacing of the trusses is not given.", nameof(deck));
        double roadway = deck.Roadway ?? throw new ArgumentException("The width of the roadway is not given.", nameof(deck));
        (leftKerb, rightKerb) = (deck.RoadwayOffset - (roadway / 2), deck.RoadwayOffset + (roadway / 2));
        toward = section.Truss == 0 ? 1 : -1;
        double reach = Math.Max(spacing / 2, (roadway / 2) + Math.Abs(deck.RoadwayOffset));
        scale = (Sheet.InnerWidth - (2 * Margin)) / (2 * reach);
        names = [.. deck.TrussNames.Select(n => Lettering.Wrap($"{n} truss", Size + 1, (Sheet.InnerWidth / 2) - 40))];
        top = PostTop + 16 + (names.Max(n => n.Count) * 19);
    }

    /// <summary>The drawing.</summary>
    public Drawing Draw()
    {
        Guides();
        Floor();
        Trusses();
        Centre();
        foreach (LateralStrip strip in section.Strips)
        {
            Block(strip);
        }

        for (int w = 0; w < section.Wheels.Count; w += 2)
        {
            Vehicle(w);
        }

        Reaction();
        FromKerbToKerb();
        FromTruss();
        LeverLine();
        Across("roadway", leftKerb, rightKerb, RoadwayRow, $"roadway {Figures.Length(rightKerb - leftKerb, units)}");
        Across("trusses", -spacing / 2, spacing / 2, SpacingRow, $"trusses {Figures.Length(spacing, units)} apart, centre to centre");
        double width = Sheet.InnerWidth / scale;
        return new Drawing(-width / 2, Foot / scale, width, (top - Foot) / scale, scale, scale, parts);
    }

    private DrawingPoint At(double x, double up) => new(x, up / scale);

    // x of a distance from the truss considered [m].
    private double From(double distance) => toward * (distance - (spacing / 2));

    private DrawingPoint[] Rectangle(double left, double foot, double right, double head, double wider = 0) =>
        [At(left - (wider / scale), foot), At(right + (wider / scale), foot), At(right + (wider / scale), head), At(left - (wider / scale), head)];

    private void Line(string shows, DrawingPoint from, DrawingPoint to, Ink ink, double weight, Dash dash = Dash.Solid) =>
        parts.Add(new Stroke(shows, [from, to], ink, weight, dash));

    // A deck that reaches beyond its trusses lies on top of them.
    private bool Overhangs => Math.Min(leftKerb + (spacing / 2), (spacing / 2) - rightKerb) * scale < 5;

    private void Guides()
    {
        foreach (double wheel in section.Wheels)
        {
            Line("guide", At(From(wheel), 0), At(From(wheel), LineFoot), Ink.Pale, 1.2, Dash.Dotted);
        }

        foreach (double kerb in (double[])[leftKerb, rightKerb])
        {
            Line("guide", At(kerb, 0), At(kerb, RoadwayRow), Ink.Pale, 1.2, Dash.Dotted);
        }

        foreach (double truss in (double[])[-spacing / 2, spacing / 2])
        {
            Line("guide", At(truss, BeamFoot), At(truss, SpacingRow), Ink.Pale, 1.2, Dash.Dotted);
        }
    }

    private void Trusses()
    {
        for (int t = 0; t < 2; t++)
        {
            double x = (t - 0.5) * spacing, half = Sheet.InnerWidth / 2;
            bool considered = t == section.Truss;
            string shows = $"truss {t}";
            DrawingPoint[] post = Rectangle(x, BeamFoot, x, Overhangs ? -DeckDepth : PostTop, 5);
            if (Overhangs)
            {
                Line(shows, At(x, 0), At(x, PostTop), considered ? Ink.Black : Ink.Grey, 1, Dash.DashDot);
            }

            parts.Add(new Area(shows, post, considered ? Ink.Black : Ink.Paper));
            parts.Add(new Stroke(shows, post, considered ? Ink.Black : Ink.Grey, 1.6, Closed: true));
            for (int line = 0; line < names[t].Count; line++)
            {
                // Above its post, but within its own half of the drawing.
                double room = (Lettering.Width(names[t][line], Size + 1) / 2) + 6;
                double pixels = t == 0 ? Math.Clamp(x * scale, room - half, -room) : Math.Clamp(x * scale, room, half - room);
                parts.Add(new Text(shows, At(pixels / scale, top - 10 - (line * 19)), names[t][line], Size + 1, considered ? Ink.Black : Ink.Grey));
            }

            if (!considered)
            {
                DrawingPoint[] pivot = [At(x, BeamFoot - 2), At(x - (13 / scale), BeamFoot - 24), At(x + (13 / scale), BeamFoot - 24)];
                parts.Add(new Area("pivot", pivot, Ink.Paper));
                parts.Add(new Stroke("pivot", pivot, Ink.Grey, 1.6, Closed: true));
            }
        }
    }

    private void Floor()
    {
        DrawingPoint[] beam = Rectangle(-spacing / 2, BeamFoot, spacing / 2, -DeckDepth);
        parts.Add(new Area("floorbeam", beam, Ink.Paper));
        parts.Add(new Stroke("floorbeam", beam, Ink.Black, 1.6, Closed: true));
        parts.Add(new Text("floorbeam", At(0, (BeamFoot - DeckDepth) / 2), "floorbeam", Size, Ink.Grey, OnPaper: true));
        parts.Add(new Area("deck", Rectangle(leftKerb, -DeckDepth, rightKerb, 0, 14), Ink.Pale));
        foreach ((string shows, double kerb, double outward) in ((string, double, double)[])[("left kerb", leftKerb, -14), ("right kerb", rightKerb, 14)])
        {
            parts.Add(new Area(shows, [At(kerb, 0), At(kerb + (outward / scale), 0), At(kerb + (outward / scale), 18), At(kerb, 18)], Ink.Grey));
        }
    }

    private void Centre()
    {
        const double Head = 182;
        double offset = deck.RoadwayOffset;
        Line("roadway centre", At(offset, 2), At(offset, Head), Ink.Grey, 1.2, Dash.DashDot);
        string words = "centre of the roadway, in the middle between the trusses";
        if (Math.Abs(offset) > 1e-9)
        {
            Line("middle", At(0, 2), At(0, Head), Ink.Grey, 1.2, Dash.Dotted);
            Line("offset", At(0, Head - 4), At(offset, Head - 4), Ink.Black, 1.4);
            foreach (double end in (double[])[0, offset])
            {
                Slash("offset", end, Head - 4);
            }

            words = $"centre of the roadway, {Figures.Length(Math.Abs(offset), units)} to the {(offset > 0 ? "right" : "left")} of the middle between the trusses (dotted)";
        }

        double room = (Lettering.Width(words, Size) / 2) + 8, most = (Sheet.InnerWidth / 2) - Margin - room;
        parts.Add(new Text("roadway centre", At(Math.Clamp(offset * scale, -Math.Max(0, most), Math.Max(0, most)) / scale, Head + 14), words, Size, Ink.Grey, OnPaper: true));
    }

    private void Vehicle(int wheel)
    {
        double one = From(section.Wheels[wheel]), other = From(section.Wheels[wheel + 1]);
        double left = Math.Min(one, other), right = Math.Max(one, other);
        DrawingPoint[] body = Rectangle(left, 24, right, 92, 9);
        parts.Add(new Area("vehicle", body, Ink.Paper));
        parts.Add(new Stroke("vehicle", body, Ink.Grey, 1.4, Closed: true));
        string number = Figures.OnAxis((wheel / 2) + 1), words = section.Wheels.Count == 2 ? "vehicle" : $"vehicle {number}";
        bool fits = Lettering.Width(words, Size) + 14 < (right - left) * scale;
        parts.Add(new Text("vehicle", At((left + right) / 2, 58), fits ? words : number, Size, Ink.Grey, OnPaper: true));
        foreach (double x in (double[])[one, other])
        {
            parts.Add(new Area("wheel", Rectangle(x, 0, x, 40, 7), Ink.Black));
            Arrow("wheel load", x, 132, 42, Ink.Black, 2.4);
            parts.Add(new Text("wheel load", At(x + Clear("½ P", x), 144), "½ P", Size, Ink.Black, OnPaper: true));
        }
    }

    // How far a text at a post moves toward the middle, so that it does not overprint the post [m].
    private double Clear(string words, double x)
    {
        double over = (Lettering.Width(words, Size) / 2) + 10 - (((spacing / 2) - Math.Abs(x)) * scale);
        return over > 0 ? -Math.Sign(x) * over / scale : 0;
    }

    private void Block(LateralStrip strip)
    {
        double left = Math.Min(From(strip.From), From(strip.To)), right = Math.Max(From(strip.From), From(strip.To));
        DrawingPoint[] block = Rectangle(left, 2, right, 54);
        parts.Add(new Area("strip", block, Ink.Paper));
        for (double x = left + (Hatching.Spacing / scale); x < right; x += Hatching.Spacing / scale)
        {
            Line("strip hatching", At(x, 2), At(x, 54), Ink.Grey, Hatching.Weight);
        }

        parts.Add(new Stroke("strip", block, Ink.Black, 1.6, Closed: true));
        parts.Add(new Text("strip", At((left + right) / 2, 70), $"{section.StripWords} {Figures.Length(strip.Width, units)}", Size, Ink.Black, OnPaper: true));
        double middle = From(strip.Middle);
        Line("guide", At(middle, 0), At(middle, LineFoot), Ink.Pale, 1.2, Dash.Dotted);
    }

    private void Reaction()
    {
        double x = From(0);
        Arrow("reaction", x, -112, BeamFoot - 2, Ink.Black, 4);
        double half = Sheet.InnerWidth / 2, room = Lettering.Width(section.Reaction, Size + 1), at = (x * scale) - (toward * 14);

        // Outside the trusses where it fits, else inside.
        bool outside = half - Math.Abs(at) > room + 4;
        at = outside ? at : (x * scale) + (toward * 14);
        TextAnchor anchor = outside == toward > 0 ? TextAnchor.Right : TextAnchor.Left;
        parts.Add(new Text("reaction", At(at / scale, -92), section.Reaction, Size + 1, Ink.Black, anchor, OnPaper: true));
    }

    private void Arrow(string shows, double x, double tail, double head, Ink ink, double weight)
    {
        double back = tail > head ? 14 : -14, half = 3 + weight;
        Line(shows, At(x, tail), At(x, head + (back * 0.8)), ink, weight);
        parts.Add(new Area(shows, [At(x, head), At(x - (half / scale), head + back), At(x + (half / scale), head + back)], ink));
    }

    // The chain of distances from kerb to kerb, by way of every wheel line or edge of a strip.
    private void FromKerbToKerb()
    {
        double[] stops =
        [
            .. section.Wheels.Select(From).Concat(section.Strips.SelectMany(s => (double[])[From(s.From), From(s.To)])).Append(leftKerb).Append(rightKerb)
                .Order().Aggregate(new List<double>(), (kept, x) => { if (kept.Count == 0 || x - kept[^1] > 1e-6) { kept.Add(x); } return kept; }),
        ];
        for (int s = 1; s < stops.Length; s++)
        {
            Across("between kerbs", stops[s - 1], stops[s], KerbRow, Figures.Length(stops[s] - stops[s - 1], units));
        }
    }

    // Distances from the truss considered, all from the same end.
    private void FromTruss()
    {
        double[] distances = [.. Loads().Order()];
        if (distances.Length == 0)
        {
            return;
        }

        Line("from truss", At(From(0), TrussRow), At(From(distances[^1]), TrussRow), Ink.Grey, 1);
        parts.Add(new Mark("from truss", At(From(0), TrussRow), MarkShape.Circle, 8, Ink.Black, Filled: false));
        foreach (double distance in distances)
        {
            double x = From(distance);
            Slash("from truss", x, TrussRow);
            Write("from truss", Figures.Length(distance, units), x, [TrussRow - 14, TrussRow - 31]);
        }

        parts.Add(new Text("from truss", At(0, TrussRow - 48), $"distances from the {Considered} truss (open circle)", Size - 1, Ink.Grey, OnPaper: true));
    }

    private void LeverLine()
    {
        double head = LineFoot + LineHeight;
        Line("lever rule", At(From(0), LineFoot), At(From(spacing), LineFoot), Ink.Grey, 1);
        Line("lever rule", At(From(0), head), At(From(spacing), LineFoot), Ink.Black, 2);
        Line("lever rule", At(From(0), LineFoot), At(From(0), head), Ink.Black, 1.4);
        parts.Add(new Text("lever rule", At(From(0) - (toward * 14 / scale), head), "1", Size, Ink.Black, OnPaper: true));
        parts.Add(new Text("lever rule", At(From(spacing) + (toward * 14 / scale), LineFoot), "0", Size, Ink.Black, OnPaper: true));
        foreach (double distance in Loads())
        {
            double part = (spacing - distance) / spacing, x = From(distance);
            Line("lever rule", At(x, LineFoot), At(x, LineFoot + (part * LineHeight)), Ink.Black, 1.4);
            parts.Add(new Mark("part", At(x, LineFoot + (part * LineHeight)), MarkShape.Circle, 7, Ink.Black, Filled: true));
            Write("part", ResultTable.Figure(part, 3), x, [LineFoot + (part * LineHeight) + 15, LineFoot + (part * LineHeight) + 35]);
        }

        parts.Add(new Text("lever rule", At(0, LineFoot - 15), $"part of a load that goes to the {Considered} truss", Size - 1, Ink.Grey, OnPaper: true));
    }

    private IEnumerable<double> Loads() => section.Wheels.Concat(section.Strips.Select(s => s.Middle));

    private string Considered => Lettering.Width(deck.TrussNames[section.Truss], Size) < 300 ? deck.TrussNames[section.Truss] : "considered";

    private void Across(string shows, double from, double to, double row, string words)
    {
        Line(shows, At(from, row), At(to, row), Ink.Grey, 1);
        foreach (double end in (double[])[from, to])
        {
            Line(shows, At(end, row - 6), At(end, row + 6), Ink.Grey, 1);
            Slash(shows, end, row);
        }

        Write(shows, words, (from + to) / 2, [row + 13, row - 13, row + 29]);
    }

    private void Slash(string shows, double x, double row) =>
        parts.Add(new Stroke(shows, [At(x - (4 / scale), row - 4), At(x + (4 / scale), row + 4)], Ink.Black, 1.6));

    // Words at the first of the heights at which they overprint nothing written before.
    private void Write(string shows, string words, double x, double[] heights)
    {
        Box chosen = crowding.Choose(heights.Select(up => Box.Of(words, Size, new(x * scale, up))));
        parts.Add(new Text(shows, At(x, chosen.Y), words, Size, Ink.Black, OnPaper: true));
    }
}
