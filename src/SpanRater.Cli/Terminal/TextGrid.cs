using System.Text;
using SpanRater.Files;
using Spectre.Console.Rendering;

namespace SpanRater.Cli.Terminal;

/// <summary>
/// A table as text: headings, one rule, and the rows in columns. It keeps its width: a terminal that is too narrow scrolls or wraps whole lines, and no cell is cut.
/// Written here, since a survey's table of ten thousand rows takes the console library five seconds.
/// </summary>
internal static class TextGrid
{
    private const int Between = 2;
    private const string Bold = "\e[1m", Plain = "\e[0m";

    /// <summary>Writes a table.</summary>
    /// <param name="writer">Takes the lines.</param>
    /// <param name="content">The table.</param>
    /// <param name="units">Units of its numbers.</param>
    /// <param name="colour">Whether headings may be bold.</param>
    public static void Write(TextWriter writer, ResultTable content, DisplayUnits units, bool colour)
    {
        string[] headings = [.. content.Headings(units)];
        bool[] isRight = [.. content.Columns.Select(c => c.Quantity is not null || c.Heading is "factor" or "lowest factor")];
        string[][] rows = [.. content.Rows.Select(r => r.Select((cell, c) => ResultTable.Text(cell, content.Columns[c], units)).ToArray())];
        int[] widths = [.. headings.Select(CellWidth)];
        foreach (string[] row in rows)
        {
            for (int c = 0; c < row.Length; c++)
            {
                widths[c] = Math.Max(widths[c], CellWidth(row[c]));
            }
        }

        var line = new StringBuilder();
        WriteRow(writer, line, headings, widths, isRight, colour);
        writer.WriteLine(new string('─', widths.Sum() + (Between * (widths.Length - 1))));
        foreach (string[] row in rows)
        {
            WriteRow(writer, line, row, widths, isRight, isBold: false);
        }
    }

    private static void WriteRow(TextWriter writer, StringBuilder line, string[] cells, int[] widths, bool[] isRight, bool isBold)
    {
        line.Clear();
        for (int c = 0; c < cells.Length; c++)
        {
            int room = widths[c] - CellWidth(cells[c]);
            line.Append(' ', isRight[c] ? room : 0);
            line.Append(isBold ? $"{Bold}{cells[c]}{Plain}" : cells[c]);
            line.Append(' ', (isRight[c] ? 0 : room) + Between);
        }

        writer.WriteLine(line);
    }

    // How many columns of a terminal a text takes: some scripts take two for a character.
    private static int CellWidth(string text) => Ascii.IsValid(text) ? text.Length : new Segment(text).CellCount();
}
