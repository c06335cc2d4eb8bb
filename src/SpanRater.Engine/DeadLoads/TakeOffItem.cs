namespace SpanRater;

/// <summary>An item of the dead load with what it comes to. Immutable.</summary>
/// <param name="Item">The item.</param>
/// <param name="AtJoints">The joints it reaches, as positions in the truss, and the weight at each before it is shared to the trusses [N].</param>
/// <param name="LeftShare">Part of it on the left truss [-]; 1 for members, which each truss has of its own.</param>
/// <param name="RightShare">Part of it on the right truss [-].</param>
/// <param name="Trusses">Number of trusses; of other than two all carry the same.</param>
public sealed record TakeOffItem(DeadItem Item, IReadOnlyList<(int Joint, double Weight)> AtJoints, double LeftShare, double RightShare, int Trusses)
{
    private readonly double whole = AtJoints.Sum(j => j.Weight);

    /// <summary>Its weight per length of the span, all of its number together [N/m]; null where it is not spread along the span.</summary>
    public double? PerLength => Item.Weight.PerLength * Item.Count;

    /// <summary>Its weight on the whole bridge [N].</summary>
    public double Total => Trusses == 2 ? OnTruss(0) + OnTruss(1) : Trusses * OnTruss(0);

    /// <summary>Its weight on one truss [N].</summary>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    public double OnTruss(int truss) => whole * Share(truss);

    /// <summary>Part of it on one truss [-].</summary>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    public double Share(int truss) => truss switch
    {
        0 => LeftShare,
        1 => RightShare,
        _ => throw new ArgumentOutOfRangeException(nameof(truss), truss, "The left truss is 0, the right one 1."),
    };
}
