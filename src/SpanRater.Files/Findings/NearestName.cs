using System.Globalization;

namespace SpanRater.Files;

/// <summary>Finds the name that a mistyped one was probably meant to be.</summary>
public static class NearestName
{
    /// <summary>A question to end a message with, or nothing: <c> Did you mean "U3"?</c></summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The names there are.</param>
    public static string Question(string typed, IEnumerable<string> known) =>
        Find(typed, known) is { } name ? $" Did you mean \"{name}\"?" : "";

    /// <summary>The nearest of the known names, or null where none is near.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The names there are.</param>
    public static string? Find(string typed, IEnumerable<string> known)
    {
        ArgumentNullException.ThrowIfNull(typed);
        ArgumentNullException.ThrowIfNull(known);
        if (typed.Length > InputLimits.LongestNameToGuess)
        {
            return null;
        }

        string? nearest = null;
        (int Edits, double Numbers) least = (Math.Max(1, typed.Length / 3), double.PositiveInfinity);
        foreach (string name in known)
        {
            // So many letters more or less take as many edits.
            if (Math.Abs(typed.Length - name.Length) > least.Edits)
            {
                continue;
            }

            // Of names equally near, "L9" rather means "L8" than "L1".
            (int Edits, double Numbers) distance = (Edits(typed.ToUpperInvariant(), name.ToUpperInvariant()), Math.Abs(TrailingNumber(typed) - TrailingNumber(name)));
            if (distance.CompareTo(least) < 0)
            {
                (nearest, least) = (name, distance);
            }
        }

        return nearest;
    }

    private static double TrailingNumber(string name)
    {
        int start = name.Length;
        while (start > 0 && char.IsAsciiDigit(name[start - 1]))
        {
            start--;
        }

        return double.TryParse(name.AsSpan(start), NumberStyles.None, CultureInfo.InvariantCulture, out double number) ? number : 0;
    }

    // Letters added, dropped, changed, or two neighbours swapped (the restricted Damerau-Levenshtein distance).
    private static int Edits(string a, string b)
    {
        var table = new int[a.Length + 1, b.Length + 1];
        for (int i = 0; i <= a.Length; i++)
        {
            for (int j = 0; j <= b.Length; j++)
            {
                if (i == 0 || j == 0)
                {
                    table[i, j] = i + j;
                    continue;
                }

                int change = table[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                table[i, j] = Math.Min(change, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    table[i, j] = Math.Min(table[i, j], table[i - 2, j - 2] + 1);
                }
            }
        }

        return table[a.Length, b.Length];
    }
}
