namespace SpanRater.Pictures;

/// <summary>
/// Draws the shape of an influence line: positive stretches under a solid line on a plain tint, negative ones under a
/// dashed line on a hatched tint.
/// </summary>
internal static class InfluenceStrokes
{
    /// <summary>How a sense is drawn.</summary>
    /// <param name="sense">Tension stands for positive ordinates, compression for negative ones.</param>
    /// <param name="weight">Width of the line [px].</param>
    public static LineStyle StyleOf(Sense sense, double weight) =>
        sense == Sense.Tension ? new(Ink.Tension, weight) : new(Ink.Compression, weight, Dash.Dashed);

    /// <summary>The parts of the shape, the undermost first.</summary>
    /// <param name="shows">Name of the effect.</param>
    /// <param name="line">The line.</param>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="weight">Width of the line [px].</param>
    public static IEnumerable<DrawingPart> Of(string shows, InfluenceLine line, View view, double weight)
    {
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            LineStyle style = StyleOf(sense, weight);
            foreach (DeckStretch region in line.Regions(sense))
            {
                DrawingPoint[] curve =
                [
                    .. line.Stations.Where(s => s > region.Left && s < region.Right)
                        .Prepend(region.Left).Append(region.Right)
                        .Select(s => new DrawingPoint(s, line.OrdinateAt(s))),
                ];
                DrawingPoint[] whole = [new(region.Left, 0), .. curve, new(region.Right, 0)];
                yield return new Area($"{shows}, {sense}", whole, sense == Sense.Tension ? Ink.TensionTint : Ink.CompressionTint);
                if (sense == Sense.Compression)
                {
                    foreach (Stroke hatch in Hatches(shows, line, region, view, style.Ink))
                    {
                        yield return hatch;
                    }
                }

                yield return new Stroke($"{shows}, {sense}", whole, style.Ink, style.Weight, style.Dash);
            }
        }
    }

    private static IEnumerable<Stroke> Hatches(string shows, InfluenceLine line, DeckStretch region, View view, Ink ink)
    {
        double step = Hatching.Spacing / view.ScaleX;
        for (double x = region.Left + (step / 2); x < region.Right; x += step)
        {
            yield return new Stroke($"{shows}, hatching", [new(x, 0), new(x, line.OrdinateAt(x))], ink, Hatching.Weight * 0.7);
        }
    }
}
