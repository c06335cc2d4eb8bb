namespace SpanRater;

/// <summary>
/// The double-intersection Pratt truss, also called Whipple truss: parallel chords, a vertical at every panel point, and
/// diagonals that fall towards midspan over two panels, so that two Pratt webs share the chords. A short diagonal over one
/// panel starts the second web at either end. Diagonals cross verticals and one another without a joint.
/// </summary>
/// <remarks>
/// With nothing across midspan (<see cref="CentrePanel.Open"/>) the count is even and equilibrium finds every force. A diagonal
/// across midspan makes the truss redundant: how the two webs share the load then depends on the areas, which must be given.
/// </remarks>
public sealed class DoubleIntersectionTruss : PanelledTruss
{
    /// <summary>A double-intersection Pratt truss.</summary>
    /// <param name="panels">Number of panels, even, from 6 to 200.</param>
    /// <param name="panelLength">Length of a panel [m].</param>
    /// <param name="height">Height between the chords, from 0.01 to 100 panel lengths [m].</param>
    /// <param name="deck">The chord on which the floorbeams sit.</param>
    /// <param name="centre">What runs across midspan, over the two panels there.</param>
    /// <param name="area">Cross-section of every member; required where something runs across midspan [m²].</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    /// <exception cref="ArgumentNullException">The truss is redundant and no area is given.</exception>
    public DoubleIntersectionTruss(
        int panels, double panelLength, double height, DeckChord deck = DeckChord.Bottom, CentrePanel centre = CentrePanel.Open, double? area = null)
        : base(CheckedEven(panels), 6, panelLength, Level(panels, height), nameof(height), deck, centre)
    {
        if (centre != CentrePanel.Open && area is null)
        {
            throw new ArgumentNullException(nameof(area), "A double-intersection truss with a diagonal across midspan is redundant: its forces depend on areas.");
        }

        Area = CheckedArea(area, nameof(area));
    }

    /// <inheritdoc/>
    public override string Name => "double-intersection Pratt";

    /// <inheritdoc/>
    public override double? Area { get; }

    private protected override bool IsFalling(int panel) => 2 * panel < Panels;

    private protected override void AddWeb(TrussFrame frame, int firstTop, int lastTop)
    {
        int middle = Panels / 2;
        frame.AddMember($"U{firstTop}", $"L{firstTop + 1}", "short diagonal");
        for (int i = firstTop; i + 2 <= middle; i++)
        {
            frame.AddMember($"U{i}", $"L{i + 2}", "diagonal");
        }

        bool rods = Centre == CentrePanel.CrossedRods;
        if (Centre != CentrePanel.Open)
        {
            frame.AddMember($"U{middle - 1}", $"L{middle + 1}", rods ? "counter" : "diagonal", rods);
        }

        if (rods)
        {
            frame.AddMember($"U{middle + 1}", $"L{middle - 1}", "counter", tensionOnly: true);
        }

        for (int i = middle + 2; i <= lastTop; i++)
        {
            frame.AddMember($"U{i}", $"L{i - 2}", "diagonal");
        }

        frame.AddMember($"U{lastTop}", $"L{lastTop - 1}", "short diagonal");
    }
}
