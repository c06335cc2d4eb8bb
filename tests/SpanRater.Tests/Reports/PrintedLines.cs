using System.Globalization;
using System.Text.RegularExpressions;

namespace SpanRater.Tests.Reports;

/// <summary>Reads a printed solution as a learner does, with a pocket calculator: every line from the lines above it.</summary>
internal sealed partial class PrintedLines
{
    private readonly Dictionary<string, string> found = [];
    private string? names;
    private string? numbers;

    /// <summary>Number of results that were followed.</summary>
    public int Results { get; private set; }

    /// <summary>Follows a page.</summary>
    public static PrintedLines Follow(string page)
    {
        var lines = new PrintedLines();
        foreach (string line in page.Split('\n').Where(l => l.StartsWith("    ", StringComparison.Ordinal)).Select(l => l.Trim()))
        {
            lines.Take(line);
        }

        return lines;
    }

    private void Take(string line)
    {
        if (line.StartsWith('Σ') && line.Contains(" = 0:  ", StringComparison.Ordinal))
        {
            names = line[(line.IndexOf(":  ", StringComparison.Ordinal) + 3)..^" = 0".Length];
            numbers = null;
        }
        else if (line.EndsWith(" = 0", StringComparison.Ordinal))
        {
            numbers = line[..^" = 0".Length];
        }
        else if (Closing().Match(line) is { Success: true } closing)
        {
            double sum = TermsOf(closing.Groups["sum"].Value).Sum(t => t.Factor * t.Value!.Value);
            Assert.Equal(Number(closing.Groups["left"].Value), sum, Tolerance(closing.Groups["sum"].Value, closing.Groups["left"].Value));
        }
        else if (Result().Match(line) is { Success: true } result)
        {
            Solve(result);
        }
    }

    private void Solve(Match result)
    {
        string name = result.Groups["name"].Value, value = result.Groups["value"].Value;
        string put = numbers ?? names!;
        Term[] withNames = TermsOf(names!), withNumbers = TermsOf(put);
        Assert.Equal(withNames.Length, withNumbers.Length);
        double known = 0;
        Term? unknown = null;
        for (int i = 0; i < withNames.Length; i++)
        {
            if (withNumbers[i].Name is not null)
            {
                Assert.Equal(name, withNumbers[i].Name);
                Assert.Null(unknown);
                unknown = withNumbers[i];
                continue;
            }

            known += withNumbers[i].Factor * withNumbers[i].Value!.Value;
            if (withNames[i].Name is { } earlier)
            {
                // What is put in for a name is what an earlier line found for it, digit for digit.
                double wanted = withNames[i].Factor * Number(found[earlier]);
                Assert.Equal(wanted, withNumbers[i].Factor * withNumbers[i].Value!.Value, 1e-12);
            }
        }

        Assert.NotNull(unknown);
        double tolerance = Tolerance(put, value);
        Assert.Equal(-known / unknown.Factor, Number(value), tolerance / Math.Min(1, Math.Abs(unknown.Factor)));
        if (result.Groups["sum"].Success)
        {
            Assert.Equal(-known, Number(result.Groups["sum"].Value), tolerance);
            Assert.Equal(unknown.Factor, Number(result.Groups["divisor"].Value.Trim('(', ')')), 1e-12);
        }

        found[name] = value;
        Results++;
    }

    // Each product is off by its rounded factors: half a unit of the last place of each.
    private static double Tolerance(string sum, string result) =>
        TermsOf(sum).Sum(t => (Math.Abs(t.Factor) * Half(t.ValueText)) + (Math.Abs(t.Value ?? 0) * Half(t.FactorText))) + (2 * Half(result)) + 1e-9;

    private static double Half(string number)
    {
        int point = number.IndexOf('.', StringComparison.Ordinal);
        return point < 0 ? 0 : 0.5 * Math.Pow(10, point + 1 - number.Length);
    }

    private static Term[] TermsOf(string sum)
    {
        if (sum == "0")
        {
            return [];
        }

        return [.. Piece().Matches(sum).Select(m =>
        {
            double sign = m.Groups["sign"].Value.Trim() == "−" ? -1 : 1;
            string factor = m.Groups["factor"].Success ? m.Groups["factor"].Value : "1", of = m.Groups["of"].Value;
            bool isNumber = char.IsAsciiDigit(of[0]) && of.All(c => char.IsAsciiDigit(c) || c == '.');
            return new Term(sign * Number(factor), factor, isNumber ? null : of, isNumber ? Number(of) : null, isNumber ? of : "");
        })];
    }

    private static double Number(string text) => double.Parse(text.Replace('−', '-').Split(' ')[0], CultureInfo.InvariantCulture);

    // A factor and a name or number: "− 0.84118·L0U1", "+ (L0 up)", "12.960".
    [GeneratedRegex(@"(?<sign>(^|\s)[−+]?\s?)((?<factor>\d+(\.\d+)?)·)?(?<of>\([^)]+\)|[^\s·]+)")]
    private static partial Regex Piece();

    [GeneratedRegex(@"^(?<name>\([^)]+\)|[^\s=]+) = ((?<sum>[−\d.]+) / (?<divisor>\(?[−\d.]+\)?) = )?(?<value>−?[\d.]+)( \w+)?$")]
    private static partial Regex Result();

    [GeneratedRegex(@"^Σ\S+ at [^:]+:  (?<sum>.+) = (?<left>[−\d.]+)$")]
    private static partial Regex Closing();

    private sealed record Term(double Factor, string FactorText, string? Name, double? Value, string ValueText);
}
