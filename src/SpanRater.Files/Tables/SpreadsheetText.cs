using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;

namespace SpanRater.Files;

/// <summary>
/// Text that a spreadsheet shows and never computes. A cell that begins with = + - @, their full-width forms, a tab or a line break may be run as a formula
/// where a table is opened, so that a name from a stranger's file could fetch or send what the user never asked for. It is written behind an apostrophe,
/// the sign by which spreadsheets take a cell as text, and read back without it. Numbers stay numbers, negative ones too. Source: OWASP, CSV Injection, from memory.
/// </summary>
public static partial class SpreadsheetText
{
    /// <summary>The characters that make a formula of what they begin.</summary>
    public const string Beginnings = "=+-@\t\r\n＝＋－＠";

    /// <summary>A cell as it is written.</summary>
    /// <param name="cell">A text, or a number as text.</param>
    public static string Write(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return IsRead(cell) && !IsNumber(cell) ? "'" + cell : cell;
    }

    /// <summary>A cell as it was before <see cref="Write"/>.</summary>
    /// <param name="cell">The cell.</param>
    public static string Read(string cell)
    {
        ArgumentNullException.ThrowIfNull(cell);
        return cell.StartsWith('\'') && IsRead(cell) ? cell[1..] : cell;
    }

    /// <summary>A line of remarks above a table, on one line, in which no separator is followed by what begins a formula.</summary>
    /// <param name="remark">The remark.</param>
    public static string Remark(string remark)
    {
        ArgumentNullException.ThrowIfNull(remark);
        return AfterSeparator().Replace(string.Join(' ', remark.Split(['\r', '\n', '\t'])), "$0 ");
    }

    // Apostrophes before it are of the text itself, and one more is put before them, so that reading gives the same text.
    private static bool IsRead(string cell)
    {
        string text = cell.TrimStart('\'');
        return text.Length > 0 && Beginnings.Contains(text[0], StringComparison.Ordinal);
    }

    private static bool IsNumber(string cell) =>
        Ascii.IsValid(cell) && double.TryParse(cell, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out _);

    [GeneratedRegex("[,;](?=[=+@＝＋－＠-])")]
    private static partial Regex AfterSeparator();
}
