namespace SpanRater;

/// <summary>One piece of a part.</summary>
/// <param name="Shape">Its shape.</param>
/// <param name="Placement">Where it lies; null where that is not given.</param>
public sealed record SectionPiece(SectionShape Shape, PiecePlacement? Placement)
{
    /// <summary>Whether it carries: false where it is gone or slack.</summary>
    public bool Carries { get; init; } = true;

    /// <summary>Its properties where it lies; null where that is not given.</summary>
    public SectionProperties? Placed => Placement?.Of(Shape);
}

/// <summary>A part of a section: one shape, or several alike.</summary>
/// <param name="Name">Its name, unique in the section.</param>
/// <param name="Pieces">Its pieces, at least one, from left to right, those below first.</param>
public sealed record SectionPart(string Name, IReadOnlyList<SectionPiece> Pieces)
{
    /// <summary>The holes in the worst path of each piece; null where they are not known.</summary>
    public HolePath? Holes { get; init; }

    /// <summary>Note of the one who wrote it; empty where there is none.</summary>
    public string Note { get; init; } = "";

    /// <summary>Area of the pieces that carry [m²].</summary>
    public double Area => Carrying.Sum(p => p.Shape.Area);

    /// <summary>
    /// Net area of the pieces that carry: by their holes, at the root of the thread of bars that are not upset, across the pin of eyebars; null
    /// where holes, or an eyebar's head and pin hole, are not given [m²].
    /// </summary>
    public double? NetArea => Carrying.Select(p => Holes is null ? p.Shape.OwnNetArea : p.Shape.NetArea(Holes)).Aggregate((double?)0, (sum, net) => sum + net);

    /// <summary>The pieces that carry.</summary>
    public IEnumerable<SectionPiece> Carrying => Pieces.Where(p => p.Carries);
}
