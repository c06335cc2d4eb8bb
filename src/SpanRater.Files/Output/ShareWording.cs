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
        string beside = group.Vehicles.Any(v => v.Class == VehicleClass.Emergency) && LeverRule.LanesOn(deck.Roadway!.Value) > 1
            ? " An emergency vehicle is rated a second time with a legal vehicle in the next lane: that is told by rate and explain."
            : "";
        return $"Wheel lines {Length(group.Gauge, units)} apart. {many}.{presence}{beside}";
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

    /// <summary>The lever rule for lane loads or a crowd on one truss.</summary>
    internal static IEnumerable<ResultBlock> Strips(StripShares strips, int truss, double spacing, DisplayUnits units)
    {
        string s = Plain(spacing, units), unit = units.Symbol(Quantity.Length);
        if (strips.Crowd is { } both)
        {
            CrowdShare crowd = truss == 0 ? both.Left : both.Right;
            string width = Plain(crowd.Strip.Width, units), middle = Plain(crowd.Strip.Middle, units), share = Plain(crowd.Width, units);
            yield return new ResultBlock.Paragraph($"The crowd stands from {Plain(crowd.Strip.From, units)} to {Plain(crowd.Strip.To, units)} {unit} from the truss, {width} {unit} wide; its middle is at {middle} {unit}. The truss carries so much of its width:");
            yield return new ResultBlock.Equation($"{width} · ({s} − {middle}) / {s} = {share} {unit}", $"{width} \\cdot \\frac{{{s} - {middle}}}{{{s}}} = {share}\\ \\text{{{unit}}}");
            yield break;
        }

        var found = (ShareOutcome.Found)strips.Lane!;
        foreach (LateralShare share in truss == 0 ? found.OnLeft : found.OnRight)
        {
            string arms = string.Join(" + ", share.Strips.Select(t => $"({s} − {Plain(t.Middle, units)})"));
            string lever = Share(share.Strips.Sum(t => (spacing - t.Middle) / spacing)), presence = ResultTable.Figure(share.Presence, 2);
            yield return new ResultBlock.Paragraph($"{Capital(Count(share.Lanes))} lane{(share.Lanes == 1 ? "" : "s, each")} {Plain(share.Strips[0].Width, units)} {unit} wide from the kerb on, the middle{(share.Lanes == 1 ? "" : "s")} at {string.Join(", ", share.Strips.Select(t => Plain(t.Middle, units)))} {unit} from the truss.");
            string over = share.Lanes == 1 ? arms : $"({arms})";
            string times = strips.HasPresence ? $" · {presence} = {Share(share.Value)}" : "";
            yield return new ResultBlock.Equation($"{over} / {s} = {lever}{(times.Length == 0 ? "" : $"; {lever}{times}")}", $"\\frac{{{arms.Replace('−', '-')}}}{{{s}}} = {lever}{(times.Length == 0 ? "" : $",\\quad {lever}{times.Replace("·", "\\cdot", StringComparison.Ordinal)}")}");
        }
    }

    /// <summary>What one truss carries of strips, as a picture writes it: symbol of the load, at its reaction and as a sum.</summary>
    /// <param name="strips">The strips.</param>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <param name="spacing">Distance between the trusses [m].</param>
    /// <param name="units">The units to show.</param>
    public static (string Reaction, string Sum, IReadOnlyList<LateralStrip> Strips) StripsInShort(StripShares strips, int truss, double spacing, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(strips);
        ArgumentNullException.ThrowIfNull(units);
        if (strips.Crowd is { } both)
        {
            CrowdShare crowd = truss == 0 ? both.Left : both.Right;
            string carries = Length(crowd.Width, units);
            return ($"R = {carries} · p", $"p is the load per area; R = p × {Length(crowd.Strip.Width, units)} × {ResultTable.Figure((spacing - crowd.Strip.Middle) / spacing, 3)} = {carries} · p, for each length of deck that is loaded.", [crowd.Strip]);
        }

        var found = (ShareOutcome.Found)strips.Lane!;
        LateralShare counts = truss == 0 ? found.Left : found.Right;
        double lever = counts.Strips.Sum(t => (spacing - t.Middle) / spacing);
        string figure = ResultTable.Figure(lever, 3);
        string sum = $"w is the load of one lane per length; R = w × ({string.Join(" + ", counts.Strips.Select(t => ResultTable.Figure((spacing - t.Middle) / spacing, 3)))}) = {figure} w";
        return ($"R = {figure} w", strips.HasPresence ? $"{sum}; times the presence factor {ResultTable.Figure(counts.Presence, 2)}: share {ResultTable.Figure(counts.Value, 3)}." : $"{sum}.", counts.Strips);
    }

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
