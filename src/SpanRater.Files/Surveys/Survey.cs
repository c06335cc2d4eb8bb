namespace SpanRater.Files;

/// <summary>A survey of many bridges: what each asks for, the most urgent first, and those that are not rated apart.</summary>
public sealed class Survey
{
    /// <summary>Puts the bridges in order.</summary>
    /// <param name="version">Version of the program.</param>
    /// <param name="asked">What was asked for.</param>
    /// <param name="bridges">The bridges.</param>
    /// <param name="notSearched">Links and folders that were not searched.</param>
    public Survey(string version, SurveyAsked asked, IReadOnlyCollection<SurveyedBridge> bridges, IReadOnlyList<PassedOver> notSearched)
    {
        ArgumentNullException.ThrowIfNull(bridges);
        Version = version;
        Asked = asked;
        NotSearched = notSearched;
        All = [.. bridges.OrderBy(b => b.Folder, StringComparer.Ordinal)];

        // Bridges that mirror each other differ in the last bits of a factor.
        Rated = [.. All.Where(b => b.Standing != SurveyStanding.NotRated).OrderBy(b => b.Standing).ThenBy(Rank).ThenBy(b => b.Folder, StringComparer.Ordinal)];
        NotRated = [.. All.Where(b => b.Standing == SurveyStanding.NotRated)];
        Vehicles = [.. (asked?.Vehicles ?? []).Concat(All.SelectMany(b => b.Vehicles.Select(v => v.Name))).Distinct()];
    }

    /// <summary>Version of the program.</summary>
    public string Version { get; }

    /// <summary>What was asked for.</summary>
    public SurveyAsked Asked { get; }

    /// <summary>Links and folders that were not searched.</summary>
    public IReadOnlyList<PassedOver> NotSearched { get; }

    /// <summary>Every bridge, by its folder.</summary>
    public IReadOnlyList<SurveyedBridge> All { get; }

    /// <summary>The bridges that have a rating, the most urgent first; of the same standing the lowest factor of what drives first, a withheld one before all, and after them what is rated for design or screening alone.</summary>
    public IReadOnlyList<SurveyedBridge> Rated { get; }

    /// <summary>The bridges that have none, by their folder.</summary>
    public IReadOnlyList<SurveyedBridge> NotRated { get; }

    /// <summary>The vehicles that any bridge is rated for, in the order asked for, else in that in which the bridges name them.</summary>
    public IReadOnlyList<string> Vehicles { get; }

    /// <summary>Whether a bridge is under the line of 3 US tons, or its dead load alone uses up a capacity.</summary>
    public bool UndercutsLine => Rated.Any(b => b.IsUnderLine);

    /// <summary>Whether every bridge that is rated has its answer: at least one is rated, and no rating is withheld.</summary>
    public bool IsAnswer => Rated.Count > 0 && !Rated.Any(b => b.IsWithheld);

    /// <summary>The answers on one vehicle: yes, then not known, then no, each by folder; null for a bridge that is not rated for it.</summary>
    /// <param name="vehicle">The vehicle.</param>
    public IReadOnlyList<(SurveyedBridge Bridge, SurveyedVehicle? Vehicle)> Crossings(string vehicle) =>
    [
        .. All.Select(b => (b, b.Of(vehicle))).OrderBy(c => c.Item2?.Verdict switch { PassageVerdict.Yes => 0, PassageVerdict.No => 2, _ => 1 }),
    ];

    private static (bool OnlyStandsForOthers, double Factor) Rank(SurveyedBridge bridge) =>
        (bridge is { Governing: not null, LowestThatDrives: null }, Math.Round(bridge.Governing is { } governing ? bridge.LowestThatDrives ?? governing.Factor ?? -1 : -1, 9));
}
