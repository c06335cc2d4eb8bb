namespace SpanRater.Files;

/// <summary>The units in which tables and pictures show what the engine computed in SI.</summary>
public sealed class DisplayUnits
{
    private readonly Dictionary<Quantity, Unit> units;

    private DisplayUnits(string name, string deflection, Unit pressure, params IReadOnlyList<string> symbols)
    {
        Name = name;
        units = symbols.Select(s => Unit.Find(s)!).ToDictionary(u => u.Quantity);
        units[Quantity.Deflection] = Unit.Find(deflection)!;
        units[Quantity.Pressure] = pressure;
    }

    /// <summary>Feet and kips; deflections in inches.</summary>
    public static DisplayUnits Us { get; } = new("us", "in", Unit.Find("psf")!, "ft", "kip", "deg", "in2", "ksi", "klf", "kip·ft", "pcf");

    /// <summary>Metres and kilonewtons; deflections in millimetres.</summary>
    public static DisplayUnits Si { get; } = new("si", "mm", Unit.Find("kPa")! with { Symbol = "kN/m2" }, "m", "kN", "deg", "mm2", "MPa", "kN/m", "kN·m", "kN/m3");

    /// <summary>Name on the command line: us or si.</summary>
    public string Name { get; }

    /// <summary>Symbol of the unit of a quantity; empty for a plain number.</summary>
    /// <param name="quantity">The quantity.</param>
    public string Symbol(Quantity quantity) => quantity == Quantity.Number ? "" : units[quantity].Symbol;

    /// <summary>An SI value in the unit shown.</summary>
    /// <param name="quantity">The quantity.</param>
    /// <param name="si">Value in SI (degrees for angles).</param>
    public double From(Quantity quantity, double si) => quantity == Quantity.Number ? si : si / units[quantity].Size;

    /// <summary>A heading with its unit: "force [kip]".</summary>
    /// <param name="heading">What the column or axis shows.</param>
    /// <param name="quantity">Its quantity.</param>
    public string Heading(string heading, Quantity quantity) => quantity == Quantity.Number ? heading : $"{heading} [{units[quantity].Symbol}]";
}
