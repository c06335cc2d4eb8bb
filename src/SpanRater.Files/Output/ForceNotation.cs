namespace SpanRater.Files;

/// <summary>How a worked solution shows forces: with the digits a pocket calculator needs, in the unit shown, or as plain numbers under a unit load.</summary>
public sealed class ForceNotation
{
    /// <summary>Significant digits of the largest force.</summary>
    private const int Digits = 5;

    private readonly bool isUnitLoad;

    /// <summary>Makes a notation.</summary>
    /// <param name="units">The units to show.</param>
    /// <param name="isUnitLoad">True where forces are per unit load and have no unit.</param>
    /// <param name="largest">Largest force or load to be shown [N, or per unit load].</param>
    public ForceNotation(DisplayUnits units, bool isUnitLoad, double largest)
    {
        ArgumentNullException.ThrowIfNull(units);
        Units = units;
        this.isUnitLoad = isUnitLoad;
        double shown = Shown(Math.Abs(largest));
        Decimals = shown > 0 ? Math.Clamp(Digits - 1 - (int)Math.Floor(Math.Log10(shown)), 0, 9) : 2;
    }

    /// <summary>The units to show.</summary>
    public DisplayUnits Units { get; }

    /// <summary>Decimals of a force.</summary>
    public int Decimals { get; }

    /// <summary>What forces are measured in; a plain number under a unit load.</summary>
    public Quantity ForceQuantity => isUnitLoad ? Quantity.Number : Quantity.Force;

    /// <summary>Unit of a force; empty under a unit load.</summary>
    public string ForceUnit => Units.Symbol(ForceQuantity);

    /// <summary>Unit of a length.</summary>
    public string LengthUnit => Units.Symbol(Quantity.Length);

    /// <summary>Unit of a moment: force times length, as the two are shown.</summary>
    public string MomentUnit => ForceUnit.Length == 0 ? LengthUnit : $"{ForceUnit}·{LengthUnit}";

    /// <summary>A force in the unit shown.</summary>
    /// <param name="force">Force [N, or per unit load].</param>
    public double Shown(double force) => Units.From(ForceQuantity, force);

    /// <summary>A length in the unit shown.</summary>
    /// <param name="length">Length [m].</param>
    public double ShownLength(double length) => Units.From(Quantity.Length, length);

    /// <summary>A force as a number, with a minus sign where negative.</summary>
    /// <param name="force">Force [N, or per unit load].</param>
    public string Number(double force) => Minus(ResultTable.Figure(Shown(force), Decimals));

    /// <summary>A force as a number with its unit.</summary>
    /// <param name="force">Force [N, or per unit load].</param>
    public string WithUnit(double force) => $"{Number(force)} {ForceUnit}".TrimEnd();

    /// <summary>Whether a force shows as zero.</summary>
    /// <param name="force">Force [N, or per unit load].</param>
    public bool IsZero(double force) => double.Parse(ResultTable.Figure(Shown(force), Decimals), System.Globalization.CultureInfo.InvariantCulture) == 0;

    /// <summary>A member's force in words: "53.92 kip compression", or "zero".</summary>
    /// <param name="force">Force, tension positive [N, or per unit load].</param>
    public string MemberInWords(double force) =>
        IsZero(force) ? "zero" : $"{WithUnit(Math.Abs(force))} {Words.Of(force > 0 ? Sense.Tension : Sense.Compression)}";

    /// <summary>A length without unit and without idle zeros.</summary>
    /// <param name="length">Length [m].</param>
    public string Length(double length)
    {
        string figure = ResultTable.Figure(ShownLength(length), 4);
        return Minus(figure.Contains('.', StringComparison.Ordinal) ? figure.TrimEnd('0').TrimEnd('.') : figure);
    }

    /// <summary>A direction cosine, five decimals; 1 and 0 as such.</summary>
    /// <param name="cosine">The cosine [-].</param>
    public static string Cosine(double cosine) => Minus(Math.Abs(cosine) is 0 or 1 ? ResultTable.Figure(cosine, 0) : ResultTable.Figure(cosine, 5));

    private static string Minus(string figure) => figure.Replace('-', '−');
}
