using CsCheck;

namespace SpanRater.Tests;

/// <summary>What holds of every take-off: nothing gets lost, weights keep their moment, and what is mirrored is shared in the mirror.</summary>
public class TakeOffProperties
{
    private const int Cases = 300;

    private const double Spacing = 5;

    private sealed record Laid(Truss Truss, DeadItem[] Items);

    // Simple spans carry a weight to joints whose sum and whose moment are those of the weight.
    [Fact]
    public void JointLoads_OfRandomItems_HaveTheSumAndTheMomentOfTheItems() => SeededCases.Check(Bridges(), Cases, laid =>
    {
        TakeOff takeOff = TakeOff.Of(laid.Truss, new Deck { TrussSpacing = Spacing }, laid.Items);
        double items = takeOff.Items.Sum(i => i.Total);
        double joints = Enum.GetValues<DeadCase>().Sum(c => takeOff.JointWeights(c, 0).Sum() + takeOff.JointWeights(c, 1).Sum());
        Assert.Equal(items, joints, 1e-9 * items);
        Assert.All(takeOff.Items, item =>
        {
            (double weight, double moment) = ByIntegration(laid.Truss, item.Item);
            Assert.Equal(weight, item.Total, 1e-9 * weight);
            Assert.Equal(moment, item.AtJoints.Sum(j => j.Weight * laid.Truss.Joints[j.Joint].X), 1e-9 * weight * Length(laid.Truss));
            Assert.All(item.AtJoints, j => Assert.True(j.Weight >= 0));
        });
    });

    [Fact]
    public void JointLoads_OfItemsOnTheOtherSide_AreThoseOfTheOtherTruss() => SeededCases.Check(Bridges(), Cases, laid =>
    {
        var deck = new Deck { TrussSpacing = Spacing };
        TakeOff takeOff = TakeOff.Of(laid.Truss, deck, laid.Items), mirrored = TakeOff.Of(laid.Truss, deck, [.. laid.Items.Select(i => i with { Centre = -i.Centre })]);
        AssertSame(takeOff, mirrored, j => j);
    });

    // Decks of equal panels are symmetric: a panel point mirrors the one as far from the other end.
    [Fact]
    public void JointLoads_OfItemsFromTheOtherEnd_AreThoseOfTheOtherEnd() => SeededCases.Check(Bridges(), Cases, laid =>
    {
        Truss truss = laid.Truss;
        int[] points = [.. truss.PanelPoints];
        double ends = truss.Stations[0] + truss.Stations[^1];
        DeadItem[] turned = [.. laid.Items.Select(i => i with { From = ends - i.To, To = ends - i.From, Centre = -i.Centre })];
        AssertSame(
            TakeOff.Of(truss, new Deck { TrussSpacing = Spacing }, laid.Items),
            TakeOff.Of(truss, new Deck { TrussSpacing = Spacing }, turned),
            j => Array.IndexOf(points, j) is >= 0 and var at ? points[^(at + 1)] : j);
    });

    private static void AssertSame(TakeOff one, TakeOff mirrored, Func<int, int> mirror)
    {
        double largest = one.Items.Max(i => i.Total);
        foreach (DeadCase kind in Enum.GetValues<DeadCase>())
        {
            for (int side = 0; side < 2; side++)
            {
                IReadOnlyList<double> here = one.JointWeights(kind, side), there = mirrored.JointWeights(kind, 1 - side);
                Assert.All(Enumerable.Range(0, here.Count), j => Assert.Equal(here[j], there[mirror(j)], 1e-9 * largest));
            }
        }
    }

    private static double Length(Truss truss) => truss.Stations[^1] - truss.Stations[0];

    private static (double Weight, double Moment) ByIntegration(Truss truss, DeadItem item)
    {
        double from = item.From!.Value, to = item.To!.Value, weight = item.Weight.PerLength!.Value * item.Count * (to - from);
        return (weight, weight * (from + to) / 2);
    }

    private static Gen<Laid> Bridges() =>
        from form in RandomTrusses.Forms()
        let truss = form.Build()
        from items in Items(truss).Array[1, 5]
        select new Laid(truss, items);

    // Stretches of a thousandth of the deck at least, anywhere on it.
    private static Gen<DeadItem> Items(Truss truss) => Gen.Select(
        Gen.Double[0, 0.999], Gen.Double[0.001, 1], Gen.Double[0.1, 30], Gen.Int[1, 3], Gen.Double[-Spacing / 2, Spacing / 2], Gen.Bool,
        (start, part, load, count, centre, wears) =>
        {
            double from = truss.Stations[0] + (start * Length(truss)), to = Math.Min(truss.Stations[^1], from + Math.Max(0.001, part * (1 - start)) * Length(truss));
            return new DeadItem("item", wears ? DeadCase.WearingSurface : DeadCase.Components, new DeadWeight.Line(1000 * load)) { From = from, To = to, Count = count, Centre = centre };
        });
}
