using System.Globalization;
using System.Runtime.InteropServices;

namespace SpanRater.Cli;

/// <summary>The process around a command line: culture, signals, and what may fail before a command has begun.</summary>
internal static class ProgramProcess
{
    /// <summary>
    /// What the work may take to notice that it is to end. Afterwards the process ends where it stands, which loses nothing: files are written beside and
    /// renamed.
    /// </summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1);

    /// <summary>Runs the command line of this process.</summary>
    /// <param name="args">The arguments.</param>
    public static int Run(string[] args)
    {
        CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        using var stop = new CancellationTokenSource();
        using PosixSignalRegistration interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal => Stop(signal, stop));
        using PosixSignalRegistration terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal => Stop(signal, stop));
        try
        {
            // Paths are told from here; asked first, so that it is said in words.
            _ = Environment.CurrentDirectory;
            return CommandLineProgram.Run(args, Surroundings.OfThisProcess() with { Stop = stop.Token });
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            return Say("spanrater: the folder you are in is no longer there: change to another one, and run the command again.\n", ExitStatus.Refused);
        }
        catch (IOException)
        {
            // Neither the answer nor a message can be written; the status alone is left.
            return ExitStatus.Refused;
        }
        catch (Exception e)
        {
            return Say(FaultReport.Of(e), ExitStatus.ProgramFault);
        }
    }

    // The first signal ends the work between two pieces of it, or after a second where it stands; the second at once.
    private static void Stop(PosixSignalContext signal, CancellationTokenSource stop)
    {
        signal.Cancel = true;
        if (stop.IsCancellationRequested)
        {
            Environment.Exit(ExitStatus.Interrupted);
        }

        var watch = new Thread(() =>
        {
            Thread.Sleep(Patience);
            Say("spanrater: interrupted; no file is left half-written.\n", ExitStatus.Interrupted);
            Environment.Exit(ExitStatus.Interrupted);
        })
        { IsBackground = true };
        watch.Start();
        stop.Cancel();
    }

    private static int Say(string text, int status)
    {
        try
        {
            Console.Error.Write(text);
        }
        catch (IOException)
        {
            // There is nowhere to say it.
        }

        return status;
    }
}
