namespace SpanRater;

/// <summary>The chord on which the floorbeams sit.</summary>
public enum DeckChord
{
    /// <summary>A through truss: the deck lies on the bottom chord, between the trusses.</summary>
    Bottom,

    /// <summary>A deck truss: the deck lies on the top chord, above the trusses.</summary>
    Top,
}

/// <summary>
/// A form in which old trusses were built, with its measures: panels of one length, a pin at L0 and a roller at the
/// other end. Bottom joints are L0, L1 …, top joints U1, U2 …, joints in the middle of a vertical or a diagonal M1, M2 …, each with the
/// number of its panel point; a member bears the names of its joints, L0L1. Immutable.
/// </summary>
public abstract class TrussForm
{
    /// <summary>Most panels that a form is built with.</summary>
    public const int MostPanels = 200;

    /// <summary>Least height of a truss over the length of a panel [-]: below it the joints of the chords fall together.</summary>
    public const double LeastHeightOverPanel = 0.01;

    /// <summary>Largest height of a truss over the length of a panel [-].</summary>
    public const double MostHeightOverPanel = 100;

    private protected TrussForm(int panels, int fewest, double panelLength)
    {
        if (panels < fewest || panels > MostPanels)
        {
            throw new ArgumentOutOfRangeException(nameof(panels), panels, $"This form has from {fewest} to {MostPanels} panels.");
        }

        if (!(panelLength > 0 && double.IsFinite(panelLength)))
        {
            throw new ArgumentOutOfRangeException(nameof(panelLength), panelLength, "A panel has a positive, finite length [m].");
        }

        Panels = panels;
        PanelLength = panelLength;
    }

    /// <summary>The trade's name of the form.</summary>
    public abstract string Name { get; }

    /// <summary>Number of panels of the chord that carries the deck.</summary>
    public int Panels { get; }

    /// <summary>Length of a panel [m].</summary>
    public double PanelLength { get; }

    /// <summary>Distance between the supports [m].</summary>
    public double Span => Panels * PanelLength;

    /// <summary>The truss of this form and these measures.</summary>
    public Truss Build()
    {
        var frame = new TrussFrame();
        Raise(frame);
        return frame.ToTruss(Area);
    }

    /// <summary>
    /// Cross-section of every member [m²]; null for a form whose forces do not depend on areas. A redundant form is never
    /// built without it.
    /// </summary>
    public virtual double? Area => null;

    private protected abstract void Raise(TrussFrame frame);

    // The support of a panel point: the pin stands at the left end, the roller at the right.
    private protected Support? SupportAt(int point) => point == 0 ? Support.Pin : point == Panels ? Support.Roller() : null;

    private protected static double CheckedHeight(double height, double panelLength, string name)
    {
        double least = LeastHeightOverPanel * panelLength, most = MostHeightOverPanel * panelLength;
        return height >= least && height <= most
            ? height
            : throw new ArgumentOutOfRangeException(
                name,
                height,
                FormattableString.Invariant($"A height is from {least} to {most} m where panels are {panelLength} m long."));
    }

    private protected static double? CheckedArea(double? area, string name) => area is null || (area > 0 && double.IsFinite(area.Value))
        ? area
        : throw new ArgumentOutOfRangeException(name, area, "An area is positive and finite [m²].");

    private protected static int CheckedEven(int panels) => int.IsEvenInteger(panels)
        ? panels
        : throw new ArgumentOutOfRangeException(nameof(panels), panels, $"This form has an even number of panels, at most {MostPanels}.");
}
