namespace SpanRater;

/// <summary>Clauses of the top chord of a pony truss, held by the frames of posts and floorbeams.</summary>
public static class PonyClauses
{
    /// <summary>Force that moves the chord by one unit across the bridge, from posts of height h and Ic and a floorbeam of length b and Ib.</summary>
    public static Clause FrameStiffness { get; } = new(
        "stiffness of a frame", Standard.Footbridges, "7.1.2", "force that moves the chord by one unit across the bridge, from posts of height h and Ic and a floorbeam of length b and Ib",
        "E/(h³/(3 Ic) + h² b/(2 Ib))", ClauseMark.Memory);

    /// <summary>Elastic load of a long chord on frames of stiffness C at distance d; holds where its half wave is longer than 1.3 panels.</summary>
    public static Clause Engesser { get; } = new(
        "chord on elastic frames", Standard.ElasticStability, "ch. 2", "elastic load of a long chord on frames of stiffness C at distance d; holds where its half wave is longer than 1.3 panels",
        "2 √(C E I/d); K ≥ 1.3", ClauseMark.Memory);

    /// <summary>Force across the bridge at the top of each post, as part of the compression of the chord.</summary>
    public static Clause FrameForce { get; } = new(
        "force on posts of a pony truss", Standard.Footbridges, "7.1.1", "force across the bridge at the top of each post, as part of the compression of the chord",
        "0.01/K, at least 0.003", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        FrameStiffness, Engesser, FrameForce,
    ];
}
