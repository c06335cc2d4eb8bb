namespace SpanRater;

/// <summary>One bridge: a truss, the deck on it, its static loads, and how it is to be rated. Immutable.</summary>
/// <param name="Name">Name of the bridge.</param>
/// <param name="Built">Year it was built, or null.</param>
/// <param name="Truss">One of its trusses; both are taken alike.</param>
/// <param name="Deck">The deck and its trusses.</param>
/// <param name="Rating">How it is to be rated.</param>
/// <param name="Cases">Static load cases on one truss.</param>
/// <param name="Capacities">Capacities given for each member, in the order of the truss's members.</param>
public sealed record Bridge(
    string Name,
    int? Built,
    Truss Truss,
    Deck Deck,
    RatingSettings Rating,
    IReadOnlyList<LoadCase> Cases,
    IReadOnlyList<GivenCapacities> Capacities)
{
    /// <summary>Name of the dead load case of the components.</summary>
    public const string ComponentsCase = "DC";

    /// <summary>Name of the dead load case of the wearing surface.</summary>
    public const string WearingSurfaceCase = "DW";

    /// <summary>The whole dead load, unfactored: DC and, where it is given, DW; null where there is no DC.</summary>
    public LoadCase? DeadLoad => (FindCase(ComponentsCase), FindCase(WearingSurfaceCase)) switch
    {
        (null, _) => null,
        ({ } dc, null) => dc,
        ({ } dc, { } dw) => LoadCase.Sum($"{ComponentsCase} + {WearingSurfaceCase}", (dc, 1), (dw, 1)),
    };

    /// <summary>The load case of that name, or null.</summary>
    /// <param name="name">Name, matched exactly.</param>
    public LoadCase? FindCase(string name) => Cases.FirstOrDefault(c => c.Name == name);
}
