namespace SpanRater;

/// <summary>What there is to know about a form of truss before it is built: its name, and which measures it takes in what range.</summary>
public sealed class FormKind
{
    private static readonly CentrePanel[] None = [];
    private static readonly CentrePanel[] OddCentre = [CentrePanel.OneDiagonal, CentrePanel.CrossedRods, CentrePanel.Open];

    private readonly Func<FormMeasures, TrussForm> make;

    private FormKind(string key, string name, int fewest, int step, Func<FormMeasures, TrussForm> make, params IReadOnlyList<string> otherNames)
    {
        Key = key;
        Name = name;
        Fewest = fewest;
        Step = step;
        this.make = make;
        OtherNames = otherNames;
    }

    /// <summary>Every form there is, the simplest first.</summary>
    public static IReadOnlyList<FormKind> All { get; } =
    [
        new("king-post", "king post", 2, 1, m => new KingPostTruss(m.PanelLength, m.Heights[0])) { Most = 2 },
        new("queen-post", "queen post", 3, 1, m => new QueenPostTruss(m.PanelLength, m.Heights[0], m.Centre)) { Most = 3, Centres = OddCentre },
        new("pratt", "Pratt", 3, 1, m => new PrattTruss(m.Panels, m.PanelLength, m.Heights[0], m.Deck, m.Centre)) { TakesDeck = true, Centres = OddCentre },
        new("howe", "Howe", 3, 1, m => new HoweTruss(m.Panels, m.PanelLength, m.Heights[0], m.Deck, m.Centre)) { TakesDeck = true, Centres = OddCentre },
        new("warren", "Warren", 2, 1, m => new WarrenTruss(m.Panels, m.PanelLength, m.Heights[0])),
        new("warren-with-verticals", "Warren with verticals", 4, 2, m => new WarrenTrussWithVerticals(m.Panels, m.PanelLength, m.Heights[0], m.Deck)) { TakesDeck = true },
        new("parker", "Parker", 3, 1, m => new ParkerTruss(m.PanelLength, m.Heights, m.Centre)) { TakesHeights = true, Centres = OddCentre },
        new("k", "K-truss", 4, 2, m => new KTruss(m.Panels, m.PanelLength, m.Heights[0]), "k-truss"),
        new("baltimore", "Baltimore", 8, 4, m => new BaltimoreTruss(m.Panels, m.PanelLength, m.Heights[0], m.Deck, m.SubDiagonal)) { TakesDeck = true, TakesSubDiagonal = true },
        new("double-intersection", "double-intersection Pratt", 6, 2, m => new DoubleIntersectionTruss(m.Panels, m.PanelLength, m.Heights[0], m.Deck, m.Centre, m.Area), "whipple")
        {
            TakesDeck = true,
            Centres = OddCentre,
            CentreIsAtMidspan = true,
        },
    ];

    /// <summary>The name by which it is asked for: lower case, words joined by hyphens.</summary>
    public string Key { get; }

    /// <summary>The trade's name.</summary>
    public string Name { get; }

    /// <summary>Other names by which it may be asked for, in the form of <see cref="Key"/>.</summary>
    public IReadOnlyList<string> OtherNames { get; }

    /// <summary>Fewest panels.</summary>
    public int Fewest { get; }

    /// <summary>Most panels; equal to <see cref="Fewest"/> where the form has but one number.</summary>
    public int Most { get; private init; } = TrussForm.MostPanels;

    /// <summary>The number of panels is a multiple of this.</summary>
    public int Step { get; }

    /// <summary>True where the top chord has a height of its own over each inner panel point.</summary>
    public bool TakesHeights { get; private init; }

    /// <summary>True where the deck may lie on either chord; else it lies on the bottom chord.</summary>
    public bool TakesDeck { get; private init; }

    /// <summary>True where a sub-strut or a sub-tie may be chosen.</summary>
    public bool TakesSubDiagonal { get; private init; }

    /// <summary>The ways in which the centre may be braced; empty where there is no choice.</summary>
    public IReadOnlyList<CentrePanel> Centres { get; private init; } = None;

    /// <summary>
    /// True where the choice of <see cref="Centres"/> is about a diagonal across midspan, without which the truss is determinate and
    /// with which areas are needed; false where it is about the centre panel of an odd number of panels.
    /// </summary>
    public bool CentreIsAtMidspan { get; private init; }

    /// <summary>How the centre is braced where nothing is said: as <see cref="Centres"/> makes the truss determinate.</summary>
    public CentrePanel UsualCentre => CentreIsAtMidspan ? CentrePanel.Open : CentrePanel.OneDiagonal;

    /// <summary>The form of that name, or null. Case does not count, and spaces stand for hyphens.</summary>
    /// <param name="name">Name.</param>
    public static FormKind? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string key = string.Join('-', name.Split((char[])[' ', '-', '_'], StringSplitOptions.RemoveEmptyEntries));
        return All.FirstOrDefault(k => k.OtherNames.Prepend(k.Key).Append(k.Name.Replace(' ', '-')).Any(n => string.Equals(n, key, StringComparison.OrdinalIgnoreCase)));
    }

    /// <summary>Whether a number of panels is one that the form has.</summary>
    /// <param name="panels">Number of panels.</param>
    public bool Allows(int panels) => panels >= Fewest && panels <= Most && panels % Step == 0;

    /// <summary>The form with its measures.</summary>
    /// <param name="measures">The measures.</param>
    /// <exception cref="ArgumentException">A measure is outside its range.</exception>
    public TrussForm Make(FormMeasures measures)
    {
        ArgumentNullException.ThrowIfNull(measures);
        return make(measures);
    }
}
