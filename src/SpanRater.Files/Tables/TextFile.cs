using System.Globalization;
using System.Text;

namespace SpanRater.Files;

/// <summary>Reads a file as text, and refuses by name what is not text.</summary>
internal static class TextFile
{
    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    /// <summary>The text of a file, without a byte-order mark; null where it is refused.</summary>
    /// <param name="path">Where the file is.</param>
    /// <param name="name">Its name in findings.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static string? Read(string path, string name, FindingList findings)
    {
        try
        {
            if (Directory.Exists(path))
            {
                findings.Error(new Place(name), "is a folder, not a file.");
                return null;
            }

            bool isToml = path.EndsWith(".toml", StringComparison.OrdinalIgnoreCase);
            int most = isToml ? InputLimits.MostTomlBytes : InputLimits.MostBytes;
            long length = new FileInfo(path).Length;
            if (length > most)
            {
                findings.Error(new Place(name), string.Create(CultureInfo.InvariantCulture, $"is larger than {most / (1024 * 1024)} MB, which no {(isToml ? "file of settings" : "table of a bridge")} is: check what it is."));
                return null;
            }

            if (!OrdinaryFile.Is(path))
            {
                findings.Error(new Place(name), "is a pipe or a device, not a file: save what it holds as a file.");
                return null;
            }

            return Decode(File.ReadAllBytes(path), name, findings);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            findings.Error(new Place(name), $"cannot be read ({Reason(e)}): check that it is there and that you may read it.");
            return null;
        }
    }

    /// <summary>Bytes as text; null where they are refused.</summary>
    public static string? Decode(ReadOnlySpan<byte> bytes, string name, FindingList findings)
    {
        if (bytes.StartsWith([(byte)0xFF, (byte)0xFE]) || bytes.StartsWith([(byte)0xFE, (byte)0xFF]))
        {
            findings.Error(new Place(name), "is UTF-16 text: save it as UTF-8.");
            return null;
        }

        if (bytes.StartsWith(Encoding.UTF8.Preamble))
        {
            bytes = bytes[Encoding.UTF8.Preamble.Length..];
        }

        int zero = bytes.IndexOf((byte)0);
        if (zero >= 0)
        {
            findings.Error(new Place(name), "is not text: it holds zero bytes, as pictures, spreadsheets and archives do. Save the table as CSV, UTF-8.");
            return null;
        }

        string text;
        try
        {
            text = Strict.GetString(bytes);
        }
        catch (DecoderFallbackException e)
        {
            (int line, int column) = PlaceOf(bytes, e.Index);
            findings.Error(
                new Place(name, line, column),
                string.Create(CultureInfo.InvariantCulture, $"is not UTF-8 (byte {bytes[e.Index]:X2}), rather Windows-1252 or Latin-1: save it as UTF-8."));
            return null;
        }

        if (string.IsNullOrWhiteSpace(text))
        {
            findings.Error(new Place(name), "is empty.");
            return null;
        }

        int number = 0;
        foreach (ReadOnlySpan<char> line in text.AsSpan().EnumerateLines())
        {
            number++;
            if (PrintableText.ControlIn(line) is int at and >= 0)
            {
                findings.Error(new Place(name, number, at + 1), string.Create(CultureInfo.InvariantCulture, $"holds a control character here (U+{(int)line[at]:X4}), which is no text: delete it."));
                return null;
            }

            if (line.Length > InputLimits.LongestLine)
            {
                findings.Error(
                    new Place(name, number, 1),
                    string.Create(CultureInfo.InvariantCulture, $"the line is {line.Length:N0} characters long; no row of a table is. Check what the file is."));
                return null;
            }
        }

        return text;
    }

    private static (int Line, int Column) PlaceOf(ReadOnlySpan<byte> bytes, int index)
    {
        ReadOnlySpan<byte> before = bytes[..index];
        int lineStart = before.LastIndexOf((byte)'\n') + 1;
        return (before.Count((byte)'\n') + 1, Encoding.UTF8.GetCharCount(before[lineStart..]) + 1);
    }

    private static string Reason(Exception e) => e switch
    {
        FileNotFoundException or DirectoryNotFoundException => "it is not there",
        UnauthorizedAccessException => "access is denied",
        _ => "it could not be opened",
    };
}
