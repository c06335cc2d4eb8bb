using SpanRater.Files;

namespace SpanRater.Tests.Files;

/// <summary>
/// Units against their definitions: the international foot is 0.3048 m and the avoirdupois pound 0.45359237 kg exactly
/// (US Federal Register notice of 1 July 1959), standard gravity is 9.80665 m/s² (3rd CGPM, 1901).
/// </summary>
public class UnitsTests
{
    private const double Pound = 0.45359237 * 9.80665;

    [Theory]
    [InlineData("ft", 0.3048)]
    [InlineData("in", 0.0254)]
    [InlineData("lb", Pound)]
    [InlineData("kip", 1000 * Pound)]
    [InlineData("US ton", 2000 * Pound)]
    [InlineData("tonne", 9806.65)]
    [InlineData("psf", Pound / (0.3048 * 0.3048))]
    [InlineData("plf", Pound / 0.3048)]
    [InlineData("klf", 1000 * Pound / 0.3048)]
    [InlineData("ksi", 1000 * Pound / (0.0254 * 0.0254))]
    [InlineData("psi", Pound / (0.0254 * 0.0254))]
    [InlineData("pcf", Pound / (0.3048 * 0.3048 * 0.3048))]
    [InlineData("in2", 0.0254 * 0.0254)]
    [InlineData("kip·ft", 1000 * Pound * 0.3048)]
    [InlineData("kN/m3", 1000)]
    [InlineData("N/mm2", 1e6)]
    public void Find_EveryCustomaryUnit_HasItsDefinedSize(string spelling, double size) =>
        Assert.Equal(size, Unit.Find(spelling)!.Size, size * 1e-12);

    [Theory]
    [InlineData("ton")]
    [InlineData("Ft")]
    [InlineData("parsec")]
    public void Find_BareTonWrongCaseOrUnknown_IsNull(string spelling) => Assert.Null(Unit.Find(spelling));

    [Fact]
    public void All_NoSpellingNamesTwoUnits()
    {
        string[] spellings = [.. Unit.All.SelectMany(u => u.OtherSpellings.Append(u.Symbol))];
        Assert.Equal(spellings.Length, spellings.Distinct().Count());
    }

    [Theory]
    [InlineData("16 ft 6 in", 198)]
    [InlineData("16'-6\"", 198)]
    [InlineData("16' 6\"", 198)]
    [InlineData("16’6”", 198)]
    [InlineData("16 ft", 192)]
    [InlineData("6 in", 6)]
    [InlineData("6 1/2 in", 6.5)]
    [InlineData("16'-6 5/16\"", 198.3125)]
    [InlineData("3/4 in", 0.75)]
    [InlineData("16 ft 6-1/2 in", 198.5)]
    [InlineData("-2'-3\"", -27)]
    [InlineData("16.5 ft", 198)]
    [InlineData("0 ft", 0)]
    public void ReadTape_AsATapeIsRead_IsInInches(string text, double inches)
    {
        (double? metres, string? wrong) = QuantityText.ReadTape(text);
        Assert.Null(wrong);
        Assert.Equal(inches * 0.0254, metres!.Value, 1e-12);
    }

    [Theory]
    [InlineData("16 ft 14 in", "\"16 ft 14 in\": inches after feet must be under 12.")]
    [InlineData("16.5 ft 6 in", "\"16.5 ft 6 in\" has a decimal in the feet and inches after it: write one or the other.")]
    [InlineData("6 1/0 in", "\"6 1/0 in\" divides by zero.")]
    [InlineData("ft", "\"ft\" is not a length: write feet and inches as 16 ft 6 in or 16'-6\", or a number in the unit of the heading.")]
    [InlineData("16'-6\"x", "\"16'-6\"x\" is not a length: write feet and inches as 16 ft 6 in or 16'-6\", or a number in the unit of the heading.")]
    public void ReadTape_NotALength_SaysWhy(string text, string expected)
    {
        (double? metres, string? wrong) = QuantityText.ReadTape(text);
        Assert.Null(metres);
        Assert.Equal(expected, wrong);
    }

    [Theory]
    [InlineData("1.5", false, 1.5)]
    [InlineData("1,5", true, 1.5)]
    [InlineData("-.5", false, -0.5)]
    [InlineData("−2", false, -2)]
    [InlineData("1e3", false, 1000)]
    public void ReadNumber_Plain_IsRead(string text, bool commaIsDecimalMark, double expected) =>
        Assert.Equal(expected, QuantityText.ReadNumber(text, commaIsDecimalMark).Value);

    [Theory]
    [InlineData("1,000", false)]
    [InlineData("1 000", true)]
    [InlineData("1.000,5", true)]
    [InlineData("NaN", false)]
    [InlineData("Infinity", false)]
    [InlineData("1e999", false)]
    [InlineData("0x10", false)]
    [InlineData("", false)]
    public void ReadNumber_AnythingElse_IsRefused(string text, bool commaIsDecimalMark)
    {
        (double? value, string? wrong) = QuantityText.ReadNumber(text, commaIsDecimalMark);
        Assert.Null(value);
        Assert.NotNull(wrong);
    }

    [Theory]
    [InlineData("16 ft", Quantity.Length, 16 * 0.3048)]
    [InlineData("16'-6\"", Quantity.Length, 16.5 * 0.3048)]
    [InlineData("2.4 m", Quantity.Length, 2.4)]
    [InlineData("0.64 klf", Quantity.LineLoad, 0.64 * 1000 * Pound / 0.3048)]
    [InlineData("12 psf", Quantity.Stress, 12 * Pound / (0.3048 * 0.3048))]
    [InlineData("3 US ton", Quantity.Force, 6000 * Pound)]
    public void ReadWithUnit_NumberAndUnit_IsInSi(string text, Quantity quantity, double expected) =>
        Assert.Equal(expected, QuantityText.ReadWithUnit(text, quantity).Si!.Value, Math.Abs(expected) * 1e-12);

    [Theory]
    [InlineData("16", Quantity.Length, "\"16\" has no unit: write \"16 ft\" or \"16 m\".")]
    [InlineData("16 mm2", Quantity.Length, "\"16 mm2\": \"mm2\" is a unit of an area; for a length, write ft or m.")]
    [InlineData("16 mt", Quantity.Length, "\"16 mt\": unknown unit \"mt\". Did you mean \"m\"? For a length, write ft or m.")]
    [InlineData("16 tons", Quantity.Force, "\"16 tons\": a bare tons may be 2,000 lb or 1,000 kg: write \"US ton\" (2,000 lbf) or \"tonne\" (1,000 kg).")]
    public void ReadWithUnit_NoOrWrongUnit_SaysWhichWouldBeRight(string text, Quantity quantity, string expected) =>
        Assert.Equal(expected, QuantityText.ReadWithUnit(text, quantity).Wrong);
}
