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

    /// <summary>The label of a test case, in the words and digits of the table: what is checked, and the mark of its value.</summary>
    public string Label(string what) => $"{what}, {cells["mark"]}";
}
