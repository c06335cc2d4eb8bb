using System.Globalization;
using System.Text;
using CsvHelper;

namespace SpanRater.Files;

/// <summary>Says why rows of a traffic record are rejected or unlikely, and the mend.</summary>
internal static class RowRemarkWording
{
    /// <summary>The remark, for the count of all rows of it.</summary>
    /// <param name="remark">The remark.</param>
    public static string Of(RowRemark remark) => remark switch
    {
        RowRemark.Cells => "cells that do not fit the header",
        RowRemark.Time => "no time that can be read",
        RowRemark.NoLoads => "no axle loads",
        RowRemark.Number => "a load or spacing that is not a number",
        RowRemark.NotPositive => "a load or spacing that is not above zero",
        RowRemark.NoSpacings => "several axles and no spacings",
        RowRemark.SpacingCount => "spacings that are not one less than the axles",
        RowRemark.TooManyAxles => "more axles than are read",
        RowRemark.ImpossibleLoad => "a load that cannot be true",
        RowRemark.ImpossibleSpacing => "a spacing that cannot be true",
        RowRemark.HeavyAxle => "an axle over 60 kip (266.893 kN)",
        RowRemark.LongSpacing => "axles over 100 ft (30.48 m) apart",
        _ => throw new ArgumentOutOfRangeException(nameof(remark), remark, "Every remark has its words."),
    };

    /// <summary>Which cell of a row is at fault, what is wrong with it, and the mend.</summary>
    /// <param name="remark">The remark.</param>
    /// <param name="header">The header.</param>
    /// <param name="row">The reader that remarked it, not used since.</param>
    /// <param name="cells">Its cells.</param>
    public static (int Cell, string Text) Of(RowRemark remark, TrafficHeader header, TrafficRowReader row, CsvReader cells)
    {
        string list = row.FaultIsSpacing ? "spacing" : "axle";
        string Number(int n) => string.Create(CultureInfo.InvariantCulture, $"{list} {n + 1}");
        string CellText(int cell) => Encoding.UTF8.GetString(TrafficRowReader.CellOf(cells, cell));
        int cell = row.FaultIsSpacing ? header.SpacingsCell : header.LoadsCell;
        string Written() => CellText(cell).Split(' ', StringSplitOptions.RemoveEmptyEntries)[row.Fault];
        string Count(int n, string what) => string.Create(CultureInfo.InvariantCulture, $"{n} {what}{(n == 1 ? "" : "s")}");
        string Weight(double newtons) => UnlikelyLoads.Both(newtons, "kip", "kN");
        double gross = row.Gross;
        return remark switch
        {
            RowRemark.Cells when row.IsBroken => (0, "the quotes in this line do not pair: quote whole cells, and double the quotes within them."),
            RowRemark.Cells => (header.Cells, string.Create(CultureInfo.InvariantCulture, $"the row has more cells than the header, which has {header.Cells}: separate the numbers of a list by spaces.{DecimalComma(header)}")),
            RowRemark.Time when TrafficRowReader.CellOf(cells, header.TimeCell).IsEmpty => (header.TimeCell, "the time is missing: write date and time, such as 2026-05-01T07:32:10."),
            RowRemark.Time => (header.TimeCell, string.Create(CultureInfo.InvariantCulture, $"\"{CellText(header.TimeCell)}\" is not a date and time from {TrafficTime.FirstYear} to {TrafficTime.LastYear}: write them as 2026-05-01T07:32:10, with a zone behind or without.")),
            RowRemark.NoLoads => (header.LoadsCell, "the axle loads are missing: write them from the front axle back, separated by spaces."),
            RowRemark.Number => (cell, $"{Number(row.Fault)} is \"{Written()}\", which is not a number: write numbers separated by spaces.{(Written().Contains(',', StringComparison.Ordinal) ? DecimalComma(header) : "")}"),
            RowRemark.NotPositive => (cell, $"{Number(row.Fault)} is {Written()}: it must be above zero."),
            RowRemark.NoSpacings => (header.SpacingsCell, $"{Count(row.Axles, "axle")} and no spacings: write {row.Axles - 1}, the distance of each axle from the one ahead."),
            RowRemark.SpacingCount => (header.SpacingsCell, $"{Count(row.Axles, "axle")} and {Count(row.Spacings, "spacing")}: write {row.Axles - 1}, the distance of each axle from the one ahead.{(row.Spacings == row.Axles + 1 ? " Are the headings of loads and spacings exchanged?" : "")}"),
            RowRemark.TooManyAxles => (cell, string.Create(CultureInfo.InvariantCulture, $"more than {TrafficRowReader.MostAxles} numbers: is this one truck?")),
            RowRemark.ImpossibleLoad when row.Fault < 0 && gross < TruckLimits.LightestTruck => (header.LoadsCell, $"the truck weighs {Weight(gross)} in all, less than 1 kip (4.448 kN): check the loads and their unit."),
            RowRemark.ImpossibleLoad when row.Fault < 0 => (header.LoadsCell, $"the truck weighs {Weight(gross)} in all, and nothing on a road weighs more than 4,000 kip (17,792.886 kN): check the loads and their unit."),
            RowRemark.ImpossibleLoad => (cell, $"{Number(row.Fault)} weighs {Weight(row.FaultValue)}, and no axle weighs more than 1,000 kip (4,448.222 kN): check it and its unit."),
            RowRemark.ImpossibleSpacing => (cell, $"{Number(row.Fault)} is {UnlikelyLoads.Both(row.FaultValue, "ft", "m")}, and axles of one vehicle stand from 1.5 to 300 ft (0.457 to 91.44 m) apart: check it and its unit."),
            RowRemark.HeavyAxle => (cell, $"{Number(row.Fault)} weighs {Weight(row.FaultValue)}, and hardly any weighs more than 60 kip (266.893 kN); the truck weighs {Weight(gross)} in all. It is counted: check it and its unit, and take the row out if it is wrong."),
            RowRemark.LongSpacing => (cell, $"{Number(row.Fault)} is {UnlikelyLoads.Both(row.FaultValue, "ft", "m")}, and hardly any is more than 100 ft (30.48 m): are these two vehicles? It is counted: check it and its unit, and take the row out if it is wrong."),
            _ => throw new ArgumentOutOfRangeException(nameof(remark), remark, "Every remark has its words."),
        };
    }

    // Beside semicolons a comma is one.
    private static string DecimalComma(TrafficHeader header) => header.CommaIsDecimalMark ? "" : " A decimal comma? Write a point, or separate the columns with semicolons.";
}
