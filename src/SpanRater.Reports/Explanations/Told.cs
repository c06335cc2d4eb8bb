using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Numbers and lists as sentences hold them.</summary>
internal static class Told
{
    /// <summary>A plain number.</summary>
    public static string Number(double value, int decimals = 4) => ResultTable.Figure(value, decimals);

    /// <summary>A factor: two decimals, and up to four where it has them.</summary>
    public static string Factor(double value) => value.ToString("0.00##", CultureInfo.InvariantCulture);

    /// <summary>A length with its unit.</summary>
    public static string Length(double metres, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Length, metres), 2)} {units.Symbol(Quantity.Length)}";

    /// <summary>A, B and C.</summary>
    public static string List(IEnumerable<string> names)
    {
        string[] all = [.. names];
        return all.Length < 2 ? string.Concat(all) : $"{string.Join(", ", all[..^1])} and {all[^1]}";
    }

    /// <summary>Text in TeX that is not mathematics.</summary>
    public static string Tex(string text) => $"\\text{{{text.Replace("_", "\\_", StringComparison.Ordinal)}}}";
}
