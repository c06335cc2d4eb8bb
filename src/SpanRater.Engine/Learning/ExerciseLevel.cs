namespace SpanRater;

/// <summary>How much an exercise asks for.</summary>
public enum ExerciseLevel
{
    /// <summary>Both reactions and two members near an end.</summary>
    Easy,

    /// <summary>Both reactions and members of an inner panel: chords, web, an inclined chord where there is one.</summary>
    Medium,

    /// <summary>Influence ordinates of members, and their peaks under a small axle train.</summary>
    Hard,
}

/// <summary>The units in which an exercise has whole numbers.</summary>
/// <param name="Length">One unit of length [m].</param>
/// <param name="LengthStep">Lengths are multiples of this many units [-].</param>
/// <param name="Force">One unit of force [N].</param>
/// <param name="ForceScale">A middling joint load, in units of force [-].</param>
public sealed record ExerciseUnits(double Length, double LengthStep, double Force, int ForceScale)
{
    /// <summary>Feet and kips.</summary>
    public static ExerciseUnits Us { get; } = new(0.3048, 1, 4_448.2216152605, 12);

    /// <summary>Metres, in halves, and kilonewtons.</summary>
    public static ExerciseUnits Si { get; } = new(1, 0.5, 1_000, 60);
}
