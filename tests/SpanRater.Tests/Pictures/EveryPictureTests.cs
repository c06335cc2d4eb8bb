using System.Globalization;
using System.Text;
using System.Xml.Linq;
using SkiaSharp;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

public class EveryPictureTests
{
    public static TheoryData<string> Names => ExamplePictures.Names;

    [Theory]
    [MemberData(nameof(Names))]
    public void Texts_OfEveryPicture_AreNotCutOff(string name)
    {
        IReadOnlyList<PrintedText> texts = PrintedText.Of(ExamplePictures.Make(name));

        Assert.Empty(texts.Where(t => t.IsCutOff).Select(t => $"{t.Text.Shows}: {t.Text.Content}"));
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Texts_OfEveryPicture_DoNotOverprintEachOther(string name)
    {
        IReadOnlyList<PrintedText> texts = PrintedText.Of(ExamplePictures.Make(name));

        var overprints =
            from i in Enumerable.Range(0, texts.Count)
            from j in Enumerable.Range(0, i)
            where texts[i].Overprints(texts[j])
            select $"\"{texts[i].Text.Content}\" over \"{texts[j].Text.Content}\"";
        Assert.Empty(overprints);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Texts_OfEveryPicture_AreReadableAndInTheShippedFont(string name)
    {
        foreach (Text text in ExamplePictures.Make(name).Texts)
        {
            Assert.True(text.Size >= 10, text.Content);
            Assert.True(PrintedText.HasGlyphs(text.Content), text.Content);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Bytes_ASecondTimeUnderAnotherCulture_AreTheSame(string name)
    {
        foreach (PictureFormat format in Enum.GetValues<PictureFormat>())
        {
            byte[] first = PictureFile.Bytes(ExamplePictures.Make(name), format);
            CultureInfo culture = CultureInfo.CurrentCulture;
            byte[] second;
            try
            {
                CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
                second = PictureFile.Bytes(ExamplePictures.Make(name), format);
            }
            finally
            {
                CultureInfo.CurrentCulture = culture;
            }

            Assert.True(first.AsSpan().SequenceEqual(second), $"{format} differs the second time");
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Bytes_AsPng_HaveTheSizeOfThePicture(string name)
    {
        Picture picture = ExamplePictures.Make(name);

        using SKBitmap bitmap = SKBitmap.Decode(PictureFile.Bytes(picture, PictureFormat.Png));

        Assert.Equal((Picture.StandardWidth, picture.Height), (bitmap.Width, bitmap.Height));
        Assert.Equal(new SKColor(255, 255, 255), bitmap.GetPixel(0, 0));
        Assert.Contains(bitmap.Pixels, pixel => pixel.Red < 64 && pixel.Green < 64 && pixel.Blue < 64);
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Bytes_AsSvg_HoldEveryTextOnceInTheShippedFont(string name)
    {
        Picture picture = ExamplePictures.Make(name);

        XDocument svg = XDocument.Parse(Encoding.UTF8.GetString(PictureFile.Bytes(picture, PictureFormat.Svg)));

        XElement[] texts = [.. svg.Descendants().Where(e => e.Name.LocalName == "text")];
        Assert.All(texts, text => Assert.Equal("Inter, sans-serif", text.Attribute("font-family")?.Value));
        Assert.All(texts, text => Assert.Matches(@"^-?[\d.]+(, -?[\d.]+)*$", text.Attribute("x")!.Value));
        Assert.All(texts, text => Assert.Matches(@"^-?[\d.]+$", text.Attribute("y")!.Value));
        string[] axes = [.. picture.Panels.SelectMany(p => AxisTexts(p.LeftAxis).Concat(AxisTexts(p.BottomAxis)))];
        Assert.Equal(
            picture.Texts.Select(t => t.Content).Concat(axes).Order(StringComparer.Ordinal),
            texts.Select(t => t.Value).Order(StringComparer.Ordinal));
        Assert.Equal(picture.Title, svg.Root!.Elements().First(e => e.Name.LocalName == "title").Value);
    }

    private static IEnumerable<string> AxisTexts(Axis? axis) => axis is null ? [] : axis.Ticks.Select(t => t.Label).Append(axis.Title);
}
