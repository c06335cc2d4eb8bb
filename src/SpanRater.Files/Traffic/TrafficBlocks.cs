using System.Text.Unicode;

namespace SpanRater.Files;

/// <summary>A stretch of whole lines of a file.</summary>
/// <param name="capacity">Bytes it can hold.</param>
internal sealed class TrafficBlock(int capacity)
{
    /// <summary>The bytes; those behind the length are of no meaning.</summary>
    public byte[] Buffer { get; } = new byte[capacity];

    /// <summary>Bytes in use.</summary>
    public int Length { get; set; }

    /// <summary>Number of its first line, from 1.</summary>
    public long FirstLine { get; set; }

    /// <summary>Its place among the blocks.</summary>
    public long Index { get; set; }
}

/// <summary>
/// Cuts a file into blocks of whole lines, in constant memory. A cell holds no line break, so that every line break ends a row. Where blocks are cut depends on the file and
/// the size of a block alone.
/// </summary>
internal sealed class TrafficBlocks
{
    private readonly Stream stream;
    private readonly byte[] carried;
    private int carriedLength;
    private long nextLine = 1;
    private long nextIndex;
    private bool isAtEnd;

    /// <summary>Starts at the beginning of a file.</summary>
    /// <param name="stream">The file; whoever opened it closes it.</param>
    /// <param name="blockSize">Bytes of a block: at least the longest line there may be.</param>
    public TrafficBlocks(Stream stream, int blockSize)
    {
        this.stream = stream;
        BlockSize = blockSize;
        carried = new byte[blockSize];
    }

    /// <summary>Longest line that is read [bytes]; shorter where blocks are.</summary>
    public const int LongestLine = 100_000;

    /// <summary>That a line is longer.</summary>
    public const string TooLong = "the line is longer than 100,000 characters; no record is. Check what the file is.";

    /// <summary>Bytes of a block.</summary>
    public int BlockSize { get; }

    /// <summary>Bytes read so far.</summary>
    public long BytesRead { get; private set; }

    /// <summary>Fills a block; false at the end of the file.</summary>
    /// <exception cref="NotARecordException">What is read is no text, or has a line without end.</exception>
    public bool Fill(TrafficBlock block)
    {
        carried.AsSpan(0, carriedLength).CopyTo(block.Buffer);
        (block.Index, block.FirstLine) = (nextIndex++, nextLine);
        int length = carriedLength;
        while (!isAtEnd && length < BlockSize)
        {
            int read = stream.Read(block.Buffer, length, BlockSize - length);
            isAtEnd = read == 0;
            length += read;
            BytesRead += read;
        }

        if (length == 0)
        {
            return false;
        }

        ReadOnlySpan<byte> bytes = block.Buffer.AsSpan(0, length);
        int whole = isAtEnd ? length : bytes.LastIndexOf((byte)'\n') + 1;
        carriedLength = length - whole;
        block.Length = whole;
        if (whole == 0 || (isAtEnd ? 0 : carriedLength) > LongestLine)
        {
            long line = nextLine + LineBreaks(bytes[..whole]);
            throw new NotARecordException(line, 1, TooLong);
        }

        bytes[whole..].CopyTo(carried);
        nextLine += LineBreaks(bytes[..whole]);
        return true;
    }

    /// <summary>Line breaks, as CsvHelper takes them: CR, LF, and both together as one.</summary>
    public static int LineBreaks(ReadOnlySpan<byte> bytes)
    {
        int returns = bytes.Count((byte)'\r');
        return bytes.Count((byte)'\n') + returns - (returns == 0 ? 0 : bytes.Count("\r\n"u8));
    }

    /// <summary>Refuses what is not text in UTF-8.</summary>
    public static void Check(ReadOnlySpan<byte> bytes, long firstLine)
    {
        if (firstLine == 1 && (bytes.StartsWith([(byte)0xFF, (byte)0xFE]) || bytes.StartsWith([(byte)0xFE, (byte)0xFF])))
        {
            throw new NotARecordException(1, 1, "is UTF-16 text: save it as UTF-8.");
        }

        if (!Utf8.IsValid(bytes) || bytes.Contains((byte)0))
        {
            int line = 0;
            foreach (Range each in bytes.Split((byte)'\n'))
            {
                ReadOnlySpan<byte> text = bytes[each];
                if (text.Contains((byte)0))
                {
                    throw new NotARecordException(firstLine + line, 1, "is not text: it holds zero bytes, as pictures, spreadsheets and archives do. Save the table as CSV, UTF-8.");
                }

                if (!Utf8.IsValid(text))
                {
                    throw new NotARecordException(firstLine + line, 1, "is not UTF-8, rather Windows-1252 or Latin-1: save it as UTF-8.");
                }

                line++;
            }
        }
    }
}

/// <summary>Ends the reading of a file that is no traffic record.</summary>
internal sealed class NotARecordException(long line, int column, string what) : Exception(what)
{
    /// <summary>Line, from 1.</summary>
    public long Line => line;

    /// <summary>Character, from 1.</summary>
    public int Column => column;
}
