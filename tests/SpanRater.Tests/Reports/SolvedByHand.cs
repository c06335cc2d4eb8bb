using System.Globalization;
using System.Text.RegularExpressions;

namespace SpanRater.Tests.Reports;

/// <summary>Solves an equation as the report prints it, with the printed numbers alone, as a pocket calculator would: a sum that is zero, with one name in it.</summary>
internal static partial class SolvedByHand
{
    /// <summary>The value of the name, and how much rounding of the printed figures may leave.</summary>
    public static (double Value, double Doubt) Of(string equation, string name)
    {
        string sum = equation[(equation.IndexOf(": ", StringComparison.Ordinal) + 2)..];
        Assert.EndsWith(" = 0", sum, StringComparison.Ordinal);
        double coefficient = 0, known = 0, doubt = 0;
        string left = sum[..^" = 0".Length], read = "";
        foreach (Match term in Term().Matches(left))
        {
            read += term.Value;
            double sign = term.Groups["sign"].Value == "−" ? -1 : 1, factor = term.Groups["factor"].Success ? Number(term.Groups["factor"].Value) : 1;
            if (term.Groups["number"].Success)
            {
                known += sign * factor * Number(term.Groups["number"].Value);
                doubt += (factor * HalfStep(term.Groups["number"].Value)) + (HalfStep(term.Groups["factor"].Value) * Number(term.Groups["number"].Value));
            }
            else
            {
                Assert.Equal(name, term.Groups["name"].Value.Trim('(', ')'));
                coefficient += sign * factor;
            }
        }

        Assert.Equal(left, read);
        return (-known / coefficient, (doubt / Math.Abs(coefficient)) + (Math.Abs(known) * 1e-5 / (coefficient * coefficient)));
    }

    private static double Number(string figure) => double.Parse(figure, CultureInfo.InvariantCulture);

    private static double HalfStep(string figure) => figure.IndexOf('.', StringComparison.Ordinal) is var point and >= 0 ? 0.5 * Math.Pow(10, point + 1 - figure.Length) : 0;

    [GeneratedRegex(@" ?(?<sign>[+−]?) ?(?:(?<factor>\d+(?:\.\d+)?)·)?(?:(?<number>\d+(?:\.\d+)?)|(?<name>\([^)]*\)|[A-Za-z]\w*))")]
    private static partial Regex Term();
}
