using UnitsNet;
using UnitsNet.Units;

namespace SpanRater.Files;

/// <summary>A unit that files may name: its spellings and its size.</summary>
/// <param name="Symbol">The spelling used in what goes out.</param>
/// <param name="Quantity">What it measures.</param>
/// <param name="Size">One of it in the SI unit of its quantity; degrees for angles.</param>
/// <param name="OtherSpellings">Other spellings that are read.</param>
public sealed record Unit(string Symbol, Quantity Quantity, double Size, params IReadOnlyList<string> OtherSpellings)
{
    /// <summary>Every unit there is. UnitsNet gives the sizes; the names are ours, since its own read a bare ton as a tonne-force.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        Of("m", LengthUnit.Meter),
        Of("mm", LengthUnit.Millimeter),
        Of("cm", LengthUnit.Centimeter),
        Of("ft", LengthUnit.Foot, "feet", "foot", "'"),
        Of("in", LengthUnit.Inch, "inch", "inches", "\""),
        Of("kN", ForceUnit.Kilonewton),
        Of("N", ForceUnit.Newton),
        Of("MN", ForceUnit.Meganewton),
        Of("kip", ForceUnit.KilopoundForce, "kips", "k"),
        Of("lb", ForceUnit.PoundForce, "lbf", "lbs"),
        Of("US ton", ForceUnit.ShortTonForce, "US tons", "short ton", "short tons"),
        Of("tonne", ForceUnit.TonneForce, "tonnes", "metric ton", "metric tons"),
        new("deg", Quantity.Angle, 1, "degree", "degrees", "°"),
        new("rad", Quantity.Angle, 180 / Math.PI, "radian", "radians"),
        Of("mm2", AreaUnit.SquareMillimeter, "mm²", "mm^2"),
        Of("cm2", AreaUnit.SquareCentimeter, "cm²", "cm^2"),
        Of("m2", AreaUnit.SquareMeter, "m²", "m^2"),
        Of("in2", AreaUnit.SquareInch, "in²", "in^2", "sq in"),
        Of("ft2", AreaUnit.SquareFoot, "ft²", "ft^2", "sq ft"),
        Of("MPa", PressureUnit.Megapascal, "N/mm2", "N/mm²"),
        Of("GPa", PressureUnit.Gigapascal),
        Of("kPa", PressureUnit.Kilopascal, "kN/m2", "kN/m²"),
        Of("Pa", PressureUnit.Pascal),
        Of("ksi", PressureUnit.KilopoundForcePerSquareInch),
        Of("psi", PressureUnit.PoundForcePerSquareInch),
        Of("psf", PressureUnit.PoundForcePerSquareFoot, "lb/ft2", "lb/ft²"),
        Of("kN/m", ForceUnit.Kilonewton, LengthUnit.Meter),
        Of("N/m", ForceUnit.Newton, LengthUnit.Meter),
        Of("klf", ForceUnit.KilopoundForce, LengthUnit.Foot, "kip/ft"),
        Of("plf", ForceUnit.PoundForce, LengthUnit.Foot, "lb/ft"),
        Of("kN·m", TorqueUnit.KilonewtonMeter, "kNm", "kN-m"),
        Of("kip·ft", TorqueUnit.KilopoundForceFoot, "kip-ft", "kipft"),
        Of("kN/m3", SpecificWeightUnit.KilonewtonPerCubicMeter, "kN/m³"),
        Of("pcf", SpecificWeightUnit.PoundForcePerCubicFoot, "lb/ft3", "lb/ft³"),
    ];

    /// <summary>The unit of that spelling, or null. Letter case counts: MN is not mN.</summary>
    /// <param name="spelling">Spelling, without surrounding space.</param>
    public static Unit? Find(string spelling) =>
        All.FirstOrDefault(u => u.Symbol == spelling || u.OtherSpellings.Contains(spelling, StringComparer.Ordinal));

    /// <summary>The two commonest units of a quantity, for a mend: "ft or m".</summary>
    /// <param name="quantity">The quantity.</param>
    public static string Suggestion(Quantity quantity) => quantity switch
    {
        Quantity.Length => "ft or m",
        Quantity.Force => "kip or kN",
        Quantity.Angle => "deg",
        Quantity.Area => "in2 or mm2",
        Quantity.Stress => "ksi or MPa",
        Quantity.Pressure => "psf or kN/m2",
        Quantity.LineLoad => "klf or kN/m",
        Quantity.Moment => "kip·ft or kN·m",
        Quantity.UnitWeight => "pcf or kN/m3",
        _ => "no unit",
    };

    /// <summary>Whether it may measure a quantity: a load per area is written in units of stress.</summary>
    /// <param name="quantity">The quantity.</param>
    public bool Measures(Quantity quantity) => Quantity == quantity || (quantity == Quantity.Pressure && Quantity == Quantity.Stress);

    private static Unit Of(string symbol, LengthUnit unit, params IReadOnlyList<string> spellings) =>
        new(symbol, Quantity.Length, Length.From(1, unit).Meters, spellings);

    private static Unit Of(string symbol, ForceUnit unit, params IReadOnlyList<string> spellings) =>
        new(symbol, Quantity.Force, Force.From(1, unit).Newtons, spellings);

    private static Unit Of(string symbol, AreaUnit unit, params IReadOnlyList<string> spellings) =>
        new(symbol, Quantity.Area, Area.From(1, unit).SquareMeters, spellings);

    private static Unit Of(string symbol, PressureUnit unit, params IReadOnlyList<string> spellings) =>
        new(symbol, Quantity.Stress, Pressure.From(1, unit).Pascals, spellings);

    // UnitsNet keeps ten digits of its own pound per foot; its pound and its foot are exact.
    private static Unit Of(string symbol, ForceUnit force, LengthUnit length, params IReadOnlyList<string> spellings) =>
        new(symbol, Quantity.LineLoad, Force.From(1, force).Newtons / Length.From(1, length).Meters, spellings);

    private static Unit Of(string symbol, TorqueUnit unit, params IReadOnlyList<string> spellings) =>
        new(symbol, Quantity.Moment, Torque.From(1, unit).NewtonMeters, spellings);

    private static Unit Of(string symbol, SpecificWeightUnit unit, params IReadOnlyList<string> spellings) =>
        new(symbol, Quantity.UnitWeight, SpecificWeight.From(1, unit).NewtonsPerCubicMeter, spellings);
}
