using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

public sealed class PictureFileTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("spanrater-pictures-");

    public void Dispose() => folder.Delete(recursive: true);

    [Theory]
    [InlineData("a.png", true)]
    [InlineData("a.SVG", true)]
    [InlineData("folder.svg/a.Png", true)]
    [InlineData("a.jpg", false)]
    [InlineData("png", false)]
    [InlineData("a.png.txt", false)]
    public void IsSupported_ByEnding_IsAsExpected(string path, bool expected) => Assert.Equal(expected, PictureFile.IsSupported(path));

    [Theory]
    [InlineData("a.PNG", PictureFormat.Png)]
    [InlineData("a.svg", PictureFormat.Svg)]
    public void Save_OverAnOlderFile_ReplacesItAndLeavesNothingBeside(string name, PictureFormat format)
    {
        Picture picture = ElevationPicture.Of("Warren", ExampleBridges.Warren(), DisplayUnits.Si);
        string path = Path.Combine(folder.FullName, name);
        File.WriteAllText(path, "older");

        PictureFile.Save(picture, path);

        Assert.Equal(PictureFile.Bytes(picture, format), File.ReadAllBytes(path));
        Assert.Equal([path], Directory.GetFiles(folder.FullName));
    }

    [Fact]
    public void Save_WhereAFolderStands_FailsAndLeavesNothingBeside()
    {
        Picture picture = ElevationPicture.Of("Warren", ExampleBridges.Warren(), DisplayUnits.Si);
        string path = Path.Combine(folder.FullName, "a.svg");
        Directory.CreateDirectory(path);

        Exception? failure = Record.Exception(() => PictureFile.Save(picture, path));

        Assert.True(failure is IOException or UnauthorizedAccessException, failure?.ToString());
        Assert.Empty(Directory.GetFiles(folder.FullName));
    }

    [Fact]
    public void Save_UnknownEnding_NamesThePathAndTheKinds()
    {
        Picture picture = ElevationPicture.Of("Warren", ExampleBridges.Warren(), DisplayUnits.Si);

        UnsupportedPictureException failure = Assert.Throws<UnsupportedPictureException>(() => PictureFile.Save(picture, "a.gif"));

        Assert.Equal("a.gif", failure.Path);
        Assert.Equal("\"a.gif\" must end in .png or .svg: pictures are written in these two kinds only.", failure.Message);
    }

    [Theory]
    [InlineData("Bridge & <river> \"$1\"")]
    [InlineData("Pont − d'été · 2 × 3 ≥ ≤ ² ° – ▲ ÆØÅæøåß¿")]
    public void Bytes_TitleWithSigns_StandsInTheSvgAsItIs(string title)
    {
        Picture picture = ElevationPicture.Of(title, ExampleBridges.Warren(), DisplayUnits.Si);

        var svg = System.Xml.Linq.XDocument.Parse(System.Text.Encoding.UTF8.GetString(PictureFile.Bytes(picture, PictureFormat.Svg)));

        Assert.Equal(2, svg.Descendants().Count(e => e.Name.LocalName is "title" or "text" && e.Value == title));
        Assert.True(PrintedText.HasGlyphs(title));
    }

    [Fact]
    public void Font_InTheAssembly_ComesWithItsLicence()
    {
        using Stream stream = typeof(Picture).Assembly.GetManifestResourceStream("font/OFL.txt")!;
        using var reader = new StreamReader(stream);

        Assert.Contains("SIL OPEN FONT LICENSE Version 1.1", reader.ReadToEnd());
    }
}
