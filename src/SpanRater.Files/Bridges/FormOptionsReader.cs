using System.Globalization;

namespace SpanRater.Files;

/// <summary>Makes a bridge of a form's measures as they were typed, or tells everything that is wrong with them in one go.</summary>
public sealed class FormOptionsReader
{
    private const double ShortestPanel = 0.1;
    private const double LongestPanel = 100;
    private const double LargestLineLoad = 1e6;
    private const string LargestLineLoadInWords = "1000 kN/m (68.5 klf)";

    private readonly FormOptions options;
    private readonly List<string> faults = [];

    private FormOptionsReader(FormOptions options) => this.options = options;

    /// <summary>Reads the measures.</summary>
    /// <param name="options">The measures as typed.</param>
    /// <returns>The bridge, or null; and every fault, each with its option, its value and what is allowed.</returns>
    public static (NewBridge? Bridge, IReadOnlyList<string> Faults) Read(FormOptions options)
    {
        ArgumentNullException.ThrowIfNull(options);
        var reader = new FormOptionsReader(options);
        return (reader.Read(), reader.faults);
    }

    /// <summary>The form of a name as typed; null with what is wrong.</summary>
    /// <param name="typed">The name; null where none was typed.</param>
    public static (FormKind? Kind, string? Fault) FindForm(string? typed)
    {
        string known = $"The forms are: {string.Join(", ", FormKind.All.Select(k => k.Key))}.";
        return typed is null ? (null, $"--form is missing: name the form of the truss. {known}")
            : FormKind.Find(typed) is { } kind ? (kind, null)
            : (null, $"--form \"{typed}\": there is no such form.{NearestName.Question(typed.Replace(' ', '-'), FormKind.All.SelectMany(k => k.OtherNames.Prepend(k.Key)))} {known}");
    }

    private NewBridge? Read()
    {
        (FormKind? kind, string? fault) = FindForm(options.Form);
        if (fault is not null)
        {
            faults.Add(fault);
        }

        int? panels = ReadPanels(kind);
        (double? panel, DisplayUnits units) = ReadPanelLength(panels);
        IReadOnlyList<double>? heights = ReadHeights(kind, panels, panel, units);
        DeckChord deck = ReadDeck(kind);
        CentrePanel? centre = ReadCentre(kind, panels);
        SubDiagonal sub = ReadSubDiagonal(kind);
        double? area = ReadAbove(options.Area, "--area", Quantity.Area, 10, "10 m2 (15,500 in2)");
        if (kind is { CentreIsAtMidspan: true } && centre is CentrePanel.OneDiagonal or CentrePanel.CrossedRods && options.Area is null)
        {
            faults.Add($"--area is missing: with --centre {options.Centre} {FormWords.WithArticle(kind!)} is redundant, and its forces depend on areas. Give one for all members, such as --area \"12 in2\", and put the real ones into {BridgeFolder.MembersFile}.");
        }

        string? name = ReadName();
        double? dead = ReadAbove(options.Dead, "--dead", Quantity.LineLoad, LargestLineLoad, LargestLineLoadInWords);
        double? wearing = ReadAbove(options.Wearing, "--wearing", Quantity.LineLoad, LargestLineLoad, LargestLineLoadInWords);
        if (faults.Count > 0 || kind is null || panels is null || panel is null || heights is null || centre is null)
        {
            return null;
        }

        var measures = new FormMeasures(panels.Value, panel.Value, heights, deck, centre.Value, sub, area);
        Truss truss = kind.Make(measures).Build();
        if (area is not null)
        {
            truss = Truss.Create(truss.Joints, [.. truss.Members.Select(m => m with { Area = area })]).Truss!;
        }

        var bridge = new NewBridge(kind, measures, truss, Stability.Of(truss), "", options.Pony, Cases(truss, dead, wearing), units);
        return bridge with { Name = name ?? bridge.UsualName };
    }

    private int? ReadPanels(FormKind? kind)
    {
        if (options.Panels is null)
        {
            if (kind is not null && kind.Fewest != kind.Most)
            {
                faults.Add($"--panels is missing: {FormWords.WithArticle(kind)} has {FormWords.PanelsOf(kind)}.");
            }

            return OnlyNumberOf(kind);
        }

        bool isWhole = int.TryParse(options.Panels.Trim(), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int panels);
        if (kind is null ? !isWhole || panels < 1 : !isWhole || !kind.Allows(panels))
        {
            faults.Add($"--panels \"{options.Panels}\": {(kind is null ? "write a whole number above zero" : $"{(isWhole ? "" : "write a whole number; ")}{FormWords.WithArticle(kind)} has {FormWords.PanelsOf(kind)}")}.");
            return OnlyNumberOf(kind);
        }

        return panels;
    }

    private static int? OnlyNumberOf(FormKind? kind) => kind is not null && kind.Fewest == kind.Most ? kind.Fewest : null;

    private (double? Metres, DisplayUnits Units) ReadPanelLength(int? panels)
    {
        if (options.Span is not null && options.Panel is not null)
        {
            faults.Add($"--span \"{options.Span}\" and --panel \"{options.Panel}\": give one of the two; the other follows from the number of panels.");
            return (null, DisplayUnits.Us);
        }

        if ((options.Span ?? options.Panel) is not { } text)
        {
            faults.Add("--span or --panel is missing: give the distance between the supports, such as --span \"96 ft\", or the length of a panel, such as --panel \"16 ft\".");
            return (null, DisplayUnits.Us);
        }

        string option = options.Span is null ? "--panel" : "--span";
        DisplayUnits units = QuantityText.LooksLikeTape(text) ? DisplayUnits.Us : DisplayUnits.Si;
        if (Read(text, option, Quantity.Length) is not { } length)
        {
            return (null, units);
        }

        int parts = option == "--panel" ? 1 : panels ?? 1;
        double panel = length / parts;
        bool isKnown = option == "--panel" || panels is not null;
        if (!(length > 0) || (isKnown && !(panel >= ShortestPanel && panel <= LongestPanel)))
        {
            string what = parts == 1 || !(length > 0) ? "" : string.Create(CultureInfo.InvariantCulture, $"over {parts} panels makes panels of {ResultTable.Figure(units.From(Quantity.Length, panel), 3)} {units.Symbol(Quantity.Length)}; ");
            faults.Add($"{option} \"{text}\": {what}a panel is from {Range(ShortestPanel, LongestPanel, units)} long.");
            return (null, units);
        }

        return (isKnown ? panel : null, units);
    }

    private List<double>? ReadHeights(FormKind? kind, int? panels, double? panel, DisplayUnits units)
    {
        if (kind is null)
        {
            // Which of the two the form takes is not known; that each is a height is.
            _ = options.Height is { } one ? ReadHeight(one, "--height", panel, units) : null;
            _ = options.Heights is { } several ? ReadOneByOne(several, panel, units) : null;
            return null;
        }

        if (kind.TakesHeights)
        {
            return ReadEachHeight(kind, panels, panel, units);
        }

        if (options.Heights is not null)
        {
            faults.Add($"--heights \"{options.Heights}\": {FormWords.WithArticle(kind)} has one height: give --height.");
        }

        if (options.Height is { } text)
        {
            return ReadHeight(text, "--height", panel, units) is { } height ? [height] : null;
        }

        if (options.Heights is null)
        {
            faults.Add("--height is missing: give the height between the chords, such as --height \"20 ft\".");
        }

        return null;
    }

    private List<double>? ReadEachHeight(FormKind kind, int? panels, double? panel, DisplayUnits units)
    {
        if (options.Height is not null)
        {
            faults.Add($"--height \"{options.Height}\": {FormWords.WithArticle(kind)} has a height at each inner panel point: give --heights, one for each of U1, U2 and so on.");
        }

        if (options.Heights is not { } text)
        {
            if (options.Height is null)
            {
                faults.Add("--heights is missing: give the height at each of U1, U2 and so on, such as --heights \"22 ft, 27 ft, 27 ft, 22 ft\" for 5 panels.");
            }

            return null;
        }

        string[] parts = text.Split(',');
        if (panels is { } n && parts.Length != n - 1)
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"--heights \"{text}\": {parts.Length} {(parts.Length == 1 ? "height" : "heights")}, and {n} panels take {n - 1}: one at each of U1 to U{n - 1}, parted by commas."));
        }

        return ReadOneByOne(text, panel, units);
    }

    private List<double>? ReadOneByOne(string text, double? panel, DisplayUnits units)
    {
        double?[] heights = [.. text.Split(',').Select((part, i) => ReadHeight(part.Trim(), string.Create(CultureInfo.InvariantCulture, $"--heights at U{i + 1}"), panel, units))];
        return heights.All(h => h is not null) ? [.. heights.Select(h => h!.Value)] : null;
    }

    private double? ReadHeight(string text, string option, double? panel, DisplayUnits units)
    {
        if (Read(text, option, Quantity.Length) is not { } height)
        {
            return null;
        }

        // Without a panel's length the range cannot be told, but a height is above zero whatever it is.
        double least = TrussForm.LeastHeightOverPanel * (panel ?? 0), most = TrussForm.MostHeightOverPanel * (panel ?? double.PositiveInfinity);
        if (height > 0 && height >= least && height <= most)
        {
            return height;
        }

        string allowed = panel is null ? "a height must be above zero." : $"where panels are {ShortestFigure.WithUnit(panel.Value, BridgeFolderWriter.LengthUnit(units))} long, a height is from {Range(least, most, units)}.";
        string what = height > 0 ? height < least ? "too flat: " : "too high: " : "";
        faults.Add($"{option} \"{text}\": {what}{allowed}");
        return null;
    }

    private DeckChord ReadDeck(FormKind? kind)
    {
        string word = options.Deck?.Trim().ToUpperInvariant() ?? "BOTTOM";
        if (word is not ("BOTTOM" or "TOP"))
        {
            faults.Add($"--deck \"{options.Deck}\": write bottom (a through truss) or top (a deck truss).");
        }
        else if (word == "TOP" && kind is { TakesDeck: false })
        {
            faults.Add($"--deck \"{options.Deck}\": {FormWords.WithArticle(kind)} has its deck on the bottom chord.");
        }
        else if (word == "TOP" && options.Pony)
        {
            faults.Add($"--pony and --deck \"{options.Deck}\": a pony truss stands beside its deck, which lies on the bottom chord: leave one of the two out.");
        }

        return word == "TOP" ? DeckChord.Top : DeckChord.Bottom;
    }

    private CentrePanel? ReadCentre(FormKind? kind, int? panels)
    {
        if (options.Centre is null)
        {
            return kind?.UsualCentre;
        }

        int index = FormWords.Centres.ToList().FindIndex(c => string.Equals(c.Word, options.Centre.Trim(), StringComparison.OrdinalIgnoreCase));
        if (index < 0)
        {
            faults.Add($"--centre \"{options.Centre}\": write one (a single diagonal), crossed (two rods that only pull) or open (none).");
            return null;
        }

        if (kind is { Centres.Count: 0 })
        {
            faults.Add($"--centre \"{options.Centre}\": {FormWords.WithArticle(kind)} has no panel whose bracing is open to choice: leave it out.");
        }
        else if (kind is { CentreIsAtMidspan: false } && panels is { } n && int.IsEvenInteger(n))
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"--centre \"{options.Centre}\": {n} panels have no centre panel; leave it out, or take an odd number of panels."));
        }

        return FormWords.Centres[index].Centre;
    }

    private SubDiagonal ReadSubDiagonal(FormKind? kind)
    {
        string word = options.SubDiagonal?.Trim().ToUpperInvariant() ?? "STRUT";
        if (options.SubDiagonal is not null && kind is { TakesSubDiagonal: false })
        {
            faults.Add($"--sub-diagonal \"{options.SubDiagonal}\": {FormWords.WithArticle(kind)} has no subdivided panels: leave it out.");
        }
        else if (word is not ("STRUT" or "TIE"))
        {
            faults.Add($"--sub-diagonal \"{options.SubDiagonal}\": write strut or tie.");
        }

        return word == "TIE" ? SubDiagonal.Tie : SubDiagonal.Strut;
    }

    private string? ReadName()
    {
        if (options.Name is { } name && (string.IsNullOrWhiteSpace(name) || name.Any(char.IsControl)))
        {
            faults.Add("--name is blank or holds a line break or another control character: give the bridge a name in one line.");
        }

        return options.Name?.Trim();
    }

    private double? ReadAbove(string? text, string option, Quantity quantity, double most, string mostInWords)
    {
        double? value = text is null ? null : Read(text, option, quantity);
        if (value is { } v && !(v > 0 && v <= most))
        {
            faults.Add($"{option} \"{text}\": it must be above zero and at most {mostInWords}.");
            return null;
        }

        return value;
    }

    private double? Read(string text, string option, Quantity quantity)
    {
        (double? value, string? wrong) = QuantityText.ReadWithUnit(text, quantity);
        if (wrong is not null)
        {
            faults.Add($"{option} {wrong}");
        }

        return value;
    }

    // Each panel point takes the load of half a panel to either side.
    private static List<LoadCase> Cases(Truss truss, double? dead, double? wearing)
    {
        var cases = new List<LoadCase>();
        foreach ((string name, double? load) in ((string, double?)[])[(Bridge.ComponentsCase, dead), (Bridge.WearingSurfaceCase, wearing)])
        {
            if (load is { } perLength)
            {
                IReadOnlyList<double> x = truss.Stations;
                cases.Add(new LoadCase(name, [.. truss.PanelPoints.Select((p, i) =>
                    new JointLoad(truss.Joints[p].Name, 0, -perLength * (x[Math.Min(i + 1, x.Count - 1)] - x[Math.Max(i - 1, 0)]) / 2))]));
            }
        }

        return cases;
    }

    private static string Range(double least, double most, DisplayUnits units) =>
        $"{ResultTable.Figure(units.From(Quantity.Length, least), 2)} to {ResultTable.Figure(units.From(Quantity.Length, most), 2)} {units.Symbol(Quantity.Length)}";
}
