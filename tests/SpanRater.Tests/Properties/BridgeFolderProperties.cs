using SpanRater.Files;

namespace SpanRater.Tests;

/// <summary>What is written of a truss is read back as the same truss.</summary>
public class BridgeFolderProperties
{
    private const int Cases = 60;

    [Fact]
    public void Files_OfRandomForms_ReadBackAsTheSameTrussWithTheSameLines()
    {
        string place = Directory.CreateTempSubdirectory("span-round-").FullName;
        int number = 0;
        try
        {
            SeededCases.CheckEach([.. RandomTrusses.All.Take(Cases)], solved =>
            {
                Truss truss = solved.System.Truss;
                foreach (DisplayUnits units in (DisplayUnits[])[DisplayUnits.Us, DisplayUnits.Si])
                {
                    string folder = Path.Combine(place, (number++).ToString(System.Globalization.CultureInfo.InvariantCulture));
                    var draft = new BridgeDraft("A \\ \"round\" trip", truss, [solved.One, solved.Other], units, [solved.Form.Name]);
                    NewFolder.Write(folder, BridgeFolderWriter.Files(draft));
                    BridgeReading reading = BridgeFolder.Read(folder, []);
                    Assert.True(reading.Bridge is not null, string.Join('\n', reading.Findings.All));
                    AssertSame(truss, reading.Bridge.Truss);
                    Assert.Equal((draft.Name, units), (reading.Bridge.Name, reading.Units));
                    AssertSame([solved.One, solved.Other], reading.Bridge.Cases);
                    AssertSame(solved.Lines, InfluenceLines.Of(reading.Bridge.Truss).Value!);
                }
            });
        }
        finally
        {
            Directory.Delete(place, recursive: true);
        }
    }

    [Theory]
    [InlineData(16 * 0.3048, "ft", "16")]
    [InlineData(5 * 0.3048 + 7 * 0.0254, "ft", "5.58333333333")]
    [InlineData(0.1 + 0.2, "m", "0.3")]
    [InlineData(-7.3, "m", "-7.3")]
    [InlineData(0, "ft", "0")]
    [InlineData(1e5, "m", "100000")]
    public void Of_ALength_IsTheShortestDecimalThatReadsBack(double metres, string unit, string expected) =>
        Assert.Equal(expected, ShortestFigure.Of(metres, Unit.Find(unit)!));

    private static void AssertSame(Truss expected, Truss actual)
    {
        double size = expected.Joints.Max(j => Math.Max(Math.Abs(j.X), Math.Abs(j.Y)));
        Assert.Equal(expected.Joints.Select(j => (j.Name, j.Support, j.IsPanelPoint)), actual.Joints.Select(j => (j.Name, j.Support, j.IsPanelPoint)));
        Assert.Equal(expected.Members.Select(m => m with { Area = null }), actual.Members.Select(m => m with { Area = null }));
        Assert.All(expected.Joints.Zip(actual.Joints), pair =>
        {
            Assert.True(Math.Abs(pair.First.X - pair.Second.X) <= 1e-9 * size, pair.First.Name);
            Assert.True(Math.Abs(pair.First.Y - pair.Second.Y) <= 1e-9 * size, pair.First.Name);
        });
    }

    private static void AssertSame(IReadOnlyList<LoadCase> expected, IReadOnlyList<LoadCase> actual)
    {
        Assert.Equal(expected.Select(c => c.Name), actual.Select(c => c.Name));
        Assert.All(expected.SelectMany(c => c.Loads).Zip(actual.SelectMany(c => c.Loads)), pair =>
        {
            Assert.Equal(pair.First.Joint, pair.Second.Joint);
            Assert.Equal(pair.First.Right, pair.Second.Right, 1e-6);
            Assert.Equal(pair.First.Up, pair.Second.Up, 1e-6);
        });
    }

    private static void AssertSame(InfluenceLines expected, InfluenceLines actual) =>
        Assert.All(expected.Members.Concat(expected.Reactions).Zip(actual.Members.Concat(actual.Reactions)), pair =>
        {
            Assert.Equal(pair.First.Name, pair.Second.Name);
            double largest = pair.First.Line.Ordinates.Max(Math.Abs);
            Assert.All(pair.First.Line.Ordinates.Zip(pair.Second.Line.Ordinates), y => Assert.True(Math.Abs(y.First - y.Second) <= 1e-9 * Math.Max(1, largest)));
        });
}
