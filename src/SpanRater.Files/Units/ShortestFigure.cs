using System.Globalization;

namespace SpanRater.Files;

/// <summary>Writes a quantity with the fewest decimals that read back as the same value, to a part in a million million.</summary>
internal static class ShortestFigure
{
    private const double Same = 1e-12;

    /// <summary>An SI value in a unit, without its symbol: "16", not "16.000000000000004".</summary>
    public static string Of(double si, Unit unit)
    {
        double value = si / unit.Size;
        for (int decimals = 0; decimals <= 15; decimals++)
        {
            string text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
            if (Math.Abs(double.Parse(text, CultureInfo.InvariantCulture) - value) <= Same * Math.Abs(value))
            {
                return text == "-0" ? "0" : text;
            }
        }

        return value.ToString("R", CultureInfo.InvariantCulture);
    }

    /// <summary>An SI value with its unit: "16 ft".</summary>
    public static string WithUnit(double si, Unit unit) => $"{Of(si, unit)} {unit.Symbol}";
}
