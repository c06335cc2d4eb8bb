using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

public class InfluencePictureTests
{
    [Fact]
    public void OfEffect_Diagonal_LabelsOrdinatesRegionsAndNeutralPoint()
    {
        // L2U3 of the Warren truss: −V/sin from shear in the third panel, V running from +2/6 to −3/6, sin = 1.8/√(9 + 3.24).
        Picture picture = Warren("L2U3");

        string[] ordinates = [.. picture.Texts.Where(t => t.Shows.StartsWith("ordinate ", StringComparison.Ordinal)).Select(t => t.Content)];
        Assert.Equal(["0", "0.324", "0.648", "−0.972", "−0.648", "−0.324", "0"], ordinates);
        Assert.Single(picture.Texts, t => t.Content == "tension");
        Assert.Single(picture.Texts, t => t.Content == "compression");
        Assert.Equal("neutral point, 7.2 m from L0", Assert.Single(picture.Texts, t => t.Shows == "neutral point").Content);
        Assert.Equal("ordinate [kN/kN]", picture.Panels[1].LeftAxis!.Title);
    }

    [Fact]
    public void OfEffect_Member_SharesTheHorizontalScaleAndPointsTheMemberOut()
    {
        Picture picture = Warren("L2U3");

        Drawing line = picture.Panels[1].Drawing, elevation = picture.Panels[2].Drawing;
        Assert.Equal((elevation.Left, elevation.Width, elevation.ScaleX), (line.Left, line.Width, line.ScaleX));
        Assert.Equal(picture.Panels[1].Frame.X, picture.Panels[2].Frame.X);
        Assert.True(picture.Panels[1].Frame.Y < picture.Panels[2].Frame.Y);
        Assert.Equal("L2U3", elevation.Strokes.Where(s => ExampleBridges.Warren().FindMember(s.Shows) is not null).MaxBy(s => s.Weight)!.Shows);
    }

    [Fact]
    public void OfEffect_TensionAndCompression_DifferWithoutColour()
    {
        Drawing line = Warren("L2U3").Panels[1].Drawing;

        Assert.Equal(Dash.Solid, Assert.Single(line.Strokes, s => s.Shows == "L2U3, Tension").Dash);
        Assert.Equal(Dash.Dashed, Assert.Single(line.Strokes, s => s.Shows == "L2U3, Compression").Dash);
        Assert.All(line.Strokes.Where(s => s.Shows == "L2U3, hatching"), s => Assert.True(s.Points[1].Y < 0));
        Assert.Contains(line.Strokes, s => s.Shows == "L2U3, hatching");
    }

    [Fact]
    public void OfEffect_Reaction_SpeaksOfUpwardAndDrawsAnArrow()
    {
        Picture picture = Warren("L0 up");

        Assert.Contains(picture.Texts, t => t.Content.StartsWith("Influence line: vertical reaction at L0", StringComparison.Ordinal));
        Assert.Single(picture.Texts, t => t.Content == "upward");
        Assert.Single(picture.Panels[2].Drawing.Strokes, s => s.Shows == "reaction");
    }

    [Fact]
    public void OfEffect_MemberWithoutForce_SaysSo() =>
        Assert.Contains(Warren("L2U2").Texts, t => t.Content == "no force in member L2U2 wherever the load stands");

    [Fact]
    public void OfEffect_UnknownName_IsRefused() => Assert.Throws<ArgumentException>("effect", () => Warren("U9"));

    [Fact]
    public void OfEffect_OnePanel_IsDrawn()
    {
        Truss truss = ExampleBridges.Made(
            [new("A", 0, 0, Support.Pin, true), new("B", 5, 0, Support.Roller(), true), new("C", 2.5, 3)],
            [ExampleBridges.Between("A", "B"), ExampleBridges.Between("B", "C"), ExampleBridges.Between("A", "C")]);

        Picture picture = InfluencePicture.OfEffect("One panel", ExampleBridges.LinesOf(truss), "B up", DisplayUnits.Si);

        Assert.Equal(["0", "1.00"], picture.Texts.Where(t => t.Shows.StartsWith("ordinate ", StringComparison.Ordinal)).Select(t => t.Content));
        Assert.NotEmpty(InfluencePicture.OfAll("One panel", ExampleBridges.LinesOf(truss), DisplayUnits.Si).Panels);
    }

    [Fact]
    public void OfAll_KTruss_ShowsEachMemberOnceInOneScale()
    {
        InfluenceLines lines = ExampleBridges.LinesOf(ExampleBridges.KTruss());

        Picture picture = InfluencePicture.OfAll("Garrow Landing", lines, DisplayUnits.Us);

        Panel[] rows = [.. picture.Panels.Skip(1).SkipLast(1)];
        Assert.All(lines.Members, m => Assert.Single(rows.SelectMany(r => r.Drawing.Texts), t => t.Content == m.Name));
        Assert.Single(rows.Select(r => r.Drawing.ScaleY).Distinct());
    }

    private static Picture Warren(string effect) =>
        InfluencePicture.OfEffect("Tansy Weir", ExampleBridges.LinesOf(ExampleBridges.Warren()), effect, DisplayUnits.Si);
}
