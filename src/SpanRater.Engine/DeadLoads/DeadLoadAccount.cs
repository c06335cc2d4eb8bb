namespace SpanRater;

/// <summary>What a dead load case of a bridge is made of.</summary>
public enum DeadOrigin
{
    /// <summary>There is no such case.</summary>
    None,

    /// <summary>The joint loads given for it alone; nothing was taken off.</summary>
    Given,

    /// <summary>The items of the take-off alone.</summary>
    TakeOff,

    /// <summary>The items of the take-off, and the joint loads given besides.</summary>
    Both,

    /// <summary>The joint loads given, in place of the items of the take-off, which do not count.</summary>
    GivenInstead,
}

/// <summary>Where the dead load of a bridge is from. Immutable.</summary>
/// <param name="TakeOff">The take-off; null where all is given as joint loads.</param>
/// <param name="Components">What case DC is made of.</param>
/// <param name="WearingSurface">What case DW is made of.</param>
/// <param name="Given">DC and DW as far as joint loads are given for them, on one truss.</param>
public sealed record DeadLoadAccount(TakeOff? TakeOff, DeadOrigin Components, DeadOrigin WearingSurface, IReadOnlyList<LoadCase> Given)
{
    /// <summary>What a case is made of.</summary>
    /// <param name="kind">The case.</param>
    public DeadOrigin Of(DeadCase kind) => kind == DeadCase.Components ? Components : WearingSurface;

    /// <summary>Makes the account, and the dead load cases of the left truss, and of the right one where they differ.</summary>
    /// <param name="takeOff">The take-off; null where there is none.</param>
    /// <param name="given">DC and DW as far as joint loads are given for them.</param>
    /// <param name="instead">True where a case given stands in place of the take-off's, false where it adds to it.</param>
    public static (DeadLoadAccount Account, IReadOnlyList<LoadCase> Left, IReadOnlyList<LoadCase>? Right) Make(TakeOff? takeOff, IReadOnlyList<LoadCase> given, bool instead)
    {
        ArgumentNullException.ThrowIfNull(given);
        var left = new List<LoadCase>();
        var right = new List<LoadCase>();
        var origins = new DeadOrigin[2];
        foreach (DeadCase kind in Enum.GetValues<DeadCase>())
        {
            string name = kind == DeadCase.Components ? Bridge.ComponentsCase : Bridge.WearingSurfaceCase;
            LoadCase? table = given.FirstOrDefault(c => c.Name == name), onLeft = takeOff?.CaseOf(kind, 0), onRight = takeOff?.CaseOf(kind, 1);
            origins[(int)kind] = (onLeft, table) switch
            {
                (null, null) => DeadOrigin.None,
                (null, _) => DeadOrigin.Given,
                (_, null) => DeadOrigin.TakeOff,
                _ => instead ? DeadOrigin.GivenInstead : DeadOrigin.Both,
            };
            left.AddRange(Case(origins[(int)kind], onLeft, table));
            right.AddRange(Case(origins[(int)kind], onRight, table));
        }

        bool alike = Enum.GetValues<DeadCase>().All(k => origins[(int)k] is not (DeadOrigin.TakeOff or DeadOrigin.Both) || takeOff!.TrussesAlike(k));
        return (new DeadLoadAccount(takeOff, origins[0], origins[1], given), left, alike ? null : right);
    }

    private static IEnumerable<LoadCase> Case(DeadOrigin origin, LoadCase? taken, LoadCase? given) => origin switch
    {
        DeadOrigin.None => [],
        DeadOrigin.TakeOff => [taken!],
        DeadOrigin.Both => [LoadCase.Sum(taken!.Name, (taken, 1), (given, 1))],
        _ => [given!],
    };
}
