using Tomlyn;
using Tomlyn.Parsing;
using Tomlyn.Syntax;

namespace SpanRater.Files;

/// <summary>A TOML file taken apart into its tables, each knowing where it stands; Tomlyn does the reading.</summary>
internal sealed class TomlFile
{
    private TomlFile(string file, TomlSection root, List<TomlSection> tables)
    {
        File = file;
        Root = root;
        Tables = tables;
    }

    public string File { get; }

    /// <summary>The keys above the first table.</summary>
    public TomlSection Root { get; }

    /// <summary>The tables, in the order of the file.</summary>
    public IReadOnlyList<TomlSection> Tables { get; }

    /// <summary>The tables of a text; null where it is not TOML.</summary>
    public static TomlFile? Read(string text, string file, FindingList findings)
    {
        DocumentSyntax document;
        try
        {
            document = SyntaxParser.Parse(text, file, true);
        }
        catch (TomlException e)
        {
            // It gives up on brackets within brackets; what else it may throw is told by where it stands.
            findings.Error(
                e.Span is { } at ? new Place(file, at.Start.Line + 1, at.Start.Column + 1) : new Place(file),
                e.Message.Contains("depth", StringComparison.OrdinalIgnoreCase) ? "brackets stand within brackets more than 64 deep, and no value is read so: close them." : "this is not TOML: mend what stands here; the rest of the file is read after that.");
            return null;
        }

        if (document.Diagnostics.Where(d => d.Kind == DiagnosticMessageKind.Error).MinBy(d => d.Span.Start.Offset) is { } first)
        {
            // One broken quote makes a cascade of messages; the first in the file is the one to mend.
            findings.Error(PlaceOf(file, first.Span), $"this is not TOML: {first.Message.Replace("␤", "the end of the line", StringComparison.Ordinal)}. Mend this first; the rest of the file is read after that.");
            return null;
        }

        var root = new TomlSection(file, "", new Place(file, 1, 1), findings);
        root.Add(document.KeyValues);
        var tables = new List<TomlSection>();
        foreach (TableSyntaxBase table in document.Tables)
        {
            var section = new TomlSection(file, table.Name!.ToString().Trim(), PlaceOf(file, table.Span), findings);
            section.Add(table.Items);
            tables.Add(section);
        }

        return new TomlFile(file, root, tables);
    }

    /// <summary>The one table of a name; null where there is none. A second one is a finding.</summary>
    public TomlSection? Find(string name, FindingList findings)
    {
        TomlSection[] named = [.. Tables.Where(t => t.Name == name)];
        if (named.Length > 1)
        {
            findings.Error(named[1].Where, $"table [{name}] is there twice, first on line {named[0].Where.Line}: join them.");
        }

        return named.FirstOrDefault();
    }

    internal static Place PlaceOf(string file, SourceSpan span) => new(file, span.Start.Line + 1, span.Start.Column + 1);
}
