using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The section sheet: what a member is made of, as built and as found side by side, and what was seen.</summary>
internal static class SectionSheet
{
    public static IEnumerable<ResultBlock> Of(MemberMake make, string member, string? truss, DisplayUnits units)
    {
        FoundSection found = make.Section;
        yield return new ResultBlock.Heading($"What {member} is made of{(truss is null ? "" : $", {truss} truss")}: section \"{found.AsBuilt.Name}\"");
        yield return new ResultBlock.Paragraph(make.Material is { } material ? $"{SectionWording.Material(material, units)}." : "No material is named.");
        yield return new ResultBlock.Grid(Parts(found.AsBuilt, units));
        if (found.Observations.Count > 0)
        {
            yield return new ResultBlock.Items("Found:", [.. found.Observations.Select(o => SectionWording.Finding(o, units))]);
        }

        yield return new ResultBlock.Grid(Properties(found, units));
        yield return new ResultBlock.Paragraph(
            "x runs across the member, out of the plane of the truss, y in its plane; Ix and rx go with buckling in the plane, Iy and ry out of it."
            + (found.Cuts.Count > 0 ? " Each cut is taken as if it went all along the member; a shift of the centroid from as built is an eccentricity of the force." : ""));
    }

    private static ResultTable Parts(MemberSection section, DisplayUnits units) => new(
        [new("part"), new("pieces"), new("shape"), new($"x, y of each [{units.Symbol(Quantity.Deflection)}]"), new("holes in the worst path"), new("area", Quantity.Area, units == DisplayUnits.Us ? 3 : 0)],
        [
            .. section.Parts.Select(p => (IReadOnlyList<object?>)
            [
                p.Name, p.Pieces.Count.ToString(System.Globalization.CultureInfo.InvariantCulture), SectionWording.Shape(p, units), SectionWording.Places(p, units), SectionWording.Holes(p, units), p.Area,
            ]),
        ]);

    private static ResultTable Properties(FoundSection found, DisplayUnits units)
    {
        (string Name, MemberSection Section)[] states =
        [
            ("as built", found.AsBuilt),
            .. ReferenceEquals(found.AllAlong, found.AsBuilt) || !found.Slack.Any() ? Array.Empty<(string, MemberSection)>() : [("less what is slack", found.AllAlong)],
            .. found.Cuts.Select(c => ($"as found, {c.Place}", c.AsRead)),
        ];
        bool us = units == DisplayUnits.Us;
        string inertia = us ? "in4" : "cm4";
        double fourth = us ? Math.Pow(0.0254, 4) : 1e-8;
        return new ResultTable(
            [
                new("section"), new("area", Quantity.Area, us ? 3 : 0), new("net area", Quantity.Area, us ? 3 : 0), new("x of centroid", Quantity.Deflection, us ? 3 : 1), new("y of centroid", Quantity.Deflection, us ? 3 : 1),
                new($"Ix [{inertia}]", Quantity.Number, us ? 2 : 1), new($"Iy [{inertia}]", Quantity.Number, us ? 2 : 1), new("rx", Quantity.Deflection, us ? 3 : 1), new("ry", Quantity.Deflection, us ? 3 : 1),
            ],
            [
                .. states.Select(s => (IReadOnlyList<object?>)
                [
                    s.Name, s.Section.Area, s.Section.NetArea, s.Section.Properties?.X, s.Section.Properties?.Y,
                    s.Section.Properties?.Ix / fourth, s.Section.Properties?.Iy / fourth, s.Section.Properties?.Rx, s.Section.Properties?.Ry,
                ]),
            ]);
    }
}
