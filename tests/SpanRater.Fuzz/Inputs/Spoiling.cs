using System.Text;

namespace SpanRater.Fuzz;

/// <summary>Spoils one file in one place.</summary>
/// <param name="words">What is put in the place of other words.</param>
public sealed class Spoiling(Vocabulary words)
{
    private static readonly byte[] OddBytes = [0x00, 0x0A, 0x0D, 0x09, 0x1A, 0x1B, 0x22, 0x23, 0x27, 0x2C, 0x3B, 0x3D, 0x5B, 0x5D, 0x7B, 0x7F, 0x80, 0xC0, 0xE2, 0xEF, 0xFE, 0xFF];

    /// <summary>The file, spoiled.</summary>
    /// <param name="file">Its name, whose ending tells a table from TOML.</param>
    /// <param name="bytes">What it holds.</param>
    /// <param name="chance">The random numbers.</param>
    public byte[] Once(string file, byte[] bytes, Random chance)
    {
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(chance);
        if (bytes.Length == 0 || chance.Next(6) == 0)
        {
            return SpoilBytes(bytes, chance);
        }

        var lines = new List<string>(Encoding.UTF8.GetString(bytes).Split('\n'));
        if (chance.Next(4) == 0)
        {
            SpoilLines(lines, chance);
        }
        else if (file.EndsWith(".toml", StringComparison.OrdinalIgnoreCase))
        {
            SpoilToml(lines, chance);
        }
        else
        {
            SpoilTable(lines, chance);
        }

        return Encoding.UTF8.GetBytes(string.Join('\n', lines));
    }

    private static byte[] SpoilBytes(byte[] bytes, Random chance)
    {
        var spoiled = new List<byte>(bytes);
        int at = chance.Next(bytes.Length + 1), count = Math.Min(1 << chance.Next(7), bytes.Length - at);
        switch (chance.Next(7))
        {
            case 0 when at < bytes.Length:
                spoiled[at] ^= (byte)(1 << chance.Next(8));
                break;
            case 1:
                spoiled.Insert(at, OddBytes[chance.Next(OddBytes.Length)]);
                break;
            case 2 when at < bytes.Length:
                spoiled[at] = OddBytes[chance.Next(OddBytes.Length)];
                break;
            case 3:
                spoiled.RemoveRange(at, count);
                break;
            case 4:
                spoiled.InsertRange(chance.Next(bytes.Length + 1), spoiled.GetRange(at, count));
                break;
            case 5 when chance.Next(4) == 0:
                return [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes(Encoding.UTF8.GetString(bytes))];
            case 6 when chance.Next(2) == 0:
                return [.. Encoding.UTF8.Preamble, .. bytes];
            default:
                return [.. spoiled.Take(at)];
        }

        return [.. spoiled];
    }

    private static void SpoilLines(List<string> lines, Random chance)
    {
        int at = chance.Next(lines.Count), other = chance.Next(lines.Count);
        switch (chance.Next(7))
        {
            case 0:
                lines.RemoveAt(at);
                break;
            case 1:
                lines.Insert(other, lines[at]);
                break;
            case 2:
                (lines[at], lines[other]) = (lines[other], lines[at]);
                break;
            case 3:
                lines[at] += lines[other];
                break;
            case 4:
                lines.InsertRange(at, Enumerable.Repeat(lines[at], 1 << chance.Next(1, 7)));
                break;
            case 5:
                lines.RemoveRange(at, chance.Next(lines.Count - at + 1));
                break;
            default:
                lines[at] = lines[at].Insert(chance.Next(lines[at].Length + 1), chance.Next(2) == 0 ? "#" : "\r");
                break;
        }
    }

    private void SpoilTable(List<string> lines, Random chance)
    {
        int header = Math.Max(0, lines.FindIndex(l => l.Length > 0 && l[0] != '#'));
        int at = chance.Next(header, lines.Count);
        var cells = new List<string>(lines[at].Split(','));
        int c = chance.Next(cells.Count);
        switch (chance.Next(12))
        {
            case 0:
                lines[header] = SpoilUnit(lines[header], chance);
                return;
            case 1:
                RemoveColumn(lines, header, chance.Next(lines[header].Split(',').Length));
                return;
            case 2 when chance.Next(3) == 0:
                Separate(lines, ";\t|"[chance.Next(3)]);
                return;
            case 3:
                cells.RemoveAt(c);
                break;
            case 4:
                cells.Insert(c, words.Next(chance));
                break;
            case 5 when double.TryParse(cells[c], System.Globalization.CultureInfo.InvariantCulture, out double number):
                cells[c] = (number * Factor(chance)).ToString("R", System.Globalization.CultureInfo.InvariantCulture);
                break;
            case 6:
                string[] others = lines[chance.Next(header, lines.Count)].Split(',');
                cells[c] = others[Math.Min(c, others.Length - 1)];
                break;
            case 7:
                cells[c] = "";
                break;
            case 8:
                cells[c] += words.Next(chance);
                break;
            default:
                cells[c] = words.Next(chance);
                break;
        }

        lines[at] = string.Join(',', cells);
    }

    private void SpoilToml(List<string> lines, Random chance)
    {
        int at = chance.Next(lines.Count), equals = lines[at].IndexOf('=', StringComparison.Ordinal);
        string key = equals < 0 ? words.Next(chance) : lines[at][..equals].Trim(), value = equals < 0 ? "" : lines[at][(equals + 1)..].Trim();
        lines[at] = chance.Next(12) switch
        {
            0 => $"{words.Next(chance)} = {value}",
            1 => $"{key} = [{value}]",
            2 => $"{key} = {{ {key} = {value} }}",
            3 => $"[{words.Next(chance)}]",
            4 => $"[[{words.Next(chance)}]]",
            5 => lines[at].StartsWith('[') ? lines[at].Replace("[[", "[", StringComparison.Ordinal).Replace("]]", "]", StringComparison.Ordinal) : $"{key}.{words.Next(chance)} = {value}",
            6 => $"{key} = {new string('[', 1 << chance.Next(1, 9))}",
            7 => $"{key} = {value.Trim('"')}",
            8 => $"{key} = \"{value}\"",
            9 when value.StartsWith('"') => $"{key} = \"{Scaled(value[1..], chance)}",
            9 => $"{key} = {Scaled(value, chance)}",
            10 => $"{key} = \"{words.Next(chance)}\"",
            _ => $"{key} = {words.Next(chance)}",
        };
    }

    // "12 ft" becomes "-12 ft", "0 ft", "1200 ft".
    private static string Scaled(string text, Random chance)
    {
        int end = 0;
        while (end < text.Length && (char.IsAsciiDigit(text[end]) || text[end] == '.'))
        {
            end++;
        }

        return double.TryParse(text[..end], System.Globalization.CultureInfo.InvariantCulture, out double number)
            ? (number * Factor(chance)).ToString("R", System.Globalization.CultureInfo.InvariantCulture) + text[end..]
            : text;
    }

    private static double Factor(Random chance) => chance.Next(5) switch
    {
        0 => -1,
        1 => 0,
        2 => Math.Pow(10, chance.Next(-18, 19)),
        3 => 1 + ((chance.NextDouble() - 0.5) * 1e-9),
        _ => chance.NextDouble() * 4,
    };

    private string SpoilUnit(string line, Random chance)
    {
        int open = line.IndexOf('[', chance.Next(line.Length + 1)), close = open < 0 ? -1 : line.IndexOf(']', open);
        return close < 0 ? line + "," + words.Next(chance) : line[..(open + 1)] + words.Next(chance) + line[close..];
    }

    private static void RemoveColumn(List<string> lines, int header, int column)
    {
        for (int i = header; i < lines.Count; i++)
        {
            var cells = new List<string>(lines[i].Split(','));
            if (column < cells.Count)
            {
                cells.RemoveAt(column);
                lines[i] = string.Join(',', cells);
            }
        }
    }

    private static void Separate(List<string> lines, char separator)
    {
        for (int i = 0; i < lines.Count; i++)
        {
            lines[i] = lines[i].Replace(',', separator);
        }
    }
}
