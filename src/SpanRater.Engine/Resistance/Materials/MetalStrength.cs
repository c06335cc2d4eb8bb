namespace SpanRater;

/// <summary>Yield and tensile strength of a metal, and where they are from.</summary>
public sealed record MetalStrength
{
    /// <summary>Makes it.</summary>
    /// <param name="yield">Yield, positive [Pa].</param>
    /// <param name="ultimate">Tensile strength, not below the yield [Pa]; null where it is not known.</param>
    /// <param name="origin">Where both are from.</param>
    /// <exception cref="ArgumentOutOfRangeException">A strength is not positive and finite, or the tensile strength is below the yield.</exception>
    public MetalStrength(double yield, double? ultimate, StrengthOrigin origin)
    {
        ArgumentNullException.ThrowIfNull(origin);
        Checked.Positive(yield, nameof(yield));
        if (ultimate is { } fu && !(fu >= yield && double.IsFinite(fu)))
        {
            throw new ArgumentOutOfRangeException(nameof(ultimate), ultimate, "A tensile strength is finite and not below the yield [Pa].");
        }

        (Yield, Ultimate, Origin) = (yield, ultimate, origin);
    }

    /// <summary>Yield [Pa].</summary>
    public double Yield { get; }

    /// <summary>Tensile strength [Pa]; null where it is not known.</summary>
    public double? Ultimate { get; }

    /// <summary>Where both are from.</summary>
    public StrengthOrigin Origin { get; }

    /// <summary>The row that was taken by year; null where the strength is the bridge's own.</summary>
    public PublishedStrength? Row => (Origin as StrengthOrigin.ByYear)?.Row;

    /// <summary>The strength that a row publishes.</summary>
    /// <param name="row">The row.</param>
    /// <param name="built">Year of building, or null.</param>
    public static MetalStrength ByYear(PublishedStrength row, int? built)
    {
        ArgumentNullException.ThrowIfNull(row);
        return new MetalStrength(row.Yield, row.Ultimate, new StrengthOrigin.ByYear(built, row));
    }

    /// <summary>Allowable stress in tension on the gross section, and in bending: as printed where the strength is by year and a stress is, else a part of the yield.</summary>
    /// <param name="level">The level.</param>
    public AllowableStress AllowableGross(AllowableLevel level) => Row is { AllowableTension: { } printed, AllowableClause: { } clause }
        ? new AllowableStress(level == AllowableLevel.Inventory ? printed.Inventory : printed.Operating, null, clause)
        : AllowableStress.Part(Yield, level == AllowableLevel.Inventory ? 0.55 : 0.75, StrengthClauses.AllowableGross);

    /// <summary>Allowable stress in tension on the net section, a part of the tensile strength; null where that is not known.</summary>
    /// <param name="level">The level.</param>
    public AllowableStress? AllowableNet(AllowableLevel level) =>
        Ultimate is { } fu ? AllowableStress.Part(fu, level == AllowableLevel.Inventory ? 0.50 : 0.67, StrengthClauses.AllowableNet) : null;
}
