namespace SpanRater;

/// <summary>The measures that a form of truss is built with; a form reads those that it has.</summary>
/// <param name="Panels">Number of panels of the chord that carries the deck.</param>
/// <param name="PanelLength">Length of a panel [m].</param>
/// <param name="Heights">Height over each inner panel point for a form with heights of its own there, else one height [m].</param>
/// <param name="Deck">The chord on which the floorbeams sit.</param>
/// <param name="Centre">How the centre is braced.</param>
/// <param name="SubDiagonal">What holds the middle of a main diagonal of a subdivided truss.</param>
/// <param name="Area">Cross-section of every member of a redundant form [m²]; null where none is given.</param>
public sealed record FormMeasures(
    int Panels,
    double PanelLength,
    IReadOnlyList<double> Heights,
    DeckChord Deck = DeckChord.Bottom,
    CentrePanel Centre = CentrePanel.OneDiagonal,
    SubDiagonal SubDiagonal = SubDiagonal.Strut,
    double? Area = null);
