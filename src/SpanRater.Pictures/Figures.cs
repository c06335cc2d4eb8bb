using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>How pictures write numbers: three significant digits, a real minus sign, no culture.</summary>
internal static class Figures
{
    /// <summary>A number with three significant digits.</summary>
    /// <param name="value">The number.</param>
    public static string Plain(double value)
    {
        if (value == 0)
        {
            return "0";
        }

        // Rounding first: 9.996 has two decimals once it is 10.0.
        int magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        double unit = Math.Pow(10, magnitude - 2);

        // 0.5625 and its mirror image, which differs in the last bit, must not show as 0.562 and 0.563.
        double rounded = Math.Round(Math.Round(Math.Abs(value) / unit, 6), MidpointRounding.AwayFromZero) * unit;
        int decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(rounded) + 1e-9), 0, 12);
        return Signed(value < 0 ? -rounded : rounded, $"F{decimals}");
    }

    /// <summary>A force with its unit: 98.1 kN.</summary>
    /// <param name="force">The force [N].</param>
    /// <param name="units">Units shown.</param>
    public static string Force(double force, DisplayUnits units) => $"{Plain(units.From(Quantity.Force, force))} {units.Symbol(Quantity.Force)}";

    /// <summary>A length without unit, at most two decimals: 16.5.</summary>
    /// <param name="length">The length [m].</param>
    /// <param name="units">Units shown.</param>
    public static string LengthNumber(double length, DisplayUnits units) => Signed(units.From(Quantity.Length, length), "0.##");

    /// <summary>A length with its unit: 16.5 ft.</summary>
    /// <param name="length">The length [m].</param>
    /// <param name="units">Units shown.</param>
    public static string Length(double length, DisplayUnits units) => $"{LengthNumber(length, units)} {units.Symbol(Quantity.Length)}";

    /// <summary>A rating factor: two decimals, and more than ten as such.</summary>
    /// <param name="factor">The factor [-].</param>
    public static string Factor(double factor) => Words.Factor(factor);

    /// <summary>A number on an axis: no more decimals than it needs.</summary>
    /// <param name="value">The number.</param>
    public static string OnAxis(double value) => Signed(value, "0.######");

    private static string Signed(double value, string format)
    {
        string digits = Math.Abs(value).ToString(format, CultureInfo.InvariantCulture);
        return value < 0 && digits.Any(c => c is >= '1' and <= '9') ? $"−{digits}" : digits;
    }
}
