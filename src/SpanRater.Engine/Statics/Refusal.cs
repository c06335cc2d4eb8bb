namespace SpanRater;

/// <summary>Why a question that was read and understood has no answer. A typed result, never an exception.</summary>
public abstract record Refusal
{
    private Refusal()
    {
    }

    /// <summary>Parts of the truss can move without any member changing its length.</summary>
    /// <param name="Stability">The count and the rank, and what moves.</param>
    public sealed record Mechanism(Stability Stability) : Refusal;

    /// <summary>There are more members and reactions than equilibrium can tell apart.</summary>
    /// <param name="Stability">The count and the rank, and the members whose forces statics cannot divide.</param>
    public sealed record Redundant(Stability Stability) : Refusal;

    /// <summary>Members are marked as pulling only, and the set that acts is not known.</summary>
    /// <param name="Members">Names of the members so marked.</param>
    public sealed record RodsThatOnlyPull(IReadOnlyList<string> Members) : Refusal;

    /// <summary>The solved forces do not balance the joints.</summary>
    /// <param name="Residual">Largest joint imbalance over largest load [-].</param>
    public sealed record PoorResidual(double Residual) : Refusal;

    /// <summary>The whole-truss solution and the joint-by-joint solution differ.</summary>
    /// <param name="Member">Name of the member in which they differ most; null where no order of joints was found.</param>
    /// <param name="Difference">Largest difference over the largest member force [-].</param>
    public sealed record RoutesDiffer(string? Member, double Difference) : Refusal;

    /// <summary>Fewer than two panel points: there is no deck to load.</summary>
    /// <param name="PanelPoints">Number of panel points.</param>
    public sealed record NoDeck(int PanelPoints) : Refusal;
}
