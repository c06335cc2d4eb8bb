using System.Text;

namespace SpanRater.Files;

/// <summary>Writes result pages as Markdown: tables in pipes, equations in TeX between double dollar signs.</summary>
public static class MarkdownFormat
{
    /// <summary>A page as Markdown, UTF-8, lines ending in LF.</summary>
    /// <param name="page">The page.</param>
    /// <param name="units">The units to show.</param>
    public static byte[] Write(ResultPage page, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(page);
        return Document(page.Blocks, units);
    }

    /// <summary>A document as Markdown, UTF-8, lines ending in LF; its first heading is its title.</summary>
    /// <param name="blocks">The document.</param>
    /// <param name="units">The units to show.</param>
    public static byte[] Document(IEnumerable<ResultBlock> blocks, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(blocks);
        bool titled = false;
        var parts = new List<string>();
        foreach (ResultBlock block in blocks)
        {
            if (block is ResultBlock.Heading heading && !titled)
            {
                titled = true;
                parts.Add($"# {Escaped(heading.Text)}");
            }
            else
            {
                parts.Add(Part(block, units));
            }
        }

        return Encoding.UTF8.GetBytes(string.Join("\n\n", parts) + "\n");
    }

    private static string Part(ResultBlock block, DisplayUnits units) => block switch
    {
        ResultBlock.Heading h => $"{new string('#', Math.Clamp(h.Level, 2, 6))} {Escaped(h.Text)}",
        ResultBlock.Paragraph { Strong: true } p => $"**{Escaped(p.Text)}**",
        ResultBlock.Paragraph p => Escaped(p.Text),
        ResultBlock.Items i => string.Join('\n', [Escaped(i.Lead), "", .. i.Entries.Select(e => $"- {Escaped(e)}")]),
        ResultBlock.Equation e => $"$${e.Tex}$$",
        ResultBlock.Figure f => $"![{Escaped(f.Caption)}](<{f.File}>)",
        ResultBlock.Grid g => Grid(g.Content, units),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "Every kind of block has a look."),
    };

    private static string Grid(ResultTable content, DisplayUnits units)
    {
        var lines = new StringBuilder();
        Line(content.Headings(units));
        Line(content.Columns.Select(c => c.Quantity is null ? "---" : "---:"), escape: false);
        foreach (IReadOnlyList<object?> row in content.Rows)
        {
            Line(row.Select((cell, c) => ResultTable.Text(cell, content.Columns[c], units)));
        }

        return lines.ToString().TrimEnd('\n');

        void Line(IEnumerable<string> cells, bool escape = true) =>
            lines.Append("| ").AppendJoin(" | ", cells.Select(c => escape ? Escaped(c) : c)).Append(" |\n");
    }

    // What a name or a sentence holds must not become mark-up; a cell holds no line break.
    private static string Escaped(string text)
    {
        var safe = new StringBuilder(text.Length);
        foreach (char c in text.ReplaceLineEndings(" "))
        {
            if (c is '\\' or '`' or '*' or '_' or '[' or ']' or '<' or '>' or '|' or '#' or '$')
            {
                safe.Append('\\');
            }

            safe.Append(c);
        }

        return safe.ToString();
    }
}
