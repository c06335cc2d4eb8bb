namespace SpanRater.Cli.Commands;

/// <summary>What a command writes.</summary>
internal enum Writes
{
    /// <summary>A page, in the format asked for.</summary>
    Page,

    /// <summary>A page in the format asked for, HTML among them, or a folder of tables.</summary>
    Survey,

    /// <summary>A report: one HTML file.</summary>
    Report,

    /// <summary>A folder of documents.</summary>
    Folder,
}
