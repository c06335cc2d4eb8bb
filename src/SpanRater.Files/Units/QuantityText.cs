using System.Globalization;
using System.Text.RegularExpressions;

namespace SpanRater.Files;

/// <summary>Reads numbers and quantities as people write them.</summary>
internal static partial class QuantityText
{
    /// <summary>Above every length, force, area and stress a bridge can have, in SI; far below what overflows.</summary>
    public const double LargestValue = 1e15;

    /// <summary>Below every dimension that is above zero, in SI; far above what underflows where it is squared and divided by.</summary>
    public const double LeastAboveZero = 1e-12;

    private const double Foot = 0.3048;
    private const double Inch = 0.0254;

    /// <summary>A plain number with a point, or with a comma where that is the decimal mark.</summary>
    /// <returns>The value, or what is wrong with it.</returns>
    public static (double? Value, string? Wrong) ReadNumber(string text, bool commaIsDecimalMark)
    {
        string plain = text.Replace('−', '-');
        if (plain.Contains(',', StringComparison.Ordinal) && !commaIsDecimalMark)
        {
            return (null, $"\"{text}\" has a comma: write a decimal point ({text.Replace(',', '.')}) or separate the columns with semicolons; thousands are not separated.");
        }

        if (plain.Count(c => c is ',' or '.') > 1)
        {
            return (null, $"\"{text}\" has more than one decimal mark; thousands are not separated.");
        }

        if (!NumberPattern().IsMatch(plain))
        {
            return (null, $"\"{text}\" is not a number.");
        }

        double value = double.Parse(plain.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture);
        return double.IsFinite(value) ? (value, null) : (null, $"\"{text}\" is too large a number.");
    }

    /// <summary>Whether a text is written as a tape is read, in feet and inches.</summary>
    public static bool LooksLikeTape(string text) => TapeMark().IsMatch(text);

    /// <summary>A length in feet and inches: 16 ft 6 in, 16'-6", 6 1/2 in.</summary>
    public static (double? Metres, string? Wrong) ReadTape(string text)
    {
        Match match = TapePattern().Match(text);
        if (!match.Success)
        {
            return (null, $"\"{text}\" is not a length: write feet and inches as 16 ft 6 in or 16'-6\", or a number in the unit of the heading.");
        }

        bool hasFeet = match.Groups["ft"].Success, hasInches = match.Groups["inches"].Success;
        double feet = hasFeet ? Plain(match.Groups["ft"].Value) : 0;
        double inches = match.Groups["in"].Success ? Plain(match.Groups["in"].Value) : 0;
        if (match.Groups["over"].Success)
        {
            double under = Plain(match.Groups["under"].Value);
            if (under == 0)
            {
                return (null, $"\"{text}\" divides by zero.");
            }

            inches += Plain(match.Groups["over"].Value) / under;
        }

        if (hasFeet && hasInches && inches >= 12)
        {
            return (null, $"\"{text}\": inches after feet must be under 12.");
        }

        if (hasFeet && hasInches && match.Groups["ft"].Value.Contains('.', StringComparison.Ordinal))
        {
            return (null, $"\"{text}\" has a decimal in the feet and inches after it: write one or the other.");
        }

        double metres = (feet * Foot) + (inches * Inch);
        if (metres > LargestValue)
        {
            return (null, TooLarge(text));
        }

        return (match.Groups["sign"].Value is "-" or "−" ? -metres : metres, null);
    }

    /// <summary>A number with its unit behind it, as in a TOML string: "12 psf".</summary>
    public static (double? Si, string? Wrong) ReadWithUnit(string text, Quantity quantity)
    {
        string trimmed = text.Trim();
        Match match = NumberThenUnit().Match(trimmed);
        if (match.Success)
        {
            string spelling = match.Groups["unit"].Value.Trim();
            if (spelling.Length == 0)
            {
                return (null, $"\"{text}\" has no unit: write \"{trimmed} {Unit.Suggestion(quantity).Replace(" or ", $"\" or \"{trimmed} ", StringComparison.Ordinal)}\".");
            }

            if (Unit.Find(spelling) is { } unit && unit.Measures(quantity))
            {
                // No columns here that a comma could part: only the mark is wrong.
                string number = match.Groups["number"].Value;
                if (number.Contains(',', StringComparison.Ordinal))
                {
                    return (null, $"\"{text}\" has a comma: write a decimal point ({trimmed.Replace(',', '.')}); thousands are not separated.");
                }

                (double? value, string? wrong) = ReadNumber(number, commaIsDecimalMark: false);
                return Math.Abs(value * unit.Size ?? 0) > LargestValue ? (null, TooLarge(text)) : (value * unit.Size, wrong);
            }

            if (!(quantity == Quantity.Length && LooksLikeTape(trimmed)))
            {
                return (null, $"\"{text}\": {WrongUnit(spelling, quantity)}");
            }
        }

        return quantity == Quantity.Length && LooksLikeTape(trimmed)
            ? ReadTape(trimmed)
            : (null, $"\"{text}\" is not a number with a unit, such as \"16 {Unit.Suggestion(quantity).Split(' ')[0]}\".");
    }

    /// <summary>What is wrong with a unit, and which would be right.</summary>
    public static string WrongUnit(string spelling, Quantity quantity, string? suggestion = null)
    {
        if (spelling.ToUpperInvariant() is "TON" or "TONS" or "T")
        {
            return $"a bare {spelling} may be 2,000 lb or 1,000 kg: write \"US ton\" (2,000 lbf) or \"tonne\" (1,000 kg).";
        }

        Unit? known = Unit.Find(spelling);
        string expected = $"write {suggestion ?? Unit.Suggestion(quantity)}.";
        return known is null
            ? $"unknown unit \"{spelling}\".{NearestName.Question(spelling, Unit.All.Where(u => u.Measures(quantity)).Select(u => u.Symbol))} For {Name(quantity)}, {expected}"
            : $"\"{spelling}\" is a unit of {Name(known.Quantity)}; for {Name(quantity)}, {expected}";
    }

    private static string TooLarge(string text) => $"\"{text}\" is too large to be true: check the number and its unit.";

    private static string Name(Quantity quantity) => quantity switch
    {
        Quantity.Length => "a length",
        Quantity.Force => "a force",
        Quantity.Angle => "an angle",
        Quantity.Area => "an area",
        Quantity.Stress => "a stress",
        Quantity.Pressure => "a load per area",
        Quantity.LineLoad => "a load per length",
        Quantity.Moment => "a moment",
        Quantity.UnitWeight => "a weight per volume",
        _ => "a number",
    };

    private static double Plain(string digits) => double.Parse(digits, NumberStyles.Float, CultureInfo.InvariantCulture);

    // Digits are those of ASCII: \d would take the digits of every script, which no number is made of here.
    [GeneratedRegex(@"^[+-]?([0-9]+([.,][0-9]*)?|[.,][0-9]+)([eE][+-]?[0-9]{1,3})?$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberPattern();

    [GeneratedRegex(@"^(?<number>[+\-−]?[0-9.,]+([eE][+-]?[0-9]+)?)\s*(?<unit>.*)$", RegexOptions.CultureInvariant)]
    private static partial Regex NumberThenUnit();

    [GeneratedRegex(@"['’′""”″]|[0-9]\s*(ft|feet|foot|in|inch|inches)\b", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex TapeMark();

    [GeneratedRegex(
        @"^(?<sign>[+\-−]?)\s*(?=.*[0-9])((?<ft>[0-9]+(\.[0-9]+)?)\s*(ft|feet|foot|['’′](?!'))\s*-?\s*)?(?<inches>((?<in>[0-9]+(\.[0-9]+)?)?([\s-]*(?<=^|[\s-])(?<over>[0-9]+)\s*/\s*(?<under>[0-9]+))?)\s*(inches|inch|in|""|”|″|''))?$",
        RegexOptions.CultureInvariant | RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture)]
    private static partial Regex TapePattern();
}
