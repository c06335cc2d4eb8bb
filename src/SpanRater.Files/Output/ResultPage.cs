using System.Text.Json;

namespace SpanRater.Files;

/// <summary>A part of what a command prints on a terminal.</summary>
public abstract record ResultBlock
{
    private ResultBlock()
    {
    }

    /// <summary>The title of what follows.</summary>
    /// <param name="Text">The title.</param>
    public sealed record Heading(string Text) : ResultBlock;

    /// <summary>A sentence or two.</summary>
    /// <param name="Text">The sentences.</param>
    /// <param name="Strong">True where it must not be overlooked.</param>
    public sealed record Paragraph(string Text, bool Strong = false) : ResultBlock;

    /// <summary>Items under a lead.</summary>
    /// <param name="Lead">What they are.</param>
    /// <param name="Entries">The items.</param>
    public sealed record Items(string Lead, IReadOnlyList<string> Entries) : ResultBlock;

    /// <summary>A table.</summary>
    /// <param name="Content">The table.</param>
    public sealed record Grid(ResultTable Content) : ResultBlock;
}

/// <summary>What a command has to say, ready to be written as text, CSV or JSON.</summary>
/// <param name="Blocks">The text.</param>
/// <param name="Rows">The CSV table: every row, nothing left out.</param>
/// <param name="Notes">Lines that the CSV carries above its header, each behind a #.</param>
/// <param name="WriteJson">Writes the facts, between the braces of the document.</param>
/// <param name="IsAnswer">False where the input was understood and no answer can be given.</param>
public sealed record ResultPage(
    IReadOnlyList<ResultBlock> Blocks,
    ResultTable Rows,
    IReadOnlyList<string> Notes,
    Action<Utf8JsonWriter> WriteJson,
    bool IsAnswer = true);
