using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what was counted of recorded trucks, what was not, and what is assumed.</summary>
internal static class TrafficWording
{
    /// <summary>How the record is shortened: what the numbers are not.</summary>
    public const string Unfactored = "Dead load, live load with impact and capacity are set against each other unfactored: this is no rating factor, and no truck may cross because of it. What the record does not hold may cross tomorrow.";

    // A mean of 10 kip: common practice, without a source.
    private const double LittleForTrucks = 44482.216152605;

    /// <summary>What is assumed of every truck.</summary>
    /// <param name="plan">What was counted.</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<string> Assumed(TrafficPlan plan, DisplayUnits units)
    {
        Deck deck = plan.Bridge.Deck;
        yield return string.Create(CultureInfo.InvariantCulture, $"Every truck has its wheel lines {Show(plan.Gauge, Quantity.Length, units)} apart: records do not hold the gauge");
        yield return deck.TrussShare is { } given
            ? string.Create(CultureInfo.InvariantCulture, $"One truss carries {given:0.###} of a truck, as bridge.toml gives it (truss_share), which may hold several lanes")
            : "Every truck is alone on the bridge and stands as near to the kerb of the truss considered as it may, by the lever rule; trucks abreast or behind one another are not put together, and no presence factor is applied";
        yield return "Every truck crosses once each way, whole, axles as recorded, and the worse way counts; all of them cross this bridge";
        yield return string.Create(CultureInfo.InvariantCulture, $"Impact is that of {plan.Method.Name} for a truck in traffic; on stress ranges it is that of fatigue, {FatigueNote.Impact:0.00}{(plan.ImpactMayBeLess ? ". Where a line has several stretches of a sense the largest of their allowances is taken" : "")}");
        yield return plan.Bridge.FindCase(Bridge.ComponentsCase) is null ? "There is no dead load, and no share of crossings is told against a capacity" : $"Capacities are those of {plan.Method.Name} at {plan.Level.Name} level, dead load as it is";
        yield return "A day is that of the date as written in the record";
    }

    /// <summary>Why something is not counted.</summary>
    /// <param name="why">Why.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(NotCounted why, DisplayUnits units) => why switch
    {
        NotCounted.RodsDecide s => $"{string.Join(", ", s.Members)}: not available: which rods act changes with the load",
        NotCounted.NoShare s => $"Truss members: {ShareWording.WhyNone(s.Why, units)}",
        NotCounted.DeckByWheels s => $"{s.Part}: a wheel loads it, not the truck along a line",
        NotCounted.AxleOverSupport s => $"{s.Part} in {PartWords.InWords(s.Effect)}: what one stringer takes depends on which axle stands over its support",
        NotCounted.TrussedFloorbeam s => $"{s.Part}: what bends a trussed floorbeam depends on its rod and on what it carries",
        NotCounted.PartLacks s => $"{s.Part} in {PartWords.InWords(s.Effect)}: {string.Join(". ", s.Missing.Select(MissingDatumWording.Of))}",
        NotCounted.Connections => "Pins, plates and rivets: the forces of several members act on them at once",
        NotCounted.NoFloor => "Deck, stringers, floorbeams and hangers: the floor is not given (floor.csv)",
        _ => throw new ArgumentException($"Unknown reason {why}.", nameof(why)),
    };

    /// <summary>How many trucks were counted, from when to when, and how many were not.</summary>
    /// <param name="reading">The reading.</param>
    public static string Counted(TrafficReading reading)
    {
        TrafficTally tally = reading.Tally;
        string unlikely = reading.Unlikely.Count == 0 ? "" : $", {Whole(reading.Unlikely.Count)} of them unlikely (listed below),";
        string rejected = reading.Rejected.Count == 0 ? "No row is rejected." : $"{Whole(reading.Rejected.Count)} of {Whole(reading.Rows)} rows {(reading.Rejected.Count == 1 ? "is" : "are")} rejected and in no number here: look at them, since the heaviest may be among them.";
        if (tally.Trucks == 0)
        {
            return $"No truck is counted. {rejected}";
        }

        var blocks = new BlockMaxima(tally);
        return string.Create(CultureInfo.InvariantCulture, $"{Whole(tally.Trucks)} truck{(tally.Trucks == 1 ? "" : "s")} counted{unlikely} from {Date(tally.Days.First())} to {Date(tally.Days.Last())}: {Whole(blocks.DaysInAll)} day{(blocks.DaysInAll == 1 ? "" : "s")}, {Whole(tally.Days.Count)} of them with trucks. {rejected}");
    }

    /// <summary>What the trucks weigh, so that a wrong unit is seen.</summary>
    /// <param name="tally">What was counted.</param>
    /// <param name="units">The units to show.</param>
    public static string Weighed(TrafficTally tally, DisplayUnits units)
    {
        double mean = tally.Weights.Sum / tally.Trucks;
        string look = mean < LittleForTrucks
            ? $"That is little for trucks, under {Show(LittleForTrucks, Quantity.Force, units, 1)}: look whether the unit in the heading of loads is that of the numbers, and whether light vehicles are among them."
            : "Where your trucks weigh otherwise, look at the unit in the heading of loads.";
        return $"Gross weights: {Show(mean, Quantity.Force, units, 1)} on average, {Show(tally.Weights.Heaviest, Quantity.Force, units, 1)} the heaviest. {look}";
    }

    /// <summary>The record that caused a peak: its line, time, weight and further columns.</summary>
    /// <param name="record">The record.</param>
    /// <param name="reading">The reading.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(TrafficRecord record, TrafficReading reading, DisplayUnits units)
    {
        string further = string.Concat(reading.Further.Zip(record.Further).Where(f => f.Second.Length > 0).Select(f => $", {f.First} {f.Second}"));
        return $"line {Whole(record.Line)}, {record.Time}, {Show(record.Gross, Quantity.Force, units)} gross{further}{(record.IsUnlikely ? ", marked as unlikely" : "")}";
    }

    /// <summary>A date.</summary>
    /// <param name="day">Day number.</param>
    public static string Date(int day) => DateOnly.FromDayNumber(day).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A whole number with its thousands.</summary>
    /// <param name="number">The number.</param>
    public static string Whole(double number) => number.ToString("#,0", CultureInfo.InvariantCulture);

    /// <summary>A quantity with its unit.</summary>
    /// <param name="si">In SI.</param>
    /// <param name="quantity">What it is.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="decimals">Decimals.</param>
    public static string Show(double si, Quantity quantity, DisplayUnits units, int decimals = 2) => $"{ResultTable.Figure(units.From(quantity, si), decimals)} {units.Symbol(quantity)}";

    /// <summary>A share of all crossings.</summary>
    /// <param name="count">Crossings.</param>
    /// <param name="all">All of them.</param>
    public static string Share(long count, long all) => count == 0 ? "0" : (100.0 * count / all).ToString("0.####", CultureInfo.InvariantCulture) is "0" ? "under 0.0001" : (100.0 * count / all).ToString("0.####", CultureInfo.InvariantCulture);

    /// <summary>The truss of an effect that is shown for both where both are alike: "each", or its name; empty of a part of the floor.</summary>
    /// <param name="shown">The effect.</param>
    /// <param name="plan">What was counted.</param>
    public static string TrussOf(TrafficEffect shown, TrafficPlan plan) =>
        shown.Truss is not { } truss ? ""
        : plan.Effects.Any(e => e.Truss != truss && e.Channel == shown.Channel && (e.Factor, e.Dead, e.Capacity) == (shown.Factor, shown.Dead, shown.Capacity)) ? "each"
        : plan.Bridge.Deck.TrussNames[truss];

    /// <summary>An effect as one says it: "M2U3 in compression (upstream truss)".</summary>
    /// <param name="effect">The effect.</param>
    /// <param name="bridge">The bridge.</param>
    public static string Name(TrafficEffect effect, Bridge bridge)
    {
        string acts = effect.Sense is { } sense ? Words.Of(sense) : PartWords.InWords(effect.Acts);
        return $"{effect.Name}{(effect.At.Length > 0 ? $" at {effect.At}" : "")} in {acts}{(effect.Truss is { } truss ? $" ({bridge.Deck.TrussNames[truss]} truss)" : "")}";
    }
}
