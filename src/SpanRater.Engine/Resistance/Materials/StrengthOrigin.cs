namespace SpanRater;

/// <summary>Where a strength is from.</summary>
public abstract record StrengthOrigin
{
    private StrengthOrigin()
    {
    }

    /// <summary>Whether it is an assumption, which every result that uses it says.</summary>
    public virtual bool IsAssumed => false;

    /// <summary>Published for the kind and the year of building; the user asked for it.</summary>
    /// <param name="Built">Year of building; null where the row holds for any year.</param>
    /// <param name="Row">The row.</param>
    public sealed record ByYear(int? Built, PublishedStrength Row) : StrengthOrigin
    {
        /// <inheritdoc/>
        public override bool IsAssumed => true;
    }

    /// <summary>Published for the species, size class and grade of a timber that the user names.</summary>
    /// <param name="Row">The row.</param>
    public sealed record ByGrade(TimberDesignValues Row) : StrengthOrigin;

    /// <summary>Tested on pieces of the bridge.</summary>
    /// <param name="Coupons">How many pieces, at least one.</param>
    /// <param name="Source">Who tested, when, and how the value follows from the tests.</param>
    public sealed record Tested(int Coupons, string Source) : StrengthOrigin;

    /// <summary>Given by the user.</summary>
    /// <param name="Source">Where it is from: drawings, a mill sheet, a standard of the time.</param>
    public sealed record Given(string Source) : StrengthOrigin;
}
