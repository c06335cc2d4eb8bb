using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The files that <c>pack</c> writes: the calculation pack, the letter and the sign.</summary>
public static class PackFolder
{
    /// <summary>The files, all made before any is written.</summary>
    /// <param name="reviewed">The bridge.</param>
    /// <param name="pack">Its calculation pack.</param>
    public static IReadOnlyList<NewFile> Files(ReviewedBridge reviewed, CalculationPack pack)
    {
        ArgumentNullException.ThrowIfNull(reviewed);
        ArgumentNullException.ThrowIfNull(pack);
        var letter = OwnerLetter.Of(reviewed);
        return
        [
            new("calculation.md", pack.Markdown()),
            new("calculation.html", pack.Html()),
            new("letter.md", letter.Markdown()),
            new("letter.html", letter.Html()),
            new(SignChapter.File, SignChapter.Svg(reviewed)),
        ];
    }
}
