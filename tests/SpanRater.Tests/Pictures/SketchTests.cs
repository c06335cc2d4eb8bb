using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

/// <summary>Small drawings of the field report: vehicles to scale, influence lines by themselves.</summary>
public sealed class SketchTests
{
    private const double Foot = 0.3048, Kip = 4448.2216152605;

    [Fact]
    public void VehicleSketch_Axles_StandAtTheirSpacingsToScale_WithLoadsAndSpacingsWritten()
    {
        var train = new AxleTrain([8 * Kip, 32 * Kip, 32 * Kip], [AxleGap.Fixed(14 * Foot), new AxleGap(14 * Foot, 30 * Foot)]);
        Drawing drawing = VehicleSketch.Of(new Vehicle("Truck", VehicleClass.Design, train, Vehicle.StandardGauge, "test"), DisplayUnits.Us);

        double[] axles = [.. drawing.Marks.Select(m => m.At.X)];
        Assert.Equal(3, axles.Length);
        Assert.Equal(1, (axles[2] - axles[1]) / (axles[1] - axles[0]), 9);
        Assert.Equal(["14 ft", "14 to 30 ft"], drawing.Texts.Where(t => t.Shows == "spacing").Select(t => t.Content));
        Assert.Equal(["8.00 kip", "32.0 kip", "32.0 kip"], drawing.Texts.Where(t => t.Shows == "axle load").Select(t => t.Content));
        Assert.Contains(drawing.Strokes, s => s is { Shows: "spacing", Dash: Dash.Dashed });
    }

    [Fact]
    public void VehicleSketch_AxlesCloseTogether_KeepTheirLoadsApart()
    {
        var train = new AxleTrain([.. Enumerable.Repeat(17 * Kip, 6)], [AxleGap.Fixed(40 * Foot), .. Enumerable.Repeat(AxleGap.Fixed(4 * Foot), 4)]);
        Drawing drawing = VehicleSketch.Of(new Vehicle("Long", VehicleClass.Permit, train, Vehicle.StandardGauge, "test"), DisplayUnits.Us);

        Text[] loads = [.. drawing.Texts.Where(t => t.Shows == "axle load")];
        Assert.All(loads.SelectMany((a, i) => loads.Skip(i + 1).Select(b => (a, b))), p =>
            Assert.True(Math.Abs(p.a.At.Y - p.b.At.Y) > 12 || Math.Abs(p.a.At.X - p.b.At.X) > (Lettering.Width(p.a.Content, p.a.Size) + Lettering.Width(p.b.Content, p.b.Size)) / 2, $"{p.a.At} {p.b.At}"));
        Assert.All(drawing.Texts, t => Assert.InRange(t.At.Y, 5, (drawing.Height * drawing.ScaleY) - 5));
    }

    [Theory]
    [InlineData("L1", "L1")]
    [InlineData("", "")]
    public void Fitted_TextThatFits_IsWhole(string text, string expected) => Assert.Equal(expected, Lettering.Fitted(text, 13, 60));

    [Fact]
    public void Fitted_TextThatDoesNotFit_IsCutWithAnEllipsisWithinTheWidth_AndNeverWithinALetter()
    {
        string cut = Lettering.Fitted(new string('W', 10_000), 13, 60);
        Assert.EndsWith("…", cut, StringComparison.Ordinal);
        Assert.InRange(Lettering.Width(cut, 13), 20, 60);
        Assert.All(Enumerable.Range(5, 60), w => Assert.Equal(1, Lettering.Fitted(string.Concat(Enumerable.Repeat("\U0001F309", 40)), 13, w).Length % 2));
    }
}
