using System.Text;
using SkiaSharp;
using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>The two kinds of picture file.</summary>
public enum PictureFormat
{
    /// <summary>Portable network graphics: pixels.</summary>
    Png,

    /// <summary>Scalable vector graphics: lines and letters.</summary>
    Svg,
}

/// <summary>A path whose ending names no kind of picture that can be written.</summary>
/// <param name="path">The path.</param>
public sealed class UnsupportedPictureException(string path)
    : NotSupportedException($"\"{path}\" must end in .png or .svg: pictures are written in these two kinds only.")
{
    /// <summary>The path.</summary>
    public string Path { get; } = path;
}

/// <summary>
/// Writes pictures as PNG or SVG. The same picture gives the same bytes, however often, in whatever process and culture.
/// </summary>
public static class PictureFile
{
    /// <summary>Whether the path ends in .png or .svg, whatever the case.</summary>
    /// <param name="path">A path.</param>
    public static bool IsSupported(string path) => FormatOf(path) is not null;

    /// <summary>Writes a picture as its path's ending says. The file appears whole or not at all.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="path">Where to write; an existing file is replaced.</param>
    /// <exception cref="UnsupportedPictureException">The path ends neither in .png nor in .svg.</exception>
    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void Save(Picture picture, string path)
    {
        ArgumentNullException.ThrowIfNull(picture);
        WholeFile.Write(path, Bytes(picture, path));
    }

    /// <summary>The bytes of a picture's file, of the kind that a path's ending says.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="path">The path.</param>
    /// <exception cref="UnsupportedPictureException">The path ends neither in .png nor in .svg.</exception>
    public static byte[] Bytes(Picture picture, string path) =>
        Bytes(picture, FormatOf(path) ?? throw new UnsupportedPictureException(path));

    /// <summary>The bytes of a picture's file.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="format">The kind of file.</param>
    public static byte[] Bytes(Picture picture, PictureFormat format)
    {
        ArgumentNullException.ThrowIfNull(picture);
        return format == PictureFormat.Png ? Png(picture) : Encoding.UTF8.GetBytes(Svg(picture));
    }

    private static PictureFormat? FormatOf(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return System.IO.Path.GetExtension(path).ToUpperInvariant() switch
        {
            ".PNG" => PictureFormat.Png,
            ".SVG" => PictureFormat.Svg,
            _ => null,
        };
    }

    private static byte[] Png(Picture picture)
    {
        using SKSurface surface = SKSurface.Create(new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Opaque));
        ScottPlotPen.Draw(picture, surface.Canvas);
        using SKImage image = surface.Snapshot();
        using SKData data = image.Encode(SKEncodedImageFormat.Png, 100);
        return data.ToArray();
    }

    private static string Svg(Picture picture)
    {
        using var stream = new MemoryStream();
        using (SKCanvas canvas = SKSvgCanvas.Create(new SKRect(0, 0, picture.Width, picture.Height), stream))
        {
            ScottPlotPen.Draw(picture, canvas);
        }

        return SvgTidying.Tidy(Encoding.UTF8.GetString(stream.ToArray()), picture);
    }
}
