using System.Text;
using SpanRater.Cli;

namespace SpanRater.Tests.CommandLine;

/// <summary>One run of the program in this process, as if piped.</summary>
public sealed record Run(int Status, string Output, string Error)
{
    public static Run Of(params string[] args)
    {
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        int status = CommandLineProgram.Run(args, new Surroundings(output, error, TerminalWidth: null, Colour: false));
        return new Run(status, Encoding.UTF8.GetString(output.ToArray()), error.ToString());
    }
}
