using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells at what part of the factored vehicle a member that only pulls goes slack: the placement, the forces there and the sum.</summary>
internal static class SlackTelling
{
    /// <summary>One chapter for every truss and level at which it withholds a rating or holds a factor down.</summary>
    public static IEnumerable<ResultBlock> Of(IEnumerable<MemberRow> rows, BridgeRating rating, DisplayUnits units) =>
        rows.Where(r => r.Status == RatingStatus.Withheld || r.CappedBy is not null)
            .Where(r => r.FirstSlack is not null)
            .DistinctBy(r => (r.Truss, r.Level.Name, r.FirstSlack!.Member))
            .SelectMany(r => Chapter(r, r.FirstSlack!, rating, units));

    private static IEnumerable<ResultBlock> Chapter(MemberRow row, GoesSlack slack, BridgeRating rating, DisplayUnits units)
    {
        string part = ResultTable.Cut(slack.Factor, 3);
        yield return new ResultBlock.Heading($"Why {slack.Member} limits this, {slack.Level.Name} level{(row.Truss is null ? "" : $", {row.Truss} truss")}: slack at {part} of the vehicle");
        yield return new ResultBlock.Paragraph(
            $"{slack.Member} only pulls. The vehicle presses it where it stands as told here, and what it presses is taken from the pull of the dead load; at zero {slack.Member} goes slack, and nothing takes over from it: beyond that the truss has no way to carry the load that the program could rate.");
        if (slack is not { Position: { } position, Live: { } live, Level.LiveFactor: { } liveFactor })
        {
            yield return new ResultBlock.Paragraph("Which rods pull there could not be told, so that the sum is not shown.", Strong: true);
            yield break;
        }

        DeadFactors factors = rating.Method.DeadFactorsWith(rating.Bridge.Rating);
        double scale = slack.Factor * liveFactor * (1 + slack.Impact);
        string rods = position.Rods is { Slack.Count: > 0 } at ? $" Of the crossed rods these are slack there: {string.Join(", ", at.Slack.Select(m => rating.Bridge.Truss.Members[m].Name))}." : "";
        yield return new ResultBlock.Items("What goes in:",
        [
            $"DC = {Words.ForceInWords(slack.DeadComponents, units)}: case DC {DeadLoadWording.Origin(rating.Bridge, DeadCase.Components)}",
            rating.Crossing.WearingSurface is null ? "DW = 0: there is no case DW" : $"DW = {Words.ForceInWords(slack.DeadWearing, units)}: case DW {DeadLoadWording.Origin(rating.Bridge, DeadCase.WearingSurface)}",
            $"γDC = {Told.Factor(slack.ComponentsFactor)}: {(slack.ComponentsFactor == factors.RelievingComponents && factors.RelievingComponents != factors.Components ? "the lower of the two, since the dead load's pull helps here" : "the same whether it helps or not")}",
            $"γDW = {Told.Factor(slack.WearingFactor)}",
            $"γLL = {Told.Factor(liveFactor)}: {slack.Level.Name} level, class {VehicleClassNames.Name(row.Vehicle.Class)}",
            $"IM = {Told.Number(slack.Impact, 3)}: {LiveTelling.Impact(row, rating, units)}",
            $"this truss carries {Told.Number(slack.Share.Value, 4)} of the vehicle, as worked below",
        ]);
        yield return new ResultBlock.Paragraph($"The front axle stands at {Told.Length(position.Station, units)}, driving to the {Words.Of(position.Direction)}.{rods} Each axle's load on this truss, from the front back, on the influence line of {slack.Member}, without factor and impact:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("axle"), new("station", Quantity.Length), new("load on this truss", Quantity.Force, 3), new("ordinate", Quantity.Number, 5), new("load × ordinate", Quantity.Force, 3)],
            [
                .. position.Axles.Select((a, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), a.Station, a.Load / scale, a.Ordinate, a.Effect / scale]),
                ["sum: LL", null, position.Axles.Sum(a => a.Load) / scale, null, live],
            ]));
        foreach (ResultBlock block in LiveTelling.Lateral(slack.Share, rating.Bridge.Deck, "vehicle", units))
        {
            yield return block;
        }

        string top = $"{Told.Factor(slack.ComponentsFactor)}·{Figure(slack.DeadComponents, units)} + {Told.Factor(slack.WearingFactor)}·{Figure(slack.DeadWearing, units)}";
        string below = $"{Told.Factor(liveFactor)}·{Figure(-live, units)}·(1 + {Told.Number(slack.Impact, 3)})";
        double pull = (slack.ComponentsFactor * slack.DeadComponents) + (slack.WearingFactor * slack.DeadWearing);
        yield return SheetUnits.Step("part of the vehicle at which it goes slack = (γDC·DC + γDW·DW) / (γLL·|LL|·(1 + IM))");
        yield return SheetUnits.Step($"({top}) / ({below}) = {Figure(pull, units)} / {Figure(liveFactor * -live * (1 + slack.Impact), units)} = {part}");
        yield return new ResultBlock.Paragraph(slack.Factor < 1
            ? "That is less than the whole factored vehicle, and every rating of this vehicle is withheld, at every level: what the other members carry after that is not known."
            : $"That is more than the whole factored vehicle, and no factor at this level is above {part}.", Strong: true);
    }

    private static string Figure(double value, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Force, value), 3);
}
