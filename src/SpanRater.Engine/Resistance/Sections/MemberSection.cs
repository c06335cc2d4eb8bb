namespace SpanRater;

/// <summary>What a member is made of at one cut. Immutable.</summary>
public sealed class MemberSection
{
    /// <summary>Makes a section.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="parts">Its parts, at least one, each with a name of its own and at least one piece.</param>
    /// <exception cref="ArgumentException">There is no part, a part has no piece, or two have one name.</exception>
    public MemberSection(string name, IReadOnlyList<SectionPart> parts)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(parts);
        if (parts.Count == 0 || parts.Any(p => p.Pieces.Count == 0))
        {
            throw new ArgumentException("A section has at least one part, and a part at least one piece.", nameof(parts));
        }

        if (parts.DistinctBy(p => p.Name).Count() != parts.Count)
        {
            throw new ArgumentException("The parts of a section have names of their own.", nameof(parts));
        }

        (Name, Parts) = (name, [.. parts]);
        SectionPiece[] carrying = [.. Parts.SelectMany(p => p.Carrying)];

        // Where one piece is all there is, its place does not matter.
        bool isAlone = Parts.Sum(p => p.Pieces.Count) == 1;
        PartsNotPlaced = isAlone ? [] : [.. Parts.Where(p => p.Carrying.Any(c => c.Placement is null)).Select(p => p.Name)];
        Properties = carrying.Length == 0 || PartsNotPlaced.Count > 0 ? null : SectionProperties.Together([.. carrying.Select(p => (p.Placement ?? new PiecePlacement(0, 0)).Of(p.Shape))]);
    }

    /// <summary>Its name.</summary>
    public string Name { get; }

    /// <summary>Its parts.</summary>
    public IReadOnlyList<SectionPart> Parts { get; }

    /// <summary>Gross area of what carries; 0 where nothing does [m²].</summary>
    public double Area => Parts.Sum(p => p.Area);

    /// <summary>Net area in tension; null where a part does not give it [m²].</summary>
    public double? NetArea => Parts.Aggregate((double?)0, (sum, part) => sum + part.NetArea);

    /// <summary>Names of the parts whose holes, head or thread are not given, so that there is no net area.</summary>
    public IReadOnlyList<string> PartsWithoutNetArea => [.. Parts.Where(p => p.NetArea is null).Select(p => p.Name)];

    /// <summary>Names of the parts whose positions are not given, so that there are no properties but the area.</summary>
    public IReadOnlyList<string> PartsNotPlaced { get; }

    /// <summary>Properties of what carries; null where positions are not given or nothing carries.</summary>
    public SectionProperties? Properties { get; }

    /// <summary>Whether it is one angle alone, which is loaded off its centroid.</summary>
    public bool IsSingleAngle => Parts is [{ Pieces: [{ Shape: var shape }] }] && shape.Kind == ShapeKind.Angle;

    /// <summary>The part of that name, or null.</summary>
    /// <param name="name">Its name.</param>
    public SectionPart? FindPart(string name) => Parts.FirstOrDefault(p => p.Name == name);
}
