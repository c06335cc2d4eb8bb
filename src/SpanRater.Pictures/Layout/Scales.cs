namespace SpanRater.Pictures;

/// <summary>Round numbers for axes.</summary>
internal static class Scales
{
    /// <summary>Ticks at round numbers within a range.</summary>
    /// <param name="least">Least value of the range.</param>
    /// <param name="most">Largest value of the range.</param>
    /// <param name="about">About how many.</param>
    public static IReadOnlyList<Tick> Ticks(double least, double most, int about)
    {
        double step = Round((most - least) / about);
        var ticks = new List<Tick>();
        for (double n = Math.Ceiling((least / step) - 1e-9); n * step <= most + (1e-9 * step); n++)
        {
            ticks.Add(new Tick(n * step, Figures.OnAxis(n * step)));
        }

        return ticks;
    }

    // The smallest of 1, 2, 5 and their tenfolds that is not below the value.
    private static double Round(double value)
    {
        double ten = Math.Pow(10, Math.Floor(Math.Log10(value)));
        double first = value / ten;
        return ten * (first <= 1 + 1e-9 ? 1 : first <= 2 ? 2 : first <= 5 ? 5 : 10);
    }
}
