using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what a section is made of and what was found on it.</summary>
public static class SectionWording
{
    /// <summary>A length as a calliper shows it.</summary>
    /// <param name="metres">Length [m].</param>
    /// <param name="units">The units to show.</param>
    public static string Length(double metres, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(units);
        return $"{ResultTable.Figure(units.From(Quantity.Deflection, metres), units == DisplayUnits.Us ? 3 : 1)} {units.Symbol(Quantity.Deflection)}";
    }

    /// <summary>Shape and dimensions of a part as built.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units to show.</param>
    public static string Shape(SectionPart part, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(part);
        SectionShape shape = part.Pieces[0].Shape;
        string dimensions = string.Join(
            ", ", shape.Kind.Needed.Concat(shape.Kind.Optional).Where(d => shape.AsBuilt(d) is not null).Select(d => $"{SectionWords.Of(d)} {Length(shape.AsBuilt(d)!.Value, units)}"));
        return shape.Published is { } published ? $"{published.Name} ({dimensions}), of the table" : $"{(shape.Kind == ShapeKind.StandingPlate ? "plate" : shape.Kind.Name)}, {dimensions}";
    }

    /// <summary>Where the pieces of a part lie, by the centroid of each; empty where that is not given.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units to show.</param>
    public static string Places(SectionPart part, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(part);
        return string.Join("; ", part.Pieces.Select(p => p.Placed).OfType<SectionProperties>().Select(p => $"{Bare(p.X, units)}, {Bare(p.Y, units)}"));
    }

    /// <summary>The holes of the worst path through each piece.</summary>
    /// <param name="part">The part.</param>
    /// <param name="units">The units to show.</param>
    public static string Holes(SectionPart part, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(part);
        return part.Holes switch
        {
            null => "not given",
            { Count: 0 } => "none",
            { Staggers.Count: 0 } path => string.Create(CultureInfo.InvariantCulture, $"{path.Count} of {Length(path.Diameter, units)}"),
            { } path => string.Create(CultureInfo.InvariantCulture, $"{path.Count} of {Length(path.Diameter, units)}, {path.Staggers.Count} staggered by {Length(path.Staggers[0].Pitch, units)} at a gauge of {Length(path.Staggers[0].Gauge, units)}"),
        };
    }

    /// <summary>What was seen, with who saw it and how.</summary>
    /// <param name="seen">The observation.</param>
    /// <param name="units">The units to show.</param>
    public static string Finding(Observation seen, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(seen);
        string doubt = seen.Doubt > 0 ? $" ± {Length(seen.Doubt, units)}" : "";
        string what = seen switch
        {
            Observation.Remaining s => $"{SectionWords.Of(s.Dimension)} {Length(s.Value, units)}{doubt} left{(s.Face is { } face ? $", lost at the {Face(face)}" : "")}",
            Observation.Gone => "gone",
            Observation.Hole s => string.Create(CultureInfo.InvariantCulture, $"{s.Count} hole{(s.Count == 1 ? "" : "s")} of {Length(s.Diameter, units)}{doubt}"),
            Observation.Decay s => $"decay {Length(s.Depth, units)}{doubt} deep {(s.Face is { } face ? $"at the {Face(face)}" : "on each face")}",
            Observation.Slack s => string.Create(CultureInfo.InvariantCulture, $"{s.Count} slack, carrying nothing"),
            Observation.Bow s => $"bowed by {Length(s.Offset, units)}{doubt} {(s.InPlane is { } inPlane ? inPlane ? "in the plane of the truss" : "out of the plane of the truss" : "in a direction that is not said")}",
            Observation.Crack => "a crack",
            Observation.LacingMissing s => string.Create(CultureInfo.InvariantCulture, $"{s.Count} lacing bar{(s.Count == 1 ? "" : "s next to each other")} missing or loose"),
            _ => "pack rust",
        };
        string where = string.Join(", ", ((string[])[seen.Place, seen.Part.Length == 0 ? "" : seen.Piece is { } piece ? string.Create(CultureInfo.InvariantCulture, $"{seen.Part} {piece}") : seen.Part]).Where(t => t.Length > 0));
        string origin = string.Join(", ", ((string[])
        [
            seen.Origin.By, seen.Origin.How, seen.Origin.Photo.Length == 0 ? "" : $"photo {seen.Origin.Photo}",
            seen.Origin.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "",
        ]).Where(t => t.Length > 0));
        return $"{(where.Length == 0 ? "" : $"{where}: ")}{what}{(origin.Length == 0 ? "" : $" ({origin})")}";
    }

    /// <summary>A material with its strength and where that is from.</summary>
    /// <param name="material">The material.</param>
    /// <param name="units">The units to show.</param>
    public static string Material(Material material, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(material);
        return material switch
        {
            MetalMaterial { Strength: { } strength } metal =>
                $"{metal.Name}: yield {Stress(strength.Yield, units)}{(strength.Ultimate is { } ultimate ? $", tensile strength {Stress(ultimate, units)}" : "")}; {Origin(strength.Origin)}",
            TimberMaterial timber => $"{timber.Name}: {(timber.Values.Species.Length == 0 ? "timber" : $"{timber.Values.Species}, {timber.Values.Grade}, {MaterialWords.SizeClasses.First(c => c.Class == timber.Values.SizeClass).Word}")}{(timber.Use.IsWet ? ", wet" : ", dry")}; {Origin(timber.Origin)}",
            _ => $"{material.Name}: no strength is given",
        };
    }

    /// <summary>A stress with its unit.</summary>
    /// <param name="pascals">Stress [Pa].</param>
    /// <param name="units">The units to show.</param>
    public static string Stress(double pascals, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(units);
        return $"{ResultTable.Figure(units.From(Quantity.Stress, pascals), units == DisplayUnits.Us ? 3 : 2)} {units.Symbol(Quantity.Stress)}";
    }

    private static string Origin(StrengthOrigin origin) => origin switch
    {
        StrengthOrigin.ByYear o => $"assumed by year of building{(o.Built is { } year ? string.Create(CultureInfo.InvariantCulture, $", {year}") : "")} ({o.Row.Period}; {o.Row.Clause.CitationWithMark})",
        StrengthOrigin.ByGrade => $"published values of its grade ({TimberClauses.DesignValues.CitationWithMark})",
        StrengthOrigin.Tested o => string.Create(CultureInfo.InvariantCulture, $"tested, {o.Coupons} coupon{(o.Coupons == 1 ? "" : "s")} ({o.Source})"),
        StrengthOrigin.Given o => $"given ({o.Source})",
        _ => throw new ArgumentOutOfRangeException(nameof(origin), origin, "Every origin is told."),
    };

    private static string Face(SectionFace face) => face switch
    {
        SectionFace.Left => "left",
        SectionFace.Right => "right",
        SectionFace.Bottom => "bottom",
        _ => "top",
    };

    private static string Bare(double metres, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Deflection, metres), units == DisplayUnits.Us ? 3 : 1);
}
