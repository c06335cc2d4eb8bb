using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells what the shape of a line means for loads: neutral points, loaded lengths, areas.</summary>
internal static class ShapeTelling
{
    /// <summary>The blocks; none for a line that is zero throughout.</summary>
    public static IEnumerable<ResultBlock> Of(InfluenceLine line, string name, DisplayUnits units)
    {
        Sense[] senses = [.. ((Sense[])[Sense.Tension, Sense.Compression]).Where(s => line.Regions(s).Count > 0)];
        if (senses.Length == 0)
        {
            yield break;
        }

        yield return new ResultBlock.Heading("Where to load it");
        IReadOnlyList<double> neutral = line.NeutralPoints();
        yield return new ResultBlock.Paragraph(neutral.Count == 0
            ? $"It has no neutral point: every load on the deck, where it does anything, brings {Words.Of(senses[0])}. The loaded length is {Told.Length(line.Regions(senses[0]).Sum(r => r.Length), units)}."
            : $"It passes through zero at {Told.List(neutral.Select(n => Told.Length(n, units)))}: a load there brings {name} nothing, and beyond it the sense changes. A load that may stand anywhere is put on one sense's stretch alone, since on the other it would relieve.");
        yield return new ResultBlock.Items(
            "The stretches and their areas:",
            [
                .. senses.Select(s =>
                    $"{Words.Of(s)}: load {Told.List(line.Regions(s).Select(r => $"from {Told.Length(r.Left, units)} to {Told.Length(r.Right, units)} (loaded length {Told.Length(r.Length, units)})"))}; area {Told.Length(line.Area(s), units)}"),
            ]);
        string length = units.Symbol(Quantity.Length), force = units.Symbol(Quantity.LineLoad);
        double most = line.Area(senses[0]), all = line.Area(Sense.Tension) + line.Area(Sense.Compression);
        string whole = senses.Length == 1
            ? $"Over the whole deck that is the most it can bring: 1 {force} gives {Words.ForceInWords(units.From(Quantity.Length, most) * UnitForce(units), units)}."
            : $"1 {force} on a stretch of one sense gives {string.Join(", and ", senses.Select(s => $"{Words.ForceInWords(units.From(Quantity.Length, line.Area(s)) * UnitForce(units), units)}"))}; over the whole deck the two relieve one another and leave {Words.ForceInWords(units.From(Quantity.Length, all) * UnitForce(units), units)}.";
        yield return new ResultBlock.Paragraph($"A uniform load w brings w times the area of the line under it (the area is in {length}, since ordinates are plain numbers). {whole}");
        yield return new ResultBlock.Equation("F = w × area", "F = w \\, A");
    }

    // The force that is one unit shown [N].
    private static double UnitForce(DisplayUnits units) => 1 / units.From(Quantity.Force, 1);
}
