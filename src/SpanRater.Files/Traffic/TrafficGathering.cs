namespace SpanRater.Files;

/// <summary>Lets workers count the blocks of a record and adds up what they counted, block by block in the order of the file.</summary>
internal sealed class TrafficGathering
{
    private readonly Lock cutting = new();
    private readonly object adding = new();
    private readonly string file;
    private readonly TrafficPlan plan;
    private readonly TrafficHeader header;
    private readonly TrafficBlocks blocks;
    private readonly TrafficTally tally;
    private readonly RemarkedRows rejected = new();
    private readonly RemarkedRows unlikely = new();
    private readonly int from;
    private TrafficBlock? first;
    private bool allCut;
    private long next;
    private bool ended;
    private Exception? failure;
    private long outOfOrder;
    private long? firstOutOfOrder;
    private long? lastTicks;

    public TrafficGathering(string file, TrafficPlan plan, TrafficHeader header, TrafficBlocks blocks, TrafficBlock first, int from)
    {
        this.file = file;
        this.plan = plan;
        this.header = header;
        this.blocks = blocks;
        this.first = first;
        this.from = from;
        tally = new TrafficTally(plan);
    }

    /// <summary>Bytes of the file; 0 where that is not known.</summary>
    public long AllBytes { get; init; }

    /// <summary>Told how far it has come.</summary>
    public Action<TrafficProgress>? Progress { get; init; }

    /// <summary>Ends the reading.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Counts all.</summary>
    /// <param name="workers">How many count at once.</param>
    public TrafficReading Count(int workers)
    {
        Task[] tasks = [.. Enumerable.Range(0, Math.Max(1, workers)).Select(_ => Task.Factory.StartNew(Work, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default))];
        Task.WaitAll(tasks, CancellationToken.None);
        Stop.ThrowIfCancellationRequested();
        if (failure is not null)
        {
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(failure);
        }

        return new TrafficReading(file, tally, rejected, unlikely, outOfOrder, firstOutOfOrder, header.Further);
    }

    private void Work()
    {
        var counter = new TrafficCounter(header, plan, file, blocks.BlockSize);
        while (true)
        {
            Exception? fault = null;
            bool isFirst = false;
            try
            {
                if (!Next(counter.Block, out isFirst))
                {
                    return;
                }

                counter.Count(isFirst ? from : 0);
            }
            catch (Exception e)
            {
                // Told in its turn: of several faults the first in the file counts.
                fault = e;
            }

            lock (adding)
            {
                while (!ended && next != counter.Block.Index)
                {
                    Monitor.Wait(adding);
                }

                if (!ended && (fault is not null || Stop.IsCancellationRequested))
                {
                    (ended, failure) = (true, fault);
                }

                if (!ended)
                {
                    Add(counter);
                    next++;
                }

                Monitor.PulseAll(adding);
                if (ended)
                {
                    return;
                }
            }
        }
    }

    private bool Next(TrafficBlock block, out bool isFirst)
    {
        lock (cutting)
        {
            isFirst = first is not null;
            if (first is not null)
            {
                first.Buffer.AsSpan(0, first.Length).CopyTo(block.Buffer);
                (block.Length, block.FirstLine, block.Index, first) = (first.Length, first.FirstLine, first.Index, null);
                return true;
            }

            if (allCut)
            {
                return false;
            }

            try
            {
                return !(allCut = !blocks.Fill(block));
            }
            catch
            {
                allCut = true;
                throw;
            }
        }
    }

    private void Add(TrafficCounter counter)
    {
        tally.Add(counter.Tally);
        rejected.Add(counter.Rejected);
        unlikely.Add(counter.Unlikely);
        outOfOrder += counter.OutOfOrder;
        if (counter.First is { } opening)
        {
            if (opening.Ticks < lastTicks)
            {
                outOfOrder++;
                firstOutOfOrder ??= opening.Line;
            }

            lastTicks = counter.LastTicks;
        }

        firstOutOfOrder ??= counter.FirstOutOfOrder;
        Progress?.Invoke(new TrafficProgress(tally.Trucks + rejected.Count, blocks.BytesRead, AllBytes));
    }
}
