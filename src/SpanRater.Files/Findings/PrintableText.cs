using System.Text;

namespace SpanRater.Files;

/// <summary>Text that neither steers a terminal, nor breaks a line, nor turns the order of what stands beside it.</summary>
public static class PrintableText
{
    /// <summary>The text, with each character of that kind as its number: %1B.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="keepsLines">Whether line ends stay.</param>
    public static string Of(string text, bool keepsLines = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        bool IsShownAsNumber(char c) => IsUnprintable(c) && !(keepsLines && c == '\n');
        if (!text.Any(IsShownAsNumber))
        {
            return text;
        }

        var shown = new StringBuilder();
        foreach (char c in text)
        {
            shown.Append(IsShownAsNumber(c) ? $"%{(int)c:X2}" : c.ToString());
        }

        return shown.ToString();
    }

    /// <summary>The place of the first control character that no line of text holds; -1 where there is none. Tabs and line ends are text.</summary>
    /// <param name="text">Any text.</param>
    public static int ControlIn(ReadOnlySpan<char> text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsControl(text[i]) && text[i] is not ('\t' or '\r' or '\n'))
            {
                return i;
            }
        }

        return -1;
    }

    private static bool IsUnprintable(char c) => char.IsControl(c) || c is '\u2028' or '\u2029' || (c >= '\u202A' && c <= '\u202E') || (c >= '\u2066' && c <= '\u2069');
}
