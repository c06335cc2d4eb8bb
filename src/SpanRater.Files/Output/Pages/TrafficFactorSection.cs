using System.Globalization;

namespace SpanRater.Files;

/// <summary>The live-load factor that the trucks of a site ask for, by the published form.</summary>
internal static class TrafficFactorSection
{
    /// <summary>A mean of trucks a day wants a week at least, since weekends differ.</summary>
    private const int FewestDays = 7;

    /// <summary>What the least values rest on.</summary>
    public const string Check = "from memory, check against the manual";

    /// <summary>Why there is no factor.</summary>
    public const string NoTraffic = "No live-load factor of the site: it needs the trucks a day (adtt in bridge.toml [rating]), or a record of a week at least.";

    /// <summary>The factor, and whether its trucks a day are those of the record; null where it cannot be told.</summary>
    /// <param name="tally">What was counted.</param>
    public static (SiteLiveLoadFactor Factor, bool IsOfRecord)? FactorOf(TrafficTally tally)
    {
        int days = new BlockMaxima(tally).DaysInAll;
        double? given = tally.Plan.Bridge.Rating.TruckTraffic, aDay = given > 0 ? given : days >= FewestDays ? (double)tally.Trucks / days : null;
        return aDay is { } traffic && SiteLiveLoadFactor.Of(tally.Weights, traffic) is { } factor ? (factor, !(given > 0)) : null;
    }

    /// <summary>The section.</summary>
    /// <param name="reading">The reading.</param>
    /// <param name="units">The units to show.</param>
    public static IReadOnlyList<ResultBlock> Of(TrafficReading reading, DisplayUnits units)
    {
        var heading = new ResultBlock.Heading("Live-load factor of the site");
        if (FactorOf(reading.Tally) is not { } found)
        {
            return [heading, new ResultBlock.Paragraph(NoTraffic)];
        }

        SiteLiveLoadFactor f = found.Factor;
        string Two(double value) => ResultTable.Figure(value, 2);
        string W(double si) => TrafficWording.Show(si, Quantity.Force, DisplayUnits.Us, 1);
        int? lanes = reading.Tally.Plan.Bridge.Deck.Roadway is { } roadway ? LeverRule.LanesOn(roadway) : null;
        return
        [
            heading,
            new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Heaviest fifth: {TrafficWording.Whole(f.Trucks)} trucks, mean W* = {W(f.Mean)}, standard deviation σ* = {W(f.Deviation)}. {(found.IsOfRecord ? $"Trucks a day: {f.TrucksADay:0.#}, the mean of the record, both directions if it holds both, since adtt is not given" : $"Trucks a day: {f.TrucksADay:0.#} (adtt)")}.")),
            new ResultBlock.Paragraph($"One lane loaded: 1.80 (W* + t σ*) / 120 kip with t = {Two(f.FractileOfOneLane)} gives {Two(f.OneLaneByFormula)}, at least {Two(SiteLiveLoadFactor.LeastOneLane)} ({Check}): {Two(f.OneLane)}."),
            new ResultBlock.Paragraph($"Two lanes or more: 1.80 (2 W* + t 1.41 σ*) / 240 kip with t = {Two(f.FractileOfMoreLanes)} gives {Two(f.MoreLanesByFormula)}, at least {Two(SiteLiveLoadFactor.LeastMoreLanes)} ({Check}): {Two(f.MoreLanes)}.{(lanes is { } n ? $" This roadway has {n} lane{(n == 1 ? "" : "s")}." : "")}"),
            new ResultBlock.Paragraph($"From memory of {TrafficClauses.SiteFactor.Citation}, and commentary: check form, fractiles and least values against the manual. It holds for trucks of legal kinds without permit, weighed without bias, over a time that stands for the year.{(reading.Unlikely.Count > 0 ? " Trucks marked as unlikely are among those counted." : "")} No rating takes it, neither here nor in rate: an engineer confirms it first.", Strong: true),
        ];
    }
}
