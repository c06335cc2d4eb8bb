namespace SpanRater;

/// <summary>Size classes by which timber is graded.</summary>
public enum TimberSizeClass
{
    /// <summary>2 to 4 in thick, 2 in and wider.</summary>
    Dimension,

    /// <summary>5 in and thicker, more than 2 in wider than thick.</summary>
    BeamsAndStringers,

    /// <summary>5 by 5 in and larger, not more than 2 in wider than thick.</summary>
    PostsAndTimbers,

    /// <summary>5 by 5 in and larger of a species that is graded for all of them alike, its values printed for wet or dry service.</summary>
    Timbers,
}

/// <summary>What belongs to a size class.</summary>
public static class TimberSizeClasses
{
    private const double Inch = 0.0254;

    // Classes go by nominal sizes; a dressed size is at most 3/4 in smaller.
    private const double Dressed = 0.75 * Inch;

    /// <summary>Whether a section is of a class, its sizes taken as nominal or as dressed, whichever belongs to it. The user's class decides; where this is false, a second look is due.</summary>
    /// <param name="sizeClass">The class.</param>
    /// <param name="one">One side as built, positive [m].</param>
    /// <param name="other">The other side as built, positive [m].</param>
    public static bool Holds(this TimberSizeClass sizeClass, double one, double other)
    {
        Checked.Positive(one, nameof(one));
        Checked.Positive(other, nameof(other));
        (double thick, double wide) = (Math.Min(one, other), Math.Max(one, other));
        const double round = 1e-6;
        bool large = thick + Dressed >= (5 * Inch) - round;
        return sizeClass switch
        {
            TimberSizeClass.Dimension => thick + Dressed >= (2 * Inch) - round && thick < (5 * Inch) - Dressed - round,
            TimberSizeClass.BeamsAndStringers => large && wide - thick > (2 * Inch) + round,
            TimberSizeClass.PostsAndTimbers => large && wide - thick <= (2 * Inch) + round,
            _ => large,
        };
    }
}
