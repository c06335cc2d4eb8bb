using System.Text;
using CsvHelper;

namespace SpanRater.Files;

/// <summary>Counts the rows of one block after another: one worker's own.</summary>
internal sealed class TrafficCounter
{
    private readonly TrafficHeader header;
    private readonly TrafficRowReader reader;
    private readonly TrafficRoller roller;
    private readonly string file;
    private readonly CsvReaderOptions options;
    private int[] starts = new int[16384];

    public TrafficCounter(TrafficHeader header, TrafficPlan plan, string file, int blockSize)
    {
        this.header = header;
        this.file = file;
        reader = new TrafficRowReader(header);
        options = reader.Options;
        roller = new TrafficRoller(plan);
        Block = new TrafficBlock(blockSize);
    }

    /// <summary>The block that is counted.</summary>
    public TrafficBlock Block { get; }

    /// <summary>What was counted of it.</summary>
    public TrafficTally Tally => roller.Tally;

    /// <summary>Its rows that are not counted.</summary>
    public RemarkedRows Rejected { get; } = new();

    /// <summary>Its rows that are counted and unlikely.</summary>
    public RemarkedRows Unlikely { get; } = new();

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
    /// <param name="from">Where its first row starts.</param>
    /// <exception cref="NotARecordException">It is no text in UTF-8, or has a line too long.</exception>
    public void Count(int from)
    {
        Tally.Clear();
        Rejected.Clear();
        Unlikely.Clear();
        (Counted, OutOfOrder, FirstOutOfOrder, First) = (0, 0, null, null);
        TrafficBlocks.Check(Block.Buffer.AsSpan(0, Block.Length), Block.FirstLine);
        using CsvReader rows = CsvReader.Create(Block.Buffer.AsMemory(from, Block.Length - from), options);
        while (reader.Next(rows))
        {
            int start = from + (int)rows.ByteOffset;
            if (rows.RawRecord.Length > TrafficBlocks.LongestLine)
            {
                throw new NotARecordException(LineAt(start), 1, TrafficBlocks.TooLong);
            }

            CountRow(rows, start);
        }

        Tally.NameRecords(RecordOf);
    }

    private void CountRow(CsvReader row, int start)
    {
        RowRemark remark = reader.Read(row);
        if (remark != RowRemark.None)
        {
            Tell(remark, row, start);
        }

        if (!remark.Counts())
        {
            return;
        }

        if (Counted == starts.Length)
        {
            Array.Resize(ref starts, 2 * Counted);
        }

        starts[Counted] = start;
        roller.Roll(reader.Loads, reader.Gaps, reader.Day, Counted, isUnlikely: remark != RowRemark.None);
        if (First is null)
        {
            First = (reader.Ticks, LineAt(start));
        }
        else if (reader.Ticks < LastTicks)
        {
            OutOfOrder++;
            FirstOutOfOrder ??= LineAt(start);
        }

        LastTicks = reader.Ticks;
        Counted++;
    }

    private void Tell(RowRemark remark, CsvReader row, int start)
    {
        RemarkedRows rows = remark.Counts() ? Unlikely : Rejected;
        if (rows.Add(remark))
        {
            (int cell, string what) = RowRemarkWording.Of(remark, header, reader, row);
            int[] columns = CsvCells.ColumnsOf(row);
            int column = cell < columns.Length ? columns[cell] : Encoding.UTF8.GetCharCount(row.RawRecord) + 1;
            rows.Tell(remark, new Place(file, checked((int)LineAt(start)), column), what);
        }
    }

    // Few lines are told, so that lines are not counted while rows are read.
    private long LineAt(int start) => Block.FirstLine + TrafficBlocks.LineBreaks(Block.Buffer.AsSpan(0, start));

    private TrafficRecord RecordOf(int row)
    {
        int start = starts[row], end = row + 1 < Counted ? starts[row + 1] : Block.Length;
        using CsvReader cells = CsvReader.Create(Block.Buffer.AsMemory(start, end - start), options);
        reader.Next(cells);
        RowRemark remark = reader.Read(cells);
        string Text(int cell) => Encoding.UTF8.GetString(TrafficRowReader.CellOf(cells, cell));
        return new TrafficRecord(LineAt(start), Text(header.TimeCell), reader.Gross, [.. header.FurtherCells.Select(Text)]) { IsUnlikely = remark != RowRemark.None };
    }
}
