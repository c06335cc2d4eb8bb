using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Draws the lowest rating factor of each member and part as a bar, from the lowest, with a line at 1.</summary>
internal static class FactorBars
{
    private const double Line = 18;
    private const double Bar = 13;
    private const double Size = 14;
    private const double MostShown = 5;
    private const double Figure = 56;
    private const double WidestWords = 430;

    /// <summary>The drawing and its axis.</summary>
    /// <param name="verdicts">The verdicts, from the lowest factor; members without one last.</param>
    /// <param name="names">Names of the members, in that order.</param>
    public static (Drawing Drawing, Axis Bottom) Of(IReadOnlyList<MemberVerdict> verdicts, IReadOnlyList<string> names)
    {
        double highest = verdicts.Max(v => v.Lowest?.Factor) ?? 0;
        double most = Math.Min(MostShown, Math.Max(2, Math.Ceiling(highest)));
        IReadOnlyList<string>[] words = [.. verdicts.Select(v => Lettering.Wrap(WordsOf(v), Size, WidestWords))];
        double nameWidth = Math.Min(300, names.Max(n => Lettering.Width(n, Size))) + 18;
        double indent = nameWidth + words.SelectMany(w => w).Max(w => Lettering.Width(w, Size)) + 16;
        double scale = (Sheet.InnerWidth - indent - Figure) / most;
        double height = words.Sum(RowHeight) + 8;
        var view = new View(-indent / scale, 0, scale, 1);
        var parts = new List<DrawingPart>();
        double y = height - 6;
        for (int i = 0; i < verdicts.Count; i++)
        {
            y -= RowHeight(words[i]);
            double middle = y + (RowHeight(words[i]) / 2);
            parts.AddRange(BarOf(verdicts[i], names[i], middle, most, view));
            parts.Add(new Text(names[i], view.Moved(new(0, middle), -indent, 0), names[i], Size, Ink.Black, TextAnchor.Left));
            for (int line = 0; line < words[i].Count; line++)
            {
                double up = (((words[i].Count - 1) / 2.0) - line) * Line;
                parts.Add(new Text($"{names[i]}, words", view.Moved(new(0, middle), nameWidth - indent, up), words[i][line], Size, Ink.Grey, TextAnchor.Left));
            }
        }

        // The line at 1 lies under the figures, which stay readable.
        parts.Insert(0, new Stroke("RF = 1", [new(1, 0), new(1, height)], Ink.Black, 1.6, Dash.Dashed));
        parts.Add(new Stroke("axis", [new(0, 0), view.Moved(new(most, 0), Figure, 0)], Ink.Grey, 1));
        var ticks = Scales.Ticks(0, most, (int)most).Select(t => t.At == 1 ? t with { Label = "RF = 1" } : t);
        return (view.Drawing(Sheet.InnerWidth, height, parts), new Axis(highest > most ? $"rating factor RF [-]; longer bars are cut at {Figures.OnAxis(most)}" : "rating factor RF [-]", [.. ticks]));
    }

    private static double RowHeight(IReadOnlyList<string> words) => (words.Count * Line) + 5;

    private static string WordsOf(MemberVerdict verdict)
    {
        if (verdict.Lowest is not { } row)
        {
            return verdict.Words;
        }

        string truss = row.Truss is null ? "" : $", {row.Truss} truss";
        string dead = row.Status == RatingStatus.DeadExceeds ? "; dead load alone uses up the capacity" : "";
        return $"{RatingWording.ActsIn(row)}, {RatingWording.Under(row)}, {row.Level.Name}{truss}{dead}";
    }

    private static IEnumerable<DrawingPart> BarOf(MemberVerdict verdict, string name, double middle, double most, View view)
    {
        LineStyle style = MemberVerdict.StyleOf(verdict.Band);
        if (verdict.Lowest?.Factor is not { } factor)
        {
            yield return new Stroke($"{name}, bar", [view.Moved(new(0, middle), 4, 0), view.Moved(new(0, middle), 60, 0)], style.Ink, style.Weight, style.Dash);
            yield break;
        }

        double end = Math.Clamp(factor, 0, most), half = Bar / 2;
        bool cut = factor > most;
        DrawingPoint tip = view.Moved(new(end, middle), cut ? 8 : 0, 0);
        DrawingPoint[] bar = [new(0, middle - half), new(end, middle - half), tip, new(end, middle + half), new(0, middle + half)];
        Ink fill = verdict.Band switch
        {
            RatingBand.Below => Ink.Alarm,
            RatingBand.Near => Ink.CompressionTint,
            _ => Ink.TensionTint,
        };
        yield return new Area($"{name}, bar", bar, fill);
        yield return new Stroke($"{name}, bar", bar, style.Ink, 1.5, style.Dash, Closed: true);
        yield return new Text($"{name}, factor", view.Moved(tip, 7, 0), Figures.Factor(factor), Size, Ink.Black, TextAnchor.Left, OnPaper: true);
    }
}
