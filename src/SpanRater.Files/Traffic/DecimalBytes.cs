using System.Text;

namespace SpanRater.Files;

/// <summary>Reads numbers from UTF-8 bytes by the rules of the tables, without a text for each.</summary>
internal static class DecimalBytes
{
    /// <summary>Digits that a number of 53 bits holds whatever they are.</summary>
    private const int SureDigits = 15;

    // Exact in binary, so that a whole number of 53 bits divided by one of them is rounded once, as a parser rounds it.
    private static readonly double[] PowersOfTen = [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>Reads a number.</summary>
    /// <param name="text">Its bytes, without surrounding space.</param>
    /// <param name="commaIsDecimalMark">Whether a comma stands for the point.</param>
    /// <param name="value">The number, finite.</param>
    /// <returns>False where it is none.</returns>
    public static bool TryRead(ReadOnlySpan<byte> text, bool commaIsDecimalMark, out double value)
    {
        long digits = 0;
        int count = 0, behindPoint = -1;
        foreach (byte b in text)
        {
            if (b is >= (byte)'0' and <= (byte)'9')
            {
                digits = (10 * digits) + (b - '0');
                count++;
                behindPoint += behindPoint >= 0 ? 1 : 0;
            }
            else if (behindPoint < 0 && (b == '.' || (b == ',' && commaIsDecimalMark)))
            {
                behindPoint = 0;
            }
            else
            {
                count = 0;
                break;
            }

            if (count > SureDigits)
            {
                break;
            }
        }

        if (count is > 0 and <= SureDigits)
        {
            value = behindPoint > 0 ? digits / PowersOfTen[behindPoint] : digits;
            return true;
        }

        // Signs, exponents, long numbers, and what is none: rare, and read as everywhere.
        (double? read, _) = QuantityText.ReadNumber(Encoding.UTF8.GetString(text), commaIsDecimalMark);
        value = read ?? 0;
        return read is not null;
    }
}
