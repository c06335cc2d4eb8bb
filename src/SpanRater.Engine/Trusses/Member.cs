namespace SpanRater;

/// <summary>A straight bar between two joints that carries axial force only.</summary>
/// <param name="Name">Name, unique in the truss.</param>
/// <param name="From">Name of the joint at one end.</param>
/// <param name="To">Name of the joint at the other end.</param>
/// <param name="Role">The trade's word for its place, such as bottom chord or hanger; empty where none is given.</param>
/// <param name="Area">Cross-section [m²]; null where none is given. Needed only for redundant trusses and deflections.</param>
/// <param name="Modulus">Modulus of elasticity [Pa]; null means steel (<see cref="SteelModulus"/>).</param>
/// <param name="TensionOnly">True for a rod or bar that goes slack instead of carrying compression.</param>
public sealed record Member(
    string Name,
    string From,
    string To,
    string Role = "",
    double? Area = null,
    double? Modulus = null,
    bool TensionOnly = false)
{
    /// <summary>Modulus of elasticity of steel, 29,000 ksi [Pa].</summary>
    public const double SteelModulus = 29_000 * 6_894_757.293168361;

    /// <summary>True for a member of timber, which takes no impact.</summary>
    public bool IsTimber { get; init; }

    /// <summary>Whether its role says that it is a chord.</summary>
    public bool IsChord => HasRole("chord");

    /// <summary>
    /// Whether its role says that it runs along the span and takes its force from the whole of it: a chord, an end post or a
    /// diagonal. Hangers, verticals and members without a role are not taken for one.
    /// </summary>
    public bool IsLongitudinal => (IsChord || HasRole("end post") || HasRole("diagonal")) && !HasRole("hanger") && !HasRole("sub-diagonal");

    private bool HasRole(string word) => Role.Contains(word, StringComparison.OrdinalIgnoreCase);
}
