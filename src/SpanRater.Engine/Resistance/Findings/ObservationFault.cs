namespace SpanRater;

/// <summary>An observation that cannot be of the section it is told of.</summary>
/// <param name="Index">Which observation, by its position.</param>
public abstract record ObservationFault(int Index)
{
    /// <summary>The section has no such part.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Part">The name; empty where none is written and the section has several.</param>
    public sealed record UnknownPart(int Index, string Part) : ObservationFault(Index);

    /// <summary>The part has fewer pieces.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Count">How many it has.</param>
    public sealed record UnknownPiece(int Index, int Count) : ObservationFault(Index);

    /// <summary>The shape has no such dimension, or it is none that is lost.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Kind">The kind of shape.</param>
    public sealed record NoSuchDimension(int Index, ShapeKind Kind) : ObservationFault(Index);

    /// <summary>A hole has to say the wall.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Kind">The kind of shape.</param>
    public sealed record WallNotSaid(int Index, ShapeKind Kind) : ObservationFault(Index);

    /// <summary>More remains than there was.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Original">What there was [m].</param>
    public sealed record MoreThanBuilt(int Index, double Original) : ObservationFault(Index);

    /// <summary>Nothing remains, with or without the doubt.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="WithDoubt">Whether only the doubt makes it nothing.</param>
    public sealed record NothingRemains(int Index, bool WithDoubt) : ObservationFault(Index);

    /// <summary>Nothing is lost at such a face of that dimension.</summary>
    /// <param name="Index">Which observation.</param>
    public sealed record NoSuchFace(int Index) : ObservationFault(Index);

    /// <summary>The same measure, or the same piece, is told twice at one cut.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="First">The earlier one.</param>
    public sealed record ToldTwice(int Index, int First) : ObservationFault(Index);

    /// <summary>Holes leave nothing of the wall.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Length">What is there of it [m].</param>
    public sealed record HoleTooLarge(int Index, double Length) : ObservationFault(Index);

    /// <summary>Only timber decays.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Kind">The kind of shape.</param>
    public sealed record NotTimber(int Index, ShapeKind Kind) : ObservationFault(Index);

    /// <summary>As many pieces are slack as there are, or more.</summary>
    /// <param name="Index">Which observation.</param>
    /// <param name="Count">How many pieces there are.</param>
    public sealed record TooManySlack(int Index, int Count) : ObservationFault(Index);

    /// <summary>Nothing at all is left at a cut.</summary>
    /// <param name="Index">The observation that took the last of it.</param>
    public sealed record NothingLeft(int Index) : ObservationFault(Index);
}
