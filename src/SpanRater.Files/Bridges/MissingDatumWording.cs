using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what a strength cannot be found without, and how to give it.</summary>
public static class MissingDatumWording
{
    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch;

    /// <summary>A sentence or two without a full stop at the end.</summary>
    /// <param name="missing">What is missing.</param>
    public static string Of(MissingDatum missing) => missing switch
    {
        MissingDatum.Yield { Offered: { } row } m =>
            string.Create(CultureInfo.InvariantCulture, $"No yield for {m.Built?.ToString(CultureInfo.InvariantCulture)}{(m.Built is null ? "" : " ")}{MaterialWords.Of(m.Kind)}. Write strength = \"by year\" to accept {row.Yield / Ksi:0.##} ksi ({row.Period}), or a tested value, yield = \"…\" with its coupons and source"),
        MissingDatum.Yield { Built: { } built } m =>
            string.Create(CultureInfo.InvariantCulture, $"No yield for {built} {MaterialWords.Of(m.Kind)}, and none is published by year. Write yield = \"…\" with its source, and coupons where it was tested"),
        MissingDatum.Yield m when PublishedStrength.GoesByYear(m.Kind) =>
            $"No yield for {MaterialWords.Of(m.Kind)}. Write yield = \"…\" with its source, and coupons where it was tested; or strength = \"by year\", with built = … in bridge.toml",
        MissingDatum.Yield m =>
            $"No yield for {MaterialWords.Of(m.Kind)}. Write yield = \"…\" with its source, and coupons where it was tested",
        MissingDatum.Ultimate m => $"No tensile strength for \"{m.Material}\", and a net section needs it. Write ultimate = \"…\" in materials.toml",
        MissingDatum.Modulus m => $"No modulus for \"{m.Material}\", and a column needs it. Write modulus = \"…\" in materials.toml",
        MissingDatum.TimberRule m => $"{m.Method} has no rule for timber in the program. Rate it by LRFR or by ASR",
        MissingDatum.PonyTable m => string.Create(
            CultureInfo.InvariantCulture,
            $"The frames are so stiff (K = {m.EffectiveLengthFactor:0.00}, below {PonyChord.LeastFactor:0.0}) that the formula for a chord on springs does not hold, and the guide's table of 1/K is not in the program. Read K in AASHTO LRFD Guide Specifications for Pedestrian Bridges (2009), Table 7.1.2-1, and give it"),
        _ => throw new ArgumentException($"Unknown datum {missing}.", nameof(missing)),
    };
}
