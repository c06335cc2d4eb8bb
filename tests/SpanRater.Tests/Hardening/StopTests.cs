using SpanRater.Cli;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>What the user interrupts ends with 130 and leaves nothing.</summary>
public sealed class StopTests : IDisposable
{
    private readonly BridgeOnDisk bridge = FlooredKingPost.Make();
    private readonly string folder = Directory.CreateTempSubdirectory("span-stop-").FullName;

    public void Dispose()
    {
        bridge.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Theory]
    [InlineData("rate")]
    [InlineData("roll", "--vehicle", "Type 3")]
    [InlineData("post")]
    [InlineData("methods")]
    [InlineData("measure")]
    [InlineData("limits")]
    [InlineData("report")]
    [InlineData("pack")]
    public void EveryLongCommand_Interrupted_EndsWith130AndWritesNothing(string command, params string[] options)
    {
        string file = Path.Combine(folder, command == "report" ? "out.html" : command == "pack" ? "out" : "out.txt");
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var output = new MemoryStream();
        using var error = new StringWriter { NewLine = "\n" };
        int status = CommandLineProgram.Run([command, bridge.Folder, .. options, "--out", file], new Surroundings(output, error, null, Colour: false) { Stop = stop.Token });
        Assert.Equal(ExitStatus.Interrupted, status);
        Assert.EndsWith("spanrater: interrupted; no file is left half-written.\n", error.ToString(), StringComparison.Ordinal);
        Assert.Equal(0, output.Length);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void Exercise_Interrupted_WritesNoFolder()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        using var error = new StringWriter { NewLine = "\n" };
        int status = CommandLineProgram.Run(["exercise", "--form", "pratt", "--seed", "1", "--out", Path.Combine(folder, "x")], new Surroundings(Stream.Null, error, null, Colour: false) { Stop = stop.Token });
        Assert.Equal(ExitStatus.Interrupted, status);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    [Fact]
    public void Rate_StoppedBetweenTwoVehicles_EndsThere()
    {
        using var stop = new CancellationTokenSource();
        SpanRater.Bridge read = SpanRater.Files.BridgeFolder.Read(bridge.Folder, []).Bridge!;
        IReadOnlyList<LiveLoad> vehicles = new StoppingList(SpanRater.Files.BridgeFolder.Read(bridge.Folder, []).VehiclesAsked[0], stop);
        Assert.Throws<OperationCanceledException>(() => BridgeRater.Rate(read, read.Rating.Method!, vehicles, stop.Token));
    }

    // A list of the same vehicle over and over, which the user interrupts at the third.
    private sealed class StoppingList(LiveLoad vehicle, CancellationTokenSource stop) : IReadOnlyList<LiveLoad>
    {
        public int Count => 100_000;

        public LiveLoad this[int index] => vehicle;

        public IEnumerator<LiveLoad> GetEnumerator()
        {
            for (int i = 0; i < Count; i++)
            {
                if (i == 2)
                {
                    stop.Cancel();
                }

                yield return vehicle;
                if (i > 10)
                {
                    yield break;
                }
            }
        }

        System.Collections.IEnumerator System.Collections.IEnumerable.GetEnumerator() => GetEnumerator();
    }
}
