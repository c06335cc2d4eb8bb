using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>capacity</c> says: what each member carries, as built and as found side by side, and what is missing.</summary>
public static class CapacityPage
{
    private static readonly ResultColumn[] Columns =
    [
        new("truss"), new("member"), new("role"), new("sense"), new("level"), new("section"), new("material"), new("given", Quantity.Force), new("as built", Quantity.Force),
        new("as found", Quantity.Force), new("mode"), new("place"), new("slenderness", Quantity.Number, 1), new("missing"),
    ];

    /// <summary>The page.</summary>
    /// <param name="capacities">The capacities.</param>
    /// <param name="member">Position of the only member to show; null for all.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(MemberCapacities capacities, int? member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(capacities);
        ArgumentNullException.ThrowIfNull(units);
        MemberCapacityRow[] rows = [.. capacities.Rows.Where(r => member is null || r.MemberIndex == member)];
        string[] missing = [.. Missing(rows)];
        string meaning = Meaning(capacities.Method);
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{capacities.Bridge.Name}: what the members carry, by {capacities.Method.FullName} ({capacities.Method.Name})"),
            new ResultBlock.Paragraph(meaning),
        };
        if (missing.Length > 0)
        {
            blocks.Add(new ResultBlock.Items("No capacity, and what is missing:", missing));
        }

        if (rows.Any(r => r.Value is not null))
        {
            blocks.Add(new ResultBlock.Grid(Table(rows)));
        }

        blocks.Add(new ResultBlock.Paragraph(Words.TrussOnly, Strong: true));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. rows.Select(CsvRow)]),
            [meaning, .. missing.Select(m => $"No capacity: {m}"), Words.TrussOnly, Words.Caution],
            json => Write(json, capacities, rows),
            IsAnswer: rows.Any(r => r.Value is not null));
    }

    private static string Meaning(RatingMethod method) => method.GivenCapacityMeaning switch
    {
        CapacityMeaning.AllowableForce => "Allowable forces: allowable stresses times what is there of the section.",
        CapacityMeaning.DesignResistance => "Design resistances, with the partial factors given in factors.toml.",
        _ => "Capacities as the rating equation takes them: resistance, condition and system factors in them.",
    };

    private static IEnumerable<string> Missing(IEnumerable<MemberCapacityRow> rows) =>
        rows.Where(r => r.Value is null).Select(r => (r.Member.Name, Sense: Words.Of(r.Sense), Why: Why(r))).GroupBy(r => (r.Sense, r.Why))
            .Select(g => $"{string.Join(", ", g.Select(r => r.Name).Distinct())} in {g.Key.Sense}: {g.Key.Why}");

    private static string Why(MemberCapacityRow row) => row.AsFound is { Missing: { Count: > 0 } lacking }
        ? string.Join(". ", lacking.Select(MissingDatumWording.Of))
        : $"column \"{RatingWording.ColumnOf(row.Kind)}\" of members.csv is blank, and no section is named";

    private static ResultTable Table(IReadOnlyList<MemberCapacityRow> rows)
    {
        MemberCapacityRow[] shown = [.. rows.Where(r => r.Value is not null)];
        bool apart = shown.Any(r => r.Truss is not null), levels = shown.Any(r => r.Level is not null), found = shown.Any(r => r.IsChanged);
        return new ResultTable(
            [
                .. apart ? [new ResultColumn("truss")] : Array.Empty<ResultColumn>(),
                new("member"), new("sense"), .. levels ? [new ResultColumn("level")] : Array.Empty<ResultColumn>(),
                new("section"), new("as built", Quantity.Force), .. found ? [new ResultColumn("as found", Quantity.Force)] : Array.Empty<ResultColumn>(),
                new("KL/r", Quantity.Number, 0), new("governs"), new("role"),
            ],
            [
                .. shown.Select(r => (IReadOnlyList<object?>)
                [
                    .. apart ? [r.Truss ?? ""] : Array.Empty<object?>(),
                    r.Member.Name,
                    Words.Of(r.Sense),
                    .. levels ? [r.Level] : Array.Empty<object?>(),
                    r.AsFound?.Resistance?.Make.Section.AsBuilt.Name ?? "given",
                    r.Given ?? r.AsBuilt?.Resistance?.Value,
                    .. found ? [r.IsChanged ? r.Value : "the same"] : Array.Empty<object?>(),
                    r.Given is null ? Slenderness(r) : null,
                    r.Given is null ? Governs(r) : "",
                    r.Member.Role,
                ]),
            ]);
    }

    private static double? Slenderness(MemberCapacityRow row) =>
        row.AsFound?.Resistance?.Governing.Axes is { } axes ? Math.Max(axes.InPlane.Slenderness, axes.OutOfPlane.Slenderness) : null;

    private static string Governs(MemberCapacityRow row) => row.AsFound?.Resistance?.Governing is not { } mode ? ""
        : $"{ModeWords.Of(mode)}{(mode.Place is null ? "" : $", {mode.Place}")}";

    private static IReadOnlyList<object?> CsvRow(MemberCapacityRow r) =>
    [
        r.Truss ?? "", r.Member.Name, r.Member.Role, Words.Of(r.Sense), r.Level ?? "", r.AsFound?.Resistance?.Make.Section.AsBuilt.Name ?? "", r.AsFound?.Resistance?.Make.Material?.Name ?? "",
        r.Given, r.AsBuilt?.Resistance?.Value, r.AsFound?.Resistance?.Value, r.AsFound?.Resistance is { } found ? ModeWords.Of(found.Governing) : "",
        r.AsFound?.Resistance?.Governing.Place ?? "", Slenderness(r), r.Value is null ? Why(r) : "",
    ];

    private static void Write(Utf8JsonWriter json, MemberCapacities capacities, IReadOnlyList<MemberCapacityRow> rows)
    {
        json.WriteString("bridge", capacities.Bridge.Name);
        json.WriteString("method", capacities.Method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", Words.TrussOnly);
        json.WriteStartArray("capacities");
        foreach (MemberCapacityRow row in rows)
        {
            json.WriteStartObject();
            json.WriteString("truss", row.Truss);
            json.WriteString("member", row.Member.Name);
            json.WriteString("sense", Words.Of(row.Sense));
            json.WriteString("level", row.Level);
            json.WriteString("section", row.AsFound?.Resistance?.Make.Section.AsBuilt.Name);
            json.WriteString("material", row.AsFound?.Resistance?.Make.Material?.Name);
            json.WriteForce("given", row.Given);
            json.WriteForce("asBuilt", row.AsBuilt?.Resistance?.Value);
            json.WriteForce("asFound", row.AsFound?.Resistance?.Value);
            json.WriteString("mode", row.AsFound?.Resistance is { } found ? ModeWords.Of(found.Governing) : null);
            json.WriteString("place", row.AsFound?.Resistance?.Governing.Place);
            json.WriteNumberOrNull("slenderness", Slenderness(row));
            json.WriteString("missing", row.Value is null ? Why(row) : null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
