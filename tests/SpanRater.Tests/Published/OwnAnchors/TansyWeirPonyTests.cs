using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The top chord of the invented Tansy Weir footbridge on its frames, through the files of the sample. Our own regression anchors, computed
/// independently, not published: 318 and 190 cm⁴ are those of rolled angles, with fillets and rounded toes, and 935 cm⁴ is that of a beam whose
/// flanges taper by 14 %; the sample's angles have sharp corners and its beam tapers by 1 in 6, hence 2.5 %.
/// </summary>
public class TansyWeirPonyTests
{
    private const double CentimetreToTheFourth = 1e-8, Part = 0.025;

    private static readonly Bridge Bridge = RodAnchors.Read("tansy-weir");

    private static readonly MemberMake Chord = Bridge.Makes[Bridge.Truss.FindMember("U2U3")!.Value]!;

    [Fact]
    public void Sections_OfChordPostAndFloorbeam_HaveTheMomentsOfInertiaOfTheAnchors()
    {
        Within(318, Chord.Section.AsBuilt.Properties!.Iy / CentimetreToTheFourth);
        Within(190, Chord.Pony!.Frame.PostInertia / CentimetreToTheFourth);
        Within(935, Chord.Pony.Frame.BeamInertia / CentimetreToTheFourth);
    }

    // 200 GPa/(1.65³/(3 × 190 cm⁴) + 1.65² × 2.4/(2 × 935 cm⁴)).
    [Fact]
    public void Frame_OfFloorbeamAndPosts_HasTheStiffnessOfTheAnchor()
    {
        Within(176, Chord.Pony!.Frame.Stiffness / 1000);
        Assert.Equal(176, 200e9 / ((Math.Pow(1.65, 3) / (3 * 190e-8)) + (1.65 * 1.65 * 2.4 / (2 * 935e-8))) / 1000, 0.5);
    }

    // 2 √(176 N/mm × 200 GPa × 318 cm⁴/3 m), π² × 200 GPa × 318 cm⁴/(3 m)², and K = √(697/386).
    [Fact]
    public void TopChord_OnItsFrames_HasTheForcesAndTheLengthFactorOfTheAnchors()
    {
        var chord = new PonyChord(200e9, Chord.Section.AsBuilt.Properties!.Iy, Chord.Pony!.PanelLength, Chord.Pony.Frame.Stiffness);

        Within(386, chord.EngesserForce / 1000);
        Within(697, chord.PanelForce / 1000);
        Assert.Equal(1.34, chord.EffectiveLengthFactor, 0.01);
        Assert.Equal(chord.EngesserForce, chord.ElasticForce);
    }

    // The chord that is rated is that chord, by the modulus of its own steel.
    [Fact]
    public void Rate_TheTopChord_RestsOnItsFrames()
    {
        MemberRow row = Rate(Bridge).MemberRows.First(r => r is { Member.Name: "U2U3", Sense: Sense.Compression } && r.Resistance is not null);

        BucklingAxis across = row.Resistance!.Governing.Axes!.OutOfPlane;

        Assert.Equal(1.34, across.Factor!.Value, 0.01);
        Assert.NotNull(across.Pony);
        Within(386, across.Pony!.EngesserForce / 1000);
        Assert.True(across.ElasticForce < across.Pony.EngesserForce);
        Assert.Same(across, row.Resistance.Governing.Axes.Governing);
    }

    // Rust was written down of one truss; nothing of it is taken over to the other.
    [Fact]
    public void Rate_TheBottomChord_IsWeakerOnTheTrussThatWasSeen()
    {
        MemberRow[] rows = [.. Rate(Bridge).MemberRows.Where(r => r is { Member.Name: "L2L3", Sense: Sense.Tension, Level.Name: "operating" } && r.Resistance is not null)];

        Assert.Equal(2, rows.Length);
        Assert.True(rows[0].Capacity < 0.9 * rows[1].Capacity);
        Assert.Equal(["upstream", "downstream"], rows.Select(r => r.Truss));
    }

    private static BridgeRating Rate(Bridge bridge)
    {
        LiveLoad[] vehicles = [SpanRater.Files.BridgeFolder.Read(Repository.Sample("tansy-weir"), []).Catalogue.Find("EN service vehicle")!];
        Assert.True(BridgeRater.Rate(bridge, bridge.Rating.Method!, vehicles).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");
        return rating;
    }

    private static void Within(double anchor, double value) => Assert.Equal(anchor, value, Part * anchor);
}
