namespace SpanRater.Files;

/// <summary>The words of materials.toml.</summary>
internal static class MaterialWords
{
    public static IReadOnlyList<(string Word, MaterialKind Kind)> Kinds { get; } =
    [
        ("steel", MaterialKind.Steel), ("wrought iron", MaterialKind.WroughtIron), ("pin", MaterialKind.Pin), ("rivet", MaterialKind.Rivet), ("timber", MaterialKind.Timber),
    ];

    public static IReadOnlyList<(string Word, TimberSizeClass Class)> SizeClasses { get; } =
    [
        ("2-4 in thick", TimberSizeClass.Dimension),
        ("beams and stringers", TimberSizeClass.BeamsAndStringers),
        ("posts and timbers", TimberSizeClass.PostsAndTimbers),
        ("5x5 in and larger", TimberSizeClass.Timbers),
    ];

    public static IReadOnlyList<(string Word, LoadDuration Duration)> Durations { get; } =
    [
        ("permanent", LoadDuration.Permanent),
        ("ten years", LoadDuration.TenYears),
        ("two months", LoadDuration.TwoMonths),
        ("seven days", LoadDuration.SevenDays),
        ("ten minutes", LoadDuration.TenMinutes),
        ("impact", LoadDuration.Impact),
    ];

    /// <summary>The kind as it stands in a sentence after a year: 1897 steel, 1897 rivets.</summary>
    public static string Of(MaterialKind kind) => kind switch
    {
        MaterialKind.Pin => "pins",
        MaterialKind.Rivet => "rivets",
        _ => Kinds.First(k => k.Kind == kind).Word,
    };
}
