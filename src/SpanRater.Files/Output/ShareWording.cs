using System.Globalization;

namespace SpanRater.Files;

/// <summary>The sentences and equations of the share of one truss.</summary>
public static class ShareWording
{
    /// <summary>Why there is no share by the lever rule; null where there is one.</summary>
    /// <param name="outcome">What the lever rule gave.</param>
    /// <param name="units">The units to show.</param>
    public static string? WhyNone(ShareOutcome outcome, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(units);
        return outcome switch
        {
            ShareOutcome.Found => null,
            ShareOutcome.TooWide s => $"{RatingWording.Of(new NotRatedReason.NoShare(s), units)}, {Length(s.Needed - s.Roadway, units)} too little",
            _ => RatingWording.Of(new NotRatedReason.NoShare(outcome), units),
        };
    }

    /// <summary>What the cross-section is.</summary>
    internal static string Section(Deck deck, DisplayUnits units)
    {
        double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value, offset = deck.RoadwayOffset;
        string where = Math.Abs(offset) < 1e-9 ? "in the middle between them" : $"its centre {Length(Math.Abs(offset), units)} to the {(offset > 0 ? "right" : "left")} of the middle";
        double left = ((spacing - roadway) / 2) + offset, right = ((spacing - roadway) / 2) - offset;
        string kerbs = Math.Abs(left - right) < 1e-9
            ? $"each kerb is {Kerb(left, units)} its truss"
            : $"the left kerb is {Kerb(left, units)} the {deck.TrussNames[0]} truss, the right one {Kerb(right, units)} the {deck.TrussNames[1]} truss";
        return $"Looking along the span, the {deck.TrussNames[0]} truss is at the left and the {deck.TrussNames[1]} truss at the right, {Length(spacing, units)} apart. The roadway is {Length(roadway, units)} wide between kerbs, {where}: {kerbs}.";
    }

    /// <summary>How vehicles are placed, and what the method adds.</summary>
    internal static string Rule(Deck deck, RatingMethod? method, DisplayUnits units)
    {
        int lanes = LeverRule.LanesOn(deck.Roadway!.Value);
        string presence = method is null
            ? ""
            : $" Presence by {method.Name}: {string.Join(", ", Enumerable.Range(1, Math.Min(lanes, 4)).Select(n => $"{ResultTable.Figure(method.Presence(n), 2)} for {Count(n)} lane{(n == 1 ? "" : "s")}"))}{(lanes > 4 ? " and more" : "")}.";
        return $"This width has {Count(lanes)} lane{(lanes == 1 ? "" : "s")}. Vehicles stand as near to the kerb of the truss considered as they may, a wheel line at least {Length(deck.WheelToKerb, units)} from it, "
            + $"and keep {Length(LeverRule.BetweenVehicles, units)} between the wheel lines of neighbours. A wheel line carries half of its vehicle, and the floorbeam spans simply: at a from the truss, of S between trusses, it brings (S − a) / (2 · S) to it.{presence}";
    }

    /// <summary>How many stand abreast, and why.</summary>
    internal static string Abreast(Deck deck, RatingMethod? method, VehicleShares group, DisplayUnits units)
    {
        int lanes = Math.Min(LeverRule.LanesOn(deck.Roadway!.Value), group.MostLanes ?? int.MaxValue), fit = LeverRule.MostAbreast(deck, group.Gauge);
        string many = group.MostLanes is { } most
            ? $"A vehicle of {Classes(group)} is taken {(most == 1 ? "alone on the bridge" : $"in at most {Count(most)} lanes")}"
            : lanes == 1 ? "There is one lane, so one vehicle at a time"
            : fit < lanes ? $"There are {Count(lanes)} lanes, and no more than {Count(fit)} fit{(fit == 1 ? "s" : "")} abreast"
            : $"Up to {Count(lanes)} abreast, one in each lane";
        string presence = method is not null && !group.HasPresence ? " No presence factor is applied to it." : "";
        return $"Wheel lines {Length(group.Gauge, units)} apart. {many}.{presence}";
    }

    /// <summary>Where the vehicles of an arrangement stand.</summary>
    internal static string Stands(LateralShare share, Deck deck, DisplayUnits units)
    {
        string nearer = share.WheelToKerb < deck.WheelToKerb ? $", since {(share.Lanes == 1 ? "it does" : "they do")} not fit with {Plain(deck.WheelToKerb, units)} {units.Symbol(Quantity.Length)}" : "";
        string many = share.Lanes == 1 ? "One vehicle" : $"{Capital(Count(share.Lanes))} abreast";
        return $"{many}: wheel lines at {string.Join(", ", share.Wheels.Select(w => Plain(w, units)))} {units.Symbol(Quantity.Length)} from the truss, the nearest {Plain(share.WheelToKerb, units)} {units.Symbol(Quantity.Length)} from the kerb{nearer}.";
    }

    /// <summary>The lever rule for an arrangement, and its presence factor.</summary>
    internal static IEnumerable<ResultBlock.Equation> Equations(LateralShare share, double spacing, bool hasPresence, DisplayUnits units)
    {
        string s = Plain(spacing, units);
        string[] arms = [.. share.Wheels.Select(w => w < 0 ? $"({s} + {Plain(-w, units)})" : $"({s} − {Plain(w, units)})")];
        string sum = Plain(share.Wheels.Sum(w => spacing - w), units), both = Plain(2 * spacing, units), lever = Share(VehicleShares.WithoutPresence(share, spacing));
        yield return new ResultBlock.Equation(
            $"({string.Join(" + ", arms)}) / (2 · {s}) = {sum} / {both} = {lever}",
            $"\\frac{{{string.Join(" + ", arms).Replace('−', '-')}}}{{2 \\cdot {s}}} = \\frac{{{sum}}}{{{both}}} = {lever}");
        if (hasPresence)
        {
            string presence = ResultTable.Figure(share.Presence, 2);
            yield return new ResultBlock.Equation($"{lever} · {presence} = {Share(share.Value)}", $"{lever} \\cdot {presence} = {Share(share.Value)}");
        }
    }

    /// <summary>Which arrangement counts.</summary>
    internal static string Counts(LateralShare counts, int tried) =>
        tried == 1 ? $"Share: {Share(counts.Value)}." : $"The largest counts, {(counts.Lanes == 1 ? "one vehicle" : $"{Count(counts.Lanes)} abreast")}: share {Share(counts.Value)}.";

    private static string Classes(VehicleShares group) =>
        $"class {string.Join(" or ", group.Vehicles.Select(v => VehicleClassNames.Name(v.Class)).Distinct())}";

    private static string Kerb(double distance, DisplayUnits units) => Math.Abs(distance) < 1e-9 ? "at" : distance < 0 ? $"{Length(-distance, units)} beyond" : $"{Length(distance, units)} from";

    private static string Share(double value) => ResultTable.Figure(value, 4);

    private static string Length(double metres, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Length, metres), 2)} {units.Symbol(Quantity.Length)}";

    // As many decimals as it takes, at most four, so that what follows can be worked from it.
    private static string Plain(double metres, DisplayUnits units)
    {
        string figure = ResultTable.Figure(units.From(Quantity.Length, metres), 4);
        return figure.TrimEnd('0').TrimEnd('.').Replace('-', '−');
    }

    private static string Capital(string word) => $"{char.ToUpperInvariant(word[0])}{word[1..]}";

    /// <summary>A number of lanes or vehicles in words.</summary>
    /// <param name="count">The number.</param>
    public static string Count(int count) => count switch
    {
        1 => "one",
        2 => "two",
        3 => "three",
        4 => "four",
        5 => "five",
        6 => "six",
        _ => count.ToString(CultureInfo.InvariantCulture),
    };
}
