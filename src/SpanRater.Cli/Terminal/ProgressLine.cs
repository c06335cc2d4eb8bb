using System.Diagnostics;
using System.Globalization;

namespace SpanRater.Cli.Terminal;

/// <summary>How far a long run is, on a line of the error writer that is written over; nothing where that is no terminal.</summary>
internal sealed class ProgressLine : IDisposable
{
    private const int Cells = 30;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    private readonly TextWriter? writer;
    private readonly int all;
    private readonly Lock writing = new();
    private long last = Stopwatch.GetTimestamp();
    private int done;
    private int width;

    /// <summary>Prepares the line.</summary>
    /// <param name="surroundings">Where the program writes.</param>
    /// <param name="all">How many pieces of work there are.</param>
    public ProgressLine(Surroundings surroundings, int all)
    {
        writer = surroundings.ErrorIsTerminal ? surroundings.Error : null;
        this.all = all;
    }

    /// <summary>Tells that a piece of work is done.</summary>
    public void Step()
    {
        if (writer is null)
        {
            return;
        }

        lock (writing)
        {
            done++;
            if (Stopwatch.GetElapsedTime(last) < Pause && done < all)
            {
                return;
            }

            last = Stopwatch.GetTimestamp();
            int full = (int)((long)Cells * done / all);
            string line = string.Create(CultureInfo.InvariantCulture, $"[{new string('=', full)}{new string(' ', Cells - full)}] {done} of {all}");
            width = Math.Max(width, line.Length);
            writer.Write("\r" + line);
            writer.Flush();
        }
    }

    /// <summary>Wipes the line.</summary>
    public void Dispose()
    {
        if (width > 0)
        {
            writer!.Write("\r" + new string(' ', width) + "\r");
            writer.Flush();
        }
    }
}
