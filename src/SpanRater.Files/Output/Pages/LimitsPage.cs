using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>limits</c> says: the largest crowd, single axle and scaled vehicle that still pass.</summary>
public static class LimitsPage
{
    private static readonly ResultColumn[] Columns =
    [
        new("load"), new("level"), new("scale", Quantity.Number), new("axle", Quantity.Force), new("crowd", Quantity.Pressure), new("weight", Quantity.Force), new("at most"), new("truss"),
        new("member"), new("sense"), new("reason"),
    ];

    /// <summary>The page.</summary>
    /// <param name="limits">The largest loads.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(LargestLoads limits, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(limits);
        ArgumentNullException.ThrowIfNull(units);
        string[] headlines = [.. limits.Loads.Where(IsGeneral).Select(l => Headline(l, units)).Distinct()];
        string axle = $"A single axle is rated as class {VehicleClassNames.Name(limits.Loads.First(l => l.Load.Name == LargestLoads.AxleName).Load.Class)}, wheels 6 ft apart, alone on the bridge; a crowd stands where it is worst. With factors, impact and share as in rate. Two axles or two vehicles at once are another load.";
        string[] stamps = [.. limits.Rating.Stamps.Select(s => RatingWording.Of(s, units))];
        return new ResultPage(
            [
                new ResultBlock.Heading($"{limits.Rating.Bridge.Name}: the largest loads that still pass, by {limits.Rating.Method.FullName} ({limits.Rating.Method.Name})"),
                .. headlines.Select(h => new ResultBlock.Paragraph(h, Strong: true)),
                new ResultBlock.Paragraph(ScopeWording.Of(limits.Rating), Strong: true),
                new ResultBlock.Heading("Each load scaled until the lowest factor is 1"),
                new ResultBlock.Grid(Table(limits)),
                new ResultBlock.Paragraph(axle),
                new ResultBlock.Items("Assumed, or done in place of what was asked:", stamps),
                new ResultBlock.Paragraph(Words.Caution, Strong: true),
            ],
            new ResultTable(Columns, [.. limits.Loads.Select(l => CsvRow(l, units))]),
            [.. headlines, ScopeWording.Of(limits.Rating), axle, .. stamps, Words.Caution],
            json => Write(json, limits),
            IsAnswer: limits.Loads.Any(l => l.Scale is not null));
    }

    private static bool IsGeneral(LargestLoad load) => load.Load.Name is LargestLoads.AxleName or LargestLoads.CrowdName;

    private static double? Axle(LargestLoad load) => load.Load.Name == LargestLoads.AxleName ? load.Scale * LargestLoads.UnitAxle : null;

    private static double? Pressure(LargestLoad load) => load.Load.Name == LargestLoads.CrowdName ? load.Scale * LargestLoads.UnitPressure : null;

    private static double? Weight(LargestLoad load) => IsGeneral(load) ? null : load.Scale * SafeLoad.WeightOf(load.Load);

    // Cut and never rounded up: a limit must not grow by the way it is written.
    private static string Headline(LargestLoad load, DisplayUnits units)
    {
        (string what, double? value, Quantity quantity) = Axle(load) is { } axle ? ("single axle", axle, Quantity.Force) : ("crowd", Pressure(load), Quantity.Pressure);
        if (value is not { } limit)
        {
            return $"No largest {(load.Load.Name == LargestLoads.AxleName ? "single axle" : "crowd")} is given: {(load.Reason is { } reason ? RatingWording.Of(reason, units) : "nothing is rated")}.";
        }

        return $"Largest {what} at {load.Level} level: {(load.IsAtMost ? "at most " : "")}{ResultTable.Cut(units.From(quantity, limit), 1)} {units.Symbol(quantity)}, {By(load.Lowest!)}.";
    }

    private static string By(RatingRow row) => row is MemberRow { CappedBy: { } rod } ? $"beyond which {rod} goes slack with nothing to take over" : $"by {RatingWording.NameAt(row)} in {RatingWording.ActsIn(row)}{(row.Truss is null ? "" : $" ({row.Truss} truss)")}";

    private static ResultTable Table(LargestLoads limits) => new(
        [new("load"), new("level"), new("passes"), new("weight that passes", Quantity.Force), new(PartWords.Headings(limits.Rating).Name), new(PartWords.Headings(limits.Rating).In)],
        [
            .. limits.Loads.Where(l => !IsGeneral(l)).Select(l => (IReadOnlyList<object?>)
            [
                l.Load.Name + (l.Lowest?.Beside is { } beside ? $" beside {beside.Vehicle.Name}" : ""),
                l.Level,
                l.Scale is { } scale ? $"{(l.IsAtMost ? "at most " : "")}{ResultTable.Cut(scale, 2)} of it" : "not rated",
                Weight(l),
                l.Lowest is null ? "" : (l.Lowest as MemberRow)?.CappedBy ?? RatingWording.Member(l.Lowest),
                l.Lowest is null ? "" : l.Lowest is MemberRow { CappedBy: not null } ? "goes slack" : RatingWording.ActsIn(l.Lowest),
            ]),
        ]);

    private static IReadOnlyList<object?> CsvRow(LargestLoad l, DisplayUnits units) =>
    [
        l.Load.Name, l.Level, l.Scale, Axle(l), Pressure(l), Weight(l), l.IsAtMost ? "yes" : "", l.Lowest?.Truss ?? "", l.Lowest?.Name ?? "",
        l.Lowest is null ? "" : RatingWording.ActsIn(l.Lowest), l.Reason is null ? "" : RatingWording.Of(l.Reason, units),
    ];

    private static void Write(Utf8JsonWriter json, LargestLoads limits)
    {
        json.WriteString("bridge", limits.Rating.Bridge.Name);
        json.WriteString("method", limits.Rating.Method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", ScopeWording.Of(limits.Rating));
        json.WriteStartArray("limits");
        foreach (LargestLoad load in limits.Loads)
        {
            json.WriteStartObject();
            json.WriteString("load", load.Load.Name);
            json.WriteString("level", load.Level);
            json.WriteNumberOrNull("scale", load.Scale);
            json.WriteForce("axle", Axle(load));
            json.WriteNumberOrNull("crowd", Pressure(load) / 1000);
            json.WriteForce("weight", Weight(load));
            json.WriteBoolean("atMost", load.IsAtMost);
            json.WriteString("truss", load.Lowest?.Truss);
            json.WriteString("member", load.Lowest?.Name);
            json.WriteString("sense", load.Lowest is null ? null : RatingWording.SenseOf(load.Lowest));
            json.WriteString("reason", load.Reason is null ? null : RatingWording.Of(load.Reason, DisplayUnits.Si));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNames("assumptions", RatingJson.Assumptions(limits.Rating));
    }
}
