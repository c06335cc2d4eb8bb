using System.Globalization;

namespace SpanRater.Files;

/// <summary>The tables of a survey.</summary>
internal static class SurveyTables
{
    /// <summary>The bridges that are rated, as people read them.</summary>
    public static ResultTable Rated(Survey survey) => new(
        [new("asks for"), new("bridge"), new("lowest factor"), new("limit of legal types [US ton]"), new("vehicle"), new("part"), new("in"), new("folder"), new("not rated")],
        [
            .. survey.Rated.Select(b => (IReadOnlyList<object?>)
            [
                SurveyWording.InTable(b.Standing), b.Name, Lowest(b), SurveyWording.InTable(b.Posting), Under(b), b.Governing?.Where ?? "", b.Governing?.In ?? "", b.Folder, b.NotRatedInShort,
            ]),
        ])
    {
        Below = 8,
    };

    /// <summary>Every bridge, as files have it: the rated ones first, in their order.</summary>
    public static ResultTable Bridges(Survey survey) => new(
        [
            new("asks for"), new("bridge"), new("folder"), new("why"), new("method"), new("factor", Quantity.Number), new("truss"), new("part"), new("member"), new("in"), new("vehicle"), new("beside"), new("level"),
            new("limit of legal types [US ton]"), new("set by"), new("smallest safe load", Quantity.Force), new("emergency vehicles to post"), new("under 3 US tons"), new("parts not rated"),
            new("vehicles not rated"), new("not rated"), new("errors of the input"), new("warnings of the input"), new("hash of the input"),
        ],
        [.. survey.Rated.Concat(survey.NotRated).Select(Row)]);

    /// <summary>The lowest factor of every bridge under every vehicle.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="isForFile">True for every digit; else as people read factors.</param>
    public static ResultTable Matrix(Survey survey, bool isForFile)
    {
        Func<double, string> figure = isForFile ? f => f.ToString("R", CultureInfo.InvariantCulture) : f => Words.Factor(f);
        return new ResultTable(
            [new("bridge"), new("folder"), new("asks for"), .. survey.Vehicles.Select(v => new ResultColumn(v))],
            [
                .. survey.Rated.Concat(survey.NotRated).Select(b => (IReadOnlyList<object?>)
                [
                    b.Name ?? "", b.Folder, SurveyWording.InTable(b.Standing),
                    .. survey.Vehicles.Select(v => b.Standing == SurveyStanding.NotRated ? "not rated" : SurveyWording.InMatrix(b.Of(v), figure)),
                ]),
            ]);
    }

    /// <summary>Where one vehicle may cross.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="isForFile">True for every digit; else as people read factors.</param>
    public static ResultTable Crossings(Survey survey, string vehicle, bool isForFile) => new(
        [new("may cross"), new("bridge"), isForFile ? new("factor", Quantity.Number) : new("factor"), new("at most"), new("part"), new("in"), new("beside"), new("level"), new("holds"), new("folder"), new("why")],
        [
            .. survey.Crossings(vehicle).Select(c => (IReadOnlyList<object?>)
            [
                SurveyWording.InTable(c.Vehicle), c.Bridge.Name ?? (isForFile ? "" : c.Bridge.Folder),
                isForFile ? c.Vehicle?.Lowest?.Factor : Words.Factor(c.Vehicle?.Lowest?.Factor), c.Vehicle is { IsAtMost: true, Lowest.Factor: not null } ? "yes" : "",
                c.Vehicle?.Lowest?.Where ?? "", c.Vehicle?.Lowest?.In ?? "", c.Vehicle?.Lowest?.Beside ?? "", c.Vehicle?.Lowest?.Level ?? "",
                string.Join(", ", c.Vehicle?.Conditions ?? []), c.Bridge.Folder, SurveyWording.Reason(c.Bridge, c.Vehicle),
            ]),
        ])
    {
        Below = 10,
    };

    /// <summary>What is not rated and why, a line a bridge.</summary>
    public static IReadOnlyList<string> NotRated(Survey survey) =>
        [.. survey.NotRated.Select(b => $"{b.Folder}{(b.Name is null ? "" : $" ({b.Name})")}: {b.Why.TrimEnd('.')}{string.Concat(b.Errors.Select((e, i) => $"{(i == 0 ? ": " : " | ")}{e}"))}")];

    /// <summary>What was given and is not rated on bridges that are rated, a line a bridge.</summary>
    public static IReadOnlyList<string> NotRatedInPart(Survey survey) =>
        [.. survey.Rated.Where(b => b.NotRated.Count > 0).Select(b => $"{b.Folder} ({b.Name}): {string.Join(" | ", b.NotRated)}")];

    private static string Lowest(SurveyedBridge bridge) => bridge.Governing is { } governing ? Words.Factor(governing.Factor) : bridge.IsWithheld ? "withheld" : "–";

    private static string Under(SurveyedBridge bridge) => bridge.Governing is { } governing ? $"{bridge.GoverningVehicle}{(governing.Beside is null ? "" : $" beside {governing.Beside}")}" : "";

    private static IReadOnlyList<object?> Row(SurveyedBridge b) =>
    [
        SurveyWording.InTable(b.Standing), b.Name ?? "", b.Folder, b.Why, b.Method ?? "", b.Governing?.Factor, b.Governing?.Truss ?? "", b.Governing?.Kind ?? "", b.Governing?.Part ?? "", b.Governing?.In ?? "",
        b.GoverningVehicle ?? "", b.Governing?.Beside ?? "", b.Governing?.Level ?? "", SurveyWording.InTable(b.Posting), b.Posting?.SetBy ?? "", b.Posting?.SmallestSafeLoad * 1000,
        string.Join(", ", b.Posting?.Emergency ?? []), SurveyWording.UnderLine(b.Posting),
        b.PartsNotRated.ToString(CultureInfo.InvariantCulture), b.VehiclesNotRated.ToString(CultureInfo.InvariantCulture),
        b.Standing == SurveyStanding.NotRated ? "" : string.Join("; ", [b.NotRatedInShort, .. b.NotRated]), string.Join(" | ", b.Errors), string.Join(" | ", b.Warnings), b.Hash ?? "",
    ];
}
