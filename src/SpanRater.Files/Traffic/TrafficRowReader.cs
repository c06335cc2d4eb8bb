using System.Globalization;
using CsvHelper;

namespace SpanRater.Files;

/// <summary>Reads one row of a traffic record after another, CsvHelper its cells: what it holds, and what is remarked of it. Not for several threads at once.</summary>
/// <param name="header">The header.</param>
internal sealed class TrafficRowReader(TrafficHeader header)
{
    /// <summary>More axles than any vehicle has that crosses such a bridge.</summary>
    public const int MostAxles = 60;

    /// <summary>Bytes of a number that is copied without a place of its own.</summary>
    private const int UsualNumber = 64;

    private const NumberStyles Plain = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;

    private readonly double[] loads = new double[MostAxles];
    private readonly double[] gaps = new double[MostAxles];
    private int axles;
    private int spacings;

    /// <summary>Axle loads of the row read last [N].</summary>
    public ReadOnlySpan<double> Loads => loads.AsSpan(0, axles);

    /// <summary>Spacings of the row read last [m].</summary>
    public ReadOnlySpan<double> Gaps => gaps.AsSpan(0, axles - 1);

    /// <summary>Gross weight of the row read last [N].</summary>
    public double Gross { get; private set; }

    /// <summary>Day of the row read last.</summary>
    public int Day { get; private set; }

    /// <summary>Its time for the order of records.</summary>
    public long Ticks { get; private set; }

    /// <summary>Which number of a list the remark is on, from 0; −1 where it is on all loads together.</summary>
    public int Fault { get; private set; }

    /// <summary>Whether it is on a spacing, and not on a load.</summary>
    public bool FaultIsSpacing { get; private set; }

    /// <summary>Axles, as far as they were read.</summary>
    public int Axles => axles;

    /// <summary>Spacings, as far as they were read.</summary>
    public int Spacings => spacings;

    /// <summary>The load or spacing that it is on [N or m].</summary>
    public double FaultValue => FaultIsSpacing ? gaps[Fault] : loads[Fault];

    /// <summary>Whether quotes of the row read last do not pair: nothing of such a row is taken.</summary>
    public bool IsBroken { get; private set; }

    /// <summary>How CsvHelper finds the cells of the rows; it tells this reader of quotes that do not pair.</summary>
    public CsvReaderOptions Options => CsvCells.Options((char)header.Separator) with { TrimInsideQuotes = true, OnMalformedRecord = record => IsBroken |= record.Reason != CsvMalformedReason.StrayQuote };

    /// <summary>Goes to the next row that is neither blank nor a comment; false at the end.</summary>
    /// <param name="cells">The rows, by the <see cref="Options"/> of this reader.</param>
    public bool Next(CsvReader cells)
    {
        do
        {
            IsBroken = false;
            if (!cells.Read())
            {
                return false;
            }
        }
        while (IsPassedOver(cells.RawRecord));
        return true;
    }

    /// <summary>The bytes of a cell; empty where the row has none.</summary>
    /// <param name="cells">The row.</param>
    /// <param name="cell">Place of the cell.</param>
    public static ReadOnlySpan<byte> CellOf(CsvReader cells, int cell) => cell < cells.FieldCount ? cells.GetSpan(cell) : [];

    /// <summary>Whether a line is passed over: blank, of separators only, or a comment.</summary>
    /// <param name="line">The line, without its line break.</param>
    public static bool IsPassedOver(ReadOnlySpan<byte> line)
    {
        if (line.Length > 0 && line[0] is >= (byte)'0' and <= (byte)'9')
        {
            return false;
        }

        int first = line.IndexOfAnyExcept(" ,;\t"u8);
        return first < 0 || line[first] == '#';
    }

    /// <summary>Reads a row.</summary>
    /// <param name="cells">Its cells.</param>
    public RowRemark Read(CsvReader cells)
    {
        (axles, spacings) = (0, 0);
        if (IsBroken || HasTooMany(cells))
        {
            return RowRemark.Cells;
        }

        if (!TrafficTime.TryRead(CellOf(cells, header.TimeCell), out int day, out long ticks))
        {
            return RowRemark.Time;
        }

        (Day, Ticks) = (day, ticks);
        RowRemark reason = ReadList(CellOf(cells, header.LoadsCell), loads, header.LoadUnit, false, out axles);
        if (reason == RowRemark.None)
        {
            reason = axles == 0 ? RowRemark.NoLoads : ReadList(CellOf(cells, header.SpacingsCell), gaps, header.SpacingUnit, true, out spacings);
        }

        return reason != RowRemark.None ? reason
            : axles > 1 && spacings == 0 ? RowRemark.NoSpacings
            : spacings != axles - 1 ? RowRemark.SpacingCount
            : OfTruck();
    }

    // Empty cells behind the last column are those of a spreadsheet.
    private bool HasTooMany(CsvReader cells)
    {
        for (int c = header.Cells; c < cells.FieldCount; c++)
        {
            if (!cells.GetSpan(c).IsEmpty)
            {
                return true;
            }
        }

        return false;
    }

    // A comma is a decimal mark beside semicolons, and a point always.
    private bool TryReadNumber(ReadOnlySpan<byte> text, out double value)
    {
        if (header.CommaIsDecimalMark && text.IndexOf((byte)',') is >= 0 and int comma)
        {
            Span<byte> pointed = text.Length <= UsualNumber ? stackalloc byte[UsualNumber] : new byte[text.Length];
            text.CopyTo(pointed);
            pointed[comma] = (byte)'.';
            return double.TryParse(pointed[..text.Length], Plain, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
        }

        return double.TryParse(text, Plain, CultureInfo.InvariantCulture, out value) && double.IsFinite(value);
    }

    private RowRemark ReadList(ReadOnlySpan<byte> cell, double[] into, double unit, bool areSpacings, out int count)
    {
        count = 0;
        FaultIsSpacing = areSpacings;
        while (true)
        {
            cell = cell.TrimStart((byte)' ');
            if (cell.IsEmpty)
            {
                return RowRemark.None;
            }

            if (count == MostAxles)
            {
                return RowRemark.TooManyAxles;
            }

            int end = cell.IndexOf((byte)' ');
            ReadOnlySpan<byte> number = end < 0 ? cell : cell[..end];
            Fault = count;
            if (!TryReadNumber(number, out double value))
            {
                return RowRemark.Number;
            }

            into[count++] = value * unit;
            if (!(value > 0))
            {
                return RowRemark.NotPositive;
            }

            cell = cell[number.Length..];
        }
    }

    private RowRemark OfTruck()
    {
        double gross = 0;
        int heaviest = 0, longest = 0;
        for (int a = 0; a < axles; a++)
        {
            gross += loads[a];
            heaviest = loads[a] > loads[heaviest] ? a : heaviest;
        }

        Gross = gross;
        for (int g = 0; g < axles - 1; g++)
        {
            if (gaps[g] < TruckLimits.LeastSpacing)
            {
                return On(g, true, RowRemark.ImpossibleSpacing);
            }

            longest = gaps[g] > gaps[longest] ? g : longest;
        }

        bool isHeavy = loads[heaviest] > TruckLimits.HeaviestLikelyAxle, isLong = axles > 1 && gaps[longest] > TruckLimits.MostLikelySpacing;
        return loads[heaviest] > TruckLimits.HeaviestAxle ? On(heaviest, false, RowRemark.ImpossibleLoad)
            : gross is < TruckLimits.LightestTruck or > TruckLimits.HeaviestTruck ? On(-1, false, RowRemark.ImpossibleLoad)
            : isLong && gaps[longest] > TruckLimits.MostSpacing ? On(longest, true, RowRemark.ImpossibleSpacing)
            : isHeavy ? On(heaviest, false, RowRemark.HeavyAxle)
            : isLong ? On(longest, true, RowRemark.LongSpacing)
            : RowRemark.None;
    }

    private RowRemark On(int number, bool isSpacing, RowRemark remark)
    {
        (Fault, FaultIsSpacing) = (number, isSpacing);
        return remark;
    }
}
