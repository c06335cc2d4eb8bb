namespace SpanRater.Tests.CommandLine;

/// <summary>A folder of bridges for a survey, made of small king-posts that differ in what they carry.</summary>
internal sealed class CountyOnDisk : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("span-county-").FullName;

    public CountyOnDisk() => Directory.CreateDirectory(Folder);

    /// <summary>What is surveyed.</summary>
    public string Folder => Path.Combine(place, "county");

    /// <summary>A place for what is written.</summary>
    public string At(string name) => Path.Combine(place, name);

    public string PathOf(string bridge, string file) => Path.Combine(Folder, bridge, file);

    /// <summary>Adds the king-post of <see cref="BridgeOnDisk"/>: with capacities of 40 kip as it is, more or less by what they are scaled with.</summary>
    public CountyOnDisk Add(string folder, string? name = null, string capacity = "40")
    {
        string at = Path.Combine(Folder, folder);
        Directory.CreateDirectory(at);
        using var bridge = new BridgeOnDisk();
        foreach (string file in Directory.EnumerateFiles(bridge.Folder))
        {
            string text = File.ReadAllText(file).Replace("Test bridge", name ?? $"Bridge of {Path.GetFileName(folder)}", StringComparison.Ordinal);
            File.WriteAllText(Path.Combine(at, Path.GetFileName(file)), Path.GetFileName(file) == "members.csv" ? text.Replace(",40", "," + capacity, StringComparison.Ordinal) : text);
        }

        return this;
    }

    public CountyOnDisk Replace(string bridge, string file, string old, string with)
    {
        string text = File.ReadAllText(PathOf(bridge, file));
        Assert.Contains(old, text, StringComparison.Ordinal);
        File.WriteAllText(PathOf(bridge, file), text.Replace(old, with, StringComparison.Ordinal));
        return this;
    }

    /// <summary>Surveys the folder.</summary>
    public Run Survey(params string[] options) => Run.Of(["survey", Folder, .. options]);

    /// <summary>Every file of a folder, by its path there, as text.</summary>
    public IReadOnlyDictionary<string, string> Files(string name) =>
        Directory.EnumerateFiles(At(name), "*", SearchOption.AllDirectories).ToDictionary(f => Path.GetRelativePath(At(name), f), File.ReadAllText, StringComparer.Ordinal);

    public void Dispose() => Directory.Delete(place, recursive: true);
}
