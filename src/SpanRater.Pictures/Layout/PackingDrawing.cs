using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>
/// Lays out the packing of a pin: the pin upright in the middle, its first end at the top, y downward along it in metres [m]; x is in pixels, carried over into metres.
/// </summary>
internal sealed class PackingDrawing
{
    private const double TextSize = 14;
    private const double ThinnestBar = 21;
    private const double Tallest = 900;
    private const double BarLength = 230;
    private const double Margin = 34;
    private const double GapsAt = 470;

    private readonly Truss truss;
    private readonly PinConnection pin;
    private readonly DisplayUnits units;
    private readonly double scale, length;
    private readonly List<DrawingPart> parts = [];

    /// <summary>Begins a drawing.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="pin">The pin.</param>
    /// <param name="units">Units shown.</param>
    public PackingDrawing(Truss truss, PinConnection pin, DisplayUnits units)
    {
        (this.truss, this.pin, this.units) = (truss, pin, units);
        length = pin.Middles[^1] + (pin.Packing[^1].Thickness / 2);

        // Names need room; a long pin with thin bars need not fill the wall.
        scale = Math.Min(ThinnestBar / pin.Packing.Min(b => b.Thickness), Math.Max(Tallest, 18 * pin.Packing.Count) / length);
    }

    /// <summary>The drawing.</summary>
    public Drawing Draw()
    {
        double half = pin.Diameter * scale / 2;
        parts.Add(new Area("pin", Box(-half, -Margin + 10, half, (length * scale) + Margin - 10), Ink.Pale));
        parts.Add(new Stroke("pin", Box(-half, -Margin + 10, half, (length * scale) + Margin - 10), Ink.Black, 1.4, Closed: true));
        parts.Add(new Stroke("pin axis", [At(0, -Margin), At(0, (length * scale) + Margin)], Ink.Grey, 1, Dash.DashDot));
        for (int bar = 0; bar < pin.Packing.Count; bar++)
        {
            Bar(bar, half);
            if (bar > 0 && pin.Packing[bar].Gap > 0)
            {
                Gap(bar);
            }
        }

        parts.Add(new Text("pin", At(0, (length * scale) + Margin + 12), $"pin, diameter {Small(pin.Diameter)} left; {Small(length)} from the outer face of the first bar to that of the last", TextSize, Ink.Black));
        double width = Sheet.InnerWidth / scale, below = (length * scale) + Margin + 26;
        return new Drawing(-width / 2, -below / scale, width, (below + Margin) / scale, scale, scale, parts);
    }

    // Where a bar goes: -1 to the left of the joint, 1 to the right, 0 across the pin.
    private int Side(PackedBar bar)
    {
        if (bar.Load is not PinLoad.OfMember of)
        {
            return 0;
        }

        Member member = truss.Members[of.Member];
        Joint here = truss.Joints[pin.Joint];
        string there = member.From == here.Name ? member.To : member.From;
        double away = truss.Joints.First(j => j.Name == there).X - here.X;
        return Math.Abs(away) < 1e-9 * truss.Joints.Max(j => Math.Abs(j.X)) ? 0 : Math.Sign(away);
    }

    private void Bar(int index, double half)
    {
        PackedBar bar = pin.Packing[index];
        int side = Side(bar);
        double middle = pin.Middles[index] * scale, top = middle - (bar.Thickness * scale / 2), foot = middle + (bar.Thickness * scale / 2), reach = half + 16;
        DrawingPoint[] box = side < 0 ? Box(-half - BarLength, top, reach, foot) : side > 0 ? Box(-reach, top, half + BarLength, foot) : Box(-reach, top, reach, foot);
        parts.Add(new Area($"bar {index + 1}", box, Ink.Paper));
        for (double x = -half + 3; side == 0 && x < half; x += Hatching.Spacing)
        {
            // Cut across: what hangs or stands on the pin.
            parts.Add(new Stroke("cut", [At(x, foot), At(x, top)], Ink.Grey, Hatching.Weight));
        }

        parts.Add(new Stroke($"bar {index + 1}", box, Ink.Black, 1.6, Closed: true));
        parts.Add(new Stroke("middle", [At(-half, middle), At(half, middle)], Ink.Black, 1, Dash.Dotted));
        string words = $"{index + 1}: {bar.Name}, {Small(bar.Thickness)}";
        parts.Add(side < 0
            ? new Text("name", At(-half - BarLength - 8, middle), words, TextSize, Ink.Black, TextAnchor.Right)
            : new Text("name", At((side == 0 ? reach : half + BarLength) + 8, middle), words, TextSize, Ink.Black, TextAnchor.Left, OnPaper: side == 0));
    }

    private void Gap(int index)
    {
        double foot = (pin.Middles[index] - (pin.Packing[index].Thickness / 2)) * scale, top = foot - (pin.Packing[index].Gap * scale);
        parts.Add(new Stroke("gap", [At(GapsAt, top), At(GapsAt, foot)], Ink.Grey, 1));
        foreach (double end in (double[])[top, foot])
        {
            parts.Add(new Stroke("gap", [At(GapsAt - 6, end), At(GapsAt + 6, end)], Ink.Grey, 1));
        }

        parts.Add(new Text("gap", At(GapsAt + 12, (top + foot) / 2), Small(pin.Packing[index].Gap), TextSize, Ink.Grey, TextAnchor.Left));
    }

    private string Small(double measure) => $"{Figures.OnAxis(Math.Round(units.From(Quantity.Deflection, measure), 4))} {units.Symbol(Quantity.Deflection)}";

    private DrawingPoint[] Box(double left, double top, double right, double foot) => [At(left, top), At(right, top), At(right, foot), At(left, foot)];

    private DrawingPoint At(double x, double down) => new(x / scale, -down / scale);
}
