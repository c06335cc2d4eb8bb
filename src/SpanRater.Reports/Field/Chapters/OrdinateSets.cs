using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>
/// The sets of acting members whose ordinates the report shows: that of the influence lines, and in a truss with rods those under which the placements of its rows were found.
/// </summary>
internal sealed class OrdinateSets
{
    private readonly Truss truss;
    private readonly bool hasRods;

    /// <summary>Finds and works them.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="rows">The rows that the report opens.</param>
    /// <param name="units">The units to show.</param>
    public OrdinateSets(BridgeRating rating, IEnumerable<RatingRow> rows, DisplayUnits units)
    {
        truss = rating.Bridge.Truss;
        InfluenceLines lines = rating.Crossing.Lines;
        hasRods = lines.Slack is not null;
        IEnumerable<IReadOnlyList<int>> used = rows.OfType<MemberRow>().SelectMany(Slacks);
        int[][] sets = [.. used.Prepend(lines.Slack ?? []).Select(s => s.Order().ToArray()).DistinctBy(s => string.Join(' ', s))];
        All = [.. sets.Select((s, i) => new OrdinateSet(truss, s, i == 0 ? "unit" : $"unit-set{i + 1}", units))];
    }

    /// <summary>The sets, that of the influence lines first.</summary>
    public IReadOnlyList<OrdinateSet> All { get; }

    /// <summary>The folds, one a set.</summary>
    public IEnumerable<ReportPart.Fold> Folds() => All.Select(s => s.Opened(TitleOf(s)));

    /// <summary>The ways from a row to the ordinates under which it was found; none where the lines have but one set, whose table every ordinate stands in.</summary>
    /// <param name="row">The row.</param>
    public IEnumerable<ReportPart.Way> WaysFrom(MemberRow row) =>
        Slacks(row).Select(Of).Distinct().Select(s => new ReportPart.Way(ReportPart.Brief($"Where its ordinates come from{(s.Slack.Count == 0 ? "" : $", {SlackIn(s)}")}"), s.Id));

    private static IEnumerable<IReadOnlyList<int>> Slacks(MemberRow row) =>
        ((IReadOnlyList<int>?[])[row.Peak?.Rods?.Slack, row.SlackAtFactor]).OfType<IReadOnlyList<int>>();

    private OrdinateSet Of(IReadOnlyList<int> slack) => All.Single(s => s.Slack.SequenceEqual(slack.Order()));

    private string TitleOf(OrdinateSet set) => ReportPart.Brief($"Where every ordinate comes from: a load of 1 at each panel point{(hasRods ? $", {SlackIn(set)}" : "")}");

    private string SlackIn(OrdinateSet set) => set.Slack.Count == 0 ? "no rod slack" : $"{Told.List(set.Slack.Select(m => truss.Members[m].Name))} slack";
}
