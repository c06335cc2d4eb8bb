using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Measures a cross-section below its floorbeam: from kerb to kerb, from the truss considered, the line of the lever rule, roadway and trusses.</summary>
internal sealed class CrossSectionMeasures(CrossSectionFrame frame, DisplayUnits units)
{
    /// <summary>How far below the deck the measures reach [px].</summary>
    public const double Foot = -422;

    private const double KerbRow = -138;
    private const double TrussRow = -182;
    private const double LineFoot = -320;
    private const double LineHeight = 62;
    private const double RoadwayRow = -374;
    private const double SpacingRow = -408;

    private readonly Crowding crowding = new();
    private readonly List<DrawingPart> parts = [];

    /// <summary>Thin lines from what is measured down to its measures; they lie under everything else.</summary>
    public IEnumerable<DrawingPart> Guides()
    {
        (double X, double Head, double Foot)[] guides =
        [
            .. Loads().Select(d => (frame.From(d), 0.0, LineFoot)),
            (frame.LeftKerb, 0, RoadwayRow), (frame.RightKerb, 0, RoadwayRow),
            (-frame.Spacing / 2, CrossSectionFrame.BeamFoot, SpacingRow), (frame.Spacing / 2, CrossSectionFrame.BeamFoot, SpacingRow),
        ];
        return guides.Select(g => CrossSectionFrame.Line("guide", frame.At(g.X, g.Head), frame.At(g.X, g.Foot), Ink.Pale, 1.2, Dash.Dotted));
    }

    /// <summary>The measures.</summary>
    public IReadOnlyList<DrawingPart> Parts()
    {
        FromKerbToKerb();
        FromTruss();
        LeverLine();
        Across("roadway", frame.LeftKerb, frame.RightKerb, RoadwayRow, $"roadway {Figures.Length(frame.RightKerb - frame.LeftKerb, units)}");
        Across("trusses", -frame.Spacing / 2, frame.Spacing / 2, SpacingRow, $"trusses {Figures.Length(frame.Spacing, units)} apart, centre to centre");
        return parts;
    }

    // The chain of distances from kerb to kerb, by way of every wheel line or edge of a strip.
    private void FromKerbToKerb()
    {
        double[] stops =
        [
            .. frame.Section.Wheels.Select(frame.From).Concat(frame.Section.Strips.SelectMany(s => (double[])[frame.From(s.From), frame.From(s.To)])).Append(frame.LeftKerb).Append(frame.RightKerb)
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

        parts.Add(CrossSectionFrame.Line("from truss", frame.At(frame.From(0), TrussRow), frame.At(frame.From(distances[^1]), TrussRow), Ink.Grey, 1));
        parts.Add(new Mark("from truss", frame.At(frame.From(0), TrussRow), MarkShape.Circle, 8, Ink.Black, Filled: false));
        foreach (double distance in distances)
        {
            double x = frame.From(distance);
            parts.Add(frame.Slash("from truss", x, TrussRow));
            Write("from truss", Figures.Length(distance, units), x, [TrussRow - 14, TrussRow - 31]);
        }

        parts.Add(new Text("from truss", frame.At(0, TrussRow - 48), $"distances from the {Considered} truss (open circle)", CrossSectionFrame.TextSize - 1, Ink.Grey, OnPaper: true));
    }

    private void LeverLine()
    {
        double head = LineFoot + LineHeight;
        parts.Add(CrossSectionFrame.Line("lever rule", frame.At(frame.From(0), LineFoot), frame.At(frame.From(frame.Spacing), LineFoot), Ink.Grey, 1));
        parts.Add(CrossSectionFrame.Line("lever rule", frame.At(frame.From(0), head), frame.At(frame.From(frame.Spacing), LineFoot), Ink.Black, 2));
        parts.Add(CrossSectionFrame.Line("lever rule", frame.At(frame.From(0), LineFoot), frame.At(frame.From(0), head), Ink.Black, 1.4));
        parts.Add(new Text("lever rule", frame.At(frame.From(0) - (frame.Toward * 14 / frame.Scale), head), "1", CrossSectionFrame.TextSize, Ink.Black, OnPaper: true));
        parts.Add(new Text("lever rule", frame.At(frame.From(frame.Spacing) + (frame.Toward * 14 / frame.Scale), LineFoot), "0", CrossSectionFrame.TextSize, Ink.Black, OnPaper: true));
        foreach (double distance in Loads())
        {
            double part = (frame.Spacing - distance) / frame.Spacing, x = frame.From(distance);
            parts.Add(CrossSectionFrame.Line("lever rule", frame.At(x, LineFoot), frame.At(x, LineFoot + (part * LineHeight)), Ink.Black, 1.4));
            parts.Add(new Mark("part", frame.At(x, LineFoot + (part * LineHeight)), MarkShape.Circle, 7, Ink.Black, Filled: true));
            Write("part", ResultTable.Figure(part, 3), x, [LineFoot + (part * LineHeight) + 15, LineFoot + (part * LineHeight) + 35]);
        }

        parts.Add(new Text("lever rule", frame.At(0, LineFoot - 15), $"part of a load that goes to the {Considered} truss", CrossSectionFrame.TextSize - 1, Ink.Grey, OnPaper: true));
    }

    private IEnumerable<double> Loads() => frame.Section.Wheels.Concat(frame.Section.Strips.Select(s => s.Middle));

    private string Considered => Lettering.Width(frame.Deck.TrussNames[frame.Section.Truss], CrossSectionFrame.TextSize) < 300 ? frame.Deck.TrussNames[frame.Section.Truss] : "considered";

    private void Across(string shows, double from, double to, double row, string words)
    {
        parts.Add(CrossSectionFrame.Line(shows, frame.At(from, row), frame.At(to, row), Ink.Grey, 1));
        foreach (double end in (double[])[from, to])
        {
            parts.Add(CrossSectionFrame.Line(shows, frame.At(end, row - 6), frame.At(end, row + 6), Ink.Grey, 1));
            parts.Add(frame.Slash(shows, end, row));
        }

        Write(shows, words, (from + to) / 2, [row + 13, row - 13, row + 29]);
    }

    // Words at the first of the heights at which they overprint nothing written before.
    private void Write(string shows, string words, double x, double[] heights)
    {
        Box chosen = crowding.Choose(heights.Select(up => Box.Of(words, CrossSectionFrame.TextSize, new(x * frame.Scale, up))));
        parts.Add(new Text(shows, frame.At(x, chosen.Y), words, CrossSectionFrame.TextSize, Ink.Black, OnPaper: true));
    }
}
