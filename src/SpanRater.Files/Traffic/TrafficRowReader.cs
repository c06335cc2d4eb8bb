namespace SpanRater.Files;

/// <summary>Reads one row of a traffic record after another: what it holds, or why it is rejected. Not for several threads at once.</summary>
/// <param name="header">The header.</param>
internal sealed class TrafficRowReader(TrafficHeader header)
{
    /// <summary>More axles than any vehicle has that crosses such a bridge.</summary>
    public const int MostAxles = 60;

    private readonly int[] ends = new int[header.Cells + 1];
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

    /// <summary>Which number of a list is at fault, from 0, in a row that is rejected for it.</summary>
    public int Fault { get; private set; }

    /// <summary>Whether it is a spacing that is at fault, and not a load.</summary>
    public bool FaultIsSpacing { get; private set; }

    /// <summary>Axles, as far as they were read.</summary>
    public int Axles => axles;

    /// <summary>Spacings, as far as they were read.</summary>
    public int Spacings => spacings;

    /// <summary>The load or spacing at fault [N or m].</summary>
    public double FaultValue => FaultIsSpacing ? gaps[Fault] : loads[Fault];

    /// <summary>Takes a line apart; the cells hold until the next one.</summary>
    /// <param name="line">The line, without its line break.</param>
    public TrafficCells CellsOf(ReadOnlySpan<byte> line) => new(line, header.Separator, ends);

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
    /// <param name="line">The line, without its line break.</param>
    public RejectReason Read(ReadOnlySpan<byte> line)
    {
        TrafficCells cells = CellsOf(line);
        (axles, spacings) = (0, 0);
        if (cells.IsBroken || (cells.Count > header.Cells && !line[ends[header.Cells - 1]..].Trim(" ,;\t"u8).IsEmpty))
        {
            return RejectReason.Cells;
        }

        if (!TrafficTime.TryRead(cells[header.TimeCell], out int day, out long ticks))
        {
            return RejectReason.Time;
        }

        (Day, Ticks) = (day, ticks);
        RejectReason reason = ReadList(cells[header.LoadsCell], loads, header.LoadUnit, false, out axles);
        if (reason == RejectReason.None)
        {
            reason = axles == 0 ? RejectReason.NoLoads : ReadList(cells[header.SpacingsCell], gaps, header.SpacingUnit, true, out spacings);
        }

        return reason != RejectReason.None ? reason
            : axles > 1 && spacings == 0 ? RejectReason.NoSpacings
            : spacings != axles - 1 ? RejectReason.SpacingCount
            : Unlikely();
    }

    private RejectReason ReadList(ReadOnlySpan<byte> cell, double[] into, double unit, bool areSpacings, out int count)
    {
        count = 0;
        FaultIsSpacing = areSpacings;
        while (true)
        {
            cell = cell.TrimStart((byte)' ');
            if (cell.IsEmpty)
            {
                return RejectReason.None;
            }

            if (count == MostAxles)
            {
                return RejectReason.TooManyAxles;
            }

            int end = cell.IndexOf((byte)' ');
            ReadOnlySpan<byte> number = end < 0 ? cell : cell[..end];
            Fault = count;
            if (!DecimalBytes.TryRead(number, header.CommaIsDecimalMark, out double value))
            {
                return RejectReason.Number;
            }

            into[count++] = value * unit;
            if (!(value > 0))
            {
                return RejectReason.NotPositive;
            }

            cell = cell[number.Length..];
        }
    }

    private RejectReason Unlikely()
    {
        double gross = 0;
        FaultIsSpacing = false;
        for (int a = 0; a < axles; a++)
        {
            gross += loads[a];
            if (loads[a] > UnlikelyTrucks.HeaviestAxle)
            {
                Fault = a;
                return RejectReason.UnlikelyLoad;
            }
        }

        Gross = gross;
        if (gross < UnlikelyTrucks.LightestTruck)
        {
            Fault = -1;
            return RejectReason.UnlikelyLoad;
        }

        for (int g = 0; g < axles - 1; g++)
        {
            if (gaps[g] is < UnlikelyTrucks.LeastSpacing or > UnlikelyTrucks.MostSpacing)
            {
                (Fault, FaultIsSpacing) = (g, true);
                return RejectReason.UnlikelySpacing;
            }
        }

        return RejectReason.None;
    }
}
