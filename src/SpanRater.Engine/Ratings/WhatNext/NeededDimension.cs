using MathNet.Numerics.RootFinding;

namespace SpanRater;

/// <summary>What must remain of a dimension for the factor of a row to be 1, all else as found.</summary>
/// <param name="Row">The row.</param>
/// <param name="Part">Name of the part.</param>
/// <param name="Dimension">The dimension.</param>
/// <param name="AsBuilt">As built [m].</param>
/// <param name="Read">The least that was read of it; null where it was not measured [m].</param>
/// <param name="Needed">What must remain; null where no value up to three times that of as built is enough [m].</param>
public sealed record NeededDimension(MemberRow Row, string Part, ShapeDimension Dimension, double AsBuilt, double? Read, double? Needed)
{
    /// <summary>A need up to this part of as built is told as nothing: other dimensions carry the member [-].</summary>
    public const double Nothing = 0.02;

    private const double Most = 3, Step = 1.05;

    /// <summary>Whether more is needed than was ever there.</summary>
    public bool IsThickerThanBuilt => Needed is not { } needed || needed > AsBuilt * (1 + 1e-9);

    /// <summary>Whether what was read, or what was built where nothing was read, is enough.</summary>
    public bool IsEnough => Needed is { } needed && needed <= (Read ?? AsBuilt) * (1 + 1e-9);

    /// <summary>The capacity at which the factor is 1 [N]; null where none makes it so.</summary>
    public double? NeededCapacity { get; private init; }

    /// <summary>What the member carries with the dimension at what is needed; null where nothing is needed that there can be.</summary>
    public MemberResistance? ResistanceThen { get; private init; }

    /// <summary>What must remain of each dimension of a row's member that can be lost.</summary>
    internal static IEnumerable<NeededDimension> Of(RowCase row)
    {
        double? capacity = row.NeededCapacity();
        foreach (SectionPart part in row.Make.Section.AsBuilt.Parts)
        {
            SectionShape shape = part.Pieces[0].Shape;
            foreach (ShapeDimension dimension in shape.Kind.Needed.Concat(shape.Kind.Optional).Where(d => IsCallipered(shape.Kind, d) && shape.Kind.CanBeLost.Contains(d) && shape.AsBuilt(d) is not null))
            {
                double built = shape.AsBuilt(dimension)!.Value;
                double[] read = [.. row.Make.Section.Observations.OfType<Observation.Remaining>().Where(o => IsOf(o, row.Make, part, dimension)).Select(o => o.Value)];
                double? needed = Find(row, part, dimension, built);
                yield return new NeededDimension(row.Row, part.Name, dimension, built, read.Length == 0 ? null : read.Min(), needed)
                {
                    NeededCapacity = capacity,
                    ResistanceThen = needed is { } value && With(row.Make, part, dimension, value, built) is { } then ? row.ResistanceOf(then) : null,
                };
            }
        }
    }

    // Of rolled shapes it is the walls that rust and that a calliper is put on; legs and flanges do not grow shorter.
    private static bool IsCallipered(ShapeKind kind, ShapeDimension dimension) =>
        dimension is ShapeDimension.Thickness or ShapeDimension.Web or ShapeDimension.Flange or ShapeDimension.Root or ShapeDimension.HeadWidth
        || !(kind.Needed.Contains(ShapeDimension.Web) || kind == ShapeKind.Angle || kind == ShapeKind.Pipe);

    private static double? Find(RowCase row, SectionPart part, ShapeDimension dimension, double built)
    {
        double Excess(double value) => With(row.Make, part, dimension, value, built) is { } make ? Math.Min(row.FactorOf(make), 10) - 1 : -1;
        double least = built * Nothing;
        if (Excess(built) >= 0)
        {
            return Excess(least) >= 0 ? least : Brent.FindRoot(Excess, least, built, built * 1e-9);
        }

        // In steps, since a dimension grows no farther than the others of its shape allow.
        double enough = built;
        while (Excess(enough) < 0)
        {
            enough *= Step;
            if (enough > built * Most || With(row.Make, part, dimension, enough, built) is null)
            {
                return null;
            }
        }

        return Brent.FindRoot(Excess, enough / Step, enough, built * 1e-9);
    }

    // Up to as built as loss on both faces at the worst cut; beyond it as a part that was built larger.
    private static MemberMake? With(MemberMake make, SectionPart part, ShapeDimension dimension, double value, double built)
    {
        Observation[] others = [.. make.Section.Observations.Where(o => o is not Observation.Remaining r || !IsOf(r, make, part, dimension))];
        FoundSection? section = value <= built
            ? AtEveryCut(make, others, part, dimension, value)
            : Larger(make.Section.AsBuilt, part, dimension, value) is { } larger ? FoundSection.Create(larger, others).Section : null;
        return section is null ? null : make with { Section = section };
    }

    private static FoundSection? AtEveryCut(MemberMake make, Observation[] others, SectionPart part, ShapeDimension dimension, double value)
    {
        string[] places = [.. others.Where(o => o.IsAtACut).Select(o => o.Place).Append("everywhere").Distinct()];
        return FoundSection.Create(
            make.Section.AsBuilt, [.. others, .. places.Select(p => new Observation.Remaining(dimension, value) { Place = p, Part = part.Name })]).Section;
    }

    private static MemberSection? Larger(MemberSection section, SectionPart part, ShapeDimension dimension, double value)
    {
        SectionShape shape = part.Pieces[0].Shape;
        var dimensions = shape.Kind.Needed.Concat(shape.Kind.Optional).Where(d => shape.AsBuilt(d) is not null).ToDictionary(d => d, d => d == dimension ? value : shape.AsBuilt(d)!.Value);
        return SectionShape.Create(shape.Kind, dimensions).Shape is { } larger
            ? new MemberSection(section.Name, [.. section.Parts.Select(p => p.Name != part.Name ? p : p with { Pieces = [.. p.Pieces.Select(piece => piece with { Shape = larger })] })])
            : null;
    }

    private static bool IsOf(Observation.Remaining seen, MemberMake make, SectionPart part, ShapeDimension dimension) =>
        seen.Dimension == dimension && (seen.Part.Length == 0 ? make.Section.AsBuilt.Parts.Count == 1 : seen.Part == part.Name);
}
