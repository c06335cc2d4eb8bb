using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

/// <summary>What pictures of movement must show.</summary>
public class MovementPictureTests
{
    [Fact]
    public void Sway_QueenPost_ShowsBothShapesArrowsAndThatTheSizeMeansNothing()
    {
        Picture picture = ExamplePictures.Make("sway queen post");
        Drawing drawing = picture.Panels[^1].Drawing;

        // Every member twice: dashed as given, solid as moved; told apart by dash and marks, not by ink alone.
        Stroke[] before = [.. drawing.Strokes.Where(s => s.Shows == "L1U1" || s.Shows == "U1L1")];
        Stroke[] after = [.. drawing.Strokes.Where(s => s.Shows is "L1U1, displaced" or "U1L1, displaced")];
        Assert.Equal(Dash.Dashed, Assert.Single(before).Dash);
        Assert.Equal(Dash.Solid, Assert.Single(after).Dash);
        Assert.Equal(4, drawing.Strokes.Count(s => s.Shows.EndsWith(", arrow", StringComparison.Ordinal)));
        Assert.Contains(picture.Texts, t => t.Content == "Panel L1-L2-U2-U1 can sway: add its diagonal, L1 to U2 or L2 to U1.");
        Assert.Contains(picture.Texts, t => t.Content.Contains("no size of its own", StringComparison.Ordinal));
        Assert.Equal("Sway: it can move", picture.Title);
    }

    [Fact]
    public void Sway_SeveralMovements_SaysHowMany() =>
        Assert.Contains(ExamplePictures.Make("sway K-truss two ways").Texts, t => t.Content.StartsWith("The first of 2 independent movements is drawn", StringComparison.Ordinal));

    [Fact]
    public void Sway_TrussThatStands_IsRefused()
    {
        Truss truss = ExampleBridges.Warren();
        Assert.Throws<ArgumentException>(() => SwayPicture.Of("x", truss, Stability.Of(truss), DisplayUnits.Si));
    }

    // The deck is drawn where the ordinates say, in the scale that the caption names.
    [Fact]
    public void DisplacedDeck_DiagonalOfAK_IsDrawnAtTheOrdinates()
    {
        Truss truss = ExampleBridges.KTruss();
        InfluenceLine line = ExampleBridges.LinesOf(truss).Members[truss.FindMember("M2U3")!.Value].Line;
        Picture picture = ExamplePictures.Make("displaced deck diagonal of a K");
        Drawing drawing = picture.Panels[^1].Drawing;
        double scale = drawing.Strokes.Single(s => s.Shows == "ordinate 3").Points[1].Y / line.Ordinates[3];
        for (int i = 0; i < line.Stations.Count; i++)
        {
            Stroke ordinate = drawing.Strokes.Single(s => s.Shows == $"ordinate {i}");
            Assert.Equal(line.Stations[i], ordinate.Points[1].X, 1e-9);
            Assert.Equal(scale * line.Ordinates[i], ordinate.Points[1].Y, 1e-9);
            Mark joint = drawing.Marks.Single(m => m.Shows == $"L{i}, displaced");
            Assert.Equal(ordinate.Points[1].Y, joint.At.Y, 1e-9);
        }

        string caption = string.Join(' ', picture.Texts.Where(t => t.Shows == "scale").Select(t => t.Content));
        Assert.Contains($"one unit of shortening is drawn as long as {Math.Round(scale / 0.3048, 2).ToString(System.Globalization.CultureInfo.InvariantCulture)} ft of the elevation", caption, StringComparison.Ordinal);
    }
}
