using SpanRater.Cli;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>A fault of the program tells what finds it, and nothing of the user.</summary>
public sealed class FaultReportTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Run_FaultOfTheProgram_TellsWhatWhereVersionAndHowToReportAndNoPath()
    {
        using var error = new StringWriter { NewLine = "\n" };
        using var faulty = new FaultyStream(() => new InvalidOperationException("no room in /home/miller/bridges/farm.csv or C:\\Users\\miller\\farm.csv here"));
        int status = CommandLineProgram.Run(["check", bridge.Folder], new Surroundings(faulty, error, null, Colour: false));
        string[] lines = error.ToString().Split('\n');
        Assert.Equal(ExitStatus.ProgramFault, status);
        Assert.Equal("spanrater: a fault of the program itself, not of your input. No file is left half-written.", lines[0]);
        Assert.Equal("  what:    InvalidOperationException: no room in …/farm.csv or …/farm.csv here", lines[1]);
        // Small methods may be compiled into their callers.
        Assert.Matches(@"^  where:   (\w+\.\w+ < )*CommandLineProgram\.Run$", lines[2]);
        Assert.Matches(@"^  version: spanrater \d+\.\d+\.\d+, (commit [0-9a-f]{40}|of no known commit), \.NET ", lines[3]);
        Assert.Equal("To report it, send these lines and the command you typed, with the bridge folder if you may share it, to whoever gave you the program. The lines hold no path and no name of yours.", lines[4]);
        Assert.DoesNotContain("miller", error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(bridge.Folder, error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain(".cs", error.ToString().Replace(".csv", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_OutputThatIsFull_IsRefusedInWords()
    {
        using var error = new StringWriter { NewLine = "\n" };
        using var full = new FaultyStream(() => new IOException("No space left on device"));
        int status = CommandLineProgram.Run(["check", bridge.Folder], new Surroundings(full, error, null, Colour: false));
        Assert.Equal((1, "spanrater: the answer could not be written to the output: No space left on device. Make room, or write it elsewhere.\n"), (status, error.ToString()));
    }

    [Fact]
    public void Run_NoMemory_IsSaidInWords()
    {
        using var error = new StringWriter { NewLine = "\n" };
        using var empty = new FaultyStream(() => new InsufficientMemoryException());
        int status = CommandLineProgram.Run(["check", bridge.Folder], new Surroundings(empty, error, null, Colour: false));
        Assert.Equal(ExitStatus.ProgramFault, status);
        Assert.StartsWith("spanrater: there is not enough memory for this.", error.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Could not find file '/home/miller/a b/farm.csv'.", "Could not find file '…/farm.csv'.")]
    [InlineData(@"C:\Users\miller\x.toml is locked", "…/x.toml is locked")]
    [InlineData(@"\\server\miller\x.toml", "…/x.toml")]
    [InlineData("a rate of 3/4 and kN/m", "a rate of 3/4 and kN/m")]
    public void WithoutPaths_Message_KeepsTheLastNameOfEachPath(string message, string expected) => Assert.Equal(expected, FaultReport.WithoutPaths(message));

    private sealed class FaultyStream(Func<Exception> fault) : MemoryStream
    {
        public override void Write(byte[] buffer, int offset, int count) => throw fault();

        public override void Write(ReadOnlySpan<byte> buffer) => throw fault();
    }
}
