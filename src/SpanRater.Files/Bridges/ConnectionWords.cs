namespace SpanRater.Files;

/// <summary>The words of connections.csv.</summary>
internal static class ConnectionWords
{
    /// <summary>Kinds of connections.</summary>
    public static readonly (string Word, PartKind Kind)[] Kinds =
    [
        ("pin", PartKind.Pin), ("eyebar head", PartKind.EyebarHead), ("pin plate", PartKind.PinPlate), ("rivets", PartKind.Rivets), ("bolts", PartKind.Bolts), ("gusset", PartKind.Gusset),
    ];

    /// <summary>Grades of rivets.</summary>
    public static readonly (string Word, FastenerGrade Grade)[] RivetGrades = [("A502 grade 1", FastenerGrade.RivetGrade1), ("A502 grade 2", FastenerGrade.RivetGrade2)];

    /// <summary>Grades of bolts.</summary>
    public static readonly (string Word, FastenerGrade Grade)[] BoltGrades = [("A325 threads out", FastenerGrade.BoltThreadsOut), ("A325 threads in", FastenerGrade.BoltThreadsIn)];

    /// <summary>What a user writes to accept the strength of rivets by the year of building, or of an unknown year.</summary>
    public const string ByYear = "by year", Unknown = "unknown";

    /// <summary>What stands on a pin in place of a member.</summary>
    public const string Floor = "floor", Bearing = "bearing";

    /// <summary>The columns that a kind needs, and those that it may have besides.</summary>
    public static (string[] Needs, string[] May) ColumnsOf(PartKind kind, bool hasMember) => kind switch
    {
        PartKind.Pin => (["diameter"], ["remaining"]),
        PartKind.EyebarHead => (["member", "count", "width", "hole", "thickness"], ["remaining"]),
        PartKind.PinPlate => (["member", "count", "thickness", "diameter"], ["remaining"]),
        PartKind.Rivets or PartKind.Bolts => (["member", "grade", "count", "diameter", "planes", "thickness"], ["remaining"]),
        _ when hasMember => (["member", "count", "thickness", "lines", "per line", "gauge", "pitch", "edge", "hole"], ["remaining", "middle length"]),
        _ => (["count", "thickness", "length"], ["remaining", "holes"]),
    };

    /// <summary>Every column with a measure.</summary>
    public static readonly string[] Measures =
        ["member", "grade", "count", "diameter", "thickness", "remaining", "width", "hole", "planes", "lines", "per line", "gauge", "pitch", "edge", "middle length", "length", "holes"];
}
