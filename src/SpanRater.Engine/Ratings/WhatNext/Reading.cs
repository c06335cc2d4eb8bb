namespace SpanRater;

/// <summary>One measured number among what was seen on a member of one truss.</summary>
/// <param name="Index">Which of the member's observations.</param>
/// <param name="Seen">The observation.</param>
/// <param name="Value">What was read [m].</param>
/// <param name="MoreIsBetter">Whether a larger value makes the member stronger: what remains; not a hole, decay or a bow.</param>
/// <param name="Most">The largest value there can be: as built; null where there is none [m].</param>
public sealed record Reading(int Index, Observation Seen, double Value, bool MoreIsBetter, double? Most)
{
    /// <summary>How far it may be off [m].</summary>
    public double Doubt => Seen.Doubt;

    /// <summary>The value at which it is off by its doubt to the bad side [m].</summary>
    public double AtWorst => Held(MoreIsBetter ? Value - Doubt : Value + Doubt);

    /// <summary>The value at which it is off by its doubt to the good side [m].</summary>
    public double AtBest => Held(MoreIsBetter ? Value + Doubt : Value - Doubt);

    /// <summary>The readings of a member, in the order seen; what has no number is none.</summary>
    /// <param name="section">The section of the member with what was seen on it.</param>
    public static IReadOnlyList<Reading> Of(FoundSection section)
    {
        ArgumentNullException.ThrowIfNull(section);
        return [.. section.Observations.Select((seen, i) => Of(section.AsBuilt, seen, i)).OfType<Reading>()];
    }

    /// <summary>A value of this reading that can be: above nothing, and no more than was built [m].</summary>
    /// <param name="value">Any value [m].</param>
    public double Held(double value) => Math.Max(LeastLength, Math.Min(value, Most ?? double.PositiveInfinity));

    /// <summary>The observation with another value.</summary>
    /// <param name="value">The value [m].</param>
    public Observation With(double value) => Seen switch
    {
        Observation.Remaining seen => seen with { Value = value },
        Observation.Hole seen => seen with { Diameter = value },
        Observation.Decay seen => seen with { Depth = value },
        Observation.Bow seen => seen with { Offset = value },
        _ => throw new ArgumentException("An observation without a number cannot take another value.", nameof(value)),
    };

    /// <summary>A length that is nothing to a calliper and not zero to a section [m].</summary>
    private const double LeastLength = 1e-9;

    private static Reading? Of(MemberSection asBuilt, Observation seen, int index) => seen switch
    {
        Observation.Remaining r => new Reading(index, seen, r.Value, MoreIsBetter: true, AsBuilt(asBuilt, r)),
        Observation.Hole h => new Reading(index, seen, h.Diameter, MoreIsBetter: false, null),
        Observation.Decay d => new Reading(index, seen, d.Depth, MoreIsBetter: false, null),
        Observation.Bow b => new Reading(index, seen, Math.Abs(b.Offset), MoreIsBetter: false, null),
        _ => null,
    };

    private static double? AsBuilt(MemberSection section, Observation.Remaining seen)
    {
        SectionPart? part = seen.Part.Length == 0 ? section.Parts[0] : section.FindPart(seen.Part);
        return part?.Pieces[0].Shape.AsBuilt(seen.Dimension);
    }
}
