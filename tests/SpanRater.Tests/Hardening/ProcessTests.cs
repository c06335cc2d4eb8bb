using System.Diagnostics;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Hardening;

/// <summary>A few real processes: what only a process can show. A hundred kills while writing are those of tests/SpanRater.Fuzz, recorded in docs/reliability.md.</summary>
public sealed class ProcessTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("span-process-").FullName;

    public void Dispose() => Directory.Delete(folder, recursive: true);

    [Theory]
    [InlineData(0)]
    [InlineData(250)]
    [InlineData(400)]
    public void Exercise_KilledAtSomeMoment_LeavesAWholeFolderOrNone(int milliseconds)
    {
        string path = Path.Combine(folder, "exercise");
        using Process process = Start("exercise", "--form", "pratt", "--seed", "1", "--out", path);
        Thread.Sleep(milliseconds);
        process.Kill();
        process.WaitForExit();
        string[] files = Directory.Exists(path) ? [.. Directory.EnumerateFiles(path, "*", SearchOption.AllDirectories)] : [];
        Assert.True(files.Length is 0 || files.Select(Path.GetFileName).Contains("members.csv"), string.Join(' ', files));
        Assert.All(Directory.EnumerateFileSystemEntries(folder).Where(e => e != path), e => Assert.EndsWith(".part", e, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("INT")]
    [InlineData("TERM")]
    public void Report_Signalled_EndsWith130AndLeavesNothing(string signal)
    {
        if (OperatingSystem.IsWindows())
        {
            // There no process is sent a signal by another.
            return;
        }

        string path = Path.Combine(folder, "report.html");
        using Process process = Start("report", Repository.Sample("garrow-landing"), "--out", path);

        WaitForHandlers(process);
        using (Process kill = Process.Start("kill", [$"-{signal}", process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)]))
        {
            kill.WaitForExit();
        }

        string error = process.StandardError.ReadToEnd();
        process.WaitForExit();
        Assert.Equal(130, process.ExitCode);
        Assert.Contains("spanrater: interrupted; no file is left half-written.", error, StringComparison.Ordinal);
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
    }

    // The engine is loaded after the handlers are set, and the report takes far longer than to load it.
    private static void WaitForHandlers(Process process)
    {
        string loaded = $"/proc/{process.Id.ToString(System.Globalization.CultureInfo.InvariantCulture)}/maps";
        if (!OperatingSystem.IsLinux())
        {
            Thread.Sleep(1000);
            return;
        }

        while (!process.HasExited && !LoadedIn(loaded).Contains("SpanRater.Engine.dll", StringComparison.Ordinal))
        {
            Thread.Sleep(10);
        }
    }

    private static string LoadedIn(string maps)
    {
        try
        {
            return File.ReadAllText(maps);
        }
        catch (IOException)
        {
            return "";
        }
    }

    // What runs in the background of a shell ignores SIGINT, and so would what it starts, this suite and its processes among them.
    private static Process Start(params string[] args)
    {
        string[] command = [Path.Combine(AppContext.BaseDirectory, "spanrater.dll"), .. args];
        ProcessStartInfo start = OperatingSystem.IsLinux() ? new("env", ["--default-signal=INT", "dotnet", .. command]) : new("dotnet", command);
        start.RedirectStandardError = true;
        start.RedirectStandardOutput = true;
        return Process.Start(start)!;
    }
}
