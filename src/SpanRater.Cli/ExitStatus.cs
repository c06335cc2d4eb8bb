namespace SpanRater.Cli;

/// <summary>What the program tells the shell.</summary>
public static class ExitStatus
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>The command line or the input is refused; nothing was written.</summary>
    public const int Refused = 1;

    /// <summary>A fault of the program itself.</summary>
    public const int ProgramFault = 2;

    /// <summary>Read and understood, but no answer can be given; the output says why.</summary>
    public const int NoAnswer = 3;

    /// <summary>A limit is undercut: a posting under 3 US tons, or a factor below the one asked for.</summary>
    public const int LimitUndercut = 4;

    /// <summary>Interrupted by the user; nothing is left half-done.</summary>
    public const int Interrupted = 130;
}
