namespace SpanRater.Files;

/// <summary>Whether a finding forbids the input or only asks for a second look.</summary>
public enum FindingSeverity
{
    /// <summary>The input is refused.</summary>
    Error,

    /// <summary>The input is used; the user should look again.</summary>
    Warning,
}

/// <summary>Where something stands in a file.</summary>
/// <param name="File">The file's name as a user would write it.</param>
/// <param name="Line">Physical line, from 1; null where the whole file is meant.</param>
/// <param name="Column">Character at which the cell or value starts, from 1; null where the whole line is meant.</param>
public sealed record Place(string File, int? Line = null, int? Column = null)
{
    /// <summary>file:line:column, as far as known.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture,
        $"{File}{(Line is null ? "" : $":{Line}")}{(Column is null ? "" : $":{Column}")}");
}

/// <summary>Something wrong, or worth a look, in the input: where, what, and the mend.</summary>
/// <param name="Severity">Whether the input is refused.</param>
/// <param name="Where">Where it stands.</param>
/// <param name="What">What is wrong, one sentence, and the mend.</param>
public sealed record Finding(FindingSeverity Severity, Place Where, string What)
{
    /// <summary>One line for a terminal.</summary>
    public override string ToString() => $"{Where}: {(Severity == FindingSeverity.Warning ? "warning: " : "")}{What}";
}

/// <summary>Collects findings while files are read, so that all of them are told in one go.</summary>
public sealed class FindingList
{
    /// <summary>More are kept than told, so that of several files the first is told first.</summary>
    private const int MostKept = 20 * InputLimits.MostErrorsTold;

    private readonly List<Finding> findings = [];
    private int errors;

    /// <summary>
    /// Every finding so far: errors before warnings, then by file in the order in which files were first found at fault, then by line
    /// and column; what is said of a whole file or line stands before what is said of a part of it.
    /// </summary>
    public IReadOnlyList<Finding> All
    {
        get
        {
            string[] files = [.. findings.Select(f => f.Where.File).Distinct()];
            Finding[] inOrder =
            [
                .. findings.OrderBy(f => f.Severity).ThenBy(f => Array.IndexOf(files, f.Where.File))
                    .ThenBy(f => f.Where.Line ?? 0).ThenBy(f => f.Where.Column ?? 0),
            ];
            if (errors <= InputLimits.MostErrorsTold)
            {
                return inOrder;
            }

            // The count stands where the errors end.
            string more = string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{errors - InputLimits.MostErrorsTold:N0} more faults are not listed: mend these first.");
            return [.. inOrder[..InputLimits.MostErrorsTold], new Finding(FindingSeverity.Error, new Place(inOrder[InputLimits.MostErrorsTold - 1].Where.File), more)];
        }
    }

    /// <summary>True when the input is refused.</summary>
    public bool HasErrors => errors > 0;

    /// <summary>Adds the findings of another list.</summary>
    /// <param name="others">The other list.</param>
    public void AddAll(FindingList others)
    {
        ArgumentNullException.ThrowIfNull(others);
        findings.AddRange(others.findings);
        errors += others.errors;
    }

    /// <summary>Adds an error.</summary>
    /// <param name="where">Where it stands.</param>
    /// <param name="what">What is wrong, and the mend.</param>
    public void Error(Place where, string what)
    {
        // Beyond what is told they are counted only.
        errors++;
        if (errors <= MostKept)
        {
            findings.Add(Printable(FindingSeverity.Error, where, what));
        }
    }

    /// <summary>Adds a warning.</summary>
    /// <param name="where">Where it stands.</param>
    /// <param name="what">What to look at.</param>
    public void Warning(Place where, string what) => findings.Add(Printable(FindingSeverity.Warning, where, what));

    // What it quotes of the input, and a file's name, may hold anything. Some findings show a file of several lines to begin with.
    private static Finding Printable(FindingSeverity severity, Place where, string what) => new(severity, where with { File = PrintableText.Of(where.File) }, PrintableText.Of(what, keepsLines: true));
}
