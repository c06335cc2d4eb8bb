using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;

namespace SpanRater.Pictures;

/// <summary>Makes an SVG as the canvas wrote it the same in every run, and fit for every viewer.</summary>
internal static partial class SvgTidying
{
    /// <summary>
    /// Numbers ids in the order in which they appear, since the canvas counts them on from one picture to the next; names a
    /// general family after the font, for viewers that do not have it; closes lists of places, which the canvas leaves open
    /// and strict viewers then leave out; takes the indentation out of texts; and gives the picture a title and a scalable size.
    /// </summary>
    /// <param name="svg">What the canvas wrote.</param>
    /// <param name="picture">The picture.</param>
    public static string Tidy(string svg, Picture picture)
    {
        var numbers = new Dictionary<string, string>(StringComparer.Ordinal);
        string Renumbered(string id)
        {
            if (!numbers.TryGetValue(id, out string? number))
            {
                number = string.Create(CultureInfo.InvariantCulture, $"c{numbers.Count + 1}");
                numbers.Add(id, number);
            }

            return number;
        }

        string tidy = Ids().Replace(svg, m => $"{m.Groups[1].Value}{Renumbered(m.Groups[2].Value)}{m.Groups[3].Value}");
        tidy = Families().Replace(tidy, $"font-family=\"{Lettering.Family}, sans-serif\"");
        tidy = OpenLists().Replace(tidy, "$1\"");
        tidy = Indentation().Replace(tidy, "$1$2</text>");
        string open = string.Create(
            CultureInfo.InvariantCulture,
            $"<svg viewBox=\"0 0 {picture.Width} {picture.Height}\" role=\"img\"$1><title>{WebUtility.HtmlEncode(picture.Title).Replace("$", "$$", StringComparison.Ordinal)}</title>");
        return OpeningTag().Replace(tidy, open, 1);
    }

    [GeneratedRegex("""(\bid="|url\(#|href="#)([^")]+)(["\)])""")]
    private static partial Regex Ids();

    [GeneratedRegex("font-family=\"[^\"]*\"")]
    private static partial Regex Families();

    [GeneratedRegex("""( [xy]="[-+.,e \d]*), "(?=[ />])""")]
    private static partial Regex OpenLists();

    [GeneratedRegex("""(<text[^>]*>)\s*([^<]*?)\s*</text>""")]
    private static partial Regex Indentation();

    [GeneratedRegex("<svg([^>]*)>")]
    private static partial Regex OpeningTag();
}
