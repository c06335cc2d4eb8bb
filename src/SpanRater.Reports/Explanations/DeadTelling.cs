using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Works the dead load on a part of the floor: every item with what its load follows from and what it brings.</summary>
internal static class DeadTelling
{
    /// <summary>What an item is, in words.</summary>
    public static string Of(FloorWeight what) => what switch
    {
        FloorWeight.Deck => "deck",
        FloorWeight.WearingSurface => "wearing surface",
        FloorWeight.Stringers => "stringers",
        FloorWeight.Kerbs => "kerbs and railings",
        _ => "own weight",
    };

    /// <summary>The items as a table, and the formula of their effect; nothing where nothing weighs on it.</summary>
    public static IEnumerable<ResultBlock> Of(FloorDead dead, PartRow row, Bridge bridge, DisplayUnits units)
    {
        if (dead.Items.Count == 0)
        {
            yield break;
        }

        Quantity effect = PartWords.QuantityOf(row.ActsAs);
        yield return new ResultBlock.Paragraph($"The dead load on it, from a to b of its {Told.Length(dead.Span, units)} between supports; weights of deck and wearing surface: {bridge.Floor!.WeightSource}.");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("item"), new("case"), new("load from"), new("load"), new("a", Quantity.Length), new("b", Quantity.Length), new(RatingWording.ActsIn(row), effect, 3)],
            [
                .. dead.Items.Select(i => (IReadOnlyList<object?>)[Of(i.What), i.What == FloorWeight.WearingSurface ? "DW" : "DC", From(i, row, bridge, units), Load(i, units), i.From, i.To, i.Effect]),
                ["sum of DC", "", "", "", null, null, dead.Components],
                .. dead.Wearing == 0 ? (IEnumerable<IReadOnlyList<object?>>)[] : [["sum of DW", "", "", "", null, null, dead.Wearing]],
            ]));
        yield return new ResultBlock.Paragraph(How(dead, row, units));
    }

    private static string From(FloorDeadItem item, PartRow row, Bridge bridge, DisplayUnits units)
    {
        switch (item.What)
        {
            case FloorWeight.Stringers:
                IEnumerable<string> each = bridge.Floor!.Stringers.Select(s => $"{Figure(s.CountAcross(bridge.Deck.Roadway!.Value), 0)} × {Line(s.OwnWeight, units)}");
                return $"({string.Join(" + ", each)}) × {Told.Length(item.Strip, units)} / {Told.Length(item.To - item.From, units)}";
            case FloorWeight.Kerbs:
                return $"each side {Line(item.Load / item.Strip, units)} × {Told.Length(item.Strip, units)}";
            case FloorWeight.Own:
                var sheet = new SheetUnits(units);
                (string whose, MemberSection? section) = Beam(row, bridge.Floor!);
                return section is null ? "as given" : $"{whose}{sheet.Area(section.Area)} as built × {Unit(item.Load / section.Area, Quantity.UnitWeight, 1, units)}";
            default:
                return $"{Unit(item.Load / item.Strip, Quantity.Pressure, 2, units)} × {Told.Length(item.Strip, units)}";
        }
    }

    private static (string Whose, MemberSection? Section) Beam(PartRow row, Floor floor) => floor.Parts.First(p => p.Name == row.Name) switch
    {
        StringerPart stringer => ("", stringer.Make?.Section.AsBuilt),
        FloorbeamPart beam => ("", beam.Make?.Section.AsBuilt),
        HangerPart hanger when floor.Parts.OfType<FloorbeamPart>().Where(b => b.At.Intersect(hanger.At).Any()).MaxBy(b => b.OwnWeight) is { } carried => ($"{carried.Name}: ", carried.Make?.Section.AsBuilt),
        _ => ("", null),
    };

    private static string How(FloorDead dead, PartRow row, DisplayUnits units)
    {
        string kerbs = dead.Items.Any(i => i.What == FloorWeight.Kerbs) ? dead.Of == PartEffect.Moment && dead.Line is null ? " Kerbs: their weight times the larger of a and L − b." : dead.Line is null ? " Kerbs: the one on its side." : " Kerbs: their weight times the ordinates where they stand." : "";
        if (dead.Line is not null)
        {
            return $"Each even load times the area of the line of {RatingWording.ActsIn(row)} of the beam with its rod from a to b; what relieves as a whole counts as none.{kerbs}";
        }

        bool overAll = dead.Items.Where(i => i.What != FloorWeight.Kerbs).All(i => i.From == 0 && i.To == dead.Span);
        string ends = dead.Ends > 1 ? $"; {dead.Ends.ToString(CultureInfo.InvariantCulture)} hangers share it" : "";
        string even = (dead.Of, overAll) switch
        {
            (PartEffect.Moment, true) => "Even load w on the span L: M = w·L²/8.",
            (PartEffect.Moment, false) => "Even load w from a to b on the span L: R = w·(b − a)·(L − (a + b)/2)/L, M = R·a + R²/(2·w), the largest anywhere; over all of the span w·L²/8.",
            (_, true) => $"Even load w on the span L: w·L/2{(dead.Section > 1e-9 ? $" − w·x, x = {Told.Length(dead.Section, units)} from the support" : "")}{ends}.",
            _ => $"Even load w from a to b on the span L: the larger of R = w·(b − a)·(L − (a + b)/2)/L and w·(b − a) − R; over all of the span w·L/2{ends}.",
        };
        return even + kerbs;
    }

    private static string Load(FloorDeadItem item, DisplayUnits units) =>
        item.What == FloorWeight.Kerbs ? $"{Figure(units.From(Quantity.Force, item.Load), 4)} {units.Symbol(Quantity.Force)}" : Line(item.Load, units);

    private static string Line(double load, DisplayUnits units) => Unit(load, Quantity.LineLoad, 4, units);

    private static string Unit(double value, Quantity quantity, int decimals, DisplayUnits units) => $"{Figure(units.From(quantity, value), decimals)} {units.Symbol(quantity)}";

    private static string Figure(double value, int decimals) => ResultTable.Figure(value, decimals);
}
