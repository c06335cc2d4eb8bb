using static SpanRater.Tests.PanelPointLoads;

namespace SpanRater.Tests;

/// <summary>
/// Pratt, Howe, Warren and K-truss against forces found by hand: the chord from moment over height, the web from shear
/// (method of sections; common practice).
/// </summary>
public class ParallelChordFormTests
{
    private static readonly string[] SixPanels = ["L1", "L2", "L3", "L4", "L5"];

    // Six panels of 5 m, 6 m high, 1 N on each inner panel point: moments 12.5, 20 and 22.5 Nm, shears 2.5, 1.5 and 0.5 N.
    [Fact]
    public void PrattBuild_LoadOnEveryPanelPoint_ChordsAreMomentOverHeightAndWebIsShear() => AssertForces(
        ForcesUnder(new PrattTruss(6, 5, 6), SixPanels),
        ("L0L1", 12.5 / 6),
        ("L1L2", 12.5 / 6),
        ("L2L3", 20.0 / 6),
        ("L3L4", 20.0 / 6),
        ("U1U2", -20.0 / 6),
        ("U2U3", -22.5 / 6),
        ("L0U1", -2.5 * Math.Sqrt(61) / 6),
        ("U5L6", -2.5 * Math.Sqrt(61) / 6),
        ("U1L2", 1.5 * Math.Sqrt(61) / 6),
        ("U2L3", 0.5 * Math.Sqrt(61) / 6),
        ("L3U4", 0.5 * Math.Sqrt(61) / 6),
        ("U1L1", 1),
        ("U2L2", -0.5),
        ("U3L3", 0));

    // The same measures: a diagonal that rises towards midspan presses, and the vertical beside it pulls.
    [Fact]
    public void HoweBuild_LoadOnEveryPanelPoint_DiagonalsPressAndVerticalsPull() => AssertForces(
        ForcesUnder(new HoweTruss(6, 5, 6), SixPanels),
        ("L0L1", 12.5 / 6),
        ("L1L2", 20.0 / 6),
        ("L2L3", 22.5 / 6),
        ("U1U2", -12.5 / 6),
        ("U2U3", -20.0 / 6),
        ("L1U2", -1.5 * Math.Sqrt(61) / 6),
        ("L2U3", -0.5 * Math.Sqrt(61) / 6),
        ("U1L1", 2.5),
        ("U2L2", 1.5),
        ("U3L3", 1));

    // Four panels of 5 m, 4 m high, the deck above: the end post takes the reaction, the first bottom panel takes nothing.
    [Fact]
    public void PrattBuild_DeckOnTopChord_EndPostTakesTheReaction() => AssertForces(
        ForcesUnder(new PrattTruss(4, 5, 4, DeckChord.Top), "U1", "U2", "U3"),
        ("U0L0", -1.5),
        ("L0L1", 0),
        ("U0U1", -7.5 / 4),
        ("U1U2", -10.0 / 4),
        ("L1L2", 7.5 / 4),
        ("U0L1", 1.5 * Math.Sqrt(41) / 4),
        ("U1L1", -1.5),
        ("U2L2", -1));

    // Three panels of 4 m, 3 m high: moments 2, 4 and 4 Nm at U1, L2 and U3, no shear in the middle panel.
    [Fact]
    public void WarrenBuild_LoadOnBothPanelPoints_MatchesSections() => AssertForces(
        ForcesUnder(new WarrenTruss(3, 4, 3), "L2", "L4"),
        ("L0L2", 2.0 / 3),
        ("L2L4", 4.0 / 3),
        ("U1U3", -4.0 / 3),
        ("L0U1", -Math.Sqrt(13) / 3),
        ("U1L2", Math.Sqrt(13) / 3),
        ("L2U3", 0),
        ("U3L4", 0));

    // Four panels of 4 m, 3 m high: U2 has no diagonal, so its vertical is idle; those at L1 and L3 hang their load.
    [Fact]
    public void WarrenWithVerticalsBuild_LoadOnEveryPanelPoint_VerticalsHangTheLoadOrIdle() => AssertForces(
        ForcesUnder(new WarrenTrussWithVerticals(4, 4, 3), "L1", "L2", "L3"),
        ("U1L1", 1),
        ("U2L2", 0),
        ("U3L3", 1),
        ("L0L1", 2),
        ("L1L2", 2),
        ("U1U2", -8.0 / 3),
        ("L0U1", -2.5),
        ("U1L2", 0.5 * 5 / 3),
        ("L2U3", 0.5 * 5 / 3));

    // Four panels of 4 m, 6 m high: the shear of 0.5 N is halved between the two diagonals of length 5 m and rise 3 m.
    [Fact]
    public void KTrussBuild_LoadOnEveryPanelPoint_DiagonalsHalveTheShear() => AssertForces(
        ForcesUnder(new KTruss(4, 4, 6), "L1", "L2", "L3"),
        ("M1U2", -5.0 / 12),
        ("M1L2", 5.0 / 12),
        ("M3U2", -5.0 / 12),
        ("L0L1", 1),
        ("L1L2", 1),
        ("U1U2", -1),
        ("U2L2", 0.5),
        ("L0U1", -1.5 * Math.Sqrt(52) / 6));
}
