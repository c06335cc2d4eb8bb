namespace SpanRater;

/// <summary>
/// Rates a packed pin. Moment and shear are vectors: one is within its capacity if it is so along every direction, so that the factor is the least of those along all directions. Directions are
/// searched every 5°, and the lowest is closed in on to a thousandth of a degree; of a shear that lessens the moment every 5°, its largest then raised by the 0.1% that lies between.
/// </summary>
/// <param name="forces">Moments and shears.</param>
/// <param name="rule">How the method makes strengths.</param>
/// <param name="factors">Condition and system factors; null where the method has none.</param>
/// <param name="load">Brings dead and live load onto a line, for an effect.</param>
internal sealed class PinRater(PinForces forces, ConnectionRule rule, MemberFactors? factors, Func<InfluenceLine, double, double, PartEffect, PartRow> load)
{
    private const int Directions = 72;

    private readonly BarPush[] pushes = [.. Enumerable.Range(0, forces.Pin.Packing.Count).Select(forces.Push)];

    private double Reduced => factors?.Value ?? 1;

    private double Yield => ((MetalMaterial)forces.Pin.Material!).Strength!.Yield;

    private int Bars => forces.Pin.Packing.Count;

    /// <summary>Bending, shear where the method rates it apart, and the bearing of the bars.</summary>
    public IEnumerable<PartRow> Rows(Bridge bridge)
    {
        // Of a packing a little askew the moments from its last bar on are places of their own, numbered on after those from the first.
        IEnumerable<int> places = Enumerable.Range(1, Math.Max(0, Bars - 2));
        List<PartRow> moments = Coarse(forces.IsAskew ? places.Concat(places.Select(p => p + Bars)) : places, Moment, PartEffect.Moment, out List<(int Bar, double Angle)> momentsAt);
        List<PartRow> shears = Coarse(Enumerable.Range(0, Bars - 1), forces.Shear, PartEffect.Shear, out List<(int Bar, double Angle)> shearsAt);
        double shear = rule.PinShearLessensMoment ? ShearAtFactor(moments, shears) : 0;
        ConnectionStrength bending = rule.PinBending(Yield, forces.Pin.Diameter, shear / Reduced);
        if (moments.Count > 0)
        {
            yield return Lowest(moments, momentsAt, bending, Moment, PartEffect.Moment);
        }

        if (rule.PinShear(Yield, forces.Pin.Diameter) is { } inShear)
        {
            yield return Lowest(shears, shearsAt, inShear, forces.Shear, PartEffect.Shear);
        }

        yield return Bearing(bridge);
    }

    private (InfluenceLine Line, double Components, double Wearing) Moment(int place, double angle) => forces.Moment(place % Bars, place >= Bars, angle);

    private List<PartRow> Coarse(IEnumerable<int> bars, Func<int, double, (InfluenceLine Line, double Components, double Wearing)> of, PartEffect effect, out List<(int Bar, double Angle)> at)
    {
        at = [.. bars.SelectMany(b => Enumerable.Range(0, Directions).Select(d => (b, d * 2 * Math.PI / Directions)))];
        return [.. at.Select(a => of(a.Bar, a.Angle) is var (line, dc, dw) ? load(line, dc, dw, effect) : null!)];
    }

    // The factor at which moment and shear together use the pin up, by halving: both grow with it.
    private double ShearAtFactor(List<PartRow> moments, List<PartRow> shears)
    {
        double spread = Math.Cos(Math.PI / Directions);
        double Most(List<PartRow> rows, double factor) => rows.Select(r => r.FactoredDead + (factor * LivePer(r))).DefaultIfEmpty(0).Max() / spread;
        bool Holds(double factor) => Most(moments, factor) <= Reduced * rule.PinBending(Yield, forces.Pin.Diameter, Most(shears, factor) / Reduced).Value;
        double low = 0, high = 1;
        while (high < 1e6 && Holds(high))
        {
            (low, high) = (high, 2 * high);
        }

        for (int i = 0; i < 100; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Holds(middle) ? (middle, high) : (low, middle);
        }

        return Most(shears, low);
    }

    private static double LivePer(PartRow row) => row is { Live: { } live, Impact: { } impact, Level.LiveFactor: { } factor } ? factor * Math.Abs(live) * (1 + impact) : 0;

    private PartRow Lowest(List<PartRow> coarse, List<(int Bar, double Angle)> at, ConnectionStrength strength, Func<int, double, (InfluenceLine Line, double Components, double Wearing)> of, PartEffect effect)
    {
        PartRow Rate(PartRow row, int bar, double angle) => ConnectionRater.Rated(row, new ConnectionResistance
        {
            Connection = forces.Pin,
            Modes = [strength],
            Factors = factors,
            At = effect == PartEffect.Shear ? $"between {forces.Pin.Packing[bar].Name} and {forces.Pin.Packing[bar + 1].Name}" : $"at {forces.Pin.Packing[bar % Bars].Name}, bar {(bar % Bars) + 1}{(bar >= Bars ? ", counted from the last bar" : "")}",
            Direction = angle,
            Bar = bar % Bars,
            IsFromLast = bar >= Bars,
            Pushes = pushes,
        });
        static double Of(PartRow row) => row.Factor ?? double.PositiveInfinity;
        (PartRow Row, int Bar, double Angle) best = coarse.Zip(at, (r, a) => (Rate(r, a.Bar, a.Angle), a.Bar, a.Angle)).MinBy(r => Of(r.Item1));
        for (double step = 2 * Math.PI / Directions / 10; step > 1e-5; step /= 10)
        {
            double middle = best.Angle;
            best = Enumerable.Range(-10, 21).Select(i => middle + (i * step)).Select(angle => of(best.Bar, angle) is var (line, dc, dw)
                ? (Rate(load(line, dc, dw, effect), best.Bar, angle), best.Bar, angle) : best).Append(best).MinBy(r => Of(r.Item1));
        }

        return effect == PartEffect.Moment && !forces.IsAskew ? WithEqualBars(best.Row, best.Bar, bar => of(bar, best.Angle) is var (line, dc, dw) ? Of(Rate(load(line, dc, dw, effect), bar, best.Angle)) : double.PositiveInfinity) : best.Row;
    }

    // Between two bars that carry no shear the moment is the same: both are named.
    private PartRow WithEqualBars(PartRow row, int worst, Func<int, double> factorAt)
    {
        int[] equal = [.. Enumerable.Range(1, Bars - 2).Where(b => b == worst || Math.Abs(factorAt(b) - (row.Factor ?? double.NaN)) <= 1e-6 * row.Factor)];
        string[] names = [.. equal.Select(b => forces.Pin.Packing[b].Name).Distinct()];
        return equal.Length < 2 || row.Resistance is not ConnectionResistance resistance
            ? row
            : row with { Resistance = resistance with { At = $"at {string.Join(" and ", names)}, bars {string.Join(" and ", equal.Select(b => b + 1))}" } };
    }

    // Each member on its own bars, in both senses; the lowest stands for the pin.
    private PartRow Bearing(Bridge bridge)
    {
        var rows = new List<PartRow>();
        foreach (IGrouping<int, PackedBar> bars in forces.Pin.Packing.Where(b => b.Load is PinLoad.OfMember).GroupBy(b => ((PinLoad.OfMember)b.Load).Member))
        {
            double yield = Math.Min(Yield, (bridge.MakeOf(0, bars.Key)?.Material as MetalMaterial)?.Strength?.Yield ?? Yield);
            InfluenceLine line = forces.Crossing.Lines.Members[bars.Key].Line;
            double dc = forces.Crossing.Components!.MemberForces[bars.Key], dw = forces.Crossing.WearingSurface?.MemberForces[bars.Key] ?? 0;
            var pressed = new InfluenceLine(line.Stations, [.. line.Ordinates.Select(o => -o)]);
            var resistance = new ConnectionResistance
            {
                Connection = forces.Pin,
                Modes = [rule.PinBearing(yield, forces.Pin.Diameter, bars.Sum(b => b.Thickness))],
                Factors = factors,
                At = $"under {bridge.Truss.Members[bars.Key].Name}",
            };
            rows.Add(ConnectionRater.Rated(load(line, dc, dw, PartEffect.Bearing), resistance));
            rows.Add(ConnectionRater.Rated(load(pressed, -dc, -dw, PartEffect.Bearing), resistance));
        }

        return rows.MinBy(r => r.Factor ?? double.PositiveInfinity)!;
    }
}
