using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How safe loads, limits and gains of a posting follow from factors and weights.</summary>
internal static class SafeLoadTelling
{
    /// <summary>Every load that the posting gives in tons.</summary>
    /// <param name="posting">The posting.</param>
    public static IEnumerable<ResultBlock> Of(Posting posting)
    {
        PostingRow[] rated = [.. Alternatives.Types(posting).Where(r => r is { Lowest.Factor: not null, Weight: not null })];
        if (rated.Length > 0)
        {
            yield return new ResultBlock.Paragraph($"{PostingWording.Rules}. W is the weight of the vehicle, all its axles together, RF its lowest factor; whole tons are cut:");
        }

        foreach (PostingRow row in rated)
        {
            yield return SheetUnits.Step($"{row.Vehicle.Name}: {Sum(row)}");
            foreach ((string what, double most, double? load) in ((string, double, double?)[])[("single axle", SafeLoad.EmergencySingleAxle, row.SingleAxle), ("tandem", SafeLoad.EmergencyTandem, row.Tandem)])
            {
                if (load is { } axle)
                {
                    yield return SheetUnits.Step($"{row.Vehicle.Name}, {what}: RF·{PostingWording.Tons(most)} = {Factor(row.Lowest!)}·{PostingWording.Tons(most)} = {PostingWording.Tons(axle)} US tons, cut to {SafeLoad.WholeTons(axle).ToString(CultureInfo.InvariantCulture)}");
                }
            }
        }

        IEnumerable<RatingRow> whole = PostingWording.AloneRows(posting).Concat(posting.Others.Where(o => o.Verdict == OtherVerdict.TooHeavy).Select(o => o.Deciding!));
        foreach (RatingRow row in whole.Where(r => r.Factor is not null && SafeLoad.WeightOf(r.Vehicle) is not null))
        {
            yield return SheetUnits.Step($"{RatingWording.Under(row)}, scaled as a whole: RF·W = {Factor(row)}·{PostingWording.Tons(SafeLoad.WeightOf(row.Vehicle))} = {PostingWording.Tons(SafeLoad.EquivalentLoad(row))} US tons");
        }
    }

    /// <summary>What each change gains, and the one limit for all legal types with it.</summary>
    /// <param name="alternatives">The changes.</param>
    public static IEnumerable<ResultBlock> Of(Alternatives alternatives)
    {
        foreach (Alternative change in alternatives.All.Where(a => a.Posting is not null))
        {
            string[] said =
            [
                .. change is { Gain: not null, Lowest: { } lowest } && alternatives.Lowest is { } present
                    ? [$"gain = {Factor(lowest)} − {Factor(present)} = {AlternativeWording.Gain(change.Gain)}"] : Array.Empty<string>(),
                .. change.Posting!.Common.SetBy is { Lowest: not null, Weight: not null } set ? [$"one limit for all legal types, set by {set.Vehicle.Name}: {Sum(set)}"] : Array.Empty<string>(),
            ];
            if (said.Length > 0)
            {
                yield return SheetUnits.Step($"{AlternativeWording.Name(change.Kind)}: {string.Join("; ", said)}");
            }
        }
    }

    private static string Sum(PostingRow row)
    {
        string factor = Factor(row.Lowest!), weight = PostingWording.Tons(row.Weight), load = PostingWording.Tons(row.SafeLoad), whole = row.Tons is { } tons ? $", cut to {tons.ToString(CultureInfo.InvariantCulture)}" : "";
        return row.Verdict switch
        {
            PostingVerdict.NotNeeded => $"RF = {factor}, not below 1, W = {weight} US tons: no limit",
            PostingVerdict.Barred => $"RF = {factor}, W = {weight} US tons: not allowed",
            _ when row.Rule == PostingRule.ReducedLegal => $"(W/0.7)·(RF − 0.3) = ({weight}/0.7)·({factor} − 0.3) = {load} US tons{whole}",
            _ => $"RF·W = {factor}·{weight} = {load} US tons{whole}",
        };
    }

    private static string Factor(RatingRow row) => ResultTable.Cut(row.Factor!.Value, 4);
}
