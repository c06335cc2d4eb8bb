namespace SpanRater;

/// <summary>A shape whose properties are published. What is null is not published, or not trusted, and follows from the dimensions.</summary>
/// <param name="Name">Its name, such as L6x4x1/2 or C8x11.5.</param>
/// <param name="Source">Where its properties are from, and whether from memory.</param>
public sealed record PublishedShape(string Name, string Source)
{
    /// <summary>Area [m²].</summary>
    public required double Area { get; init; }

    /// <summary>Second moment about the x axis [m⁴].</summary>
    public required double Ix { get; init; }

    /// <summary>Second moment about the y axis [m⁴].</summary>
    public required double Iy { get; init; }

    /// <summary>x of the centroid in the shape's own drawing [m].</summary>
    public double? X { get; init; }

    /// <summary>y of the centroid in the shape's own drawing [m].</summary>
    public double? Y { get; init; }

    /// <summary>Least radius of gyration [m].</summary>
    public double? LeastRadius { get; init; }

    /// <summary>The shape as published.</summary>
    public SectionShape Shape => drawn!.OfTable(this);

    internal SectionShape Drawn { init => drawn = value; }

    private readonly SectionShape? drawn;

    /// <summary>Properties of the shape as found: as published where nothing is lost, else lowered as its outline says.</summary>
    internal SectionProperties Corrected(SectionProperties found, SectionProperties built)
    {
        double productBuilt = LeastRadius is { } r ? -Math.Sqrt(Math.Max(0, (Ix - (Area * r * r)) * (Iy - (Area * r * r)))) : built.Ixy;
        double x = X ?? built.X, y = Y ?? built.Y;
        return found with
        {
            Area = Area * found.Area / built.Area,
            X = x + (found.X - built.X),
            Y = y + (found.Y - built.Y),
            Ix = Ix * found.Ix / built.Ix,
            Iy = Iy * found.Iy / built.Iy,
            Ixy = built.Ixy == 0 ? found.Ixy : productBuilt * found.Ixy / built.Ixy,
        };
    }
}
