using System.CommandLine;
using System.Globalization;

namespace SpanRater.Cli.Commands;

/// <summary>The option for the date that a document bears. Without it the same input gives the same bytes.</summary>
internal sealed class PrintedDate
{
    public Option<string?> Option { get; } = new("--date") { Description = "Date to print on it, as 2026-11-26. Unset: none, so that the same input gives the same file.", HelpName = "DATE" };

    /// <summary>The date; null where none is given.</summary>
    public string? In(ParseResult parsed)
    {
        string? day = parsed.GetValue(Option);
        return day is null || DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _)
            ? day
            : throw new RefusedException($"--date \"{day}\": write year, month and day, as 2026-11-26.");
    }
}
