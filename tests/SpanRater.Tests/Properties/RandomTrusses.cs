using CsCheck;

namespace SpanRater.Tests.Properties;

/// <summary>A determinate truss drawn at random, with the name of its form.</summary>
internal sealed record SampleTruss(string Form, Truss Truss)
{
    public double Span => Truss.Stations[^1] - Truss.Stations[0];

    public override string ToString() =>
        Form + ": " + string.Join(" ", Truss.Joints.Select(j => FormattableString.Invariant($"{j.Name}({j.X},{j.Y})")));
}

/// <summary>Determinate trusses of nine forms with random panels, lengths, heights and directions of the web.</summary>
internal static class RandomTrusses
{
    // Lengths as a tape is read, in quarters of a foot, so that axles and panel points often meet up to the last bit only.
    private const double QuarterFoot = 0.3048 / 4;

    private static readonly Gen<double> PanelLength = Gen.Int[24, 120].Select(n => n * QuarterFoot);
    private static readonly Gen<double> Height = Gen.Int[20, 160].Select(n => n * QuarterFoot);
    private static readonly Gen<DeckChord> Deck = Gen.Bool.Select(top => top ? DeckChord.Top : DeckChord.Bottom);
    private static readonly Gen<int> Panels = Gen.Int[3, 14];
    private static readonly Gen<int> EvenPanels = Gen.Int[2, 7].Select(n => 2 * n);

    public static Gen<SampleTruss> All { get; } = Gen.OneOf(
        Form(PanelLength.Select(Height, (p, h) => new KingPostTruss(p, h))),
        Form(PanelLength.Select(Height, (p, h) => new QueenPostTruss(p, h))),
        Form(Panels.Select(PanelLength, Height, Deck, (n, p, h, d) => new PrattTruss(n, p, h, d))),
        Form(Panels.Select(PanelLength, Height, Deck, (n, p, h, d) => new HoweTruss(n, p, h, d))),
        Form(Panels.Select(PanelLength, Height, (n, p, h) => new WarrenTruss(n, p, h))),
        Form(EvenPanels.Select(PanelLength, Height, Deck, (n, p, h, d) => new WarrenTrussWithVerticals(n, p, h, d))),
        Form(PanelLength.Select(Height.Array[2, 13], (p, h) => new ParkerTruss(p, h))),
        Form(EvenPanels.Select(PanelLength, Height, (n, p, h) => new KTruss(n, p, h))),
        Panels.SelectMany(n => PanelLength.Array[n].Select(Height.Array[n + 1], Gen.Bool.Array[n], RandomWeb)));

    private static Gen<SampleTruss> Form<T>(Gen<T> form)
        where T : TrussForm => form.Select(f => new SampleTruss(f.Name, f.Build()));

    // Unequal panels, a top chord at any height over each panel point, and a diagonal either way in each panel.
    private static SampleTruss RandomWeb(double[] lengths, double[] heights, bool[] falling)
    {
        var joints = new List<Joint>();
        var members = new List<Member>();
        double x = 0;
        for (int i = 0; i <= lengths.Length; i++)
        {
            Support? support = i == 0 ? Support.Pin : i == lengths.Length ? Support.Roller() : null;
            joints.Add(new Joint($"L{i}", x, 0, support, true));
            joints.Add(new Joint($"U{i}", x, heights[i]));
            members.Add(new Member($"L{i}U{i}", $"L{i}", $"U{i}"));
            if (i < lengths.Length)
            {
                members.Add(new Member($"L{i}L{i + 1}", $"L{i}", $"L{i + 1}"));
                members.Add(new Member($"U{i}U{i + 1}", $"U{i}", $"U{i + 1}"));
                members.Add(falling[i] ? new Member($"D{i}", $"U{i}", $"L{i + 1}") : new Member($"D{i}", $"L{i}", $"U{i + 1}"));
                x += lengths[i];
            }
        }

        return new SampleTruss("random web", Truss.Create(joints, members).Truss!);
    }
}
