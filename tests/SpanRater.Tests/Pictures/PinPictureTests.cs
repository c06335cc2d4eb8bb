using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

/// <summary>The packing as it was measured: every bar in its place along the pin, on its side of the joint, and every gap.</summary>
public class PinPictureTests
{
    private const double Inch = 0.0254;

    // Bars of 3/4 in, 1/4 in apart and 2 in in the middle: faces at 0, 1, 2, 3, 5.75 ... in.
    [Fact]
    public void Of_APacking_DrawsEveryBarBetweenItsFaces()
    {
        Drawing drawing = DrawingOf(ExamplePictures.PackingOf(0.75, DisplayUnits.Us));
        double[] faces = [0, 1, 2, 3, 5.75, 6.75, 7.75, 8.75];

        for (int bar = 0; bar < faces.Length; bar++)
        {
            Area drawn = Assert.Single(drawing.Parts.OfType<Area>(), a => a.Shows == $"bar {bar + 1}");
            Assert.Equal(faces[bar], -drawn.Points.Max(p => p.Y) / Inch, 1e-9);
            Assert.Equal(faces[bar] + 0.75, -drawn.Points.Min(p => p.Y) / Inch, 1e-9);
        }
    }

    // L0 is to the left of L1, L2 to its right; the hanger and the floor lie in the plane of the pin.
    [Fact]
    public void Of_APacking_DrawsBarsOnTheirSideOfTheJoint()
    {
        Drawing drawing = DrawingOf(ExamplePictures.PackingOf(0.75, DisplayUnits.Us));
        double Sum(int bar) => drawing.Parts.OfType<Area>().Single(a => a.Shows == $"bar {bar}").Points is var p ? p.Min(q => q.X) + p.Max(q => q.X) : 0;

        Assert.All((int[])[1, 8], bar => Assert.True(Sum(bar) < -0.01));
        Assert.All((int[])[2, 7], bar => Assert.True(Sum(bar) > 0.01));
        Assert.All((int[])[3, 4, 5, 6], bar => Assert.Equal(0, Sum(bar), 1e-12));
    }

    [Fact]
    public void Of_APacking_WritesNamesThicknessesAndGaps()
    {
        Picture picture = ExamplePictures.PackingOf(0.75, DisplayUnits.Us);
        Drawing drawing = DrawingOf(picture);

        Assert.Equal(["1: L0L1, 0.75 in", "2: L1L2, 0.75 in", "3: floor, 0.75 in", "4: L1U1, 0.75 in"], drawing.Texts.Where(t => t.Shows == "name").Take(4).Select(t => t.Content));
        Assert.Equal(["0.25 in", "0.25 in", "0.25 in", "2 in", "0.25 in", "0.25 in", "0.25 in"], drawing.Texts.Where(t => t.Shows == "gap").Select(t => t.Content));
        Assert.Contains(drawing.Texts, t => t.Content == "pin, diameter 2.125 in left; 9.5 in from the outer face of the first bar to that of the last");
        Assert.Contains(picture.Texts, t => t.Content == Words.Caution);
    }

    private static Drawing DrawingOf(Picture picture) => picture.Panels.Select(p => p.Drawing).Single(d => d.Parts.Any(p => p.Shows == "pin axis"));
}
