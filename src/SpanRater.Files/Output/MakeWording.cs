using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what members are made of, where their strength is from, and what was seen on them.</summary>
public static class MakeWording
{
    /// <summary>The word for a dimension, as sections.csv and findings.csv have it.</summary>
    /// <param name="dimension">The dimension.</param>
    public static string Of(ShapeDimension dimension) => SectionWords.Of(dimension);

    /// <summary>Where a metal's strength is from, as the end of a sentence that begins with its name.</summary>
    /// <param name="material">The material.</param>
    /// <param name="units">The units to show.</param>
    public static string StrengthOf(MetalMaterial material, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(material);
        ArgumentNullException.ThrowIfNull(units);
        if (material.Strength is not { } strength)
        {
            return MissingDatumWording.Of(material.MissingYield!);
        }

        string values = $"Fy {Stress(strength.Yield, units)}{(strength.Ultimate is { } fu ? $", Fu {Stress(fu, units)}" : ", no tensile strength known")}";
        return strength.Origin switch
        {
            StrengthOrigin.ByYear by => $"{values}: assumed by year, {MaterialWords.Of(material.Kind)}{(by.Built is { } built ? $" of {built.ToString(CultureInfo.InvariantCulture)}" : "")}, row \"{by.Row.Period}\" ({by.Row.Clause.CitationWithMark})",
            StrengthOrigin.Tested tested => string.Create(CultureInfo.InvariantCulture, $"{values}: tested on {tested.Coupons} {(tested.Coupons == 1 ? "coupon" : "coupons")} ({tested.Source})"),
            StrengthOrigin.Given given => $"{values}: given ({given.Source})",
            _ => values,
        };
    }

    /// <summary>Where a timber's values are from, and how it is used.</summary>
    /// <param name="material">The timber.</param>
    public static string StrengthOf(TimberMaterial material)
    {
        ArgumentNullException.ThrowIfNull(material);
        TimberDesignValues values = material.Values;
        string from = material.Origin switch
        {
            StrengthOrigin.ByGrade => $"{values.Species}, {MaterialWords.SizeClasses.First(c => c.Class == values.SizeClass).Word}, {values.Grade} ({TimberClauses.DesignValues.CitationWithMark})",
            StrengthOrigin.Tested tested => string.Create(CultureInfo.InvariantCulture, $"tested on {tested.Coupons} {(tested.Coupons == 1 ? "piece" : "pieces")} ({tested.Source})"),
            StrengthOrigin.Given given => $"given ({given.Source})",
            _ => "",
        };
        string duration = MaterialWords.Durations.First(d => d.Duration == material.Use.Duration).Word;
        return $"{from}; {(material.Use.IsWet ? "wet" : "dry")} in service, load duration {duration}{(material.Use.IsRepetitive ? ", repetitive" : "")}";
    }

    /// <summary>What was seen, on what, with its doubt, and who saw it how.</summary>
    /// <param name="seen">What was seen.</param>
    public static string Of(Observation seen)
    {
        ArgumentNullException.ThrowIfNull(seen);
        string part = seen.Part.Length == 0 ? "" : $"{seen.Part}{(seen.Piece is { } piece ? string.Create(CultureInfo.InvariantCulture, $", piece {piece}") : "")}: ";
        string place = seen.Place.Length == 0 ? "" : $"{seen.Place}: ";
        string doubt = seen.Doubt > 0 ? $", ± {SectionWords.Length(seen.Doubt)}" : "";
        string[] origin =
        [
            .. new[] { seen.Origin.By, seen.Origin.How, seen.Origin.Photo.Length == 0 ? "" : $"photo {seen.Origin.Photo}", seen.Origin.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "", seen.Origin.Note }
                .Where(t => t.Length > 0),
        ];
        return $"{place}{part}{What(seen)}{doubt}{(origin.Length == 0 ? "; not said who saw it, nor how" : $" ({string.Join("; ", origin)})")}";
    }

    /// <summary>What was seen, without where, doubt and by whom.</summary>
    /// <param name="seen">What was seen.</param>
    public static string What(Observation seen) => seen switch
    {
        Observation.Remaining o => $"{SectionWords.Of(o.Dimension)} {SectionWords.Length(o.Value)} remains{(o.Face is { } face ? $", lost at the {Face(face)}" : "")}",
        Observation.Gone => "gone",
        Observation.Hole o => string.Create(CultureInfo.InvariantCulture, $"{(o.Count == 1 ? "a hole" : $"{o.Count} holes")} of {SectionWords.Length(o.Diameter)}{(o.Wall is { } wall ? $" in the {SectionWords.Of(wall)}" : "")}"),
        Observation.Decay o => $"decay {SectionWords.Length(o.Depth)} deep{(o.Face is { } face ? $" at the {Face(face)}" : " at every face")}",
        Observation.Slack o => string.Create(CultureInfo.InvariantCulture, $"{o.Count} slack, counted as carrying nothing"),
        Observation.Bow o => $"bowed by {SectionWords.Length(o.Offset)}{(o.InPlane switch { true => " in the plane of the truss", false => " out of the plane of the truss", null => ", it is not said which way, so that both ways are counted" })}",
        Observation.Crack => "a crack: no number follows from it",
        Observation.LacingMissing o => string.Create(CultureInfo.InvariantCulture, $"{o.Count} lacing bars, or crossed pairs, missing next to each other"),
        Observation.PackRust => "pack rust between parts: told, no number follows from it",
        _ => throw new ArgumentOutOfRangeException(nameof(seen), seen, "Every observation has its words."),
    };

    private static string Face(SectionFace face) => face.ToString().ToLowerInvariant();

    private static string Stress(double stress, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Stress, stress), units.Name == "us" ? 2 : 1)} {units.Symbol(Quantity.Stress)}";
}
