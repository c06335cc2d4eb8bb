using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;
using CsvHelper;

namespace SpanRater.Files;

/// <summary>How CsvHelper finds the cells of every table that is read.</summary>
internal static class CsvCells
{
    /// <summary>The rules of all tables: the first row is a row, # starts a comment, space around cells is none of them, and no cell holds a line break.</summary>
    /// <param name="separator">Comma, semicolon or tab.</param>
    public static CsvReaderOptions Options(char separator) => new()
    {
        Separator = separator,
        HasHeader = false,
        CommentPrefix = '#',
        TrimWhitespace = true,
        AllowLineBreaksInQuotes = false,
    };

    /// <summary>Characters at which the cells of the current row start, from 1.</summary>
    /// <param name="reader">A reader that stands on a row.</param>
    public static int[] ColumnsOf(CsvReader reader)
    {
        ReadOnlySpan<byte> record = reader.RawRecord;
        int[] columns = new int[reader.FieldCount];
        int next = 0;
        for (int i = 0; i < columns.Length; i++)
        {
            // The raw span of an empty cell lies outside the record: count on from its neighbour.
            ReadOnlySpan<byte> raw = reader.GetRawSpan(i);
            int start = raw.IsEmpty
                ? next
                : (int)Unsafe.ByteOffset(ref MemoryMarshal.GetReference(record), ref MemoryMarshal.GetReference(raw));
            next = start + raw.Length;
            while (next < record.Length && record[next] is (byte)' ' or (byte)'\t' && record[next] != reader.Separator)
            {
                next++;
            }

            next++;
            columns[i] = Encoding.UTF8.GetCharCount(record[..Math.Min(start, record.Length)]) + 1;
        }

        return columns;
    }
}
