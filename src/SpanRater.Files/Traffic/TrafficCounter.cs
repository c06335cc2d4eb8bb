namespace SpanRater.Files;

/// <summary>Counts the rows of one block after another: one worker's own.</summary>
internal sealed class TrafficCounter
{
    private readonly TrafficHeader header;
    private readonly TrafficRowReader reader;
    private readonly TrafficRoller roller;
    private readonly string file;
    private int[] starts = new int[16384];
    private int[] lines = new int[16384];

    public TrafficCounter(TrafficHeader header, TrafficPlan plan, string file, int blockSize)
    {
        this.header = header;
        this.file = file;
        reader = new TrafficRowReader(header);
        roller = new TrafficRoller(plan);
        Block = new TrafficBlock(blockSize);
    }

    /// <summary>The block that is counted.</summary>
    public TrafficBlock Block { get; }

    /// <summary>What was counted of it.</summary>
    public TrafficTally Tally => roller.Tally;

    /// <summary>Its rows that are not counted.</summary>
    public RejectedRows Rejected { get; } = new();

    /// <summary>Its rows that are counted.</summary>
    public int Counted { get; private set; }

    /// <summary>Those of them whose time is before that of the one before.</summary>
    public long OutOfOrder { get; private set; }

    /// <summary>Line of the first of those.</summary>
    public long? FirstOutOfOrder { get; private set; }

    /// <summary>Time of the first row that is counted, and its line.</summary>
    public (long Ticks, long Line)? First { get; private set; }

    /// <summary>Time of the last row that is counted.</summary>
    public long LastTicks { get; private set; }

    /// <summary>Counts the block.</summary>
    /// <exception cref="NotARecordException">It is no text in UTF-8, or has a line too long.</exception>
    public void Count(int from, int linesBefore)
    {
        Tally.Clear();
        Rejected.Clear();
        (Counted, OutOfOrder, FirstOutOfOrder, First) = (0, 0, null, null);
        ReadOnlySpan<byte> bytes = Block.Buffer.AsSpan(0, Block.Length);
        TrafficBlocks.Check(bytes, Block.FirstLine);
        for (int line = linesBefore; from < bytes.Length; line++)
        {
            int length = bytes[from..].IndexOf((byte)'\n');
            ReadOnlySpan<byte> row = length < 0 ? bytes[from..] : bytes.Slice(from, length);
            if (row.Length > TrafficBlocks.LongestLine)
            {
                throw new NotARecordException(Block.FirstLine + line, 1, TrafficBlocks.TooLong);
            }

            CountRow(row.TrimEnd((byte)'\r'), from, line);
            from += row.Length + 1;
        }

        Tally.NameRecords(RecordOf);
    }

    private void CountRow(ReadOnlySpan<byte> row, int start, int line)
    {
        if (TrafficRowReader.IsPassedOver(row))
        {
            return;
        }

        RejectReason reason = reader.Read(row);
        if (reason != RejectReason.None)
        {
            if (Rejected.Add(reason))
            {
                TrafficCells cells = reader.CellsOf(row);
                (int cell, string what) = RejectWording.Of(reason, header, reader, cells);
                Rejected.Tell(reason, new Place(file, checked((int)(Block.FirstLine + line)), cells.ColumnOf(cell)), what);
            }

            return;
        }

        if (Counted == starts.Length)
        {
            Array.Resize(ref starts, 2 * Counted);
            Array.Resize(ref lines, 2 * Counted);
        }

        (starts[Counted], lines[Counted]) = (start, line);
        roller.Roll(reader.Loads, reader.Gaps, reader.Day, Counted);
        if (First is null)
        {
            First = (reader.Ticks, Block.FirstLine + line);
        }
        else if (reader.Ticks < LastTicks)
        {
            OutOfOrder++;
            FirstOutOfOrder ??= Block.FirstLine + line;
        }

        LastTicks = reader.Ticks;
        Counted++;
    }

    private TrafficRecord RecordOf(int row)
    {
        ReadOnlySpan<byte> bytes = Block.Buffer.AsSpan(starts[row], Block.Length - starts[row]);
        int length = bytes.IndexOf((byte)'\n');
        ReadOnlySpan<byte> line = (length < 0 ? bytes : bytes[..length]).TrimEnd((byte)'\r');
        _ = reader.Read(line);
        TrafficCells cells = reader.CellsOf(line);
        var further = new string[header.FurtherCells.Count];
        for (int f = 0; f < further.Length; f++)
        {
            further[f] = cells.Text(header.FurtherCells[f]);
        }

        return new TrafficRecord(Block.FirstLine + lines[row], cells.Text(header.TimeCell), reader.Gross, further);
    }
}
