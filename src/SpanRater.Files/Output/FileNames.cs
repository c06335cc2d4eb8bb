namespace SpanRater.Files;

/// <summary>Names of files that are made from text of the user: they stay in their folder, on every system.</summary>
public static class FileNames
{
    /// <summary>Characters of a name that is made from a text; the endings that follow it have room.</summary>
    public const int Longest = 60;

    private static readonly string[] Reserved = ["CON", "PRN", "AUX", "NUL", "CONIN$", "CONOUT$"];

    /// <summary>A text as part of a file's name: letters, digits and hyphens of ASCII as they are, all else a low line, cut to <see cref="Longest"/>. Two texts may come to the same.</summary>
    /// <param name="text">The text.</param>
    public static string Of(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return string.Concat(text.Take(Longest).Select(c => char.IsAsciiLetterOrDigit(c) || c is '-' ? c : '_'));
    }

    /// <summary>
    /// Whether a name is that of a file within its folder on every system: not blank, no dots alone, no separator, control character or other character that a
    /// file system refuses, no dot or blank at its end, no name of a device. Source: Microsoft, Naming Files, Paths, and Namespaces, from memory.
    /// </summary>
    /// <param name="name">The name, without folders.</param>
    public static bool IsSafe(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string stem = name.Split('.')[0].TrimEnd().ToUpperInvariant();
        return name.Length is > 0 and <= 200
            && !name.Any(c => char.IsControl(c) || c is '/' or '\\' or ':' or '*' or '?' or '"' or '<' or '>' or '|')
            && name[^1] is not ('.' or ' ')
            && !Reserved.Contains(stem)
            && !(stem.Length == 4 && (stem.StartsWith("COM", StringComparison.Ordinal) || stem.StartsWith("LPT", StringComparison.Ordinal)) && (char.IsDigit(stem[3]) || stem[3] is '¹' or '²' or '³'));
    }
}
