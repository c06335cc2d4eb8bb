using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>
/// The truss solved for a load of 1 at each panel point, joint by joint: where every ordinate of every line of one set of acting members comes from.
/// </summary>
internal sealed class OrdinateSet
{
    private readonly Truss truss;
    private readonly Outcome<WorkedSolution>[] solved;
    private readonly DisplayUnits units;

    /// <summary>Solves the truss.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="slack">Positions of the members that only pull and are slack in this set.</param>
    /// <param name="id">Anchor of the fold that holds all of it.</param>
    /// <param name="units">The units to show.</param>
    public OrdinateSet(Truss truss, IReadOnlyList<int> slack, string id, DisplayUnits units)
    {
        (this.truss, Slack, Id, this.units) = (truss, slack, id, units);
        solved = [.. truss.PanelPoints.Select(p => WorkedSolution.OfSet(truss, LoadAsked.UnitLoad(truss.Joints[p].Name).Loads, slack))];
    }

    /// <summary>Positions of the members that are slack.</summary>
    public IReadOnlyList<int> Slack { get; }

    /// <summary>Anchor of the fold that holds all of it.</summary>
    public string Id { get; }

    /// <summary>Anchor of the solution with the load at a panel point.</summary>
    /// <param name="panelPoint">The panel point, by position.</param>
    public string At(int panelPoint) => $"{Id}-{(panelPoint + 1).ToString(System.Globalization.CultureInfo.InvariantCulture)}";

    /// <summary>The fold: what all solutions share, then each of them.</summary>
    /// <param name="title">What stands on it.</param>
    public ReportPart.Fold Opened(string title) => new(Id, title, [new ReportPart.Said([.. Shared()]), .. solved.Select((s, p) => Solution(s, p))]);

    // Which equation gives which force does not hang on the load: directions and factors are those of every panel point.
    private IEnumerable<ResultBlock> Shared()
    {
        if (solved[0].Value is not { } first)
        {
            yield break;
        }

        yield return new ResultBlock.Paragraph("Under each panel point, a load of 1 downward there: first the reactions by moments of the whole truss, then joint after joint, a line for every force, with the numbers of the lines before put in. Every member is taken to pull, so a positive force is tension. Numbers are shown rounded and carried unrounded. The factors in the sums are the directions of the members, from the coordinates in joints.csv:");
        yield return WorkedSolutionPage.Directions(first);
        foreach (IGrouping<string, ResultBlock.Items> same in solved.Select(s => s.Value!).SelectMany(FactorsOf).GroupBy(f => f.Lead))
        {
            yield return new ResultBlock.Items(same.Key, [.. same.SelectMany(f => f.Entries).Distinct()]);
        }
    }

    private IEnumerable<ResultBlock.Items> FactorsOf(WorkedSolution worked) =>
        worked.Steps.SelectMany(s => s.Equations).SelectMany(e => e.Balances).Select(b => BalanceWording.Factors(worked, b, Notation)).OfType<ResultBlock.Items>();

    private ReportPart.Fold Solution(Outcome<WorkedSolution> outcome, int panelPoint)
    {
        string title = ReportPart.Brief($"Load of 1 at {truss.Joints[truss.PanelPoints[panelPoint]].Name}");
        IEnumerable<ResultBlock> told = outcome.Value is { } worked ? [new ResultBlock.Grid(ForceTable.Of(worked, Notation, "ordinate"))] : StretchTelling.Of(truss, outcome.Refusal!, panelPoint, Slack, units);
        return new ReportPart.Fold(At(panelPoint), title, [new ReportPart.Said([.. told])]);
    }

    private ForceNotation Notation => new(units, isUnitLoad: true, 1);
}
