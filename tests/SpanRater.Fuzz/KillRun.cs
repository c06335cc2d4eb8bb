using System.Diagnostics;
using System.Globalization;
using MathNet.Numerics.Random;
using SpanRater.Files;

namespace SpanRater.Fuzz;

/// <summary>
/// Kills real processes while they write, so that no handler of theirs runs, and looks at what they leave: a file is the old or the new one, a folder is whole or not
/// there. The writer does nothing but write, so that every kill falls into a write.
/// </summary>
/// <param name="count">How many are killed.</param>
/// <param name="output">Takes what came of it.</param>
public sealed class KillRun(int count, TextWriter output)
{
    /// <summary>The verb of the process that is killed.</summary>
    public const string WriterVerb = "write-forever";

    private const int FileBytes = 3_000_000, FolderFiles = 12, FolderFileBytes = 200_000;

    /// <summary>Writes one file and new folders, over and over.</summary>
    /// <param name="folder">Where.</param>
    public static void WriteForever(string folder)
    {
        for (byte round = 1; ; round = (byte)((round % 200) + 1))
        {
            WholeFile.Write(Path.Combine(folder, "report.html"), Contents(round, FileBytes));
            string name = Path.Combine(folder, $"pack-{Guid.NewGuid():N}");
            if (round % 2 == 0)
            {
                // An empty folder that is there.
                Directory.CreateDirectory(name);
            }

            NewFolder.Write(name, [.. Enumerable.Range(0, FolderFiles).Select(i => new NewFile($"part/{i.ToString(CultureInfo.InvariantCulture)}.md", Contents(round, FolderFileBytes)))]);
        }
    }

    /// <summary>Kills the writers. 0 where nothing half is left, 1 otherwise.</summary>
    public int Run()
    {
        var chance = new Xoshiro256StarStar(7);
        int half = 0, files = 0, folders = 0, leftOver = 0;
        for (int k = 0; k < count; k++)
        {
            string folder = Directory.CreateTempSubdirectory("span-kill-").FullName;
            using Process writer = Process.Start(new ProcessStartInfo(Environment.ProcessPath!, Arguments(folder)) { RedirectStandardError = true })!;
            string first = Path.Combine(folder, "report.html");
            while (!File.Exists(first) && !writer.HasExited)
            {
                Thread.Sleep(5);
            }

            Thread.Sleep(chance.Next(400));
            writer.Kill();
            writer.WaitForExit();
            foreach (string entry in Directory.EnumerateFileSystemEntries(folder))
            {
                string name = Path.GetFileName(entry);
                if (name.EndsWith(".part", StringComparison.Ordinal))
                {
                    leftOver++;
                }
                else if (File.Exists(entry))
                {
                    files++;
                    half += IsWhole(entry, FileBytes) ? 0 : 1;
                }
                else
                {
                    folders++;
                    string[] within = Directory.GetFiles(entry, "*", SearchOption.AllDirectories);
                    half += within.Length == 0 || (within.Length == FolderFiles && within.All(f => IsWhole(f, FolderFileBytes))) ? 0 : 1;
                }
            }

            Directory.Delete(folder, recursive: true);
        }

        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count} writers killed: {half} half of {files} files and {folders} folders; {leftOver} left-overs that end in .part"));
        return half == 0 && files == count ? 0 : 1;
    }

    // A file of one round holds the same byte throughout.
    private static byte[] Contents(byte round, int length)
    {
        byte[] bytes = new byte[length];
        bytes.AsSpan().Fill(round);
        return bytes;
    }

    private static bool IsWhole(string file, int length)
    {
        byte[] bytes = File.ReadAllBytes(file);
        return bytes.Length == length && !bytes.AsSpan().ContainsAnyExcept(bytes[0]);
    }

    private static string[] Arguments(string folder) =>
        Path.GetFileNameWithoutExtension(Environment.ProcessPath) is "dotnet" ? [typeof(KillRun).Assembly.Location, WriterVerb, folder] : [WriterVerb, folder];
}
