using System.Text;

namespace SpanRater.Fuzz;

/// <summary>What is put in the place of a cell, a value or a key: what has broken readers elsewhere, and what stands somewhere in the files.</summary>
public sealed class Vocabulary
{
    // Numbers at the edges of double and of sense, spellings that are no number here, names, units, what a spreadsheet would compute,
    // digits and spaces of other scripts, marks that turn the direction of writing, and paths.
    private static readonly string[] Odd =
    [
        "", " ", "0", "-0", "-1", "1", "2", "1e308", "-1e308", "1e-308", "5e-324", "1e15", "1e16", "1e-15", "999999999999", "2147483648", "9223372036854775808", "0.0000001", "NaN", "nan", "Infinity", "-Infinity", "∞",
        "1,5", "1.5", "1 000", "1'000", "1_000", ".5", "5.", "+5", "--5", "0x10", "1e", "1e+", "٣", "１２", "½", "−5", "1/0", "0/0", "7/8", "2-1/2", "16'-6\"", "16 ft 6 in", "16'", "6\"", "-16'-6\"", "1 ft 99 in",
        "yes", "no", "true", "YES", "y", "pin", "roller", "L0", "L1", "U1", "L0L1", "DC", "DW", "by year", "none", "null", "ton", "US ton", "tonne", "kip", "ft", "m", "[ft]", "x [ft]", "x [", "]", "x [ton]", "[]",
        "=1+1", "@SUM(A1)", "\t", "\r", "\"", "\"\"", "\"a", "a\"b", "'", "#", "#x", ";", ",", ",,,,,,", "\\", "\\u0000", "\\uD800", "🌉", "é", "e\u0301", "\u202E", "\u200B", "\u00A0", "\uFEFF", "\uFFFD", "../../x", "/etc/passwd", "CON", "NUL.txt", "%s%n", "{0}", "[red]x[/]",
        "[", "[[", "[[[[[[[[", "{", "}", "{ a = 1 }", "[1, 2", "[1, 2]", "[\"a\"]", "[[1], [2]]", "1979-05-27", "1979-05-27T07:32:00Z", "\"\"\"", "'''", "\"12 ft\"", "\"-12 ft\"", "\"0 ft\"", "\"1e300 ft\"", "\"12\"", "12", "1.5", "inf", "nan", "-nan", "true", "0b1", "a.b.c", "\"a\".b", "= =", "Type 3", "LRFR", "ASR", "LFR", "partial factors",
    ];

    private readonly List<string> found;

    private Vocabulary(List<string> found) => this.found = found;

    /// <summary>The words of some files, cells and values as they stand, each once, in the order met.</summary>
    /// <param name="points">Where they are from.</param>
    public static Vocabulary Of(IEnumerable<StartingPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var words = new List<string>();
        foreach (string word in points.SelectMany(p => p.Files).SelectMany(f => Encoding.UTF8.GetString(f.Value).Split([',', '\n', '='])).Select(w => w.Trim()))
        {
            if (word.Length is > 0 and < 60 && seen.Add(word))
            {
                words.Add(word);
            }
        }

        return new Vocabulary(words);
    }

    /// <summary>A word: odd ones and those of the files in equal parts, and once in a while a very long one.</summary>
    /// <param name="chance">The random numbers.</param>
    public string Next(Random chance)
    {
        ArgumentNullException.ThrowIfNull(chance);
        return chance.Next(40) switch
        {
            0 => new string("x9\"é "[chance.Next(5)], 1 << chance.Next(4, 15)),
            1 => chance.NextDouble().ToString("R", System.Globalization.CultureInfo.InvariantCulture) + "e" + chance.Next(-320, 320).ToString(System.Globalization.CultureInfo.InvariantCulture),
            < 20 => Odd[chance.Next(Odd.Length)],
            _ => found[chance.Next(found.Count)],
        };
    }
}
