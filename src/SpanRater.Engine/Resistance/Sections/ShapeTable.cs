using System.Globalization;
using System.Text.RegularExpressions;

namespace SpanRater;

/// <summary>
/// Shapes with published properties, in inches as printed. Angles are those of the older tables, without fillets. Every value is a row of the
/// tests, with its source; what is not printed there is not here.
/// </summary>
public static partial class ShapeTable
{
    private const double Inch = 0.0254;
    private const string Mott = "Mott, Machine Elements in Mechanical Design, 4th ed., Table A16-1";
    private const string Gere = "Gere and Goodno, Mechanics of Materials, App. E, after the AISC Manual";
    private const string Manual = "AISC ASD Manual, 9th ed., part 1, from memory";

    /// <summary>Every shape there is.</summary>
    public static IReadOnlyList<PublishedShape> All { get; } =
    [
        Angle("L8x8x1", 8, 8, 1, 15, 89, 2.37, 89, 2.37, 1.56, Mott),
        Angle("L8x8x1/2", 8, 8, 0.5, 7.75, 48.6, 2.19, 48.6, 2.19, 1.59, Mott),
        Angle("L8x4x1", 8, 4, 1, 11, 69.6, 3.05, 11.6, 1.05, 0.846, Mott),
        Angle("L8x4x1/2", 8, 4, 0.5, 5.75, 38.5, 2.86, 6.74, 0.859, 0.865, Mott),
        Angle("L6x6x3/4", 6, 6, 0.75, 8.44, 28.2, 1.78, 28.2, 1.78, 1.17, Mott),
        Angle("L6x6x3/8", 6, 6, 0.375, 4.36, 15.4, 1.64, 15.4, 1.64, 1.19, Mott),
        Angle("L6x4x3/4", 6, 4, 0.75, 6.94, 24.5, 2.08, 8.68, 1.08, 0.86, Mott),
        Angle("L6x4x3/8", 6, 4, 0.375, 3.61, 13.5, 1.94, 4.9, 0.941, 0.877, Mott),
        Angle("L4x4x1/2", 4, 4, 0.5, 3.75, 5.56, 1.18, 5.56, 1.18, 0.782, Mott),
        Angle("L4x4x1/4", 4, 4, 0.25, 1.94, 3.04, 1.09, 3.04, 1.09, 0.795, Mott),
        Angle("L4x3x1/2", 4, 3, 0.5, 3.25, 5.05, 1.33, 2.42, 0.827, 0.639, Mott),
        Angle("L4x3x1/4", 4, 3, 0.25, 1.69, 2.77, 1.24, 1.36, null, 0.651, Mott),
        Angle("L3x3x1/2", 3, 3, 0.5, 2.75, 2.22, 0.932, 2.22, 0.932, 0.584, Mott),
        Angle("L3x3x1/4", 3, 3, 0.25, 1.44, 1.24, 0.842, 1.24, 0.842, 0.592, Mott),
        Angle("L2x2x3/8", 2, 2, 0.375, 1.36, 0.479, 0.636, 0.479, 0.636, 0.389, Mott),
        Angle("L2x2x1/4", 2, 2, 0.25, 0.938, 0.348, 0.592, 0.348, 0.592, 0.391, Mott),
        Angle("L2x2x1/8", 2, 2, 0.125, 0.484, 0.19, 0.546, 0.19, 0.546, 0.398, Mott),
        Angle("L6x4x1/2", 6, 4, 0.5, 4.75, 17.4, 1.99, 6.27, 0.987, 0.87, Manual),
        Angle("L4x4x3/8", 4, 4, 0.375, 2.86, 4.36, 1.14, 4.36, 1.14, 0.788, Manual),
        Angle("L5x3-1/2x3/8", 5, 3.5, 0.375, 3.05, 7.78, 1.61, 3.18, 0.861, 0.762, Manual),
        Angle("L2-1/2x2-1/2x1/4", 2.5, 2.5, 0.25, 1.19, 0.703, 0.717, 0.703, 0.717, 0.491, Manual),
        Flanged("W12x50", ShapeKind.WideFlange, 12.2, 0.37, 8.08, 0.64, 14.6, 391, 56.3, 0, Gere),
        Flanged("W12x35", ShapeKind.WideFlange, 12.5, 0.3, 6.56, 0.52, 10.3, 285, 24.5, 0, Gere),
        Flanged("W12x87", ShapeKind.WideFlange, 12.5, 0.515, 12.1, 0.81, 25.6, 740, 241, 0, Gere),
        Flanged("W16x31", ShapeKind.WideFlange, 15.9, 0.275, 5.53, 0.44, 9.13, 375, 12.4, 0, Gere),
        Flanged("W14x53", ShapeKind.WideFlange, 13.9, 0.37, 8.06, 0.66, 15.6, 541, 57.7, 0, Gere),
        Flanged("W18x71", ShapeKind.WideFlange, 18.5, 0.495, 7.64, 0.81, 20.8, 1170, 60.3, 0, Gere),
        Flanged("W8x31", ShapeKind.WideFlange, 8, 0.285, 7.995, 0.435, 9.13, 110, 37.1, 0, Manual),
        Flanged("C10x15.3", ShapeKind.Channel, 10, 0.24, 2.6, 0.436, 4.49, 67.4, 2.28, 0.634, Manual),
        Flanged("C12x20.7", ShapeKind.Channel, 12, 0.282, 2.942, 0.501, 6.09, 129, 3.88, 0.698, Manual),
        Flanged("C12x30", ShapeKind.Channel, 12, 0.51, 3.17, 0.501, 8.82, 162, 5.14, 0.674, Manual),
        Flanged("C15x33.9", ShapeKind.Channel, 15, 0.4, 3.4, 0.65, 9.96, 315, 8.13, 0.787, Manual),
        Flanged("C8x11.5", ShapeKind.Channel, 8, 0.22, 2.26, 0.39, 3.38, 32.6, 1.32, 0.571, Manual),
    ];

    /// <summary>The shape of that name, or null. Letter case, spaces and × for x do not count; L6x4x0.5 is L6x4x1/2.</summary>
    /// <param name="name">Its name.</param>
    public static PublishedShape? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string plain = Plain(name);
        return All.FirstOrDefault(s => Plain(s.Name) == plain);
    }

    private static string Plain(string name)
    {
        string text = name.ToUpperInvariant().Replace('×', 'X').Replace(" ", "", StringComparison.Ordinal);
        return Fractional().Replace(text, m =>
        {
            double whole = m.Groups["whole"].Success ? double.Parse(m.Groups["whole"].Value, CultureInfo.InvariantCulture) : 0;
            double over = m.Groups["over"].Success ? double.Parse(m.Groups["over"].Value, CultureInfo.InvariantCulture) / double.Parse(m.Groups["under"].Value, CultureInfo.InvariantCulture) : 0;
            return (whole + over).ToString("R", CultureInfo.InvariantCulture);
        });
    }

    private static PublishedShape Angle(string name, double depth, double width, double thickness, double area, double ix, double y, double iy, double? x, double leastRadius, string source) =>
        new(name, source)
        {
            Area = area * Inch * Inch,
            Ix = ix * Inch * Inch * Inch * Inch,
            Iy = iy * Inch * Inch * Inch * Inch,
            X = x * Inch,
            Y = y * Inch,
            LeastRadius = leastRadius * Inch,
            Drawn = Drawn(ShapeKind.Angle, (ShapeDimension.Depth, depth), (ShapeDimension.Width, width), (ShapeDimension.Thickness, thickness)),
        };

    private static PublishedShape Flanged(string name, ShapeKind kind, double depth, double web, double width, double flange, double area, double ix, double iy, double x, string source) =>
        new(name, source)
        {
            Area = area * Inch * Inch,
            Ix = ix * Inch * Inch * Inch * Inch,
            Iy = iy * Inch * Inch * Inch * Inch,
            X = x * Inch,
            Y = 0,
            Drawn = Drawn(kind, (ShapeDimension.Depth, depth), (ShapeDimension.Web, web), (ShapeDimension.Width, width), (ShapeDimension.Flange, flange)),
        };

    private static SectionShape Drawn(ShapeKind kind, params (ShapeDimension Dimension, double Inches)[] dimensions) =>
        SectionShape.Create(kind, dimensions.ToDictionary(d => d.Dimension, d => d.Inches * Inch)).Shape!;

    // Digits of ASCII: \d would take those of every script.
    [GeneratedRegex(@"(?<whole>[0-9]+(\.[0-9]+)?)-(?<over>[0-9]+)/(?<under>[1-9][0-9]*)|(?<over>[0-9]+)/(?<under>[1-9][0-9]*)|(?<whole>[0-9]*\.?[0-9]+)", RegexOptions.CultureInvariant | RegexOptions.ExplicitCapture)]
    private static partial Regex Fractional();
}
