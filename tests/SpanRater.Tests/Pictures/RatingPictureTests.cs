using System.Globalization;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

public class RatingPictureTests
{
    [Fact]
    public void Of_RatedBridge_NamesTheGoverningMemberInTheTitle()
    {
        BridgeRating rating = ExampleBridges.RatedKTruss();

        Picture picture = RatingPicture.Of(rating, DisplayUnits.Us);

        string factor = Cut(rating.Governing!.Factor!.Value);
        Assert.Equal($"Garrow Landing road bridge: {rating.Governing.Name} governs, RF {factor} in tension (Type 3, legal)", picture.Title);
    }

    [Fact]
    public void Of_RatedBridge_WritesEachLowestFactorAtItsMember()
    {
        BridgeRating rating = ExampleBridges.RatedKTruss();

        Drawing elevation = RatingPicture.Of(rating, DisplayUnits.Us).Panels[1].Drawing;

        foreach (MemberRow row in rating.LowestByMember().OfType<MemberRow>())
        {
            string expected = row.Factor > 10 ? ">10" : Cut(row.Factor!.Value);
            Assert.Equal(expected, Assert.Single(elevation.Texts, t => t.Shows == row.Member.Name).Content);
        }
    }

    [Fact]
    public void Of_Bands_DifferInWeightAndDash()
    {
        BridgeRating rating = ExampleBridges.RatedWarren("L1U1");

        Drawing elevation = RatingPicture.Of(rating, DisplayUnits.Si).Panels[1].Drawing;

        (double, Dash) StyleOf(string name)
        {
            Stroke stroke = elevation.Strokes.Single(s => s.Shows == name);
            return (stroke.Weight, stroke.Dash);
        }

        (double, Dash)[] styles = [StyleOf("U1U2"), StyleOf("L0U1"), StyleOf("U1L2"), StyleOf("L1U1"), StyleOf("L2U2")];
        Assert.Equal(styles.Length, styles.Distinct().Count());
        Assert.Equal("not rated", Assert.Single(elevation.Texts, t => t.Shows == "L1U1").Content);
        Assert.Equal("no live force", Assert.Single(elevation.Texts, t => t.Shows == "L2U2").Content);
    }

    [Fact]
    public void Of_Bars_StandFromTheLowestWithALineAtOne()
    {
        Drawing bars = RatingPicture.Of(ExampleBridges.RatedWarren("L1U1"), DisplayUnits.Si).Panels[2].Drawing;

        double[] factors =
        [
            .. bars.Texts.Where(t => t.Shows.EndsWith(", factor", StringComparison.Ordinal)).OrderByDescending(t => t.At.Y)
                .Select(t => double.Parse(t.Content, CultureInfo.InvariantCulture)),
        ];
        Assert.Equal(18, factors.Length);
        Assert.Equal(factors.Order(), factors);
        Assert.Equal([1.0, 1.0], Assert.Single(bars.Strokes, s => s.Shows == "RF = 1").Points.Select(p => p.X));
        Assert.Contains(bars.Texts, t => t.Content == "compression, Mower and trailer, operating");
    }

    [Fact]
    public void Of_HugeCapacity_IsShownAsMoreThanTen()
    {
        BridgeRating rating = ExampleBridges.Rate("Strong", ExampleBridges.Warren(), 1_000, 1e8, 1e8, ExampleBridges.Mower);

        Assert.Equal(">10", Assert.Single(RatingPicture.Of(rating, DisplayUnits.Si).Panels[1].Drawing.Texts, t => t.Shows == "L0L1").Content);
    }

    [Fact]
    public void Of_DeadLoadAboveCapacity_IsZeroAndSaysWhy()
    {
        BridgeRating rating = ExampleBridges.Rate("Weak", ExampleBridges.Warren(), 90_000, 330_000, 300_000, ExampleBridges.Mower);

        Picture picture = RatingPicture.Of(rating, DisplayUnits.Si);

        Assert.Contains("RF 0.00", picture.Title);
        Assert.Contains(picture.Texts, t => t.Shows.EndsWith(", words", StringComparison.Ordinal) && t.Content.Contains("dead load alone", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_NothingRated_StillDrawsAndSaysSo()
    {
        Picture picture = RatingPicture.Of(ExampleBridges.RatedWarren([.. ExampleBridges.Warren().Members.Select(m => m.Name)]), DisplayUnits.Si);

        Assert.Equal("Tansy Weir footbridge: nothing is rated", picture.Title);
        Assert.Contains(picture.Texts, t => t.Shows == "L0L1" && t.Content == "not rated");
    }

    [Fact]
    public void Of_AnyRating_EndsWithScopeAndCaution()
    {
        Picture picture = RatingPicture.Of(ExampleBridges.RatedWarren(), DisplayUnits.Si);

        Assert.Contains(picture.Texts, t => t.Content == "An aid for qualified people, not a posting order: local codes and a licensed engineer decide.");
        Assert.Contains(picture.Texts, t => t.Content.StartsWith("Truss members only. Deck, stringers", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_FactorJustBelowOne_IsNotRoundedUpToEnough()
    {
        // The rating is linear in the room that a capacity leaves: this one is set so that the lowest factor is 0.998.
        BridgeRating first = ExampleBridges.Rate("Close", ExampleBridges.Warren(), 9_000, 330_000, 1e7, ExampleBridges.Mower);
        RatingRow lowest = first.Governing!;
        double capacity = lowest.FactoredDead + ((lowest.Capacity!.Value - lowest.FactoredDead) * 0.998 / lowest.Factor!.Value);
        BridgeRating close = ExampleBridges.Rate("Close", ExampleBridges.Warren(), 9_000, capacity, 1e7, ExampleBridges.Mower);

        Picture picture = RatingPicture.Of(close, DisplayUnits.Si);

        Assert.Equal(0.998, close.Governing!.Factor!.Value, 9);
        Assert.Contains("RF 0.99 ", picture.Title);
    }

    private static string Cut(double factor) => (Math.Floor((factor * 100) + 1e-6) / 100).ToString("F2", CultureInfo.InvariantCulture);
}
