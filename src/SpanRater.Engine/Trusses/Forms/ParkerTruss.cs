namespace SpanRater;

/// <summary>The Parker truss: the web of a Pratt truss under a polygonal top chord. A through truss.</summary>
public sealed class ParkerTruss : PanelledTruss
{
    /// <summary>A Parker truss.</summary>
    /// <param name="panelLength">Length of a panel [m].</param>
    /// <param name="heights">Height of the top chord over each inner panel point, from left to right; one less than the panels, at least two [m].</param>
    /// <param name="centre">How the panel at midspan is braced where the panels are odd.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public ParkerTruss(double panelLength, IReadOnlyList<double> heights, CentrePanel centre = CentrePanel.OneDiagonal)
        : base((heights ?? throw new ArgumentNullException(nameof(heights))).Count + 1, 3, panelLength, heights, nameof(heights), DeckChord.Bottom, centre)
    {
    }

    /// <inheritdoc/>
    public override string Name => "Parker";

    private protected override bool IsFalling(int panel) => 2 * panel < Panels;
}
