namespace SpanRater;

/// <summary>Where a piece lies in the section: it is turned over, mirrored, turned, and moved, in this order.</summary>
/// <param name="X">x of the origin of its drawing [m].</param>
/// <param name="Y">y of the origin of its drawing [m].</param>
/// <param name="Turned">Turned counterclockwise [deg].</param>
/// <param name="Mirrored">Whether left and right are exchanged first.</param>
/// <param name="UpsideDown">Whether top and bottom are exchanged first.</param>
public sealed record PiecePlacement(double X, double Y, double Turned = 0, bool Mirrored = false, bool UpsideDown = false)
{
    private (double Cos, double Sin) Direction => (Turned % 360) switch
    {
        0 => (1, 0),
        90 or -270 => (0, 1),
        180 or -180 => (-1, 0),
        270 or -90 => (0, -1),
        double degrees => (Math.Cos(degrees * Math.PI / 180), Math.Sin(degrees * Math.PI / 180)),
    };

    internal SectionPoint Map(SectionPoint point)
    {
        (double cos, double sin) = Direction;
        double x = Mirrored ? -point.X : point.X, y = UpsideDown ? -point.Y : point.Y;
        return new SectionPoint(X + (x * cos) - (y * sin), Y + (x * sin) + (y * cos));
    }

    /// <summary>The properties of a shape placed so, by the rules for turned axes.</summary>
    internal SectionProperties Of(SectionShape shape)
    {
        SectionProperties own = shape.Properties;
        (double cos, double sin) = Direction;
        (double x, double y) = Map(new SectionPoint(own.X, own.Y));
        double product = Mirrored == UpsideDown ? own.Ixy : -own.Ixy;

        // The extents are those of the outline, which a table shape has as well.
        SectionProperties outline = shape.Outline.Mapped(Map).Properties();
        return new SectionProperties(
            own.Area, x, y,
            (own.Ix * cos * cos) + (own.Iy * sin * sin) + (2 * product * sin * cos),
            (own.Ix * sin * sin) + (own.Iy * cos * cos) - (2 * product * sin * cos),
            (product * ((cos * cos) - (sin * sin))) + ((own.Iy - own.Ix) * sin * cos),
            outline.Left, outline.Right, outline.Bottom, outline.Top);
    }

    /// <summary>The face of the piece's own drawing that looks where a face of the section does; null where it looks askew.</summary>
    internal SectionFace? OwnFace(SectionFace face)
    {
        (double u, double v) = face switch
        {
            SectionFace.Left => (-1.0, 0.0),
            SectionFace.Right => (1, 0),
            SectionFace.Bottom => (0, -1),
            _ => (0, 1),
        };
        (double cos, double sin) = Direction;
        double x = ((u * cos) + (v * sin)) * (Mirrored ? -1 : 1), y = ((v * cos) - (u * sin)) * (UpsideDown ? -1 : 1);
        return (x, y) switch
        {
            (-1, 0) => SectionFace.Left,
            (1, 0) => SectionFace.Right,
            (0, -1) => SectionFace.Bottom,
            (0, 1) => SectionFace.Top,
            _ => null,
        };
    }
}
