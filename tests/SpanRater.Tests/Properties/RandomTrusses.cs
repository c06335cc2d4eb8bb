using CsCheck;

namespace SpanRater.Tests;

/// <summary>A random truss with its factored equations, its influence lines and two random load cases.</summary>
internal sealed record SolvedTruss(TrussForm Form, DeterminateTruss System, InfluenceLines Lines, LoadCase One, LoadCase Other);

/// <summary>Random determinate trusses of all ten forms, deck above and below, with random measures and loads.</summary>
internal static class RandomTrusses
{
    internal const int Count = 2_000;

    private static readonly Lazy<SolvedTruss[]> Solved = new(() => SeededCases.Draw(Trusses(), Count));

    private static readonly Gen<double> PanelLength = Gen.Double[1.5, 9];

    private static readonly Gen<DeckChord> Deck = Gen.Bool.Select(top => top ? DeckChord.Top : DeckChord.Bottom);

    /// <summary>The trusses, made once for all properties.</summary>
    internal static IReadOnlyList<SolvedTruss> All => Solved.Value;

    internal static Gen<TrussForm> Forms() => Gen.OneOf(
        Gen.Select(Gen.Int[3, 12], PanelLength, Height(), Deck, (n, p, h, d) => (TrussForm)new PrattTruss(n, p, h * p, d)),
        Gen.Select(Gen.Int[3, 12], PanelLength, Height(), Deck, (n, p, h, d) => (TrussForm)new HoweTruss(n, p, h * p, d)),
        Gen.Select(PanelLength, Height().Array[2, 11], (p, hs) => (TrussForm)new ParkerTruss(p, [.. hs.Select(h => h * p)])),
        Gen.Select(Gen.Int[2, 12], PanelLength, Height(), (n, p, h) => (TrussForm)new WarrenTruss(n, p, h * p)),
        Gen.Select(Gen.Int[2, 6], PanelLength, Height(), Deck, (n, p, h, d) => (TrussForm)new WarrenTrussWithVerticals(2 * n, p, h * p, d)),
        Gen.Select(Gen.Int[2, 6], PanelLength, Height(), (n, p, h) => (TrussForm)new KTruss(2 * n, p, h * p)),
        Gen.Select(Gen.Int[2, 4], PanelLength, Height(), Deck, Gen.Bool, (n, p, h, d, tie) => (TrussForm)new BaltimoreTruss(4 * n, p, 2 * h * p, d, tie ? SubDiagonal.Tie : SubDiagonal.Strut)),
        Gen.Select(Gen.Int[3, 6], PanelLength, Height(), Deck, (n, p, h, d) => (TrussForm)new DoubleIntersectionTruss(2 * n, p, h * p, d)),
        Gen.Select(PanelLength, Height(), (p, h) => (TrussForm)new KingPostTruss(p, h * p)),
        Gen.Select(PanelLength, Height(), (p, h) => (TrussForm)new QueenPostTruss(p, h * p)));

    // Height over panel length: old spans stand between a third and twice the panel.
    private static Gen<double> Height() => Gen.Double[0.3, 2.2];

    private static Gen<SolvedTruss> Trusses() =>
        from form in Forms()
        let truss = form.Build()
        from one in Case(truss, "one")
        from other in Case(truss, "other")
        let system = DeterminateTruss.Of(truss).Value!
        select new SolvedTruss(form, system, InfluenceLines.Of(system).Value!, one, other);

    // A load of up to 50 kN each way at every joint.
    private static Gen<LoadCase> Case(Truss truss, string name) =>
        Gen.Select(Gen.Double[-5e4, 5e4], Gen.Double[-5e4, 5e4]).Array[truss.Joints.Count]
            .Select(loads => new LoadCase(name, [.. loads.Select((l, j) => new JointLoad(truss.Joints[j].Name, l.Item1, l.Item2))]));
}
