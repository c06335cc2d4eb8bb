namespace SpanRater.Files;

/// <summary>The trade's words for parts of a bridge, the effects on them and the ways in which they fail.</summary>
public static class PartWords
{
    /// <summary>The kind of part.</summary>
    /// <param name="kind">The kind.</param>
    public static string Of(PartKind kind) => kind switch
    {
        PartKind.TrussMember => "truss member",
        PartKind.Deck => "deck",
        PartKind.Stringer => "stringer",
        PartKind.Floorbeam => "floorbeam",
        PartKind.Hanger => "floorbeam hanger",
        PartKind.Pin => "pin",
        PartKind.EyebarHead => "eyebar head",
        PartKind.PinPlate => "pin plate",
        PartKind.Rivets => "rivets",
        PartKind.Bolts => "bolts",
        PartKind.Gusset => "gusset",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Every kind of part has a word."),
    };

    /// <summary>Headings of the columns that name what is rated and what in: of truss members alone, or of parts.</summary>
    /// <param name="rating">The rating.</param>
    public static (string Name, string In) Headings(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return rating.PartRows.Count > 0 ? ("part", "in") : ("member", "sense");
    }

    /// <summary>The effect, as CSV and JSON have it.</summary>
    /// <param name="effect">The effect.</param>
    public static string Of(PartEffect effect) => effect switch
    {
        PartEffect.Force => "force",
        PartEffect.Moment => "moment",
        PartEffect.Shear => "shear",
        PartEffect.Bearing => "bearing",
        _ => throw new ArgumentOutOfRangeException(nameof(effect), effect, "Every effect has a word."),
    };

    /// <summary>The effect as one says what a part is rated in.</summary>
    /// <param name="effect">The effect.</param>
    public static string InWords(PartEffect effect) => effect == PartEffect.Moment ? "bending" : Of(effect);

    /// <summary>The quantity that the effect is measured in.</summary>
    /// <param name="effect">The effect.</param>
    public static Quantity QuantityOf(PartEffect effect) => effect == PartEffect.Moment ? Quantity.Moment : Quantity.Force;

    /// <summary>How a beam fails.</summary>
    /// <param name="mode">The mode.</param>
    public static string Of(BeamMode mode) => mode switch
    {
        BeamMode.FirstYield => "first yield",
        BeamMode.LateralBuckling => "sideways buckling",
        BeamMode.WebShear => "web in shear",
        BeamMode.TimberBending => "timber in bending",
        BeamMode.TimberShear => "timber in shear",
        BeamMode.AcrossGrain => "across the grain",
        _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "Every mode has a word."),
    };

    /// <summary>How a connection fails.</summary>
    /// <param name="mode">The mode.</param>
    public static string Of(ConnectionMode mode) => mode switch
    {
        ConnectionMode.PinBending => "pin in bending",
        ConnectionMode.PinBendingAndShear => "pin in bending and shear",
        ConnectionMode.PinShear => "pin in shear",
        ConnectionMode.PinBearing => "bearing on the pin",
        ConnectionMode.Heads => "heads through the pin hole",
        ConnectionMode.FastenerShear => "fasteners in shear",
        ConnectionMode.FastenerBearing => "bearing of fasteners",
        ConnectionMode.WhitmoreYield => "yield of the Whitmore width",
        ConnectionMode.WhitmoreRupture => "rupture of the Whitmore width",
        ConnectionMode.WhitmoreBuckling => "buckling of the Whitmore width",
        ConnectionMode.BlockShear => "block shear",
        ConnectionMode.PlaneYield => "yield of the plane",
        ConnectionMode.PlaneRupture => "rupture of the plane",
        _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "Every mode has a word."),
    };

    /// <summary>The mode that governs a resistance.</summary>
    /// <param name="resistance">The resistance.</param>
    public static string Mode(PartResistance resistance) => resistance switch
    {
        TrussedResistance => "bending and compression",
        HangerResistance { IsRodOfBeam: true } rod => $"rod: {ModeWords.Of(rod.Bars.Governing)}",
        HangerResistance hanger => ModeWords.Of(hanger.Bars.Governing),
        ConnectionResistance connection => Of(connection.Governing.Mode),
        BeamResistance beam => Of(beam.Governing.Strength.Mode),
        _ => throw new ArgumentOutOfRangeException(nameof(resistance), resistance, "Every resistance has a word."),
    };
}
