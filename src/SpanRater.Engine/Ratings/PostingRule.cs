namespace SpanRater;

/// <summary>How the safe load of a type of vehicle follows from its rating factor.</summary>
public enum PostingRule
{
    /// <summary>
    /// <c>(W / 0.7)(RF − 0.3)</c> for 0.3 ≤ RF &lt; 1; below 0.3 the type is barred. Source: AASHTO Manual for Bridge Evaluation,
    /// 3rd ed. (2018), 6A.8.3, from memory.
    /// </summary>
    ReducedLegal,

    /// <summary><c>RF × W</c>. Source: AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6B.4.1 and 6B.7, from memory.</summary>
    FactorTimesWeight,
}

/// <summary>Safe loads and whole tons.</summary>
public static class SafeLoad
{
    /// <summary>One US ton, 2,000 lbf [N].</summary>
    public const double UsTon = 2000 * 4.4482216152605;

    /// <summary>The load under which a bridge is to be closed, 3 US tons [N]. Source: 23 CFR 650.313, from memory.</summary>
    public const double ClosureLine = 3 * UsTon;

    /// <summary>The factor under which a type is barred where its load is reduced [-].</summary>
    public const double LeastFactor = 0.3;

    /// <summary>Single rear axle of emergency vehicles, 33.5 kip [N]. Source: 23 U.S.C. 127(r), from memory.</summary>
    public const double EmergencySingleAxle = 33.5 * UsTon / 2;

    /// <summary>Tandem rear axle of emergency vehicles, 62 kip [N]. Source: 23 U.S.C. 127(r), from memory.</summary>
    public const double EmergencyTandem = 62 * UsTon / 2;

    /// <summary>Axles no farther apart than this are a tandem, 8 ft [m]. Source: 23 CFR 658.5, from memory.</summary>
    public const double TandemSpacing = 8 * 0.3048;

    /// <summary>
    /// The safe load of a type [N]. From a factor of 1 up both rules give RF × W, which is what the closure line is held against
    /// and no leave to weigh more than the type.
    /// </summary>
    /// <param name="weight">Gross weight of the type [N].</param>
    /// <param name="factor">Its rating factor, not negative [-].</param>
    /// <param name="rule">How it follows.</param>
    public static double Of(double weight, double factor, PostingRule rule) => rule switch
    {
        _ when IsEnough(factor) => factor * weight,
        PostingRule.ReducedLegal => Math.Max(0, weight / 0.7 * (factor - LeastFactor)),
        _ => factor * weight,
    };

    /// <summary>Weight that a factor is applied to: the gross weight, or that of a loading's own rule [N]; null where there is none.</summary>
    /// <param name="load">A vehicle, loading or crowd.</param>
    public static double? WeightOf(LiveLoad load) => load switch
    {
        Vehicle vehicle => vehicle.Train.Weight,
        TrackedVehicle tracked => tracked.Weight,
        Loading loading => loading.PostedWeight,
        _ => null,
    };

    /// <summary>
    /// The rating in tons, <c>RT = RF × W</c> [N], which is no posting; null where there is no factor or no weight. Source: AASHTO Manual
    /// for Bridge Evaluation, 3rd ed. (2018), 6A.4.4.4 and 6B.4.1, from memory.
    /// </summary>
    /// <param name="row">A row of a rating.</param>
    public static double? EquivalentLoad(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Factor * WeightOf(row.Vehicle);
    }

    /// <summary>Whether a factor asks for no posting: at least 1.</summary>
    /// <param name="factor">The rating factor [-].</param>
    public static bool IsEnough(double factor) => !IsBelow(factor, 1);

    /// <summary>Whether a factor is below a limit.</summary>
    /// <param name="factor">The rating factor [-].</param>
    /// <param name="limit">The limit [-].</param>
    public static bool IsBelow(double factor, double limit) => Steady(factor) < limit;

    /// <summary>Whether a factor bars its type.</summary>
    /// <param name="factor">The rating factor [-].</param>
    /// <param name="rule">How its safe load follows.</param>
    public static bool IsBarred(double factor, PostingRule rule) => Steady(factor) <= 0 || (rule == PostingRule.ReducedLegal && Steady(factor) < LeastFactor);

    /// <summary>Whether a load is under the closure line, before any rounding to tons.</summary>
    /// <param name="load">The load [N].</param>
    public static bool IsUnderClosureLine(double load) => Steady(load / UsTon) < 3;

    /// <summary>Whole US tons, rounded down.</summary>
    /// <param name="load">The load [N].</param>
    public static int WholeTons(double load) => (int)Math.Floor(Steady(load / UsTon));

    // Without the last bits, in which two ways to the same number differ.
    private static double Steady(double value) => Math.Round(value, 9);
}
