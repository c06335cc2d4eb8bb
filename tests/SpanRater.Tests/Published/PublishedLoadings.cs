using SpanRater.Files;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published;

/// <summary>
/// Loadings as shipped with the program, and what they bring to a simple span: the end reaction of a truss whose deck ends over
/// its supports, and the moment at midspan, which is the force of the upper chord opposite the middle panel point times the depth.
/// </summary>
internal static class PublishedLoadings
{
    private static readonly Catalogue Catalogue = Catalogue.Shipped(new FindingList());

    /// <summary>A loading as shipped.</summary>
    public static Loading Shipped(string name) => Assert.IsType<Loading>(Catalogue.Find(name));

    /// <summary>The lane load of a shipped loading, without its vehicles.</summary>
    public static Loading LaneOf(string name) => Shipped(name) with { Trains = [] };

    /// <summary>The largest end reaction [kip], and the ways to load the deck of which it is the worst.</summary>
    public static (double Kips, LiveEffect Worst) EndReaction(double spanInFeet, LiveLoad load)
    {
        SolvedTruss truss = ParallelChordTruss.WarrenWithVerticals(6, spanInFeet * Foot / 6, spanInFeet * Foot / 8);
        LiveEffect worst = new LiveLoadPlan(truss.Truss.Stations, load).MostOn(truss.Reaction("L0 up"), Sense.Tension)!;
        return (worst.Force / Kip, worst);
    }

    /// <summary>The largest moment at midspan [kip-ft].</summary>
    public static double MidspanMoment(double spanInFeet, LiveLoad load)
    {
        double depth = spanInFeet * Foot / 8;
        SolvedTruss truss = ParallelChordTruss.Pratt(6, spanInFeet * Foot / 6, depth);
        LiveEffect worst = new LiveLoadPlan(truss.Truss.Stations, load).MostOn(truss.Line("U2U3"), Sense.Compression, isChord: true)!;
        return -worst.Force * depth / KipFoot;
    }
}
