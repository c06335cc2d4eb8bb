using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The forces of every member under each dead load case, worked in short: where DC and DW of every factor come from.</summary>
internal static class DeadForces
{
    /// <summary>Anchor of the fold that holds them.</summary>
    public const string Id = "dead-forces";

    /// <summary>The fold.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="directions">Anchor of the fold that tells the directions of the members and how the equations are written.</param>
    /// <param name="units">The units to show.</param>
    public static ReportPart.Fold Of(BridgeRating rating, string directions, DisplayUnits units) => new(
        Id,
        "Where the dead force of every member comes from: each case, joint by joint",
        [
            new ReportPart.Said([new ResultBlock.Paragraph("A line for every force, with what was found before put in; loads are those at the joints above.")]),
            new ReportPart.Way("How the equations are written, and the directions of the members", directions),
            .. rating.Crossings.SelectMany((crossing, t) => Cases(rating.Bridge, crossing, t, rating.Crossings.Count > 1, units)),
        ]);

    private static IEnumerable<ReportPart.Fold> Cases(Bridge whole, TrussCrossing crossing, int truss, bool apart, DisplayUnits units)
    {
        Bridge bridge = apart ? whole.OfTruss(truss) : whole;
        int[] slack = [.. crossing.Lines.Slack ?? []];
        string which = apart ? $", {whole.Deck.TrussNames[truss]} truss" : "";
        string set = crossing.Lines.Slack is null ? "" : slack.Length == 0 ? ", no rod slack" : $", {Told.List(slack.Select(m => whole.Truss.Members[m].Name))} slack";
        foreach (LoadCase loads in ((LoadCase?[])[bridge.FindCase(Bridge.ComponentsCase), bridge.FindCase(Bridge.WearingSurfaceCase)]).OfType<LoadCase>())
        {
            LoadAsked asked = LoadAsked.Case(loads);
            Outcome<WorkedSolution> outcome = WorkedSolution.OfSet(bridge.Truss, loads, slack);
            string id = $"{Id}-{loads.Name}{(truss == 0 ? "" : "-right")}";
            IReadOnlyList<ReportPart> told = outcome.Value is { } worked
                ? [new ReportPart.Said([new ResultBlock.Grid(ForceTable.Of(worked, asked.Notation(worked, units), "force"))])]
                : RedundantForces.Of(bridge.Truss, asked, slack, id, units)
                    ?? [new ReportPart.Said([new ResultBlock.Paragraph($"There is no solution joint by joint here. {RefusalWording.Sentence(outcome.Refusal!, bridge.Truss, units)}")])];
            yield return new ReportPart.Fold(id, ReportPart.Brief($"Case {loads.Name}{which}{set}"), told);
        }
    }
}
