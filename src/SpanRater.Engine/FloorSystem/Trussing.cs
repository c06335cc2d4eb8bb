namespace SpanRater;

/// <summary>A rod, or rods alike side by side as one section, under a beam. What is null is not given, and the beam is not rated without it.</summary>
/// <param name="Posts">Posts: 1 in the middle, or 2 at the same distance from both ends.</param>
/// <param name="Drop">Rod below the beam's axis at the posts [m].</param>
/// <param name="PostSpacing">Between two posts [m]; null also of one.</param>
/// <param name="Rod">What the rod is made of.</param>
public sealed record Trussing(int? Posts, double? Drop, double? PostSpacing, MemberMake? Rod)
{
    /// <summary>Distance between the points that hold the lower side of the beam, which posts press where it hogs [m]; null for its whole span, as no more is known.</summary>
    public double? HeldBelow { get; init; }

    /// <summary>The longest field between ends and posts [m]; null where posts are not known.</summary>
    /// <param name="span">Span of the beam [m].</param>
    public double? LongestField(double span) => (Posts, PostSpacing) switch
    {
        (1, _) => span / 2,
        (2, { } spacing) => Math.Max(spacing, (span - spacing) / 2),
        _ => null,
    };

    /// <summary>The beam with its rod, sections as built; null where something is not known.</summary>
    /// <param name="make">What the beam is made of.</param>
    /// <param name="span">Its span [m].</param>
    public TrussedBeam? With(BeamMake? make, double span) =>
        !MissingFor(make).Any() && make?.Section.AsBuilt.Properties is { } section && ModulusOf(make.Material) is { } beam && ModulusOf(Rod?.Material) is { } rod
            ? new TrussedBeam(span, Posts!.Value, PostSpacing ?? 0, Drop!.Value, beam * section.Ix, beam * section.Area, rod * Rod!.Section.AsBuilt.Area)
            : null;

    /// <summary>What is missing for the beam with its rod.</summary>
    /// <param name="make">What the beam is made of.</param>
    public IEnumerable<MissingDatum> MissingFor(BeamMake? make)
    {
        string[] shape = [.. new[] { Posts is null ? "posts" : null, Drop is null ? "drop" : null, Posts == 2 && PostSpacing is null ? "post spacing" : null }.OfType<string>()];
        if (shape.Length > 0)
        {
            yield return new MissingDatum.TrussedShape(string.Join(", ", shape));
        }

        if (Rod?.Material is not { } rod)
        {
            yield return new MissingDatum.RodOfBeam(Rod is null);
        }
        else if (ModulusOf(rod) is null)
        {
            yield return new MissingDatum.ModulusOfTrussed(rod.Name);
        }

        if (make is null)
        {
            yield return new MissingDatum.NoSection();
        }
        else if (make.Material is null)
        {
            yield return new MissingDatum.NoMaterial();
        }
        else if (ModulusOf(make.Material) is null)
        {
            yield return new MissingDatum.ModulusOfTrussed(make.Material.Name);
        }
        else if (make.Section.AsBuilt.Properties is null)
        {
            yield return new MissingDatum.Positions(make.Section.AsBuilt.Name, string.Join(", ", make.Section.AsBuilt.PartsNotPlaced));
        }
    }

    private static double? ModulusOf(Material? material) => material switch
    {
        MetalMaterial metal => metal.Modulus,
        TimberMaterial timber => timber.Values.Modulus,
        _ => null,
    };
}
