using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

public class RollPictureTests
{
    private static readonly InfluenceLines Warren = ExampleBridges.LinesOf(ExampleBridges.Warren());

    [Fact]
    public void Of_MemberGiven_DrawsTheAxlesWhereTheyStood()
    {
        Picture picture = Rolled(ExampleBridges.Mower, "U1L2");

        Assert.Contains(picture.Texts, t => t.Content == "U1L2: tension 143 kN, front axle at 9 m from L0, driving to the right.");
        Drawing elevation = picture.Panels[1].Drawing;
        Assert.Equal(["40.0 kN", "80.0 kN"], elevation.Texts.Where(t => t.Shows == "axle").Select(t => t.Content).Order(StringComparer.Ordinal));
        Assert.Equal([6.0, 9.0], elevation.Strokes.Where(s => s.Shows == "axle").Select(s => s.Points[0].X).Order());
        Assert.Equal([6.0, 9.0], picture.Panels[2].Drawing.Marks.Where(m => m.Shows == "axle").Select(m => m.At.X).Order());
    }

    [Fact]
    public void Of_NoMemberGiven_TakesTheLargestPeak() =>
        Assert.Contains(Rolled(ExampleBridges.Mower, null).Texts, t => t.Shows == "peak" && t.Content.StartsWith("L2L3: tension 267 kN", StringComparison.Ordinal));

    [Fact]
    public void Of_Envelope_GivesBothSensesOfEveryMemberInReadingOrder()
    {
        Drawing bars = Rolled(ExampleBridges.Mower, null).Panels[3].Drawing;

        Assert.Equal(["U1L2, Tension: 143", "U1L2, Compression: −25.9"], bars.Texts.Where(t => t.Shows.StartsWith("U1L2, ", StringComparison.Ordinal)).Select(t => $"{t.Shows}: {t.Content}"));
        Assert.Equal("no force", Assert.Single(bars.Texts, t => t.Shows == "L2U2, none").Content);
        Assert.Equal(["bottom chord", "top chord", "diagonal", "vertical"], bars.Texts.Where(t => t.Shows == "role").Select(t => t.Content));
        Assert.Equal("L0L1 L1L2 L2L3 L3L4 L4L5 L5L6 U1U2", string.Join(' ', bars.Texts.Where(t => t.Shows == t.Content).Where(t => Warren.Truss.FindMember(t.Content) is not null).Take(7).Select(t => t.Content)));
    }

    [Fact]
    public void Of_AxlesOffTheDeck_AreCountedInWords()
    {
        var vehicle = new Vehicle("Long", VehicleClass.Permit, new AxleTrain([50_000, 1_000], [AxleGap.Fixed(40)]), 1.8, "invented for tests");

        Assert.Contains(Rolled(vehicle, "L2L3").Texts, t => t.Shows == "peak" && t.Content.EndsWith("; one axle is off the deck.", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_MemberWithoutForce_SaysSo() =>
        Assert.Contains(Rolled(ExampleBridges.Mower, "L2U2").Texts, t => t.Content == "L2U2: no force, wherever the vehicle stands.");

    [Fact]
    public void Of_UnknownMemberOrWrongCount_IsRefused()
    {
        Assert.Throws<ArgumentException>("member", () => Rolled(ExampleBridges.Mower, "U9"));
        Assert.Throws<ArgumentException>("result", () => RollPicture.Of("Roll", ExampleBridges.Rolled(Warren, ExampleBridges.Mower) with { Peaks = [] }, null, DisplayUnits.Si));
    }

    private static Picture Rolled(Vehicle vehicle, string? member) =>
        RollPicture.Of("Tansy Weir", ExampleBridges.Rolled(Warren, vehicle), member, DisplayUnits.Si);
}
