using ScottPlot;
using SkiaSharp;

namespace SpanRater.Pictures;

/// <summary>Answers every request for a font with the shipped one, so that no picture depends on the fonts of a machine.</summary>
internal sealed class ShippedFont : IFontResolver
{
    private static readonly Lock Door = new();
    private static bool used;

    private ShippedFont()
    {
    }

    /// <summary>Makes the shipped font the only one that plots can find.</summary>
    public static void Use()
    {
        lock (Door)
        {
            if (used)
            {
                return;
            }

            Fonts.FontResolvers.Clear();
            Fonts.FontResolvers.Add(new ShippedFont());
            Fonts.Default = Lettering.Family;
            used = true;
        }
    }

    public SKTypeface CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing spacing) => Lettering.Typeface;

    public SKTypeface CreateTypeface(string fontName, bool bold, bool italic) => Lettering.Typeface;
}
