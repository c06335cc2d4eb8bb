using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says why rows of a traffic record are rejected, and the mend.</summary>
internal static class RejectWording
{
    /// <summary>The reason, for the count of all rows of it.</summary>
    /// <param name="reason">The reason.</param>
    public static string Of(RejectReason reason) => reason switch
    {
        RejectReason.Cells => "cells that do not fit the header",
        RejectReason.Time => "no time that can be read",
        RejectReason.NoLoads => "no axle loads",
        RejectReason.Number => "a load or spacing that is not a number",
        RejectReason.NotPositive => "a load or spacing that is not above zero",
        RejectReason.NoSpacings => "several axles and no spacings",
        RejectReason.SpacingCount => "spacings that are not one less than the axles",
        RejectReason.TooManyAxles => "more axles than a vehicle has",
        RejectReason.UnlikelyLoad => "a load that cannot be true",
        RejectReason.UnlikelySpacing => "a spacing that cannot be true",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Every reason has its words."),
    };

    /// <summary>Which cell of a row is at fault, what is wrong with it, and the mend.</summary>
    /// <param name="reason">The reason.</param>
    /// <param name="header">The header.</param>
    /// <param name="row">The reader that rejected the row, not used since.</param>
    /// <param name="cells">Its cells.</param>
    public static (int Cell, string Text) Of(RejectReason reason, TrafficHeader header, TrafficRowReader row, TrafficCells cells)
    {
        string list = row.FaultIsSpacing ? "spacing" : "axle";
        string Number(int n) => string.Create(CultureInfo.InvariantCulture, $"{list} {n + 1}");
        int cell = row.FaultIsSpacing ? header.SpacingsCell : header.LoadsCell;
        string cellText = cells.Text(cell);
        string Written() => cellText.Split(' ', StringSplitOptions.RemoveEmptyEntries)[row.Fault];
        string Count(int n, string what) => string.Create(CultureInfo.InvariantCulture, $"{n} {what}{(n == 1 ? "" : "s")}");
        return reason switch
        {
            RejectReason.Cells when cells.IsBroken => (0, "the quotes in this line do not pair: quote whole cells, and double the quotes within them."),
            RejectReason.Cells => (header.Cells, string.Create(CultureInfo.InvariantCulture, $"the row has more cells than the header, which has {header.Cells}: separate the numbers of a list by spaces.")),
            RejectReason.Time when cells[header.TimeCell].IsEmpty => (header.TimeCell, "the time is missing: write date and time, such as 2026-05-01T07:32:10."),
            RejectReason.Time => (header.TimeCell, string.Create(CultureInfo.InvariantCulture, $"\"{cells.Text(header.TimeCell)}\" is not a date and time from {TrafficTime.FirstYear} to {TrafficTime.LastYear}: write them as 2026-05-01T07:32:10, with a zone behind or without.")),
            RejectReason.NoLoads => (header.LoadsCell, "the axle loads are missing: write them from the front axle back, separated by spaces."),
            RejectReason.Number => (cell, $"{Number(row.Fault)} is \"{Written()}\", which is not a number: write numbers separated by spaces."),
            RejectReason.NotPositive => (cell, $"{Number(row.Fault)} is {Written()}: it must be above zero."),
            RejectReason.NoSpacings => (header.SpacingsCell, $"{Count(row.Axles, "axle")} and no spacings: write {row.Axles - 1}, the distance of each axle from the one ahead."),
            RejectReason.SpacingCount => (header.SpacingsCell, $"{Count(row.Axles, "axle")} and {Count(row.Spacings, "spacing")}: write {row.Axles - 1}, the distance of each axle from the one ahead."),
            RejectReason.TooManyAxles => (cell, string.Create(CultureInfo.InvariantCulture, $"more than {TrafficRowReader.MostAxles} numbers: is this one truck?")),
            RejectReason.UnlikelyLoad when row.Fault < 0 => (header.LoadsCell, $"the truck weighs {UnlikelyLoads.Both(row.Loads.ToArray().Sum(), "kip", "kN")} in all, less than 1 kip (4.448 kN): check the loads and their unit."),
            RejectReason.UnlikelyLoad => (cell, $"{Number(row.Fault)} weighs {UnlikelyLoads.Both(row.FaultValue, "kip", "kN")}, and no axle on a road weighs more than 60 kip (266.893 kN): check it and its unit."),
            RejectReason.UnlikelySpacing => (cell, $"{Number(row.Fault)} is {UnlikelyLoads.Both(row.FaultValue, "ft", "m")}, and axles of one vehicle stand from 1.5 to 100 ft (0.457 to 30.48 m) apart: check it and its unit."),
            _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Every reason has its words."),
        };
    }
}
