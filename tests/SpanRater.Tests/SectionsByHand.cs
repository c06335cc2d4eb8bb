namespace SpanRater.Tests;

/// <summary>Shapes and sections for tests, from dimensions that are right.</summary>
internal static class SectionsByHand
{
    public static SectionShape Shape(ShapeKind kind, params (ShapeDimension Dimension, double Metres)[] dimensions)
    {
        ShapeCheck check = SectionShape.Create(kind, dimensions.ToDictionary(d => d.Dimension, d => d.Metres));
        Assert.Empty(check.Faults);
        return check.Shape!;
    }

    public static SectionPart Part(string name, SectionShape shape, params PiecePlacement?[] places) =>
        new(name, [.. places.Select(p => new SectionPiece(shape, p))]);

    public static SectionPart Part(string name, SectionShape shape, int count, PieceArrangement arrangement) =>
        Part(name, shape, [.. arrangement.Placements(shape, count, 0, 0, 0, false)!]);

    public static MemberSection Section(params SectionPart[] parts) => new("section", parts);

    public static FoundSection Found(MemberSection section, params Observation[] observations)
    {
        FoundSectionCheck check = FoundSection.Create(section, observations);
        Assert.Empty(check.Faults);
        return check.Section!;
    }
}
