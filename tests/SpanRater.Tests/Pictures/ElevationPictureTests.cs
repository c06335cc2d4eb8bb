using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

public class ElevationPictureTests
{
    [Fact]
    public void Of_KTruss_NamesEveryMemberAndJointOnce()
    {
        Truss truss = ExampleBridges.KTruss();

        Picture picture = ElevationPicture.Of("Garrow Landing", truss, DisplayUnits.Us);

        Assert.Equal(41, truss.Members.Count);
        Assert.All(truss.Members, m => Assert.Single(picture.Texts, t => t.Shows == m.Name && t.Content == m.Name));
        Assert.All(truss.Joints, j => Assert.Single(picture.Texts, t => t.Shows == j.Name && t.Content == j.Name));
        Drawing drawing = Elevation(picture);
        Assert.All(truss.Members, m => Assert.Single(drawing.Strokes, s => s.Shows == m.Name));
        Assert.Equal(truss.PanelPoints.Count, drawing.Marks.Count(m => m.Filled));
    }

    [Fact]
    public void Of_KTruss_GivesPanelsSpanAndDepth()
    {
        Picture picture = ElevationPicture.Of("Garrow Landing", ExampleBridges.KTruss(), DisplayUnits.Us);

        Assert.Equal(8, picture.Texts.Count(t => t.Content == "18 ft"));
        Assert.Equal("span 144 ft", Assert.Single(picture.Texts, t => t.Shows == "span").Content);
        Assert.Equal("depth 28 ft", Assert.Single(picture.Texts, t => t.Shows == "depth").Content);
    }

    [Fact]
    public void Of_Warren_HasOneScaleBothWays()
    {
        Drawing drawing = Elevation(ElevationPicture.Of("Tansy Weir", ExampleBridges.Warren(), DisplayUnits.Si));

        Assert.Equal(drawing.ScaleX, drawing.ScaleY);
        Assert.Equal([new(0, 0), new(3, 0)], drawing.Strokes.Single(s => s.Shows == "L0L1").Points);
    }

    [Fact]
    public void Of_LabelsAlongMembers_ReadFromBelowOrFromTheRight()
    {
        Picture picture = ElevationPicture.Of("Tansy Weir", ExampleBridges.Warren(), DisplayUnits.Si);

        Assert.All(picture.Texts, t => Assert.InRange(t.Angle, -89.999, 90));
        Assert.Equal(90, Assert.Single(picture.Texts, t => t.Shows == "L1U1").Angle);
        Assert.Equal(0, Assert.Single(picture.Texts, t => t.Shows == "L0L1").Angle);
    }

    [Fact]
    public void Of_NamesLongerThanTheirMembers_StandInTheKey()
    {
        Picture picture = ElevationPicture.Of("Long", ExamplePictures.LongNames(), DisplayUnits.Us);

        string key = string.Join(' ', picture.Texts.Where(t => t.Shows == "key").Select(t => t.Content));
        foreach (Member member in ExamplePictures.LongNames().Members)
        {
            string label = Assert.Single(picture.Texts, t => t.Shows == member.Name).Content;
            Assert.True(label == member.Name || key.Contains($"{label} = {member.Name}", StringComparison.Ordinal), member.Name);
        }

        Assert.Contains("1 = member-16-xy", key);
    }

    [Fact]
    public void Of_Supports_AreDrawnByKindWithTheirNormal()
    {
        Picture picture = ElevationPicture.Of(
            "Inclined",
            ExampleBridges.Made(
                [new("A", 0, 0, Support.Pin, true), new("B", 5, 0, Support.Roller(60), true), new("C", 2.5, 3)],
                [ExampleBridges.Between("A", "B"), ExampleBridges.Between("B", "C"), ExampleBridges.Between("A", "C")]),
            DisplayUnits.Si);

        Assert.Equal("pin", Assert.Single(picture.Texts, t => t.Shows == "support A").Content);
        Assert.Equal("roller, normal 60°", Assert.Single(picture.Texts, t => t.Shows == "support B").Content);
        Mark roller = Assert.Single(Elevation(picture).Marks, m => m.Shows == "support B");
        Assert.Equal(Math.Tan(60 * Math.PI / 180), roller.At.Y / (roller.At.X - 5), 9);
    }

    [Fact]
    public void Of_MechanismAndNoDeck_IsDrawnAllTheSame()
    {
        Picture picture = ElevationPicture.Of(
            "Mechanism",
            ExampleBridges.Made(
                [new("A", 0, 0, Support.Pin), new("B", 4, 0, Support.Roller()), new("C", 4, 3), new("D", 0, 3)],
                [ExampleBridges.Between("A", "B"), ExampleBridges.Between("B", "C"), ExampleBridges.Between("C", "D"), ExampleBridges.Between("D", "A")]),
            DisplayUnits.Si);

        Assert.Contains(picture.Texts, t => t.Content == "No joint is a panel point: the deck's load does not reach this truss.");
        Assert.DoesNotContain(PrintedText.Of(picture), t => t.IsCutOff);
    }

    [Fact]
    public void Of_Loads_AreArrowsDownWithTheirSizeBelowTheBottomChordAndAboveTheTopChord()
    {
        foreach ((Truss truss, string joint, bool above) in ((Truss, string, bool)[])[(new PrattTruss(4, 5, 5).Build(), "L2", false), (new PrattTruss(4, 5, 5, DeckChord.Top).Build(), "U2", true)])
        {
            Picture picture = ElevationPicture.Of("Loaded", truss, DisplayUnits.Si, new LoadCase("loads", [new JointLoad(joint, 0, -60_000)]));
            Text size = Assert.Single(picture.Texts, t => t.Shows == $"load {joint}");
            Joint at = truss.Joints[truss.FindJoint(joint)!.Value];
            Assert.Equal(("60 kN", at.X), (size.Content, size.At.X));
            Assert.Equal(above, size.At.Y > at.Y);
            Area head = Assert.Single(Elevation(picture).Parts.OfType<Area>(), a => a.Shows == $"load {joint}");
            Assert.True(head.Points[0].Y < head.Points[1].Y, "the head points down");
            Assert.DoesNotContain(PrintedText.Of(picture), t => t.IsCutOff);
        }
    }

    [Fact]
    public void Of_BarsInOneLine_HaveNoDepth()
    {
        Picture picture = ElevationPicture.Of(
            "Flat",
            ExampleBridges.Made(
                [new("A", 0, 0, Support.Pin, true), new("B", 4, 0, Support.Roller(), true)], [ExampleBridges.Between("A", "B")]),
            DisplayUnits.Si);

        Assert.DoesNotContain(picture.Texts, t => t.Shows == "depth");
        Assert.Equal("4 m", Assert.Single(picture.Texts, t => t.Shows == "panel A–B").Content);
    }

    [Fact]
    public void Of_BarsUpright_HaveNoSpan()
    {
        Picture picture = ElevationPicture.Of(
            "Mast",
            ExampleBridges.Made([new("A", 0, 0, Support.Pin), new("B", 0, 4)], [ExampleBridges.Between("A", "B")]),
            DisplayUnits.Si);

        Assert.DoesNotContain(picture.Texts, t => t.Shows == "span");
        Assert.Equal("depth 4 m", Assert.Single(picture.Texts, t => t.Shows == "depth").Content);
    }

    private static Drawing Elevation(Picture picture) => picture.Panels[^1].Drawing;
}
