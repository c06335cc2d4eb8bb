using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The rating equation and what its letters mean.</summary>
internal static class RatingFormula
{
    /// <summary>What the letters mean for truss members.</summary>
    public const string OfMembers = "DC and DW the dead forces of components and wearing surface, LL the live force of one truss, IM the dynamic allowance; forces positive in the sense rated, each γ its load factor";

    /// <summary>What the letters mean for parts of the floor and connections.</summary>
    public const string OfParts = "DC and DW the effects of components and wearing surface, LL that of the live load, IM the dynamic allowance, each γ its load factor";

    /// <summary>What the letters mean for both.</summary>
    public const string OfAll = "DC and DW the forces or moments of components and wearing surface, LL that of the live load on one truss or one part, IM the dynamic allowance; forces of members positive in the sense rated, each γ its load factor";

    /// <summary>The equation, its letters, and what stands in the next lane.</summary>
    /// <param name="meaning">What the letters mean.</param>
    /// <param name="rows">The rows that it is for.</param>
    public static IEnumerable<ResultBlock> Of(string meaning, IEnumerable<RatingRow> rows) =>
    [
        new ResultBlock.Equation(
            "RF = (C − γDC·DC − γDW·DW) / (γLL·LL·(1 + IM))",
            "RF = \\frac{C - \\gamma_{DC}\\,DC - \\gamma_{DW}\\,DW}{\\gamma_{LL}\\,LL\\,(1 + IM)}"),
        new ResultBlock.Paragraph($"C is the capacity, {meaning}.{(rows.Any(r => r.Beside is not null) ? " With a legal vehicle in the next lane γN·N·(1 + IM), which stays as it is while the vehicle is scaled, is taken off above the line as well." : "")}"),
    ];
}
