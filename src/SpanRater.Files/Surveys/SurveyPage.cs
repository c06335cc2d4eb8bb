using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>The table of a survey that is asked for.</summary>
public enum SurveyTable
{
    /// <summary>A line a bridge.</summary>
    Bridges,

    /// <summary>Bridges by vehicles.</summary>
    Matrix,

    /// <summary>Where one vehicle may cross.</summary>
    Crossings,
}

/// <summary>What <c>survey</c> says: what asks for action first, bridges that are not rated apart, and what was not rated beside what was.</summary>
public static class SurveyPage
{
    /// <summary>The word that tells the JSON of a survey from any other.</summary>
    public const string Kind = "survey";

    /// <summary>The page of a survey.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="changes">What differs since an earlier one; null where none is named.</param>
    /// <param name="table">The table.</param>
    public static ResultPage Of(Survey survey, SurveyChanges? changes, SurveyTable table)
    {
        ArgumentNullException.ThrowIfNull(survey);
        IReadOnlyList<string> first = First(survey, changes);
        ResultBlock[] blocks =
        [
            new ResultBlock.Heading(Title(survey)),
            .. first.Select(f => new ResultBlock.Paragraph(f, Strong: true)),
            .. table switch
            {
                SurveyTable.Matrix => Matrix(survey),
                SurveyTable.Crossings => Crossings(survey),
                _ => Rated(survey),
            },
            .. table == SurveyTable.Bridges ? [] : Urgent(survey),
            .. changes is null ? [] : Changes(changes),
            .. NotRated(survey),
            .. NotSearched(survey),
            new ResultBlock.Paragraph(Words.Caution, Strong: true),
        ];
        ResultTable rows = table switch
        {
            SurveyTable.Matrix => SurveyTables.Matrix(survey, isForFile: true),
            SurveyTable.Crossings => SurveyTables.Crossings(survey, survey.Asked.Crosses!, isForFile: true),
            _ => SurveyTables.Bridges(survey),
        };
        string[] notes =
        [
            .. first,
            .. table == SurveyTable.Bridges ? [] : SurveyTables.NotRated(survey).Select(n => $"Not rated: {n}"),
            .. survey.NotSearched.Select(n => $"Not searched: {n.Shown}: {n.Why}"),
            Words.Caution,
        ];
        return new ResultPage(blocks, rows, notes, json => Write(json, survey, changes), IsAnswer: survey.IsAnswer, UndercutsLimit: survey.UndercutsLine);
    }

    /// <summary>The title.</summary>
    /// <param name="survey">The survey.</param>
    public static string Title(Survey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return string.Create(CultureInfo.InvariantCulture, $"Survey of {survey.All.Count} bridge{(survey.All.Count == 1 ? "" : "s")}");
    }

    /// <summary>The sentences to read first.</summary>
    /// <param name="survey">The survey.</param>
    /// <param name="changes">What differs since an earlier one; null where none is named.</param>
    public static IReadOnlyList<string> First(Survey survey, SurveyChanges? changes)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return
        [
            $"{Capital(string.Join("; ", SurveyWording.Counts(survey.All)))}.",
            .. SurveyWording.PassedOver(survey.NotSearched),
            .. survey.Asked.Crosses is { } vehicle ? [Answers(survey, vehicle)] : Array.Empty<string>(),
            .. SurveyWording.ClosureNotKnown(survey.Rated),
            SurveyWording.NeverRated,
            .. changes is null ? [] : (string[])[SurveyChangeWording.Summary(changes)],
        ];
    }

    /// <summary>The bridges that are rated, and what was not rated on them.</summary>
    /// <param name="survey">The survey.</param>
    public static IReadOnlyList<ResultBlock> Rated(Survey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return survey.Rated.Count == 0
            ? [new ResultBlock.Paragraph("No bridge is rated.", Strong: true)]
            :
            [
                new ResultBlock.Heading("What needs doing, the most urgent first"),
                new ResultBlock.Grid(SurveyTables.Rated(survey)),
                new ResultBlock.Paragraph("Factors are cut and never rounded up. Where something is not rated, the lowest factor is at most what stands here. rate, post and explain open each bridge."),
                .. Urgent(survey),
                .. Items("Given, and not rated, on these bridges:", SurveyTables.NotRatedInPart(survey)),
            ];
    }

    /// <summary>The lowest factor of every bridge under every vehicle.</summary>
    /// <param name="survey">The survey.</param>
    public static IReadOnlyList<ResultBlock> Matrix(Survey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return
        [
            new ResultBlock.Heading("Lowest factor of each bridge under each vehicle"),
            new ResultBlock.Grid(SurveyTables.Matrix(survey, isForFile: false)),
            new ResultBlock.Paragraph("At most: something that the vehicle needs is not rated, and may have a lower factor. Factors at inventory level have no part in it; a rating is withheld where a member goes slack under the vehicle factored for any level, inventory among them."),
        ];
    }

    /// <summary>Where the vehicle asked for may cross; nothing where none is asked for.</summary>
    /// <param name="survey">The survey.</param>
    public static IReadOnlyList<ResultBlock> Crossings(Survey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return survey.Asked.Crosses is not { } vehicle
            ? []
            :
            [
                new ResultBlock.Heading($"Which bridges {vehicle} may cross"),
                new ResultBlock.Grid(SurveyTables.Crossings(survey, vehicle, isForFile: false)),
                new ResultBlock.Paragraph("Yes is said only where the truss, the whole floor and connections are given and every one of them is rated for this vehicle; else it is not known, however high the factor. No needs one factor below 1 alone, or a rating that is withheld: there a member goes slack under the vehicle factored for any level, inventory among them."),
            ];
    }

    /// <summary>What differs since an earlier survey.</summary>
    /// <param name="changes">The changes.</param>
    public static IReadOnlyList<ResultBlock> Changes(SurveyChanges changes)
    {
        ArgumentNullException.ThrowIfNull(changes);
        return changes.Bridges.Count == 0
            ? []
            : [new ResultBlock.Heading("Changes since the earlier survey"), new ResultBlock.Grid(SurveyChangeWording.Table(changes, isForFile: false))];
    }

    /// <summary>The changes as a file has them.</summary>
    /// <param name="changes">The changes.</param>
    public static ResultTable ChangesForFile(SurveyChanges changes) => SurveyChangeWording.Table(changes, isForFile: true);

    /// <summary>The bridges that are not rated, each with the reason; nothing where all are.</summary>
    /// <param name="survey">The survey.</param>
    public static IReadOnlyList<ResultBlock> NotRated(Survey survey) => Items("Not rated:", SurveyTables.NotRated(survey));

    /// <summary>The links and folders that were not searched; nothing where all were.</summary>
    /// <param name="survey">The survey.</param>
    public static IReadOnlyList<ResultBlock> NotSearched(Survey survey)
    {
        ArgumentNullException.ThrowIfNull(survey);
        return Items("Not searched:", [.. survey.NotSearched.Select(n => $"{n.Shown}: {n.Why}")]);
    }

    private static ResultBlock[] Urgent(Survey survey) => Items("Urgent:", [.. survey.Rated.Where(b => b.Standing == SurveyStanding.Urgent).Select(b => $"{b.Folder} ({b.Name}): {b.Why}")]);

    private static ResultBlock[] Items(string lead, IReadOnlyList<string> entries) => entries.Count == 0 ? [] : [new ResultBlock.Items(lead, entries)];

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Answers(Survey survey, string vehicle)
    {
        var answers = survey.Crossings(vehicle).Select(c => c.Vehicle?.Verdict ?? PassageVerdict.NotKnown).ToList();
        int Count(PassageVerdict verdict) => answers.Count(a => a == verdict);
        return string.Create(
            CultureInfo.InvariantCulture,
            $"May {vehicle} cross? Yes, by what is rated: {Count(PassageVerdict.Yes)}; no: {Count(PassageVerdict.No)}; not known: {Count(PassageVerdict.NotKnown)}.");
    }

    private static void Write(Utf8JsonWriter json, Survey survey, SurveyChanges? changes)
    {
        json.WriteString("kind", Kind);
        json.WriteString("program", survey.Version);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", SurveyWording.NeverRated);
        SurveyJson.WriteAsked(json, survey.Asked);
        json.WriteStartObject("counts");
        foreach (SurveyStanding standing in Enum.GetValues<SurveyStanding>())
        {
            json.WriteNumber(SurveyWording.Key(standing), survey.All.Count(b => b.Standing == standing));
        }

        json.WriteEndObject();
        if (survey.Asked.Crosses is { } vehicle)
        {
            WriteCrossings(json, survey, vehicle);
        }

        json.WriteNames("vehicles", survey.Vehicles);
        json.WriteStartArray("bridges");
        foreach (SurveyedBridge bridge in survey.Rated.Concat(survey.NotRated))
        {
            json.WriteStartObject();
            json.WriteString("folder", bridge.Folder);
            SurveyJson.WriteBridge(json, bridge);
            json.WriteEndObject();

            // So that thousands of bridges are not held as bytes beside what they are made from.
            json.Flush();
        }

        json.WriteEndArray();
        json.WriteStartArray("notSearched");
        foreach (PassedOver passed in survey.NotSearched)
        {
            json.WriteStartObject();
            json.WriteString("folder", passed.Shown);
            json.WriteBoolean("link", passed.IsLink);
            json.WriteString("reason", passed.Why);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        if (changes is not null)
        {
            SurveyChangeWording.Write(json, changes);
        }
    }

    private static void WriteCrossings(Utf8JsonWriter json, Survey survey, string vehicle)
    {
        json.WriteStartArray("crossings");
        foreach ((SurveyedBridge bridge, SurveyedVehicle? on) in survey.Crossings(vehicle))
        {
            json.WriteStartObject();
            json.WriteString("folder", bridge.Folder);
            json.WriteString("bridge", bridge.Name);
            json.WriteString("vehicle", vehicle);
            json.WriteString("mayCross", SurveyWording.Key(on?.Verdict ?? PassageVerdict.NotKnown));
            json.WriteNumberOrNull("factor", on?.Lowest?.Factor);
            json.WriteBoolean("atMost", on is null or { IsAtMost: true });
            json.WriteString("member", on?.Lowest?.Part);
            json.WriteString("in", on?.Lowest?.In);
            json.WriteNames("holds", on?.Conditions ?? []);
            json.WriteString("reason", SurveyWording.Reason(bridge, on));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
