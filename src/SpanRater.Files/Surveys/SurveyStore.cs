using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace SpanRater.Files;

/// <summary>
/// The folder of a survey: the facts of each bridge in a file named by the hash of its input, and the tables. Every file appears whole or not at all, so that
/// a survey that was cut short goes on from what is whole.
/// </summary>
public sealed partial class SurveyStore : IDisposable
{
    private const string BridgesFolder = "bridges";
    private const string LockFile = "survey.lock";

    private static readonly string[] Tables = ["survey.json", "survey.csv", "survey.md", "survey.html", "matrix.csv", "crossings.csv", "changes.csv"];

    private readonly string path;
    private readonly string bridges;
    private readonly string version;
    private readonly string build;
    private readonly SurveyAsked asked;
    private readonly FileStream held;

    private SurveyStore(string path, string version, string build, SurveyAsked asked, FileStream held)
    {
        this.path = path;
        this.version = version;
        this.build = build;
        this.asked = asked;
        this.held = held;
        bridges = Path.Combine(path, BridgesFolder);
    }

    /// <summary>Why a survey cannot be kept in a folder; null where it can.</summary>
    /// <param name="path">The folder: not there yet, empty, or one that a survey wrote.</param>
    public static string? WhyNot(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        if (File.Exists(path))
        {
            return "is a file: name a folder.";
        }

        if (!Directory.Exists(path))
        {
            return NewFolder.WhyNot(path);
        }

        string[] others;
        try
        {
            others = [.. NotOfASurvey(path)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return "what is in it cannot be listed: see that you may read it, or name another folder.";
        }

        return others.Length == 0 ? null : $"holds what no survey wrote, such as {PrintableText.Of(others.Order(StringComparer.Ordinal).First())}: name a folder of its own, which holds what this survey says and nothing else.";
    }

    private static IEnumerable<string> NotOfASurvey(string path)
    {
        string bridges = Path.Combine(path, BridgesFolder);
        return
        [
            .. Directory.EnumerateFileSystemEntries(path).Select(e => Path.GetFileName(e)).Where(n => !Tables.Contains(n) && n is not (BridgesFolder or LockFile) && !StrayTable().IsMatch(n)),
            .. File.Exists(bridges) || new DirectoryInfo(bridges).LinkTarget is not null ? [BridgesFolder]
                : Directory.Exists(bridges) ? Directory.EnumerateFileSystemEntries(bridges).Select(e => Path.GetFileName(e)).Where(n => !OfBridge().IsMatch(n) && !StrayBridge().IsMatch(n)) : [],
        ];
    }

    /// <summary>Opens the folder for one survey at a time, and takes away what a survey that was killed left half-written.</summary>
    /// <param name="path">The folder; <see cref="WhyNot"/> has nothing against it.</param>
    /// <param name="version">Version of the program.</param>
    /// <param name="build">What tells this build of the program from another.</param>
    /// <param name="asked">What the survey was asked for.</param>
    /// <exception cref="IOException">It cannot be written, or another survey writes into it.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written.</exception>
    public static SurveyStore Open(string path, string version, string build, SurveyAsked asked)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        string full = Path.GetFullPath(path);
        Directory.CreateDirectory(Path.Combine(full, BridgesFolder));
        FileStream held;
        try
        {
            held = new FileStream(Path.Combine(full, LockFile), FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
        }
        catch (IOException)
        {
            throw new IOException("another survey writes into it: wait for that one to end, or name another folder");
        }

        foreach (string stray in Directory.EnumerateFiles(full).Where(f => StrayTable().IsMatch(Path.GetFileName(f))).Concat(Directory.EnumerateFiles(Path.Combine(full, BridgesFolder)).Where(f => StrayBridge().IsMatch(Path.GetFileName(f)))))
        {
            File.Delete(stray);
        }

        return new SurveyStore(full, version, build, asked, held);
    }

    /// <summary>What an earlier run kept of a bridge: null where there is nothing, or it is of other input, of another build or for other vehicles, or was changed since.</summary>
    /// <param name="hash">Hash of the bridge's input.</param>
    /// <param name="folder">The bridge's folder, as the survey shows it.</param>
    public SurveyedBridge? Kept(string hash, string folder)
    {
        string file = FileOf(hash);
        if (!File.Exists(file))
        {
            return null;
        }

        try
        {
            byte[] bytes = File.ReadAllBytes(file);
            using var json = JsonDocument.Parse(bytes);
            JsonElement root = json.RootElement;
            bool isSame = FactsSeal.Holds(bytes, root.GetProperty(FactsSeal.Field).GetString()) && root.GetProperty("format").GetInt32() == ResultFormats.JsonFormat && root.GetProperty("program").GetString() == version && root.GetProperty("build").GetString() == build;
            SurveyAsked before = SurveyReader.Asked(root);
            isSame &= before.Crosses == asked.Crosses && (before.Vehicles is null) == (asked.Vehicles is null) && (before.Vehicles ?? []).SequenceEqual(asked.Vehicles ?? []);
            return isSame && SurveyReader.Bridge(root, folder) is { } bridge && bridge.Hash == hash ? bridge : null;
        }
        catch (Exception e) when (e is JsonException or FormatException or KeyNotFoundException or InvalidOperationException or IOException or UnauthorizedAccessException)
        {
            // What cannot be read back is rated again.
            return null;
        }
    }

    /// <summary>Keeps what was found of a bridge; one whose input has no hash is not kept.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <returns>Whether it is kept.</returns>
    /// <exception cref="IOException">It cannot be written.</exception>
    public bool Keep(SurveyedBridge bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        if (bridge.Hash is not { } hash || bridge.IsFault)
        {
            return false;
        }

        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, new JsonWriterOptions { Indented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteNumber("format", ResultFormats.JsonFormat);
            json.WriteString(FactsSeal.Field, FactsSeal.Open);
            json.WriteString("program", version);
            json.WriteString("build", build);
            json.WriteString("caution", Words.Caution);
            SurveyJson.WriteAsked(json, asked);
            SurveyJson.WriteBridge(json, bridge);
            json.WriteEndObject();
        }

        stream.WriteByte((byte)'\n');
        Memory<byte> bytes = stream.GetBuffer().AsMemory(0, (int)stream.Length);
        FactsSeal.Close(bytes.Span);
        WholeFile.WriteReplaceable(FileOf(hash), bytes);
        return true;
    }

    /// <summary>Whether the folder holds the facts of more bridges than so many, of this run or an earlier one.</summary>
    /// <param name="number">The number.</param>
    public bool HasMoreThan(int number) => Directory.Exists(bridges) && Directory.EnumerateFiles(bridges).Count(f => OfBridge().IsMatch(Path.GetFileName(f))) > number;

    /// <summary>Writes the tables, and takes away what an earlier survey left that is not of this one.</summary>
    /// <param name="tables">The tables: name of the file, and what writes it.</param>
    /// <param name="hashes">Hashes of the bridges of this survey.</param>
    /// <exception cref="IOException">A table cannot be written.</exception>
    public void Finish(IReadOnlyList<(string File, Action<Stream> Write)> tables, IEnumerable<string> hashes)
    {
        ArgumentNullException.ThrowIfNull(tables);
        foreach ((string file, Action<Stream> write) in tables)
        {
            WholeFile.Write(Path.Combine(path, file), write);
        }

        var kept = hashes.Select(h => h + ".json").ToHashSet(StringComparer.Ordinal);
        foreach (string old in Directory.EnumerateFiles(bridges).Where(f => OfBridge().IsMatch(Path.GetFileName(f)) && !kept.Contains(Path.GetFileName(f)))
            .Concat(Tables.Where(t => !tables.Any(n => n.File == t)).Select(t => Path.Combine(path, t)).Where(File.Exists)))
        {
            File.Delete(old);
        }
    }

    /// <summary>Lets another survey write into the folder.</summary>
    public void Dispose() => held.Dispose();

    // A hash is sixty-four hexadecimal digits: no name of a bridge is part of a path.
    private string FileOf(string hash) => Path.Combine(bridges, hash + ".json");

    [GeneratedRegex("^[0-9a-f]{64}\\.json$")]
    private static partial Regex OfBridge();

    [GeneratedRegex("^[0-9a-f]{64}\\.json\\.[0-9a-f]{32}\\.part$")]
    private static partial Regex StrayBridge();

    [GeneratedRegex("^(survey\\.(json|csv|md|html)|(matrix|crossings|changes)\\.csv)\\.[0-9a-f]{32}\\.part$")]
    private static partial Regex StrayTable();
}
