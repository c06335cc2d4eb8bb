using System.Globalization;

namespace SpanRater.Files;

/// <summary>A bridge that a form and its measures make, ready to be written.</summary>
/// <param name="Kind">The form.</param>
/// <param name="Measures">Its measures.</param>
/// <param name="Truss">The truss.</param>
/// <param name="Stability">Its count and rank.</param>
/// <param name="Name">Name of the bridge.</param>
/// <param name="IsPony">True where it is called a pony truss.</param>
/// <param name="Cases">DC and DW, as far as given.</param>
/// <param name="Units">The units in which the span was given.</param>
public sealed record NewBridge(
    FormKind Kind,
    FormMeasures Measures,
    Truss Truss,
    Stability Stability,
    string Name,
    bool IsPony,
    IReadOnlyList<LoadCase> Cases,
    DisplayUnits Units)
{
    /// <summary>The form and its measures in one sentence.</summary>
    public string Description => string.Create(CultureInfo.InvariantCulture, $"{Capital(Sort())}: {Measures.Panels} panels of {PanelLength()}, span {Length(Measures.Panels * Measures.PanelLength)}, {HeightWords()}{CentreWords()}{SubWords()}.");

    /// <summary>The name of a bridge that was given none: "Pratt truss of 96 ft".</summary>
    public string UsualName => $"{Capital(FormWords.Truss(Kind))} of {Length(Measures.Panels * Measures.PanelLength)}";

    /// <summary>True where members cross in the elevation without a joint: they pass each other.</summary>
    public bool MembersPass => Truss.Create(Truss.Joints, Truss.Members).Faults.OfType<TrussFault.CrossingMembers>().Any();

    /// <summary>What a reader of the folder has to know of the form beyond its measures.</summary>
    public IReadOnlyList<string> Remarks
    {
        get
        {
            var remarks = new List<string>();
            if (IsPony)
            {
                remarks.Add("A pony truss has no bracing overhead: posts and floorbeams alone keep its top chord from buckling sideways. The forces know nothing of that: the compression capacity of the top chord must have it in.");
            }

            string[] rods = [.. Truss.Members.Where(m => m.TensionOnly).Select(m => m.Name)];
            if (Stability.Verdict == StabilityVerdict.Mechanism)
            {
                remarks.Add("With its centre panel open it is a mechanism, held up in practice by the stiffness of its chords: no forces can be given.");
            }
            else if (rods.Length > 0)
            {
                bool weighs = Cases.Any(c => c.Name == Bridge.ComponentsCase);
                remarks.Add($"{string.Join(" and ", rods)} only pull: which of them acts depends on dead and live load together{(weighs ? "" : $", so that {BridgeFolder.LoadsFile} needs the dead load first")}.");
            }

            if (MembersPass)
            {
                remarks.Add("Where its members cross without a joint they pass each other: check points at each crossing.");
            }

            if (Measures.Area is { } area && Stability.Redundancy > rods.Length / 2)
            {
                remarks.Add($"Redundant: how its two webs share a load depends on areas. Every member has the one area that was given, {AreaText(area)}: put the real ones into {BridgeFolder.MembersFile}.");
            }

            return remarks;
        }
    }

    /// <summary>The bridge as its folder is written.</summary>
    public BridgeDraft ToDraft() => new(
        Name,
        Truss,
        Cases,
        Units,
        [Description, .. Remarks, "Pinned at the left end, on a roller at the right one. Joints are pins, and the deck brings its load to the panel points alone."]);

    private string Length(double metres) => ShortestFigure.WithUnit(metres, BridgeFolderWriter.LengthUnit(Units));

    // A span that its panels do not divide evenly has no end of digits.
    private string PanelLength()
    {
        Unit unit = BridgeFolderWriter.LengthUnit(Units);
        string exact = ShortestFigure.Of(Measures.PanelLength, unit);
        int mark = exact.IndexOf('.', StringComparison.Ordinal);
        return mark >= 0 && exact.Length - mark > 5 ? $"{ResultTable.Figure(Measures.PanelLength / unit.Size, 4)} {unit.Symbol}" : Length(Measures.PanelLength);
    }

    private string AreaText(double area) => ShortestFigure.WithUnit(area, Unit.Find(Units == DisplayUnits.Us ? "in2" : "cm2")!);

    private string Sort() => $"{FormWords.Truss(Kind)}, {(Measures.Deck == DeckChord.Top ? "deck on the top chord" : IsPony ? "pony, deck on the bottom chord" : "deck on the bottom chord")}";

    private string HeightWords()
    {
        if (!Kind.TakesHeights)
        {
            return $"{Length(Measures.Heights[0])} high";
        }

        Unit unit = BridgeFolderWriter.LengthUnit(Units);
        return string.Create(CultureInfo.InvariantCulture, $"{string.Join(", ", Measures.Heights.Select(h => ShortestFigure.Of(h, unit)))} {unit.Symbol} high at U1 to U{Measures.Panels - 1}");
    }

    private string CentreWords() => FormWords.Centre(Kind, Measures.Panels, Measures.Centre) is { Length: > 0 } words ? ", " + words : "";

    private string SubWords() => Kind.TakesSubDiagonal ? Measures.SubDiagonal == SubDiagonal.Strut ? ", sub-struts" : ", sub-ties" : "";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
