namespace SpanRater;

/// <summary>One bridge: a truss, the deck on it, its static loads, and how it is to be rated. Immutable.</summary>
/// <param name="Name">Name of the bridge.</param>
/// <param name="Built">Year it was built, or null.</param>
/// <param name="Truss">One of its trusses; all have the same members.</param>
/// <param name="Deck">The deck and its trusses.</param>
/// <param name="Rating">How it is to be rated.</param>
/// <param name="Cases">Static load cases on one truss; where the trusses differ, on the left one.</param>
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

    /// <summary>Static load cases on the right truss where they differ from those on the left one; null where the trusses are alike.</summary>
    public IReadOnlyList<LoadCase>? RightCases { get; init; }

    /// <summary>Where the dead load is from.</summary>
    public DeadLoadAccount? DeadAccount { get; init; }

    /// <summary>What each member is made of, in the order of the truss's members, null where that is not given; where the trusses differ, on the left one.</summary>
    public IReadOnlyList<MemberMake?> Makes { get; init; } = [];

    /// <summary>The same on the right truss where anything was seen on one truss alone; null where the trusses are alike.</summary>
    public IReadOnlyList<MemberMake?>? RightMakes { get; init; }

    /// <summary>The floor; null where nothing is said of it.</summary>
    public Floor? Floor { get; init; }

    /// <summary>The connections that are given.</summary>
    public IReadOnlyList<Connection> Connections { get; init; } = [];

    /// <summary>What a member is made of on one truss; null where that is not given.</summary>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <param name="member">Position of the member.</param>
    public MemberMake? MakeOf(int truss, int member)
    {
        IReadOnlyList<MemberMake?> makes = truss == 1 ? RightMakes ?? Makes : Makes;
        return member < makes.Count ? makes[member] : null;
    }

    /// <summary>The truss whose cases alone are here, 0 for the left one and 1 for the right one; null for a bridge as a whole.</summary>
    public int? OnlyTruss { get; init; }

    /// <summary>The name for a title: with that of the truss, where the cases of one alone are here.</summary>
    public string Title => OnlyTruss is { } truss ? $"{Name}, {Deck.TrussNames[truss]} truss" : Name;

    /// <summary>Whether what holds for one truss holds for all: the load cases of all trusses are the same.</summary>
    public bool TrussesAlike => RightCases is null && OnlyTruss is null;

    /// <summary>The bridge with the cases of one truss.</summary>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such truss.</exception>
    public Bridge OfTruss(int truss)
    {
        if (truss is not (0 or 1))
        {
            throw new ArgumentOutOfRangeException(nameof(truss), truss, "The left truss is 0, the right one 1.");
        }

        return RightCases is null ? this : this with { Cases = truss == 0 ? Cases : RightCases, RightCases = null, OnlyTruss = truss };
    }

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
