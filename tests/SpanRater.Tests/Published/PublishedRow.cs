using System.Globalization;

namespace SpanRater.Tests.Published;

/// <summary>One row of a published table.</summary>
internal sealed class PublishedRow(IReadOnlyDictionary<string, string> cells)
{
    /// <summary>The text of a cell.</summary>
    public string this[string column] => cells[column];

    /// <summary>The number in a cell, as printed: with a decimal point.</summary>
    public double Number(string column) => double.Parse(cells[column], CultureInfo.InvariantCulture);

    /// <summary>The whole number in a cell.</summary>
    public int Whole(string column) => int.Parse(cells[column], CultureInfo.InvariantCulture);

    /// <summary>The numbers in a cell that lists them between semicolons.</summary>
    public double[] Numbers(string column) =>
        [.. cells[column].Split(';').Select(n => double.Parse(n, CultureInfo.InvariantCulture))];

    /// <summary>The name of a test case: what is checked, and whether the value was found, is from memory or is derived.</summary>
    public string CaseName(string what) => $"{what} [{cells["mark"]}]";
}
