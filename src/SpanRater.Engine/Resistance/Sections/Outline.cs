namespace SpanRater;

/// <summary>The outline of a shape: polygons and discs, some of them cut out. Integrals over it are exact, by Green's theorem.</summary>
internal sealed class Outline
{
    private readonly List<(SectionPoint[] Corners, bool IsCutOut)> polygons = [];
    private readonly List<(SectionPoint Centre, double Radius, bool IsCutOut)> discs = [];

    /// <summary>The polygons that are there, without what is cut out.</summary>
    public IReadOnlyList<IReadOnlyList<SectionPoint>> Polygons => [.. polygons.Where(p => !p.IsCutOut).Select(p => p.Corners)];

    public static Outline Of(params SectionPoint[] corners) => new Outline().With(corners, isCutOut: false);

    public static Outline OfRectangle(double left, double right, double bottom, double top) =>
        Of(new(left, bottom), new(right, bottom), new(right, top), new(left, top));

    public static Outline OfDisc(double radius, double hole)
    {
        var outline = new Outline();
        outline.discs.Add((default, radius, false));
        if (hole > 0)
        {
            outline.discs.Add((default, hole, true));
        }

        return outline;
    }

    /// <summary>The outline with a rectangle cut out of it, which lies within.</summary>
    public Outline Without(double left, double right, double bottom, double top)
    {
        var cut = new Outline();
        cut.polygons.AddRange(polygons);
        cut.discs.AddRange(discs);
        return cut.With([new(left, bottom), new(right, bottom), new(right, top), new(left, top)], isCutOut: true);
    }

    /// <summary>The outline with every point moved; shapes stay as they are, turned or mirrored.</summary>
    public Outline Mapped(Func<SectionPoint, SectionPoint> map)
    {
        var mapped = new Outline();
        mapped.polygons.AddRange(polygons.Select(p => (p.Corners.Select(map).ToArray(), p.IsCutOut)));
        mapped.discs.AddRange(discs.Select(d => (map(d.Centre), d.Radius, d.IsCutOut)));
        return mapped;
    }

    public SectionProperties Properties()
    {
        // Area, first and second moments about the origin.
        double a = 0, sx = 0, sy = 0, xx = 0, yy = 0, xy = 0;
        double left = double.PositiveInfinity, right = double.NegativeInfinity, bottom = double.PositiveInfinity, top = double.NegativeInfinity;
        foreach ((SectionPoint[] corners, bool isCutOut) in polygons)
        {
            double pa = 0, psx = 0, psy = 0, pxx = 0, pyy = 0, pxy = 0;
            for (int i = 0; i < corners.Length; i++)
            {
                (double x, double y) = corners[i];
                (double u, double v) = corners[(i + 1) % corners.Length];
                double cross = (x * v) - (u * y);
                pa += cross / 2;
                psx += cross * (x + u) / 6;
                psy += cross * (y + v) / 6;
                pxx += cross * ((x * x) + (x * u) + (u * u)) / 12;
                pyy += cross * ((y * y) + (y * v) + (v * v)) / 12;
                pxy += cross * ((x * v) + (2 * x * y) + (2 * u * v) + (u * y)) / 24;
                if (!isCutOut)
                {
                    (left, right, bottom, top) = (Math.Min(left, x), Math.Max(right, x), Math.Min(bottom, y), Math.Max(top, y));
                }
            }

            // A mirrored polygon runs the other way round.
            double sign = (pa < 0 ? -1 : 1) * (isCutOut ? -1 : 1);
            (a, sx, sy, xx, yy, xy) = (a + (sign * pa), sx + (sign * psx), sy + (sign * psy), xx + (sign * pxx), yy + (sign * pyy), xy + (sign * pxy));
        }

        foreach (((double x, double y), double radius, bool isCutOut) in discs)
        {
            double sign = isCutOut ? -1 : 1, area = sign * Math.PI * radius * radius, own = area * radius * radius / 4;
            (a, sx, sy, xx, yy, xy) = (a + area, sx + (area * x), sy + (area * y), xx + own + (area * x * x), yy + own + (area * y * y), xy + (area * x * y));
            if (!isCutOut)
            {
                (left, right, bottom, top) = (Math.Min(left, x - radius), Math.Max(right, x + radius), Math.Min(bottom, y - radius), Math.Max(top, y + radius));
            }
        }

        double cx = sx / a, cy = sy / a;
        return new SectionProperties(a, cx, cy, yy - (a * cy * cy), xx - (a * cx * cx), xy - (a * cx * cy), left, right, bottom, top);
    }

    private Outline With(SectionPoint[] corners, bool isCutOut)
    {
        polygons.Add((corners, isCutOut));
        return this;
    }
}
