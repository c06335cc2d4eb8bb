using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>
/// The face of a posting sign as a generic drawing: a plain panel with words, under it what has to be read with it and a blank for the decision. It follows no country's
/// sign, and has no symbols and no colours.
/// </summary>
public static class SignPicture
{
    private const double Width = 1120, Border = 24, PanelWidth = 880, Inset = 36, HeadlineSize = 54, LineSize = 24, RemarkSize = 17;

    // Letters of a viewer's own font may be wider than those measured here.
    private const double Spare = 0.9;

    /// <summary>The drawing, in pixels.</summary>
    /// <param name="bridge">Name of the bridge.</param>
    /// <param name="face">What the face says.</param>
    /// <param name="notes">What stands under it: what is rated and what is not, and the caution.</param>
    public static Drawing Of(string bridge, SignFace face, IReadOnlyList<string> notes)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(face);
        ArgumentNullException.ThrowIfNull(notes);
        var column = new Column();
        column.Paragraph(SignFace.Generic, 20, Border, Width - (2 * Border));
        column.Space(14);
        column.Panel(face);
        column.Space(22);
        column.Paragraph($"Proposed for {bridge}, for the decision of the responsible engineer. No limit is in force by this drawing.", RemarkSize, Border, Width - (2 * Border));
        foreach (string text in face.Remarks.Concat(notes))
        {
            column.Space(6);
            column.Paragraph(text, RemarkSize, Border, Width - (2 * Border));
        }

        column.Space(14);
        column.Blank("Decision of the responsible engineer, name, date:");
        return column.ToDrawing();
    }

    // Filled from the top down; its height is known when it is full.
    private sealed class Column
    {
        private readonly List<Func<double, DrawingPart>> parts = [];
        private double filled = Border;

        public void Space(double height) => filled += height;

        public void Paragraph(string text, double size, double left, double width)
        {
            foreach (string line in Lettering.Wrap(text, size, width * Spare))
            {
                Line(line, size, left, TextAnchor.Left);
                filled += size * 1.4;
            }
        }

        public void Panel(SignFace face)
        {
            double top = filled, left = (Width - PanelWidth) / 2;
            filled += Inset;
            foreach (string line in Lettering.Wrap(face.Headline.ToUpperInvariant(), HeadlineSize, (PanelWidth - (2 * Inset)) * Spare))
            {
                Line(line, HeadlineSize, Width / 2, TextAnchor.Middle);
                filled += HeadlineSize * 1.3;
            }

            foreach (SignLine line in face.Lines)
            {
                filled += 8;
                Row(line, left + Inset, PanelWidth - (2 * Inset));
            }

            filled += Inset - 10;
            Rectangle(left, top, PanelWidth, filled - top, 3);
        }

        public void Blank(string words)
        {
            Line(words, RemarkSize, Border, TextAnchor.Left);
            double from = Border + (Lettering.Width(words, RemarkSize) / Spare) + 10, at = filled + (RemarkSize * 1.2);
            parts.Add(height => new Stroke("decision", [new(from, height - at), new(Width - Border, height - at)], Ink.Black, 1.5));
            filled += RemarkSize * 1.8;
        }

        public Drawing ToDrawing()
        {
            double height = Math.Ceiling(filled + Border);
            DrawingPart paper = new Area("paper", [new(0, 0), new(Width, 0), new(Width, height), new(0, height)], Ink.Paper);
            return new Drawing(0, 0, Width, height, 1, 1, [paper, .. parts.Select(part => part(height))]);
        }

        // The two halves of a line of the face side by side, each in as many lines as it needs.
        private void Row(SignLine line, double left, double width)
        {
            double half = width / 2, top = filled;
            Paragraph(line.What.ToUpperInvariant(), LineSize, left, half - 10);
            double end = filled;
            filled = top;
            Paragraph(line.Says.ToUpperInvariant(), LineSize, left + half, half);
            filled = Math.Max(filled, end);
        }

        private void Line(string text, double size, double x, TextAnchor anchor)
        {
            double middle = filled + (size * 0.7);
            parts.Add(height => new Text("sign", new(x, height - middle), text, size, Ink.Black, anchor));
        }

        private void Rectangle(double left, double top, double width, double high, double weight) => parts.Add(height => new Stroke(
            "sign", [new(left, height - top), new(left + width, height - top), new(left + width, height - top - high), new(left, height - top - high)], Ink.Black, weight, Closed: true));
    }
}
