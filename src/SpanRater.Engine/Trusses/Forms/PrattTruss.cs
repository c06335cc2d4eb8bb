namespace SpanRater;

/// <summary>The Pratt truss: parallel chords, diagonals that fall towards midspan and pull, verticals that press.</summary>
public sealed class PrattTruss : PanelledTruss
{
    /// <summary>A Pratt truss.</summary>
    /// <param name="panels">Number of panels, from 3 to 200.</param>
    /// <param name="panelLength">Length of a panel [m].</param>
    /// <param name="height">Height between the chords, from 0.01 to 100 panel lengths [m].</param>
    /// <param name="deck">The chord on which the floorbeams sit.</param>
    /// <param name="centre">How the panel at midspan is braced where the panels are odd.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public PrattTruss(int panels, double panelLength, double height, DeckChord deck = DeckChord.Bottom, CentrePanel centre = CentrePanel.OneDiagonal)
        : base(panels, 3, panelLength, Level(panels, height), nameof(height), deck, centre)
    {
    }

    /// <inheritdoc/>
    public override string Name => "Pratt";

    private protected override bool IsFalling(int panel) => 2 * panel < Panels;
}
