using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>A part of a chapter: what a page says, a drawing, or something that opens.</summary>
public abstract record ReportPart
{
    private ReportPart()
    {
    }

    /// <summary>What a page says.</summary>
    /// <param name="Blocks">Its blocks.</param>
    public sealed record Said(IReadOnlyList<ResultBlock> Blocks) : ReportPart;

    /// <summary>A drawing in its own size.</summary>
    /// <param name="Drawing">The drawing.</param>
    /// <param name="Caption">What stands below it.</param>
    /// <param name="InWords">The drawing in words, for who cannot see it.</param>
    public sealed record Sketch(Drawing Drawing, string Caption, string InWords) : ReportPart;

    /// <summary>Drawings side by side where there is room.</summary>
    /// <param name="Sketches">The drawings.</param>
    public sealed record Gallery(IReadOnlyList<Sketch> Sketches) : ReportPart;

    /// <summary>Something that is closed until it is opened, and open on paper.</summary>
    /// <param name="Id">Its anchor.</param>
    /// <param name="Title">What stands on it while it is closed.</param>
    /// <param name="Parts">What it holds.</param>
    /// <param name="IsOpen">Whether it begins open.</param>
    public sealed record Fold(string Id, string Title, IReadOnlyList<ReportPart> Parts, bool IsOpen = false) : ReportPart;

    /// <summary>A way to another place in the report.</summary>
    /// <param name="Text">What it says.</param>
    /// <param name="Id">The anchor of the fold it leads into.</param>
    public sealed record Way(string Text, string Id) : ReportPart;

    /// <summary>A table whose headings, rows or cells lead to where they come from.</summary>
    /// <param name="Table">The table.</param>
    /// <param name="Headings">Anchor of the fold that a heading leads into, a column each, null for none; null where no heading leads anywhere.</param>
    /// <param name="Cells">Anchors of folds by row and column; a cell that is not there leads nowhere.</param>
    public sealed record Opening(ResultTable Table, IReadOnlyList<string?>? Headings, IReadOnlyDictionary<(int Row, int Column), string> Cells) : ReportPart;

    /// <summary>Steps of a solution, whose values a reader may hide and ask for step by step.</summary>
    /// <param name="Folds">The steps.</param>
    public sealed record Steps(IReadOnlyList<Fold> Folds) : ReportPart;

    /// <summary>The anchor within a fold: a browser that is led there opens the fold, and all folds around it.</summary>
    /// <param name="id">The fold's anchor.</param>
    public static string Within(string id) => $"{id}-in";

    /// <summary>A title that is short enough to stand on one thing among many; its whole text stands within.</summary>
    /// <param name="text">The text.</param>
    public static string Brief(string text)
    {
        const int Most = 160;
        ArgumentNullException.ThrowIfNull(text);
        return text.Length <= Most ? text : text[..(char.IsHighSurrogate(text[Most - 1]) ? Most - 1 : Most)] + "…";
    }
}
