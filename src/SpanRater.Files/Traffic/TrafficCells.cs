using System.Text;

namespace SpanRater.Files;

/// <summary>The cells of one line, by the places where they start and end; a cell may stand in quotes, those within it doubled.</summary>
internal readonly ref struct TrafficCells
{
    private readonly ReadOnlySpan<byte> line;
    private readonly Span<int> ends;

    /// <summary>Takes a line apart.</summary>
    /// <param name="line">The line, without its line break.</param>
    /// <param name="separator">What parts the cells.</param>
    /// <param name="most">Most cells that are taken apart; what is beyond is not looked at.</param>
    public TrafficCells(ReadOnlySpan<byte> line, byte separator, int most)
        : this(line, separator, new int[most])
    {
    }

    /// <summary>Takes a line apart.</summary>
    /// <param name="line">The line, without its line break.</param>
    /// <param name="separator">What parts the cells.</param>
    /// <param name="ends">Takes the end of each cell.</param>
    public TrafficCells(ReadOnlySpan<byte> line, byte separator, Span<int> ends)
    {
        this.line = line;
        this.ends = ends;
        int at = 0;
        bool mayBeQuoted = line.Contains((byte)'"');
        while (Count < ends.Length)
        {
            int length = mayBeQuoted && IsQuoted(line[at..]) ? QuotedLength(line[at..], separator) : line[at..].IndexOf(separator);
            if (length < -1)
            {
                IsBroken = true;
                length = -1;
            }

            ends[Count++] = length < 0 ? line.Length : at + length;
            if (length < 0)
            {
                return;
            }

            at += length + 1;
        }

        HasMore = true;
    }

    /// <summary>Number of cells.</summary>
    public int Count { get; }

    /// <summary>Whether the quotes do not pair, or something stands behind them.</summary>
    public bool IsBroken { get; }

    /// <summary>Whether there are more cells than were to be taken apart.</summary>
    public bool HasMore { get; }

    /// <summary>The bytes of a cell, without surrounding space and quotes; quotes within stay doubled, as no number or time has any. Empty where there is none.</summary>
    /// <param name="cell">The cell.</param>
    public ReadOnlySpan<byte> this[int cell]
    {
        get
        {
            if (cell >= Count)
            {
                return [];
            }

            ReadOnlySpan<byte> bytes = line[StartOf(cell)..ends[cell]].Trim((byte)' ').Trim((byte)'\t');
            return bytes.Length > 1 && bytes[0] == '"' && bytes[^1] == '"' ? bytes[1..^1].Trim((byte)' ') : bytes;
        }
    }

    /// <summary>A cell as text.</summary>
    /// <param name="cell">The cell.</param>
    public string Text(int cell) => Encoding.UTF8.GetString(this[cell]).Replace("\"\"", "\"", StringComparison.Ordinal);

    /// <summary>Character at which a cell starts, from 1; behind the last one where the line has no such cell.</summary>
    /// <param name="cell">The cell.</param>
    public int ColumnOf(int cell)
    {
        if (cell >= Count)
        {
            return Encoding.UTF8.GetCharCount(line) + 1;
        }

        int start = StartOf(cell);
        while (start < ends[cell] && line[start] is (byte)' ' or (byte)'\t')
        {
            start++;
        }

        return Encoding.UTF8.GetCharCount(line[..start]) + 1;
    }

    private int StartOf(int cell) => cell == 0 ? 0 : ends[cell - 1] + 1;

    private static bool IsQuoted(ReadOnlySpan<byte> rest)
    {
        ReadOnlySpan<byte> text = rest.TrimStart((byte)' ');
        return text.Length > 0 && text[0] == '"';
    }

    // To the separator behind the closing quote: −1 where the line ends there, −2 where the quotes do not pair.
    private static int QuotedLength(ReadOnlySpan<byte> rest, byte separator)
    {
        int at = rest.IndexOf((byte)'"') + 1;
        while (true)
        {
            int quote = rest[at..].IndexOf((byte)'"');
            if (quote < 0)
            {
                return -2;
            }

            at += quote + 1;
            if (at < rest.Length && rest[at] == '"')
            {
                at++;
                continue;
            }

            ReadOnlySpan<byte> behind = rest[at..];
            int separated = behind.IndexOf(separator);
            ReadOnlySpan<byte> between = separated < 0 ? behind : behind[..separated];
            return !between.Trim((byte)' ').IsEmpty ? -2 : separated < 0 ? -1 : at + separated;
        }
    }
}
