using CsCheck;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.FloorSystem;

/// <summary>One wheel on a timber deck by hand: AASHTO Standard Specifications, 17th ed. (2002), 3.25 and 3.30, and National Design Specification (2018), 3.4.3.1, all from memory.</summary>
public class PlankWheelTests
{
    // 16,000 lb: 0.01 × 16,000 = 160 in², 20 in across traffic by 8 in along it. Of 12,000 lb: 120 in², √300 = 17.32 in.
    [Theory]
    [InlineData(16_000, 20)]
    [InlineData(12_000, 17.3205)]
    [InlineData(4_000, 10)]
    public void Contact_OfAWheel_IsThatByHand(double pounds, double inches)
    {
        PlankWheel wheel = PlankWheel.Of(pounds * Pound, 48 * Inch, 0, 10 * Inch, 4 * Inch, DeckType.Plank, false);
        Assert.Equal(inches, wheel.ContactWidth / Inch, 0.00005);
        Assert.Equal(0.01 * pounds, wheel.ContactWidth * (wheel.ContactWidth / 2.5) / (Inch * Inch), 1e-9);
        Assert.Equal(pounds, wheel.Load / Pound, 1e-9);
    }

    // 48 in clear: stringers of 6 in give 51, of 12 in 54 and no more than 48 + 4 = 52; a width that is not known adds nothing.
    [Theory]
    [InlineData(6, 4, 51)]
    [InlineData(12, 4, 52)]
    [InlineData(0, 4, 48)]
    [InlineData(8, 4, 52)]
    public void Span_ByWidthAndThickness_IsTheLesser(double stringer, double thickness, double span) =>
        Assert.Equal(span, PlankWheel.Of(16_000 * Pound, 48 * Inch, stringer * Inch, 10 * Inch, thickness * Inch, DeckType.Plank, false).Span / Inch, 1e-9);

    // In the middle of 48 in, 16,000 lb over 20 in: 8,000 × 24 − 8,000 × 5 = 152,000 lb-in; 0.8 of it over more than two spans.
    [Fact]
    public void Moment_OfAPatchInTheMiddle_IsThatByHand()
    {
        PlankWheel simple = Wheel(48, 4, false), continuous = Wheel(48, 4, true);
        Assert.Equal(152_000, simple.Moment / (Pound * Inch), 1e-6);
        Assert.Equal(121_600, continuous.Moment / (Pound * Inch), 1e-6);
        Assert.Equal(simple.Shear, continuous.Shear, 1e-9);
        Assert.Contains(FloorClauses.ContinuousDeck, continuous.Clauses);
        Assert.DoesNotContain(FloorClauses.ContinuousDeck, simple.Clauses);
    }

    // 16 in, less than the contact: 800 lb/in over all of it, w l²/8.
    [Fact]
    public void Moment_OfASpanShorterThanTheContact_IsThatOfAnEvenLoad() =>
        Assert.Equal(800 * 16 * 16 / 8.0, Wheel(16, 2, false).Moment / (Pound * Inch), 1e-6);

    // The near edge 4 in from the support: middle of the load at 14 in of 48, 16,000 × 34/48.
    [Fact]
    public void Shear_WithTheNearEdgeADepthFromTheSupport_IsThatByHand() =>
        Assert.Equal(16_000 * 34 / 48.0, Wheel(48, 4, false).Shear / Pound, 1e-6);

    // No room beside the support, or hardly any: the half that stands on each support when the wheel is in the middle.
    [Theory]
    [InlineData(24, 4)]
    [InlineData(20, 4)]
    [InlineData(28, 12)]
    public void Shear_WithoutRoomForIt_IsHalfOfTheWheel(double clear, double thickness) =>
        Assert.Equal(8_000, Wheel(clear, thickness, false).Shear / Pound, 1e-6);

    // One plank; of laminated decks 15 in, however wide a panel is.
    [Theory]
    [InlineData(DeckType.Plank, 10, 10)]
    [InlineData(DeckType.NailLaminated, 2, 15)]
    [InlineData(DeckType.GluedLaminated, 12, 15)]
    [InlineData(DeckType.GluedLaminated, 48, 15)]
    public void Spread_ByDeck_IsThatOfTheRule(DeckType type, double width, double spread) =>
        Assert.Equal(spread, PlankWheel.Of(16_000 * Pound, 48 * Inch, 0, width * Inch, 4 * Inch, type, false).Spread / Inch, 1e-9);

    // The patch moved along a simple span in small steps: nothing exceeds the moment, nor the shear where its near edge is a depth or more from both supports.
    [Fact]
    public void MomentAndShear_OfAPatchMovedAlong_AreNeverExceeded() =>
        SeededCases.Check(Gen.Select(Gen.Double[4_000, 20_000], Gen.Double[12, 96], Gen.Double[2, 8]), 200, c =>
        {
            (double pounds, double clear, double thickness) = c;
            PlankWheel wheel = PlankWheel.Of(pounds * Pound, clear * Inch, 0, 10 * Inch, thickness * Inch, DeckType.Plank, false);
            double patch = Math.Sqrt(2.5 * 0.01 * pounds), moment = 0, shear = 0;
            for (int i = 0; i <= 400; i++)
            {
                double from = -patch + ((clear + patch) * i / 400), left = Math.Max(0, from), right = Math.Min(clear, from + patch), load = pounds / patch * (right - left), middle = (left + right) / 2;
                double reaction = load * (clear - middle) / clear, at = left + (reaction * patch / pounds);
                moment = Math.Max(moment, load > 0 ? (reaction * at) - (pounds / patch * (at - left) * (at - left) / 2) : 0);
                shear = from >= thickness && from + patch <= clear ? Math.Max(shear, reaction) : shear;
            }

            Assert.InRange(wheel.Moment / (Pound * Inch), moment * (1 - 1e-9), moment * 1.005);
            Assert.True(wheel.Shear / Pound >= shear * (1 - 1e-9));
        });

    [Theory]
    [InlineData(0, 48)]
    [InlineData(16_000, 0)]
    public void Of_NothingOnNothing_IsABugOfTheCaller(double pounds, double clear) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => PlankWheel.Of(pounds, clear, 0, 1, 1, DeckType.Plank, false));

    private static PlankWheel Wheel(double clear, double thickness, bool isContinuous) =>
        PlankWheel.Of(16_000 * Pound, clear * Inch, 0, 10 * Inch, thickness * Inch, DeckType.Plank, isContinuous);
}
