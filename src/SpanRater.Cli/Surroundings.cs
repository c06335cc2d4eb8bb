namespace SpanRater.Cli;

/// <summary>Where a run of the program reads and writes.</summary>
/// <param name="Output">Takes the bytes of the answer.</param>
/// <param name="Error">Takes messages.</param>
/// <param name="TerminalWidth">Characters a line of the terminal holds; null where the output is piped, and nothing is ever wrapped.</param>
/// <param name="Colour">Whether the output may be coloured.</param>
public sealed record Surroundings(Stream Output, TextWriter Error, int? TerminalWidth, bool Colour)
{
    /// <summary>Set when the user interrupts the program: what runs long looks at it between two pieces of its work.</summary>
    public CancellationToken Stop { get; init; }

    /// <summary>Whether messages go to a terminal, where progress may be shown over itself.</summary>
    public bool ErrorIsTerminal { get; init; }

    /// <summary>Writes an answer, or ends the command where that cannot be done. Who reads it may leave before its end, as <c>head</c> does, and nothing is said of that.</summary>
    /// <param name="bytes">The answer.</param>
    internal void Print(ReadOnlySpan<byte> bytes)
    {
        try
        {
            Output.Write(bytes);
            Output.Flush();
        }
        catch (IOException e)
        {
            throw new RefusedException($"spanrater: the answer could not be written to the output: {e.Message.TrimEnd('.')}. Make room, or write it elsewhere.");
        }
    }

    /// <summary>The console of this process. Colour is off where NO_COLOR is set or the output is piped.</summary>
    public static Surroundings OfThisProcess()
    {
        Console.OutputEncoding = new System.Text.UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        bool piped = Console.IsOutputRedirected;
        bool colour = !piped && string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"));
        return new Surroundings(Console.OpenStandardOutput(), Console.Error, piped ? null : Math.Max(40, Console.WindowWidth), colour) { ErrorIsTerminal = !Console.IsErrorRedirected };
    }
}
