namespace SpanRater;

/// <summary>The Warren truss with verticals: diagonals that rise and fall in turn, and a vertical at every panel point.</summary>
public sealed class WarrenTrussWithVerticals : PanelledTruss
{
    /// <summary>A Warren truss with verticals.</summary>
    /// <param name="panels">Number of panels, even, from 4 to 200.</param>
    /// <param name="panelLength">Length of a panel [m].</param>
    /// <param name="height">Height between the chords, from 0.01 to 100 panel lengths [m].</param>
    /// <param name="deck">The chord on which the floorbeams sit.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public WarrenTrussWithVerticals(int panels, double panelLength, double height, DeckChord deck = DeckChord.Bottom)
        : base(CheckedEven(panels), 4, panelLength, Level(panels, height), nameof(height), deck, CentrePanel.OneDiagonal)
    {
    }

    /// <inheritdoc/>
    public override string Name => "Warren with verticals";

    // A through truss starts with a rising end post in panel 0; a deck truss starts with a falling diagonal there.
    private protected override bool IsFalling(int panel) => int.IsOddInteger(panel) == (Deck == DeckChord.Bottom);
}
