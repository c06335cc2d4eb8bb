using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>The generic drawing of the sign: as a chapter of the pack and as a file of its own.</summary>
internal static class SignChapter
{
    /// <summary>Name of its file.</summary>
    public const string File = "sign.svg";

    /// <summary>The chapter.</summary>
    public static ReportChapter Of(ReviewedBridge reviewed) =>
        new("sign", "Sign face, generic", [], Drawing(reviewed), InWords(reviewed)) { IsOnPaper = true, DrawingFile = File };

    /// <summary>The file.</summary>
    public static byte[] Svg(ReviewedBridge reviewed) => HtmlFile.Bytes<DrawingView>(
        "", (nameof(DrawingView.Drawing), Drawing(reviewed)), (nameof(DrawingView.InWords), InWords(reviewed)), (nameof(DrawingView.Standalone), true));

    private static Drawing Drawing(ReviewedBridge reviewed) =>
        SignPicture.Of(reviewed.Name, reviewed.Sign, [.. StayOff(reviewed), ScopeWording.Of(reviewed.Rating), .. reviewed.NotRated.Select(n => $"{NotRatedList.Lead} {n}."), .. reviewed.NotCovered is { } notCovered ? [notCovered] : Array.Empty<string>(), Words.Caution]);

    // What no face covers must not be read as free to cross.
    private static IEnumerable<string> StayOff(ReviewedBridge reviewed) =>
        [.. reviewed.IsToBeKeptOff ? [OwnerLetter.KeepOff] : Array.Empty<string>(), .. reviewed.Posting is { } posting ? ProposalWording.Others(posting) : []];

    private static string InWords(ReviewedBridge reviewed)
    {
        SignFace face = reviewed.Sign;
        string lines = string.Concat(face.Lines.Select(l => $"; {l.What}: {l.Says}"));
        return $"A plain panel that says {face.Headline}{lines}. {SignFace.Generic} Proposed, for the decision of the responsible engineer.";
    }
}
