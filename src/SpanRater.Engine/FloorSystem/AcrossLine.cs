namespace SpanRater;

/// <summary>An influence line across the deck, cubic between its breaks, and the worst places of loads on it.</summary>
/// <param name="Section">Where the effect is [m].</param>
/// <param name="Breaks">Places where it may bend or jump, from one truss to the other [m].</param>
/// <param name="Ordinate">The line.</param>
public sealed record AcrossLine(double Section, IReadOnlyList<double> Breaks, Func<double, double> Ordinate)
{
    /// <summary>Places tried of a vehicle, beside those where a wheel is on a break: between them the line is smooth, so that a worst place missed is wrong by the square of a step.</summary>
    public const int Steps = 120;

    /// <summary>Pieces of the width on which a crowd counts where it is adverse.</summary>
    private const int CrowdSteps = 240;

    private const double Near = 1e-7;

    /// <summary>The compression of the beam that goes with the effect, per load; null where there is none.</summary>
    public Func<double, double>? Pressing { get; init; }

    /// <summary>Whether it is a line of a moment that presses the lower side.</summary>
    public bool IsHogging { get; init; }

    /// <summary>What an even load brings per load and length: by two points of Gauss between breaks, exact for a cubic.</summary>
    /// <param name="from">Where it starts [m].</param>
    /// <param name="to">Where it ends [m].</param>
    public double Over(double from, double to) => Over(Ordinate, from, to);

    /// <summary>The same of another line with the same breaks.</summary>
    /// <param name="line">The line.</param>
    /// <param name="from">Where it starts [m].</param>
    /// <param name="to">Where it ends [m].</param>
    public double Over(Func<double, double> line, double from, double to)
    {
        ArgumentNullException.ThrowIfNull(line);
        double sum = 0;
        double[] edges = [from, .. Breaks.Where(b => b > from && b < to), to];
        for (int i = 1; i < edges.Length; i++)
        {
            double half = (edges[i] - edges[i - 1]) / 2, middle = edges[i - 1] + half, off = half / Math.Sqrt(3);
            sum += half * (line(middle - off) + line(middle + off));
        }

        return sum;
    }

    /// <summary>Vehicles alike abreast, at least so far apart, where together they bring most.</summary>
    /// <param name="first">Nearest place of the left wheel of the left vehicle [m].</param>
    /// <param name="last">Farthest place of the right wheel of the right one [m].</param>
    /// <param name="gauge">Between the wheel lines [m].</param>
    /// <param name="between">Least distance between vehicles [m].</param>
    /// <param name="vehicles">How many.</param>
    /// <returns>Effect per load of one vehicle, half of it on each wheel line, and the wheels.</returns>
    public (double Effect, IReadOnlyList<double> Wheels) Worst(double first, double last, double gauge, double between, int vehicles)
    {
        (double effect, double[] at) = WorstOf(first, last, gauge, between, vehicles, u => (Ordinate(u) + Ordinate(u + gauge)) / 2, [.. Breaks.SelectMany(b => (double[])[b - Near, b + Near, b - gauge - Near, b - gauge + Near])]);
        return (effect, [.. at.SelectMany(u => (double[])[u, u + gauge])]);
    }

    /// <summary>Two different vehicles abreast, either one on the left, where together they bring most.</summary>
    /// <param name="first">Nearest place of the leftmost wheel [m].</param>
    /// <param name="last">Farthest place of the rightmost wheel [m].</param>
    /// <param name="own">The one: between its wheel lines [m], and its load.</param>
    /// <param name="other">The other.</param>
    /// <param name="between">Least distance between them [m].</param>
    /// <returns>What each brings, and the wheels, from the left.</returns>
    public (double Own, double Other, IReadOnlyList<double> Wheels) WorstPair(double first, double last, (double Gauge, double Load) own, (double Gauge, double Load) other, double between)
    {
        (double ownOnLeft, double otherOnRight, double[] leftFirst) = Pair(first, last, own, other, between);
        (double otherOnLeft, double ownOnRight, double[] rightFirst) = Pair(first, last, other, own, between);
        return ownOnLeft + otherOnRight >= ownOnRight + otherOnLeft ? (ownOnLeft, otherOnRight, leftFirst) : (ownOnRight, otherOnLeft, rightFirst);
    }

    /// <summary>Lane loads, where together they bring most.</summary>
    /// <param name="first">Nearest edge [m].</param>
    /// <param name="last">Farthest edge [m].</param>
    /// <param name="width">Width of one [m].</param>
    /// <param name="lanes">How many.</param>
    /// <returns>Effect per load of one lane, and where they lie.</returns>
    public (double Effect, IReadOnlyList<LateralStrip> Strips) WorstStrips(double first, double last, double width, int lanes)
    {
        (double effect, double[] at) = WorstOf(first, last, width, 0, lanes, u => Over(u, u + width) / width, [.. Breaks.SelectMany(b => (double[])[b, b - width, b - (width / 2)])]);
        return (effect, [.. at.Select(u => new LateralStrip(u, u + width))]);
    }

    /// <summary>A crowd per load and area, where it is adverse only, on a strip of a width anywhere between the kerbs [m].</summary>
    /// <param name="from">One kerb [m].</param>
    /// <param name="to">The other [m].</param>
    /// <param name="width">Width of the crowd [m].</param>
    public double WorstCrowd(double from, double to, double width)
    {
        double step = (to - from) / CrowdSteps;
        double[] pieces = [.. Enumerable.Range(0, CrowdSteps).Select(i => Math.Max(0, Over(from + (i * step), from + ((i + 1) * step))))];
        int wide = Math.Min(CrowdSteps, (int)Math.Ceiling((width / step) - 1e-6));
        return Enumerable.Range(0, CrowdSteps - wide + 1).Max(i => pieces.Skip(i).Take(wide).Sum());
    }

    private (double Left, double Right, double[] Wheels) Pair(double first, double last, (double Gauge, double Load) left, (double Gauge, double Load) right, double between)
    {
        double pitch = left.Gauge + between, play = Math.Max(0, last - first - pitch - right.Gauge);
        double Of((double Gauge, double Load) vehicle, double at) => vehicle.Load * (Ordinate(at) + Ordinate(at + vehicle.Gauge)) / 2;
        double[] bases =
        [
            .. Enumerable.Range(0, Steps + 1).Select(i => play * i / Steps)
                .Concat(Breaks.SelectMany(b => (double[])[b, b - left.Gauge, b - pitch, b - pitch - right.Gauge]).SelectMany(b => (double[])[b - first - Near, b - first + Near]))
                .Where(b => b >= 0 && b <= play).Distinct().Order(),
        ];
        (double most, double onLeft, double onRight, double[] wheels) = (double.NegativeInfinity, 0, 0, []);
        (double best, double bestBase) = (double.NegativeInfinity, 0);
        foreach (double free in bases)
        {
            // The one on the left stands where it brings most of all places that leave the right one its own.
            (best, bestBase) = Of(left, first + free) is var here && here > best ? (here, free) : (best, bestBase);
            double at = first + pitch + free, there = Of(right, at);
            if (best + there > most)
            {
                (most, onLeft, onRight, wheels) = (best + there, best, there, [first + bestBase, first + bestBase + left.Gauge, at, at + right.Gauge]);
            }
        }

        return (onLeft, onRight, wheels);
    }

    // Left to right, each at one of its places with those before it where they are worst: the best of every number, over all places in reach.
    private static (double Effect, double[] At) WorstOf(double first, double last, double wide, double between, int count, Func<double, double> effect, double[] wanted)
    {
        double pitch = wide + between, play = Math.Max(0, last - first - wide - ((count - 1) * pitch));
        double[] bases = [.. Enumerable.Range(0, Steps + 1).Select(i => play * i / Steps)
            .Concat(wanted.SelectMany(w => Enumerable.Range(0, count).Select(k => w - first - (k * pitch)))).Where(b => b >= 0 && b <= play).Distinct().Order()];
        double[] most = new double[bases.Length];
        int[][] path = [.. bases.Select(_ => Array.Empty<int>())];
        for (int k = 0; k < count; k++)
        {
            (double best, int[] through) = (double.NegativeInfinity, []);
            for (int i = 0; i < bases.Length; i++)
            {
                // The one before stands a pitch or more to the left where its base is not farther right.
                if (k == 0)
                {
                    (best, through) = (0, []);
                }
                else if (most[i] > best)
                {
                    (best, through) = (most[i], path[i]);
                }

                (most[i], path[i]) = (best + effect(first + bases[i] + (k * pitch)), [.. through, i]);
            }
        }

        int worst = Array.IndexOf(most, most.Max());
        return (most[worst], [.. path[worst].Select((i, k) => first + bases[i] + (k * pitch))]);
    }
}
