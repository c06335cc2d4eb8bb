namespace SpanRater;

/// <summary>Who saw it, and how; each empty where it is not said.</summary>
/// <param name="By">Who.</param>
/// <param name="How">How it was measured.</param>
/// <param name="Photo">Photo or sketch.</param>
/// <param name="Note">Note.</param>
public sealed record ObservationOrigin(string By = "", string How = "", string Photo = "", string Note = "")
{
    /// <summary>The day; null where it is not said.</summary>
    public DateOnly? Date { get; init; }
}

/// <summary>
/// What an inspector saw on one member. Loss is told as what remains. What has a place, a name for one cut through the member, acts together
/// with all else at the same place; different places are different cuts. Immutable.
/// </summary>
public abstract record Observation
{
    private Observation()
    {
    }

    /// <summary>Name of the cut; empty for what is told of the whole member.</summary>
    public string Place { get; init; } = "";

    /// <summary>Name of the part; empty where the whole member is meant.</summary>
    public string Part { get; init; } = "";

    /// <summary>Which piece of the part, counted from 1 from left to right, those below first; null for all of them.</summary>
    public int? Piece { get; init; }

    /// <summary>How far the measurement may be off, not negative [m].</summary>
    public double Doubt { get; init; }

    /// <summary>Who saw it, and how.</summary>
    public ObservationOrigin Origin { get; init; } = new();

    /// <summary>Whether it belongs to one cut through the member.</summary>
    public virtual bool IsAtACut => true;

    /// <summary>A dimension is smaller than it was.</summary>
    /// <param name="Dimension">The dimension.</param>
    /// <param name="Value">What remains of it [m].</param>
    /// <param name="Face">The face that was lost; null where it is lost at both faces alike, or at the free end of a leg or flange.</param>
    public sealed record Remaining(ShapeDimension Dimension, double Value, SectionFace? Face = null) : Observation;

    /// <summary>The part, or one piece of it, is gone at the cut.</summary>
    public sealed record Gone : Observation;

    /// <summary>Holes side by side, rusted or cut; they are taken in the middle of the wall.</summary>
    /// <param name="Wall">The wall; null where the shape has one only.</param>
    /// <param name="Diameter">Diameter, or length across the wall [m].</param>
    /// <param name="Count">How many side by side at the cut.</param>
    public sealed record Hole(ShapeDimension? Wall, double Diameter, int Count) : Observation;

    /// <summary>Timber that has decayed and counts no more.</summary>
    /// <param name="Depth">How deep [m].</param>
    /// <param name="Face">The face; null for each of the four.</param>
    public sealed record Decay(double Depth, SectionFace? Face) : Observation;

    /// <summary>Pieces of a part that are slack and carry nothing, all along the member.</summary>
    /// <param name="Count">How many; those that carry are told by <see cref="Piece"/> where it matters which.</param>
    public sealed record Slack(int Count) : Observation
    {
        /// <inheritdoc/>
        public override bool IsAtACut => false;
    }

    /// <summary>The member is bowed.</summary>
    /// <param name="Offset">Offset in the middle of its length [m].</param>
    /// <param name="InPlane">Whether it is in the plane of the truss (y); false for out of it (x); null where that is not said.</param>
    public sealed record Bow(double Offset, bool? InPlane) : Observation
    {
        /// <inheritdoc/>
        public override bool IsAtACut => false;
    }

    /// <summary>A crack. No number follows from it: the member is not rated until an engineer has decided.</summary>
    public sealed record Crack : Observation
    {
        /// <inheritdoc/>
        public override bool IsAtACut => false;
    }

    /// <summary>Lacing bars, or crossed pairs of them, that are missing or loose next to each other.</summary>
    /// <param name="Count">How many next to each other.</param>
    public sealed record LacingMissing(int Count) : Observation
    {
        /// <inheritdoc/>
        public override bool IsAtACut => false;
    }

    /// <summary>Rust between parts that pushes them apart: told with the rating, no number follows from it.</summary>
    public sealed record PackRust : Observation
    {
        /// <inheritdoc/>
        public override bool IsAtACut => false;
    }
}
