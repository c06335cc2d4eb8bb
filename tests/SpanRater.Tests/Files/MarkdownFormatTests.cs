using System.Text;
using SpanRater.Files;

namespace SpanRater.Tests.Files;

public sealed class MarkdownFormatTests
{
    [Fact]
    public void Write_EveryKindOfBlock_HasItsMarkdown()
    {
        var page = new ResultPage(
            [
                new ResultBlock.Heading("Title"),
                new ResultBlock.Heading("Part", 3),
                new ResultBlock.Paragraph("Plain."),
                new ResultBlock.Paragraph("Loud.", Strong: true),
                new ResultBlock.Items("Lead:", ["one", "two"]),
                new ResultBlock.Equation("a = b", @"a = \frac{b}{1}"),
                new ResultBlock.Figure("Free body", "joint L0.png"),
                new ResultBlock.Grid(new ResultTable([new("name"), new("force", Quantity.Force)], [["a", 1500.0]])),
            ],
            new ResultTable([], []),
            [],
            _ => { });

        string[] expected =
        [
            "# Title", "", "### Part", "", "Plain.", "", "**Loud.**", "", "Lead:", "", "- one", "- two", "", @"$$a = \frac{b}{1}$$", "",
            "![Free body](<joint L0.png>)", "", @"| name | force \[kN\] |", "| --- | ---: |", "| a | 1.50 |", "",
        ];
        Assert.Equal(string.Join('\n', expected), Encoding.UTF8.GetString(MarkdownFormat.Write(page, DisplayUnits.Si)));
    }

    [Fact]
    public void Write_NameWithMarkup_StaysText()
    {
        var page = new ResultPage([new ResultBlock.Paragraph("a|b *c* <i> $d$\nnext")], new ResultTable([], []), [], _ => { });

        Assert.Equal(@"a\|b \*c\* \<i\> \$d\$ next" + "\n", Encoding.UTF8.GetString(MarkdownFormat.Write(page, DisplayUnits.Si)));
    }
}
