namespace SpanRater.Files;

/// <summary>
/// Reads traffic records and rolls their trucks over a bridge: a CSV with a truck a row and the columns <c>time</c>, <c>loads [kip]</c> and <c>spacings [ft]</c>, lists separated by spaces.
/// The file is streamed in blocks that several workers count; what they counted is added up in the order of the file, so that the numbers do not depend on who counted what.
/// </summary>
public static class TrafficFile
{
    /// <summary>Bytes of a block.</summary>
    internal const int BlockSize = 1 << 20;

    /// <summary>Reads and counts a file; null, with what is wrong, where it is refused as a whole.</summary>
    /// <param name="path">Where it is.</param>
    /// <param name="name">Its name in findings.</param>
    /// <param name="plan">What is counted.</param>
    /// <param name="findings">Takes what is wrong with the file; rows that are rejected stand in the reading.</param>
    /// <param name="workers">How many count at once; null for as many as there are processors.</param>
    /// <param name="progress">Told now and then how far the reading has come; null for nobody.</param>
    /// <param name="stop">Ends the reading.</param>
    /// <exception cref="OperationCanceledException">The reading was ended.</exception>
    public static TrafficReading? Read(
        string path, string name, TrafficPlan plan, FindingList findings, int? workers = null, Action<TrafficProgress>? progress = null, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(findings);
        if (Directory.Exists(path))
        {
            findings.Error(new Place(name), "is a folder, not a file: name the file of records in it.");
            return null;
        }

        try
        {
            using var stream = new FileStream(path, new FileStreamOptions { Mode = FileMode.Open, Access = FileAccess.Read, Share = FileShare.Read, Options = FileOptions.SequentialScan, BufferSize = 0 });
            return Read(stream, name, plan, findings, workers ?? Environment.ProcessorCount, BlockSize, progress, stop);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            string why = e switch
            {
                FileNotFoundException or DirectoryNotFoundException => "it is not there",
                UnauthorizedAccessException => "access is denied",
                _ => "it could not be opened or read to its end",
            };
            findings.Error(new Place(name), $"cannot be read ({why}): check that it is there and that you may read it.");
            return null;
        }
    }

    /// <summary>The same of a stream, in blocks of any size.</summary>
    internal static TrafficReading? Read(
        Stream stream, string name, TrafficPlan plan, FindingList findings, int workers, int blockSize, Action<TrafficProgress>? progress = null, CancellationToken stop = default)
    {
        try
        {
            var blocks = new TrafficBlocks(stream, blockSize);
            var first = new TrafficBlock(blockSize);
            if (!blocks.Fill(first) || !HasText(first))
            {
                findings.Error(new Place(name), "is empty.");
                return null;
            }

            TrafficBlocks.Check(first.Buffer.AsSpan(0, first.Length), 1);
            if (HeaderOf(first, name, findings, out int from) is not { } header)
            {
                return null;
            }

            var gathering = new TrafficGathering(name, plan, header, blocks, first, from) { AllBytes = stream.CanSeek ? stream.Length : 0, Progress = progress, Stop = stop };
            TrafficReading reading = gathering.Count(workers);
            if (reading.Rows == 0)
            {
                findings.Error(new Place(name), "has a header and no record: write one row a truck.");
                return null;
            }

            return reading;
        }
        catch (NotARecordException e)
        {
            findings.Error(new Place(name, checked((int)e.Line), e.Column), e.Message);
            return null;
        }
    }

    private static bool HasText(TrafficBlock block) => block.Buffer.AsSpan(0, block.Length).IndexOfAnyExcept(" \t\r\n\uFEFF"u8) >= 0;

    // The first line that is neither blank nor a comment.
    private static TrafficHeader? HeaderOf(TrafficBlock block, string name, FindingList findings, out int from)
    {
        ReadOnlySpan<byte> bytes = block.Buffer.AsSpan(0, block.Length);
        from = bytes.StartsWith("\uFEFF"u8) ? 3 : 0;
        while (from < bytes.Length)
        {
            int length = bytes[from..].IndexOfAny((byte)'\r', (byte)'\n'), start = from;
            ReadOnlySpan<byte> line = length < 0 ? bytes[from..] : bytes.Slice(from, length);
            from = Math.Min(bytes.Length, from + line.Length + 1);
            if (!TrafficRowReader.IsPassedOver(line))
            {
                return TrafficHeader.Read(line, TrafficBlocks.LineBreaks(bytes[..start]) + 1, name, findings);
            }
        }

        findings.Error(new Place(name), "has no header: the first line that is not a comment names the columns.");
        return null;
    }
}
