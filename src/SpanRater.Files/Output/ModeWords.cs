namespace SpanRater.Files;

/// <summary>The trade's words for the way in which a member fails first.</summary>
public static class ModeWords
{
    /// <summary>The mode in a few words; of a column with the plane in which it buckles.</summary>
    /// <param name="mode">The mode.</param>
    public static string Of(ModeAtCut mode)
    {
        ArgumentNullException.ThrowIfNull(mode);
        return mode.Strength.Mode switch
        {
            MemberMode.GrossYield => "gross yield",
            MemberMode.NetRupture => "net rupture",
            MemberMode.NetYield => "yield of the net section",
            MemberMode.EyebarBody => "eyebar body",
            MemberMode.EyebarHead => "eyebar head",
            MemberMode.RodRoot => "rod at thread root",
            MemberMode.Buckling => mode.Axes is { } axes && ReferenceEquals(axes.Governing, axes.OutOfPlane) ? "buckling out of plane" : "buckling in plane",
            MemberMode.TensionAndMoment => "tension and moment",
            MemberMode.CompressionAndMoment => "compression and moment",
            MemberMode.TimberTension => "timber in tension",
            MemberMode.TimberCompression => "timber as a column",
            _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "Every mode has a word."),
        };
    }
}
