using System.Text.RegularExpressions;
using System.Xml.Linq;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Reports;

/// <summary>A pack that the program wrote into a place of its own.</summary>
internal sealed partial class PackOnDisk : IDisposable
{
    private readonly string place = Directory.CreateTempSubdirectory("span-pack-").FullName;

    public PackOnDisk(string bridge, params string[] options) => Run = Run.Of(["pack", bridge, "--out", Folder, .. options]);

    public Run Run { get; }

    public string Folder => Path.Combine(place, "out");

    /// <summary>Names of the files, in order.</summary>
    public IEnumerable<string> Files => Directory.EnumerateFileSystemEntries(Folder).Select(f => Path.GetFileName(f)).Order(StringComparer.Ordinal);

    /// <summary>What stands beside the folder: nothing, unless something was left behind.</summary>
    public IEnumerable<string> Beside => Directory.EnumerateFileSystemEntries(place).Where(e => e != Folder);

    public string Text(string file) => File.ReadAllText(Path.Combine(Folder, file));

    public byte[] Bytes(string file) => File.ReadAllBytes(Path.Combine(Folder, file));

    /// <summary>A Markdown file as a reader sees it: without the strokes that keep characters from becoming mark-up.</summary>
    public string Read(string file) => Stroke().Replace(Text(file), "$1");

    /// <summary>A page as XML: what is not encoded would break it.</summary>
    public XDocument Page(string file) => ReportHtml.Parsed(Text(file));

    /// <summary>The texts of the sign in the order in which they are read; lines of one sentence are joined.</summary>
    public string Sign() => string.Join(' ', XDocument.Parse(Text("sign.svg")).Descendants().Where(e => e.Name.LocalName == "text").Select(e => e.Value));

    public void Dispose() => Directory.Delete(place, recursive: true);

    [GeneratedRegex(@"\\([\\`*_\[\]<>|#$])")]
    private static partial Regex Stroke();
}
