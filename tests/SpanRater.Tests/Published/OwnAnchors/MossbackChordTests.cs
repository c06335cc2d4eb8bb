using SpanRater.Tests.CommandLine;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The middle chord of the invented Mossback Lane bridge, bent by its own weight and soft to a quarter inch on each face, by the combined equation of the
/// National Design Specification (2018), 3.9.1 (from memory): ft/Ft' + fb/Fb' = 1. Worked by hand, not published.
/// </summary>
public class MossbackChordTests
{
    // 8 × 10 in with a bolt hole of 15/16 in across its width. Posts and timbers No.1 of Douglas Fir-Larch: Ft 825, Fb 1200 psi; wet service changes neither.
    // Own weight of the sound timber, which decay does not relieve: 50 pcf × 80/144 ft2 = 27.78 plf, on 12 ft 27.78 × 12²/8 = 500 lb ft = 6.0 kip in.
    private const double OwnMoment = 6.0, SoundNet = 80 - (15.0 / 16 * 8), LeftNet = (7.5 * 9.5) - (15.0 / 16 * 7.5);

    private static readonly Bridge Bridge = RodAnchors.Read("mossback-lane");

    // LRFR: Ft φ = 825 × (2.5/0.80) × 0.8 × 0.80 = 1650 psi, Fb φ = 1200 × (2.5/0.85) × 0.8 × 0.85 = 2400 psi; own weight times 1.25; condition fair 0.95
    // times system 0.85, held at 0.85. Sound: Mr = 2.4 × 8 × 10²/6 = 320.0 kip in, P = 1.65 × 72.5 × (1 − 7.5/320.0) × 0.85 = 99.30 kip.
    // Left: 7½ × 9½ in, Mr = 2.4 × 7.5 × 9.5²/6 = 270.8 kip in, P = 1.65 × 64.22 × (1 − 7.5/270.8) × 0.85 = 87.57 kip.
    [Theory]
    [InlineData("L0L1", 99.30, SoundNet, 8.0, 10.0)]
    [InlineData("L1L2", 87.57, LeftNet, 7.5, 9.5)]
    public void Rate_TheChordByLoadAndResistance_IsTheCombinedEquationByHand(string member, double kips, double net, double width, double depth)
    {
        double moment = 2.4 * width * depth * depth / 6, byHand = 1.65 * net * (1 - (1.25 * OwnMoment / moment)) * 0.85;

        MemberRow row = Row(member, "LRFR", "legal");

        Assert.Equal(kips, byHand, 0.005);
        Assert.Equal(byHand, row.Capacity!.Value / Kip, 1e-6);
        Assert.Equal(1.25 * OwnMoment, row.Resistance!.Governing.OwnMoment / (Kip * Inch), 1e-9);
    }

    // ASR, load of two months, CD 1.15: Ft' = 948.75 psi, Fb' = 1380 psi; at operating level 1.33 times, the moment of own weight in it unfactored.
    [Theory]
    [InlineData("inventory", 1.0)]
    [InlineData("operating", 1.33)]
    public void Rate_TheChordByAllowableStress_IsTheCombinedEquationByHand(string level, double times)
    {
        double axial = 0.94875 * LeftNet * times, moment = 1.38 * 7.5 * 9.5 * 9.5 / 6 * times;

        Assert.Equal(axial * (1 - (OwnMoment / moment)), Row("L1L2", "ASR", level).Capacity!.Value / Kip, 1e-6);
    }

    [Fact]
    public void Rate_TheSoftChord_IsRatedAtTheCutWhereItIsSoft()
    {
        ModeAtCut governing = Row("L1L2", "LRFR", "legal").Resistance!.Governing;

        Assert.Equal("the middle", governing.Place);
        Assert.Equal(7.5 * 9.5, governing.Section.Area / (Inch * Inch), 1e-9);
    }

    // A bolt hole of 15/16 in in what is 0.8 in wide: nothing of the net section is left, and the chord carries next to nothing.
    [Fact]
    public void Rate_HolesThatTakeMoreThanDecayHasLeft_LeaveNoCapacity()
    {
        using BridgeOnDisk disk = BridgeOnDisk.OfSample("mossback-lane").Write("findings.csv", """
            member,truss,place,what,decay [in],face
            L1L2,both,mid,decay,3.6,left
            L1L2,both,mid,decay,3.6,right
            L1L2,both,mid,decay,4.2,bottom
            L1L2,both,mid,decay,4.2,top

            """);

        Run run = Run.Of("rate", disk.Folder);

        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("Governing: L1L2 in tension under Feed truck at legal level, rating factor 0.00: the dead load alone exceeds the capacity.", run.Output, StringComparison.Ordinal);
    }

    private static MemberRow Row(string member, string method, string level)
    {
        LiveLoad[] vehicles = [SpanRater.Files.BridgeFolder.Read(Repository.Sample("mossback-lane"), []).Catalogue.Find("Feed truck")!];
        Assert.True(BridgeRater.Rate(Bridge, RatingMethod.Find(method)!, vehicles).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");
        return rating.MemberRows.Single(r => r.Member.Name == member && r.Sense == Sense.Tension && r.Level.Name == level && r.Truss is null);
    }
}
