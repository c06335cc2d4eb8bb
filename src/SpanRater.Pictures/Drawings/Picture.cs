namespace SpanRater.Pictures;

/// <summary>A rectangle of a picture [px], from its upper left corner.</summary>
/// <param name="X">Its left edge [px].</param>
/// <param name="Y">Its upper edge [px].</param>
/// <param name="Width">Its width [px].</param>
/// <param name="Height">Its height [px].</param>
public readonly record struct Frame(double X, double Y, double Width, double Height);

/// <summary>A tick of an axis.</summary>
/// <param name="At">Where it stands, in the units of the drawing.</param>
/// <param name="Label">What is written at it.</param>
public readonly record struct Tick(double At, string Label);

/// <summary>An axis of a panel.</summary>
/// <param name="Title">What it measures, with its unit; empty where that is said elsewhere.</param>
/// <param name="Ticks">Its ticks.</param>
public sealed record Axis(string Title, IReadOnlyList<Tick> Ticks);

/// <summary>A drawing in its place in a picture.</summary>
/// <param name="Frame">Where it stands; axes lie outside the frame.</param>
/// <param name="Drawing">The drawing, which fills the frame.</param>
/// <param name="LeftAxis">Axis at the left; null where there is none.</param>
/// <param name="BottomAxis">Axis at the bottom; null where there is none.</param>
public sealed record Panel(Frame Frame, Drawing Drawing, Axis? LeftAxis = null, Axis? BottomAxis = null);

/// <summary>A picture: drawings laid out on one sheet. Immutable, and free of any drawing package.</summary>
/// <param name="Title">What it shows, in one line.</param>
/// <param name="Width">Width [px].</param>
/// <param name="Height">Height [px].</param>
/// <param name="Panels">Its drawings, the undermost first.</param>
public sealed record Picture(string Title, int Width, int Height, IReadOnlyList<Panel> Panels)
{
    /// <summary>Width of every picture [px].</summary>
    public const int StandardWidth = 1200;

    /// <summary>Every text in the picture but those of its axes.</summary>
    public IEnumerable<Text> Texts => Panels.SelectMany(p => p.Drawing.Texts);
}
