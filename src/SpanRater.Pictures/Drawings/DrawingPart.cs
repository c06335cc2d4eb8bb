namespace SpanRater.Pictures;

/// <summary>A point of a drawing.</summary>
/// <param name="X">To the right [m, or what the drawing's window says].</param>
/// <param name="Y">Up [m, or what the drawing's window says].</param>
public readonly record struct DrawingPoint(double X, double Y);

/// <summary>A part of a drawing. Places are in the drawing's own units; weights and sizes are in pixels at its scale.</summary>
/// <param name="Shows">Name of what the part shows: a member, a joint, a dimension.</param>
public abstract record DrawingPart(string Shows);

/// <summary>A line through points.</summary>
/// <param name="Shows">Name of what it shows.</param>
/// <param name="Points">At least two points.</param>
/// <param name="Ink">Its ink.</param>
/// <param name="Weight">Its width [px].</param>
/// <param name="Dash">How it is broken.</param>
/// <param name="Closed">True when its end meets its start.</param>
public sealed record Stroke(string Shows, IReadOnlyList<DrawingPoint> Points, Ink Ink, double Weight, Dash Dash = Dash.Solid, bool Closed = false)
    : DrawingPart(Shows);

/// <summary>A filled polygon.</summary>
/// <param name="Shows">Name of what it shows.</param>
/// <param name="Points">Its corners, at least three.</param>
/// <param name="Ink">Its ink.</param>
public sealed record Area(string Shows, IReadOnlyList<DrawingPoint> Points, Ink Ink) : DrawingPart(Shows);

/// <summary>A mark of fixed size at a point.</summary>
/// <param name="Shows">Name of what it shows.</param>
/// <param name="At">Its middle.</param>
/// <param name="Shape">Its shape.</param>
/// <param name="Size">Its width [px].</param>
/// <param name="Ink">Its ink.</param>
/// <param name="Filled">True when filled with its ink; else filled with paper and outlined.</param>
public sealed record Mark(string Shows, DrawingPoint At, MarkShape Shape, double Size, Ink Ink, bool Filled) : DrawingPart(Shows);

/// <summary>A line of text.</summary>
/// <param name="Shows">Name of what it shows.</param>
/// <param name="At">Where its anchor stands.</param>
/// <param name="Content">The text.</param>
/// <param name="Size">Height of the letters' body [px].</param>
/// <param name="Ink">Its ink.</param>
/// <param name="Anchor">Which of its points stands there.</param>
/// <param name="Angle">Turned anticlockwise about its anchor [deg].</param>
/// <param name="OnPaper">True when a strip of paper lies behind it, so that it stays readable over lines.</param>
public sealed record Text(
    string Shows,
    DrawingPoint At,
    string Content,
    double Size,
    Ink Ink,
    TextAnchor Anchor = TextAnchor.Middle,
    double Angle = 0,
    bool OnPaper = false) : DrawingPart(Shows);
