using MathNet.Numerics.Random;

namespace SpanRater;

/// <summary>Chooses a form's measures so that its sloping members are the long sides of right triangles with whole sides.</summary>
internal static class FriendlyForm
{
    // Rise and run of 3-4-5, 5-12-13, 8-15-17 and of 45 degrees; steeper ones twice, as old trusses are.
    private static readonly (int Rise, int Run)[] Slopes = [(3, 4), (4, 3), (4, 3), (12, 5), (5, 12), (15, 8), (8, 15), (1, 1)];

    private static readonly int[] Usual = [4, 5, 6, 8];

    /// <summary>Measures for a form of that kind.</summary>
    public static FormMeasures Of(FormKind kind, ExerciseLevel level, ExerciseUnits units, RandomSource random)
    {
        int panels = PanelsOf(kind, random);
        (double panel, double height)[] measures = [.. Measures(kind, panels, units)];
        (double length, double rise) = measures[random.Next(measures.Length)];
        double[] heights = kind.TakesHeights ? Heights(panels, length, rise, units, random) : [rise];
        bool isDeckTruss = kind.TakesDeck && level != ExerciseLevel.Easy && random.Next(3) == 0;
        return new FormMeasures(
            panels,
            length * units.Length,
            [.. heights.Select(h => h * units.Length)],
            isDeckTruss ? DeckChord.Top : DeckChord.Bottom,
            kind.UsualCentre,
            kind.TakesSubDiagonal && random.Next(2) == 0 ? SubDiagonal.Tie : SubDiagonal.Strut);
    }

    // Few enough to be worked by hand.
    private static int PanelsOf(FormKind kind, RandomSource random)
    {
        int[] choice = kind.Key switch
        {
            "warren" => [3, 4, 5],
            "k" => [4, 6, 8],
            "baltimore" => [8],
            "double-intersection" => [6, 8],
            _ => [.. Usual.Where(kind.Allows)],
        };
        return choice.Length == 0 ? kind.Fewest : choice[random.Next(choice.Length)];
    }

    // Panel and height, in units of length, within what such bridges have: every multiple of every slope.
    private static IEnumerable<(double Panel, double Height)> Measures(FormKind kind, int number, ExerciseUnits units)
    {
        // How many panels the run of a sloping member spans, and how many heights its rise.
        (double panels, double heights) = kind.Key switch
        {
            "warren" => (0.5, 1),
            "k" or "baltimore" => (1, 0.5),
            "double-intersection" => (2, 1),
            _ => (1.0, 1.0),
        };
        foreach ((int rise, int run) in Slopes)
        {
            for (int k = 1; k <= 60; k++)
            {
                double panel = run * k * units.LengthStep / panels, height = rise * k * units.LengthStep / heights;
                double metres = panel * units.Length, ratio = height / panel;
                if (metres is >= 2.4 and <= 8 && ratio is >= 0.4 and <= 3 && number * panel / height >= (number <= 3 ? 1.5 : 3.5) && number * panel / height <= 10 && height * units.Length is >= 1.5 and <= 16 && panel % units.LengthStep == 0)
                {
                    yield return (panel, height);
                }
            }
        }
    }

    // A top chord that rises less and less towards midspan, in whole steps; first by a friendly slope where the panel has one.
    private static double[] Heights(int panels, double panel, double first, ExerciseUnits units, RandomSource random)
    {
        var heights = new double[panels - 1];
        double step = units.LengthStep, rise = Math.Max(step, Math.Round(panel * (2 + random.Next(2)) / 10 / step) * step);
        foreach ((int up, int run) in (ReadOnlySpan<(int, int)>)[(5, 12), (8, 15)])
        {
            double friendly = panel * up / run;
            rise = friendly % step == 0 ? friendly : rise;
        }

        double height = first;
        for (int i = 0; i < (heights.Length + 1) / 2; i++)
        {
            heights[i] = heights[^(i + 1)] = height;
            height += rise;
            rise = Math.Max(step, Math.Round(rise / 2 / step) * step);
        }

        return heights;
    }
}
