using System.CommandLine;
using System.CommandLine.Invocation;

namespace SpanRater.Cli.Commands;

/// <summary>What <c>--version</c> does: prints version and commit.</summary>
internal sealed class TellVersion : SynchronousCommandLineAction
{
    /// <inheritdoc/>
    public override bool Terminating => true;

    /// <inheritdoc/>
    public override int Invoke(ParseResult parseResult)
    {
        parseResult.InvocationConfiguration.Output.WriteLine(ProgramVersion.Whole);
        return ExitStatus.Done;
    }
}
