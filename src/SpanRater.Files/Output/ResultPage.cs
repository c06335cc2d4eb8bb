using System.Text.Json;

namespace SpanRater.Files;

/// <summary>A part of a document: what a command prints on a terminal or writes as Markdown.</summary>
public abstract record ResultBlock
{
    private ResultBlock()
    {
    }

    /// <summary>The title of what follows.</summary>
    /// <param name="Text">The title.</param>
    /// <param name="Level">1 for the title of the page, 2 for its parts, 3 for theirs.</param>
    public sealed record Heading(string Text, int Level = 2) : ResultBlock;

    /// <summary>A sentence or two.</summary>
    /// <param name="Text">The sentences.</param>
    /// <param name="Strong">True where it must not be overlooked.</param>
    public sealed record Paragraph(string Text, bool Strong = false) : ResultBlock
    {
        /// <summary>True where it tells what was sought: a page for learners may hide it until asked for.</summary>
        public bool IsAnswer { get; init; }
    }

    /// <summary>Items under a lead.</summary>
    /// <param name="Lead">What they are.</param>
    /// <param name="Entries">The items.</param>
    public sealed record Items(string Lead, IReadOnlyList<string> Entries) : ResultBlock
    {
        /// <summary>True where they tell what was sought: a page for learners may hide them until asked for.</summary>
        public bool IsAnswer { get; init; }
    }

    /// <summary>A table.</summary>
    /// <param name="Content">The table.</param>
    public sealed record Grid(ResultTable Content) : ResultBlock;

    /// <summary>An equation, or one step of it, on a line of its own.</summary>
    /// <param name="Text">As a terminal shows it: plain characters.</param>
    /// <param name="Tex">The same as TeX, without dollar signs.</param>
    public sealed record Equation(string Text, string Tex) : ResultBlock
    {
        /// <summary>True where it works out what was sought: a page for learners may hide it until asked for.</summary>
        public bool IsAnswer { get; init; }
    }

    /// <summary>A picture in a file of its own.</summary>
    /// <param name="Caption">What it shows.</param>
    /// <param name="File">Name of the file, as a reader of the page finds it.</param>
    public sealed record Figure(string Caption, string File) : ResultBlock;
}

/// <summary>What a command has to say, said once and ready to be written as text, Markdown, CSV or JSON.</summary>
/// <param name="Blocks">The document; its first heading is the title of the page.</param>
/// <param name="Rows">The CSV table: every row, nothing left out.</param>
/// <param name="Notes">Lines that the CSV carries above its header, each behind a #.</param>
/// <param name="WriteJson">Writes the facts, between the braces of the document.</param>
/// <param name="IsAnswer">False where the input was understood and no answer can be given.</param>
/// <param name="UndercutsLimit">True where a limit is undercut, which is more urgent than any other answer.</param>
public sealed record ResultPage(
    IReadOnlyList<ResultBlock> Blocks,
    ResultTable Rows,
    IReadOnlyList<string> Notes,
    Action<Utf8JsonWriter> WriteJson,
    bool IsAnswer = true,
    bool UndercutsLimit = false);
