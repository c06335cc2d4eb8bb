using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using CsvHelper;

namespace SpanRater.Files;

/// <summary>Writes result pages as CSV and JSON: the same bytes for the same facts, under any culture.</summary>
public static class ResultFormats
{
    /// <summary>Version of the JSON shapes.</summary>
    public const int JsonFormat = 1;

    /// <summary>A page as CSV, UTF-8, lines ending in LF. Notes stand above the header, behind a #.</summary>
    /// <param name="page">The page.</param>
    /// <param name="units">The units to show.</param>
    public static byte[] Csv(ResultPage page, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(page);
        using var stream = new MemoryStream();
        stream.Write(Encoding.UTF8.GetBytes(string.Concat(page.Notes.Select(n => $"# {SpreadsheetText.Remark(n)}\n"))));
        using (CsvWriter writer = CsvWriter.Create(stream, new CsvWriterOptions { NewLine = "\n" }, leaveOpen: true))
        {
            foreach (string heading in page.Rows.Headings(units))
            {
                writer.WriteField(SpreadsheetText.Write(heading));
            }

            writer.EndRecord();
            foreach (IReadOnlyList<object?> row in page.Rows.Rows)
            {
                for (int c = 0; c < row.Count; c++)
                {
                    if (ResultTable.Shown(row[c], page.Rows.Columns[c], units) is { } value)
                    {
                        writer.WriteField(value);
                    }
                    else
                    {
                        writer.WriteField(SpreadsheetText.Write(row[c]?.ToString() ?? ""));
                    }
                }

                writer.EndRecord();
            }
        }

        return stream.ToArray();
    }

    /// <summary>A page as JSON, always SI with every digit.</summary>
    /// <param name="page">The page.</param>
    public static byte[] Json(ResultPage page)
    {
        using var stream = new MemoryStream();
        Json(page, stream);
        return stream.ToArray();
    }

    /// <summary>The same, written to a stream: for what is long.</summary>
    /// <param name="page">The page.</param>
    /// <param name="stream">Takes the bytes.</param>
    public static void Json(ResultPage page, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(stream);
        var options = new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (var json = new Utf8JsonWriter(stream, options))
        {
            json.WriteStartObject();
            json.WriteNumber("format", JsonFormat);
            page.WriteJson(json);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
    }
}
