using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The figures of section and capacity sheets: enough digits that a pocket calculator follows them to three.</summary>
internal sealed class SheetUnits(DisplayUnits units)
{
    private const int Digits = 5;

    /// <summary>Sections in inches or millimetres, their moments of inertia in in⁴ or cm⁴.</summary>
    private double InertiaLength => units.Name == "us" ? units.From(Quantity.Deflection, 1) : 100;

    public string InertiaUnit => units.Name == "us" ? "in4" : "cm4";

    public string ModulusUnit => units.Name == "us" ? "in3" : "cm3";

    public string SmallUnit => units.Symbol(Quantity.Deflection);

    public string AreaUnit => units.Symbol(Quantity.Area);

    /// <summary>A number with five significant digits.</summary>
    public static string Plain(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return "0";
        }

        int decimals = Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 12);
        string text = ResultTable.Figure(value, decimals);
        return (text.Contains('.', StringComparison.Ordinal) ? text.TrimEnd('0').TrimEnd('.') : text).Replace('-', '−');
    }

    public string Force(double value) => $"{Plain(units.From(Quantity.Force, value))} {units.Symbol(Quantity.Force)}";

    public string Stress(double value) => $"{Plain(units.From(Quantity.Stress, value))} {units.Symbol(Quantity.Stress)}";

    public string Area(double value) => $"{AreaFigure(value)} {AreaUnit}";

    public string AreaFigure(double value) => Plain(units.From(Quantity.Area, value));

    public string Small(double value) => $"{SmallFigure(value)} {SmallUnit}";

    // Round-off of a centroid that has not moved is no shift; what is exact may be as small.
    public string SmallFigure(double value, bool isExact = false) => Plain(!isExact && Math.Abs(value) < 1e-9 ? 0 : units.From(Quantity.Deflection, value));

    public string Length(double value) => $"{Plain(units.From(Quantity.Length, value))} {units.Symbol(Quantity.Length)}";

    public string Moment(double value) => $"{Plain(units.From(Quantity.Moment, value))} {units.Symbol(Quantity.Moment)}";

    public string Inertia(double value) => $"{InertiaFigure(value)} {InertiaUnit}";

    public string InertiaFigure(double value) => Plain(value * Math.Pow(InertiaLength, 4));

    public string Modulus(double value) => $"{ModulusFigure(value)} {ModulusUnit}";

    public string ModulusFigure(double value) => Plain(value * Math.Pow(InertiaLength, 3));

    /// <summary>A force per length, as a frame's stiffness is.</summary>
    public string Stiffness(double value) => $"{Plain(units.From(Quantity.Force, value) / units.From(Quantity.Deflection, 1))} {units.Symbol(Quantity.Force)}/{SmallUnit}";

    /// <summary>A shear angle per force.</summary>
    public string Flexibility(double value) => $"{(value / units.From(Quantity.Force, 1)).ToString("0.0000E+0", System.Globalization.CultureInfo.InvariantCulture).Replace('-', '−')} per {units.Symbol(Quantity.Force)}";

    /// <summary>A step of a calculation on a line of its own.</summary>
    public static ResultBlock.Equation Step(string text) => new(text, Told.Tex(text.Replace("%", "\\%", StringComparison.Ordinal)));
}
