namespace SpanRater;

/// <summary>
/// Moments and shears of a packed pin, as sums of the forces that act at once: influence lines and dead parts of both components at every section. Bars push at their
/// middles, the bars of one member by their thickness.
/// </summary>
internal sealed class PinForces
{
    /// <summary>Forces on a pin that are out of balance by more than this part of the largest are not all there [-].</summary>
    private const double Balance = 1e-6;

    /// <summary>
    /// Moment left at the last bar, against the largest along the pin, up to which the packing is taken as measured a little askew: moments are then counted from both ends and the larger
    /// one counts [-]. Beyond it shares by thickness are no longer near what the bars carry. Common practice has no number; this is a choice.
    /// </summary>
    private const double MostAskew = 0.10;

    private readonly double[][] x, y;
    private readonly int cases;

    /// <summary>The forces on a pin.</summary>
    /// <param name="pin">The pin.</param>
    /// <param name="bridge">The bridge.</param>
    /// <param name="crossing">The truss with its dead load on.</param>
    public PinForces(PinConnection pin, Bridge bridge, TrussCrossing crossing)
    {
        Pin = pin;
        Crossing = crossing;
        cases = bridge.Truss.Stations.Count + 2;
        x = [.. Enumerable.Range(0, pin.Packing.Count).Select(_ => new double[cases])];
        y = [.. Enumerable.Range(0, pin.Packing.Count).Select(_ => new double[cases])];
        for (int bar = 0; bar < pin.Packing.Count; bar++)
        {
            Add(bar, pin.PartOf(bar), pin.Packing[bar].Load, bridge);
        }

        if (!pin.Packing.Any(b => b.Load is PinLoad.OfFloor))
        {
            // What loads the joint besides, as the weight of the bars themselves, spreads over all of them.
            double all = pin.Packing.Sum(b => b.Thickness);
            for (int bar = 0; bar < pin.Packing.Count; bar++)
            {
                AddLoads(bar, pin.Packing[bar].Thickness / all, bridge);
            }
        }

        IReadOnlyList<double> stations = bridge.Truss.Stations;
        ImpactLength = pin.Members.SelectMany(m => ((Sense[])[Sense.Tension, Sense.Compression]).SelectMany(s => crossing.Lines.Members[m].Line.Regions(s))).Select(r => r.Length)
            .Append(pin.Packing.Any(b => b.Load is PinLoad.OfFloor) ? FloorLength(bridge.Truss, pin.Joint) : double.PositiveInfinity)
            .Append(stations[^1] - stations[0]).Min();
        double most = x.Concat(y).SelectMany(f => f).Select(Math.Abs).Max();
        IsBalanced = Enumerable.Range(0, cases).All(c => Math.Abs(x.Sum(f => f[c])) <= Balance * Math.Max(1, Largest(c)) && Math.Abs(y.Sum(f => f[c])) <= Balance * Math.Max(1, Largest(c))) && most > 0;
        double[] left = [.. Enumerable.Range(0, cases).Select(c => LengthOf(LeftOver(c)))];
        double[] largest = [.. Enumerable.Range(0, cases).Select(c => Enumerable.Range(0, pin.Packing.Count).Max(b => LengthOf(FromFirst(b, c))))];
        double live = largest[..^2].Max();
        IsAskew = left.Zip(largest).Any(c => c.First > Balance * c.Second);
        IsBalanced &= Enumerable.Range(0, cases).All(c => left[c] <= (MostAskew * (c < cases - 2 ? live : largest[c])) + (Balance * Largest(c) * pin.Diameter));
    }

    /// <summary>The pin.</summary>
    public PinConnection Pin { get; }

    /// <summary>The truss.</summary>
    public TrussCrossing Crossing { get; }

    /// <summary>Whether the forces of the bars balance under every load, and leave no more moment at the last bar than a packing measured a little askew.</summary>
    public bool IsBalanced { get; }

    /// <summary>Whether the moments counted from the last bar differ from those from the first.</summary>
    public bool IsAskew { get; }

    /// <summary>
    /// Length that the formula for impact takes: the shortest stretch of one sense of all lines that meet on the pin, what the floor brings included [m]. None of them takes more impact than
    /// that gives.
    /// </summary>
    public double ImpactLength { get; }

    /// <summary>Moment at the middle of a bar in a direction.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="fromLast">Whether it is counted from the last bar.</param>
    /// <param name="angle">Direction of the force couple, from horizontal to the right, counter-clockwise as seen in elevation [rad].</param>
    public (InfluenceLine Line, double Components, double Wearing) Moment(int bar, bool fromLast, double angle) =>
        Along(angle, c => FromEnd(bar, fromLast, c));

    /// <summary>Shear between a bar and the next in a direction.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="angle">The direction [rad].</param>
    public (InfluenceLine Line, double Components, double Wearing) Shear(int bar, double angle) => Along(angle, c => Sum(bar + 1, c, _ => 1));

    /// <summary>What a bar pushes the pin with.</summary>
    /// <param name="bar">The bar.</param>
    public BarPush Push(int bar) => new(
        new InfluenceLine(Crossing.Lines.Truss.Stations, x[bar][..^2]), new InfluenceLine(Crossing.Lines.Truss.Stations, y[bar][..^2]), (x[bar][^2], y[bar][^2]), (x[bar][^1], y[bar][^1]));

    private static double FloorLength(Truss truss, int joint)
    {
        int at = truss.PanelPoints.ToList().IndexOf(joint);
        return truss.Stations[Math.Min(at + 1, truss.Stations.Count - 1)] - truss.Stations[Math.Max(at - 1, 0)];
    }

    private (double X, double Y) FromFirst(int bar, int c) => Sum(bar, c, i => Pin.Middles[bar] - Pin.Middles[i]);

    private (double X, double Y) FromEnd(int bar, bool fromLast, int c)
    {
        ((double x, double y), (double overX, double overY)) = (FromFirst(bar, c), fromLast ? LeftOver(c) : (0, 0));
        return (x - overX, y - overY);
    }

    // The moment of all bars about the middle of the last, or about anywhere, since their forces balance.
    private (double X, double Y) LeftOver(int c) => FromFirst(Pin.Packing.Count - 1, c);

    private static double LengthOf((double X, double Y) vector) => double.Hypot(vector.X, vector.Y);

    private double Largest(int c) => Math.Max(x.Max(f => Math.Abs(f[c])), y.Max(f => Math.Abs(f[c])));

    private (double X, double Y) Sum(int before, int c, Func<int, double> arm)
    {
        double sumX = 0, sumY = 0;
        for (int i = 0; i < before; i++)
        {
            sumX += x[i][c] * arm(i);
            sumY += y[i][c] * arm(i);
        }

        return (sumX, sumY);
    }

    private (InfluenceLine Line, double Components, double Wearing) Along(double angle, Func<int, (double X, double Y)> at)
    {
        (double cos, double sin) = (Math.Cos(angle), Math.Sin(angle));
        double[] values = [.. Enumerable.Range(0, cases).Select(c => at(c) is var v ? (cos * v.X) + (sin * v.Y) : 0)];
        return (new InfluenceLine(Crossing.Lines.Truss.Stations, values[..^2]), values[^2], values[^1]);
    }

    private void Add(int bar, double part, PinLoad load, Bridge bridge)
    {
        switch (load)
        {
            case PinLoad.OfMember of:
                (double ux, double uy) = ConnectionForce.Toward(bridge.Truss, of.Member, Pin.Joint);
                for (int c = 0; c < cases; c++)
                {
                    double force = part * MemberForce(of.Member, c);
                    x[bar][c] += force * ux;
                    y[bar][c] += force * uy;
                }

                break;
            case PinLoad.OfFloor:
                AddLoads(bar, part, bridge);
                break;
            default:
                for (int c = 0; c < cases; c++)
                {
                    (double right, double up) = Reaction(c, bridge);
                    x[bar][c] += part * right;
                    y[bar][c] += part * up;
                }

                break;
        }
    }

    // A unit load at the joint where it is a panel point, and the dead loads of the joint.
    private void AddLoads(int bar, double part, Bridge bridge)
    {
        string joint = bridge.Truss.Joints[Pin.Joint].Name;
        for (int c = 0; c < cases; c++)
        {
            if (c < cases - 2)
            {
                y[bar][c] -= bridge.Truss.PanelPoints[c] == Pin.Joint ? part : 0;
                continue;
            }

            foreach (JointLoad load in (c == cases - 2 ? bridge.FindCase(Bridge.ComponentsCase) : bridge.FindCase(Bridge.WearingSurfaceCase))?.Loads.Where(l => l.Joint == joint) ?? [])
            {
                x[bar][c] += part * load.Right;
                y[bar][c] += part * load.Up;
            }
        }
    }

    private double MemberForce(int member, int c) =>
        c < cases - 2 ? Crossing.Lines.Members[member].Line.Ordinates[c] : c == cases - 2 ? Crossing.Components!.MemberForces[member] : Crossing.WearingSurface?.MemberForces[member] ?? 0;

    private (double Right, double Up) Reaction(int c, Bridge bridge)
    {
        string joint = bridge.Truss.Joints[Pin.Joint].Name;
        if (c < cases - 2)
        {
            double Of(string direction) => Crossing.Lines.Reactions.FirstOrDefault(r => r.Name == $"{joint} {direction}")?.Line.Ordinates[c] ?? 0;
            return (Of("right"), Of("up"));
        }

        ForceSolution? solution = c == cases - 2 ? Crossing.Components : Crossing.WearingSurface;
        return solution?.Reactions.Where(r => r.Joint == Pin.Joint).Select(r => (r.Right, r.Up)).FirstOrDefault() ?? (0, 0);
    }
}
