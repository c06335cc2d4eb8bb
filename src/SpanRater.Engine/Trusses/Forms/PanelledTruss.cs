namespace SpanRater;

/// <summary>
/// A truss with a vertical at every panel point and a diagonal in every panel. A through truss ends in inclined end posts
/// from L0 to U1, and its first vertical is a hanger; a deck truss has a full rectangular panel at its ends, with a top
/// chord that starts at U0.
/// </summary>
public abstract class PanelledTruss : TrussForm
{
    private readonly double[] heights;
    private readonly DeckChord deck;
    private readonly CentrePanel centre;

    // The heights stand at the inner panel points; a deck truss, whose chords are parallel, has the same at its ends.
    private protected PanelledTruss(
        int panels, int fewest, double panelLength, IReadOnlyList<double> heights, string heightName, DeckChord deck, CentrePanel centre)
        : base(panels, fewest, panelLength)
    {
        this.heights = [.. heights.Select(height => CheckedHeight(height, panelLength, heightName))];
        this.deck = deck;
        this.centre = centre;
    }

    /// <summary>The chord on which the floorbeams sit.</summary>
    public DeckChord Deck => deck;

    /// <summary>How the panel at midspan is braced; without meaning where the number of panels is even.</summary>
    public CentrePanel Centre => centre;

    private protected abstract bool IsFalling(int panel);

    // The number of panels is checked after the heights are handed over, so it is held in its range here.
    private protected static double[] Level(int panels, double height)
    {
        double[] heights = new double[Math.Clamp(panels - 1, 1, MostPanels)];
        Array.Fill(heights, height);
        return heights;
    }

    private protected override void Raise(TrussFrame frame)
    {
        bool isDeckTruss = deck == DeckChord.Top;
        int firstTop = isDeckTruss ? 0 : 1, lastTop = Panels - firstTop;
        for (int i = 0; i <= Panels; i++)
        {
            frame.AddJoint($"L{i}", i * PanelLength, 0, SupportAt(i), !isDeckTruss);
        }

        for (int i = firstTop; i <= lastTop; i++)
        {
            frame.AddJoint($"U{i}", i * PanelLength, heights[Math.Clamp(i - 1, 0, Panels - 2)], null, isDeckTruss);
        }

        for (int i = 0; i < Panels; i++)
        {
            frame.AddMember($"L{i}", $"L{i + 1}", "bottom chord");
        }

        for (int i = firstTop; i < lastTop; i++)
        {
            frame.AddMember($"U{i}", $"U{i + 1}", "top chord");
        }

        for (int i = firstTop; i <= lastTop; i++)
        {
            frame.AddMember($"U{i}", $"L{i}", RoleOfVertical(i));
        }

        if (!isDeckTruss)
        {
            frame.AddMember("L0", "U1", "end post");
            frame.AddMember($"U{Panels - 1}", $"L{Panels}", "end post");
        }

        AddWeb(frame, firstTop, lastTop);
    }

    // The diagonals, between the first and the last panel point of the top chord.
    private protected virtual void AddWeb(TrussFrame frame, int firstTop, int lastTop)
    {
        for (int i = firstTop; i < lastTop; i++)
        {
            AddDiagonals(frame, i);
        }
    }

    private string RoleOfVertical(int point) => deck == DeckChord.Top
        ? point == 0 || point == Panels ? "end post" : "vertical"
        : point == 1 || point == Panels - 1 ? "hanger" : "vertical";

    private void AddDiagonals(TrussFrame frame, int panel)
    {
        (string falls, string fallsTo) = ($"U{panel}", $"L{panel + 1}");
        (string rises, string risesTo) = ($"L{panel}", $"U{panel + 1}");
        if ((2 * panel) + 1 != Panels)
        {
            frame.AddMember(IsFalling(panel) ? falls : rises, IsFalling(panel) ? fallsTo : risesTo, "diagonal");
            return;
        }

        switch (centre)
        {
            case CentrePanel.OneDiagonal:
                frame.AddMember(falls, fallsTo, "diagonal");
                break;
            case CentrePanel.CrossedRods:
                frame.AddMember(falls, fallsTo, "counter", tensionOnly: true);
                frame.AddMember(rises, risesTo, "counter", tensionOnly: true);
                break;
        }
    }
}
