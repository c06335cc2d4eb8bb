using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>measure</c> says: which reading to take again first, what doubts leave of the factors, and what must remain.</summary>
public static class MeasurePage
{
    /// <summary>Most readings that the page shows.</summary>
    public const int MostReadings = 12;

    private const int MostNeeded = 20;

    private static readonly ResultColumn[] Columns =
    [
        new("truss"), new("member"), new("sense"), new("vehicle"), new("level"), new("factor", Quantity.Number), new("what"), new("place"), new("part"), new("dimension"),
        new("as built", Quantity.Deflection, 3), new("read", Quantity.Deflection, 3), new("doubt", Quantity.Deflection, 3), new("factor at worst", Quantity.Number, 3),
        new("urgency", Quantity.Number, 3), new("needed", Quantity.Deflection, 3), new("verdict"), new("photo"),
    ];

    /// <summary>The page.</summary>
    /// <param name="measure">What to measure next.</param>
    /// <param name="member">Position of the only member to show; null for all.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(MeasureFirst measure, int? member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(units);
        bool Shown(MemberRow row) => member is null || row.MemberIndex == member;
        DoubtfulReading[] readings = [.. measure.Readings.Where(r => Shown(r.Row))];
        DoubtfulFactor[] factors = [.. measure.Factors.Where(f => Shown(f.Row))];
        NeededDimension[] needed = [.. measure.Needed.Where(n => Shown(n.Row))];
        MemberRow[] unmeasured = [.. measure.NotMeasured.Where(Shown)];
        string first = First(readings, unmeasured, measure.Rating.Withheld.Any(), measure.Rating.PartRows.Count > 0, units);
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{measure.Rating.Bridge.Name}: what to measure next, by {measure.Rating.Method.FullName} ({measure.Rating.Method.Name})"),
            new ResultBlock.Paragraph(first, Strong: true),
            new ResultBlock.Paragraph(Scope(measure.Rating), Strong: true),
        };
        string[] lower = member is null ? [.. LowerParts(measure.Rating)] : [];
        if (lower.Length > 0)
        {
            blocks.Insert(1, new ResultBlock.Items("Lower than every truss member, and not looked at here; look at these first:", lower));
        }

        if (readings.Length > 0)
        {
            blocks.Add(new ResultBlock.Heading("Measure first"));
            blocks.Add(new ResultBlock.Grid(ReadingTable(readings.Take(MostReadings), units)));
            blocks.Add(new ResultBlock.Paragraph("A reading is the more urgent the more the factor would lose if it were off by its doubt to the bad side, and the lower the factor is: urgency is the growth of 1/RF, loss / (RF × RF at worst)."));
            blocks.Add(new ResultBlock.Heading("What the doubts leave of the factors"));
            blocks.Add(new ResultBlock.Grid(FactorTable(factors)));
            blocks.Add(new ResultBlock.Paragraph(Sampling));
        }

        if (unmeasured.Length > 0)
        {
            blocks.Add(new ResultBlock.Items(
                "Nothing was measured on these, the lowest factor first: rated as built, and no doubt is known.",
                [.. unmeasured.Take(MostReadings).Select(Lowest), .. unmeasured.Length > MostReadings ? [$"and {unmeasured.Length - MostReadings} more"] : Array.Empty<string>()]));
        }

        if (needed.Length > 0)
        {
            blocks.Add(new ResultBlock.Heading("What must remain for a factor of 1"));
            NeededDimension[] told = [.. needed.Where(n => member is not null || IsShort(n))];
            blocks.Add(new ResultBlock.Grid(NeededTable(told.Take(MostNeeded), units)));
            if (told.Length > MostNeeded)
            {
                blocks.Add(new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"And {told.Length - MostNeeded} more that are short or were measured: --member NAME shows one member, CSV and JSON hold all.")));
            }

            blocks.Add(new ResultBlock.Paragraph("One dimension at a time, lost at the worst cut on both faces alike, all else as found. Loss on one face alone moves the centroid and needs more."));
        }

        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. readings.Select(r => CsvRow(r)), .. needed.Select(n => CsvRow(n))]),
            [.. lower.Select(l => $"Lower than every truss member: {l}"), first, Scope(measure.Rating), Sampling, Words.Caution],
            json => Write(json, measure, readings, factors, needed, unmeasured),
            IsAnswer: readings.Length + needed.Length > 0);
    }

    /// <summary>What must remain, as far as the page shows it: what is short or was measured.</summary>
    /// <param name="measure">What to measure next.</param>
    public static IEnumerable<NeededDimension> NeededShown(MeasureFirst measure)
    {
        ArgumentNullException.ThrowIfNull(measure);
        return measure.Needed.Where(IsShort).Take(MostNeeded);
    }

    /// <summary>What to measure first, in a sentence or two.</summary>
    /// <param name="measure">What to measure next.</param>
    /// <param name="units">The units to show.</param>
    public static string InShort(MeasureFirst measure, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(measure);
        ArgumentNullException.ThrowIfNull(units);
        return First([.. measure.Readings], [.. measure.NotMeasured], measure.Rating.Withheld.Any(), measure.Rating.PartRows.Count > 0, units);
    }

    private static string Sampling => string.Create(
        CultureInfo.InvariantCulture,
        $"Low and high: every reading off by its doubt to the bad and to the good side. The chance is that of {DoubtfulFactor.Samples:#,0} samples in which each reading is drawn for itself from a normal distribution, its doubt being {DoubtfulFactor.DeviationsInDoubt:0} standard deviations; ± is one standard error of the sampling. Strength, loads and what was not measured have no doubt in it.");

    private static string Scope(BridgeRating rating) => rating.PartRows.Count == 0
        ? Words.TrussOnly
        : "Truss members only: readings on the floor and on connections are not looked at here. rate gives their factors, and explain --part opens them.";

    private static IEnumerable<string> LowerParts(BridgeRating rating) => rating.PartRows
        .Where(r => rating.MayGovern(r) && r.Factor < rating.GoverningMember?.Factor)
        .DistinctBy(r => (r.Part, r.Name)).Select(r => $"{Lowest(r)}; explain --part \"{r.Name}\" --vehicle \"{r.Vehicle.Name}\" opens it");

    private static string First(DoubtfulReading[] readings, MemberRow[] unmeasured, bool withheld, bool isWhole, DisplayUnits units)
    {
        if (readings.FirstOrDefault() is { } first && first.Loss > 0)
        {
            return $"{(isWhole ? "Of the truss members measure" : "Measure")} first: {MeasureWording.Where(first)}, read as {Length(first.Reading.Value, units)} ± {Length(first.Reading.Doubt, units)}. If it is off by that, the factor of {RatingWording.Member(first.Row)} falls from {Words.Factor(first.Row.Factor)} to {Words.Factor(first.AtWorst)}.";
        }

        return unmeasured.FirstOrDefault() is { } bare ? $"{(isWhole ? "Of the truss members measure" : "Measure")} first: {RatingWording.Member(bare)}, on which nothing was measured; its factor is {Words.Factor(bare.Factor)} in {Words.Of(bare.Sense)} under {RatingWording.Under(bare)} at {bare.Level.Name} level."
            : readings.Length > 0 ? "No doubt of a reading costs any factor."
            : withheld ? "Ratings are withheld, so that no factor is there that a reading could lower: rate says which bar goes slack, and explain --member with its name at what load. Look there for a rod that crosses it and would take over, and at what the dead load rests on."
            : "No member is rated from its section, so that no reading counts: write sections.csv and findings.csv.";
    }

    private static ResultTable ReadingTable(IEnumerable<DoubtfulReading> readings, DisplayUnits units)
    {
        DoubtfulReading[] shown = [.. readings];
        return new ResultTable(
            [new("what"), new("read ± doubt"), new("factor", Quantity.Number), new("at worst", Quantity.Number), new("urgency", Quantity.Number, 3), new("sense"), new("vehicle"), new("photo")],
            [
                .. shown.Select(r => (IReadOnlyList<object?>)
                [
                    MeasureWording.Where(r), $"{Length(r.Reading.Value, units)} ± {Length(r.Reading.Doubt, units)}", Words.Factor(r.Row.Factor), Words.Factor(r.AtWorst),
                    double.IsFinite(r.Urgency) ? r.Urgency : "most", Words.Of(r.Row.Sense), RatingWording.Under(r.Row), r.Reading.Seen.Origin.Photo,
                ]),
            ])
        {
            Shows = [.. shown.Select(r => r.Row)],
        };
    }

    private static ResultTable FactorTable(IEnumerable<DoubtfulFactor> factors) => new(
        [new("member"), new("sense"), new("vehicle"), new("level"), new("low"), new("likely"), new("high"), new("chance below 1")],
        [
            .. factors.Select(f => (IReadOnlyList<object?>)
            [
                RatingWording.Member(f.Row), Words.Of(f.Row.Sense), RatingWording.Under(f.Row), f.Row.Level.Name, Words.Factor(f.Low), Words.Factor(f.Likely), Words.Factor(f.High), Chance(f),
            ]),
        ]);

    private static string Chance(DoubtfulFactor factor) => factor.ChanceBelowOne switch
    {
        0 => string.Create(CultureInfo.InvariantCulture, $"none of {DoubtfulFactor.Samples:#,0}"),
        1 => string.Create(CultureInfo.InvariantCulture, $"all of {DoubtfulFactor.Samples:#,0}"),
        { } chance => string.Create(CultureInfo.InvariantCulture, $"{100 * chance:0.0} % ± {100 * factor.StandardError:0.0}"),
    };

    private static ResultTable NeededTable(IEnumerable<NeededDimension> needed, DisplayUnits units) => new(
        [new("member"), new("factor"), new("part"), new("dimension"), new("as built"), new("least read"), new("needed"), new("verdict")],
        [
            .. needed.Select(n => (IReadOnlyList<object?>)
            [
                RatingWording.Member(n.Row), Words.Factor(n.Row.Factor), n.Part, SectionWords.Of(n.Dimension), Length(n.AsBuilt, units), n.Read is { } read ? Length(read, units) : "",
                n.Needed is { } value ? Length(value, units) : "", Verdict(n),
            ]),
        ]);

    private static bool IsShort(NeededDimension needed) => !needed.IsEnough || needed.Read is not null;

    private static string Verdict(NeededDimension needed) => needed switch
    {
        { Needed: null } => "not by this dimension",
        { IsThickerThanBuilt: true } => "thicker than as built",
        { IsEnough: false } => "too thin",
        { Needed: { } value } when value <= needed.AsBuilt * NeededDimension.Nothing * 1.01 => "enough without it",
        _ => "enough",
    };

    private static string Lowest(RatingRow row) => $"{RatingWording.Member(row)}: {Words.Factor(row.Factor)} in {RatingWording.ActsIn(row)} under {RatingWording.Under(row)} at {row.Level.Name} level";

    private static string Length(double metres, DisplayUnits units) =>
        $"{ResultTable.Figure(units.From(Quantity.Deflection, metres), units == DisplayUnits.Us ? 3 : 1)} {units.Symbol(Quantity.Deflection)}";

    private static IReadOnlyList<object?> CsvRow(DoubtfulReading r) =>
    [
        r.Row.Truss ?? "", r.Row.Member.Name, Words.Of(r.Row.Sense), RatingWording.Under(r.Row), r.Row.Level.Name, r.Row.Factor, "reading", r.Reading.Seen.Place, r.Reading.Seen.Part,
        r.Reading.Seen is Observation.Remaining { Dimension: var d } ? SectionWords.Of(d) : MeasureWording.Where(r).Split(", ")[1].Split(' ')[0],
        r.Reading.Most, r.Reading.Value, r.Reading.Doubt, r.AtWorst, double.IsFinite(r.Urgency) ? r.Urgency : null, null, "", r.Reading.Seen.Origin.Photo,
    ];

    private static IReadOnlyList<object?> CsvRow(NeededDimension n) =>
    [
        n.Row.Truss ?? "", n.Row.Member.Name, Words.Of(n.Row.Sense), RatingWording.Under(n.Row), n.Row.Level.Name, n.Row.Factor, "needed", "", n.Part, SectionWords.Of(n.Dimension),
        n.AsBuilt, n.Read, null, null, null, n.Needed, Verdict(n), "",
    ];

    private static void Write(
        Utf8JsonWriter json, MeasureFirst measure, DoubtfulReading[] readings, DoubtfulFactor[] factors, NeededDimension[] needed, MemberRow[] unmeasured)
    {
        json.WriteString("bridge", measure.Rating.Bridge.Name);
        json.WriteString("method", measure.Rating.Method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", Scope(measure.Rating));
        json.WriteNames("lowerParts", LowerParts(measure.Rating));
        json.WriteStartArray("measureFirst");
        foreach (DoubtfulReading reading in readings)
        {
            WriteHead(json, reading.Row);
            json.WriteString("place", reading.Reading.Seen.Place);
            json.WriteString("sectionPart", reading.Reading.Seen.Part);
            json.WriteString("dimension", reading.Reading.Seen is Observation.Remaining { Dimension: var d } ? SectionWords.Of(d) : null);
            json.WriteNumber("read", reading.Reading.Value);
            json.WriteNumber("doubt", reading.Reading.Doubt);
            json.WriteNumber("factorAtWorst", reading.AtWorst);
            json.WriteNumber("sensitivity", reading.Sensitivity);
            json.WriteNumberOrNull("urgency", double.IsFinite(reading.Urgency) ? reading.Urgency : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("doubtfulFactors");
        foreach (DoubtfulFactor factor in factors)
        {
            WriteHead(json, factor.Row);
            json.WriteNumber("low", factor.Low);
            json.WriteNumber("likely", factor.Likely);
            json.WriteNumber("high", factor.High);
            json.WriteNumber("chanceBelowOne", factor.ChanceBelowOne);
            json.WriteNumber("standardError", factor.StandardError);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("samples", DoubtfulFactor.Samples);
        json.WriteStartArray("needed");
        foreach (NeededDimension dimension in needed)
        {
            WriteHead(json, dimension.Row);
            json.WriteString("sectionPart", dimension.Part);
            json.WriteString("dimension", SectionWords.Of(dimension.Dimension));
            json.WriteNumber("asBuilt", dimension.AsBuilt);
            json.WriteNumberOrNull("read", dimension.Read);
            json.WriteNumberOrNull("needed", dimension.Needed);
            json.WriteString("verdict", Verdict(dimension));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("notMeasured");
        foreach (MemberRow row in unmeasured)
        {
            WriteHead(json, row);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteHead(Utf8JsonWriter json, MemberRow row)
    {
        json.WriteStartObject();
        json.WriteString("truss", row.Truss);
        json.WriteString("member", row.Name);
        json.WriteString("sense", Words.Of(row.Sense));
        json.WriteString("vehicle", row.Vehicle.Name);
        json.WriteString("beside", row.Beside?.Vehicle.Name);
        json.WriteString("level", row.Level.Name);
        json.WriteNumberOrNull("factor", row.Factor);
    }
}
