using static SpanRater.Tests.PanelPointLoads;

namespace SpanRater.Tests;

/// <summary>King post, queen post and Parker truss against forces found by hand (method of sections and joints; common practice).</summary>
public class PostAndParkerFormTests
{
    // Panels of 3 m, 4 m high: each reaction is 0.5 N, the end posts are 5 m long.
    [Fact]
    public void KingPostBuild_LoadAtMidspan_PostHangsItAndEndPostsShareIt() => AssertForces(
        ForcesUnder(new KingPostTruss(3, 4), "L1"),
        ("U1L1", 1),
        ("L0U1", -0.625),
        ("U1L2", -0.625),
        ("L0L1", 0.375),
        ("L1L2", 0.375));

    [Fact]
    public void QueenPostBuild_LoadOnBothPosts_CentreDiagonalIsIdle() => AssertForces(
        ForcesUnder(new QueenPostTruss(3, 4), "L1", "L2"),
        ("U1L1", 1),
        ("U2L2", 1),
        ("L0L1", 0.75),
        ("L1L2", 0.75),
        ("U1U2", -0.75),
        ("L0U1", -1.25),
        ("U1L2", 0));

    // Reactions 2/3 and 1/3 N: the centre panel takes a shear of -1/3 N.
    [Fact]
    public void QueenPostBuild_LoadOnOnePost_CentreDiagonalTakesTheShear() => AssertForces(
        ForcesUnder(new QueenPostTruss(3, 4), "L1"),
        ("U1L2", -5.0 / 12),
        ("L0U1", -2.0 / 3 * 5 / 4),
        ("U2L3", -1.0 / 3 * 5 / 4));

    // Panels of 5 m under a top chord at 4, 6 and 4 m: moments 7.5 and 10 Nm; the inclined chord takes moment over height along x.
    [Fact]
    public void ParkerBuild_LoadOnEveryPanelPoint_InclinedChordTakesPartOfTheShear() => AssertForces(
        ForcesUnder(new ParkerTruss(5, [4, 6, 4]), "L1", "L2", "L3"),
        ("L0L1", 7.5 / 4),
        ("L1L2", 7.5 / 4),
        ("U1U2", -10.0 / 6 * Math.Sqrt(29) / 5),
        ("U1L2", ((10.0 / 6) - (7.5 / 4)) * Math.Sqrt(41) / 5),
        ("U2L2", 4.0 / 3),
        ("U1L1", 1));
}
