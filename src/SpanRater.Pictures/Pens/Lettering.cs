using SkiaSharp;

namespace SpanRater.Pictures;

/// <summary>The one font of the pictures, and how wide a text in it is.</summary>
internal static class Lettering
{
    /// <summary>Name of the font family.</summary>
    public const string Family = "Inter";

    private const string Resource = "font/Inter-Regular.otf";

    // Characters outside the Basic Latin the font is sure to have are measured by the font itself; it has no fallback.
    public static SKTypeface Typeface { get; } = Load();

    /// <summary>A font of that size. Hinting is off, so that letters do not depend on the machine's settings.</summary>
    /// <param name="size">Height of the letters' body [px].</param>
    public static SKFont FontOf(double size) => new(Typeface, (float)size)
    {
        Subpixel = true,
        LinearMetrics = true,
        Hinting = SKFontHinting.None,
        Edging = SKFontEdging.Antialias,
    };

    /// <summary>Width of a text [px].</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Height of the letters' body [px].</param>
    public static double Width(string text, double size)
    {
        using SKFont font = FontOf(size);
        return font.MeasureText(text);
    }

    /// <summary>The text where it fits, else as much of its beginning as does, and an ellipsis; where it is shown whole stands elsewhere.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Height of the letters' body [px].</param>
    /// <param name="width">Width there is [px].</param>
    public static string Fitted(string text, double size, double width)
    {
        const string Ellipsis = "…";
        if (text.Length < 400 && Width(text, size) <= width)
        {
            return text;
        }

        int kept = 0;
        while (kept < text.Length && Width(text[..(kept + 1)] + Ellipsis, size) <= width)
        {
            kept++;
        }

        // A pair of surrogates is one letter.
        return text[..(kept > 0 && char.IsHighSurrogate(text[kept - 1]) ? kept - 1 : kept)] + Ellipsis;
    }

    /// <summary>The text in lines no wider than allowed; a word too long for a line is cut between letters, and nothing is lost.</summary>
    /// <param name="text">The text.</param>
    /// <param name="size">Height of the letters' body [px].</param>
    /// <param name="width">Width of a line [px].</param>
    public static IReadOnlyList<string> Wrap(string text, double size, double width)
    {
        var lines = new List<string>();
        string line = "";
        foreach (string word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).SelectMany(w => Cut(w, size, width)))
        {
            string longer = line.Length == 0 ? word : $"{line} {word}";
            if (line.Length > 0 && Width(longer, size) > width)
            {
                lines.Add(line);
                longer = word;
            }

            line = longer;
        }

        if (line.Length > 0)
        {
            lines.Add(line);
        }

        return lines;
    }

    private static IEnumerable<string> Cut(string word, double size, double width)
    {
        int start = 0;
        for (int end = 1; end <= word.Length; end++)
        {
            if (end - start > 1 && Width(word[start..end], size) > width)
            {
                yield return word[start..(end - 1)];
                start = end - 1;
            }
        }

        yield return word[start..];
    }

    private static SKTypeface Load()
    {
        using Stream stream = typeof(Lettering).Assembly.GetManifestResourceStream(Resource)
            ?? throw new InvalidOperationException($"The font {Resource} is not in the assembly.");
        using SKData bytes = SKData.Create(stream);
        return SKTypeface.FromData(bytes) ?? throw new InvalidOperationException($"The font {Resource} cannot be read.");
    }
}
