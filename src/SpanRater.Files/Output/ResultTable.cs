using System.Globalization;

namespace SpanRater.Files;

/// <summary>A column of a table that goes out.</summary>
/// <param name="Heading">What it shows, without the unit.</param>
/// <param name="Quantity">What its values measure; null for text.</param>
/// <param name="Decimals">Decimals on a terminal; files get every digit.</param>
public sealed record ResultColumn(string Heading, Quantity? Quantity = null, int Decimals = 2);

/// <summary>A table that goes out. Values are SI; units are put on when it is written.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows: a text, a value in SI, or null for an empty cell, one a column.</param>
public sealed record ResultTable(IReadOnlyList<ResultColumn> Columns, IReadOnlyList<IReadOnlyList<object?>> Rows)
{
    /// <summary>The rating that each row shows, for a document in which a rating can be opened, null where a row shows none; null in a table of anything else.</summary>
    public IReadOnlyList<RatingRow?>? Shows { get; init; }

    /// <summary>The rating that a single cell shows, by row and column, where a row holds several; null where none does.</summary>
    public IReadOnlyDictionary<(int Row, int Column), RatingRow>? ShowsAt { get; init; }

    /// <summary>A column of long text, which a page for a browser sets on a line of its own below each row; null for none.</summary>
    public int? Below { get; init; }

    /// <summary>Headings with their units.</summary>
    /// <param name="units">The units to show.</param>
    public IReadOnlyList<string> Headings(DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(units);
        return [.. Columns.Select(c => units.Heading(c.Heading, c.Quantity ?? Quantity.Number))];
    }

    /// <summary>A value in the unit shown; null for text and empty cells.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="column">Its column.</param>
    /// <param name="units">The units to show.</param>
    public static double? Shown(object? cell, ResultColumn column, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(column);
        ArgumentNullException.ThrowIfNull(units);
        return cell is double si ? units.From(column.Quantity ?? Quantity.Number, si) : null;
    }

    /// <summary>A cell as a terminal shows it.</summary>
    /// <param name="cell">The cell.</param>
    /// <param name="column">Its column.</param>
    /// <param name="units">The units to show.</param>
    public static string Text(object? cell, ResultColumn column, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(column);
        return Shown(cell, column, units) is { } value ? Figure(value, column.Decimals) : cell?.ToString() ?? "";
    }

    /// <summary>A number with so many decimals, cut and not rounded up, under no culture: what is just under a limit must not be read as the limit.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals.</param>
    public static string Cut(double value, int decimals)
    {
        // What is a whole step but for its last bits is that step.
        double scale = Math.Pow(10, decimals);
        return Figure(Math.Floor(Math.Round(value * scale, 6)) / scale, decimals);
    }

    /// <summary>A number with so many decimals, under no culture; what rounds to zero has no sign.</summary>
    /// <param name="value">The number.</param>
    /// <param name="decimals">Decimals.</param>
    public static string Figure(double value, int decimals)
    {
        // Rounded twice, so that a tie and its mirror image, which differs in the last bit, show the same.
        double rounded = Math.Round(Math.Round(value, Math.Min(15, decimals + 6)), decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
    }
}
