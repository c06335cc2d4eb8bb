namespace SpanRater;

/// <summary>The bar that holds the middle of a main diagonal of a subdivided truss.</summary>
public enum SubDiagonal
{
    /// <summary>A sub-strut, from the middle of the main diagonal down to the bottom chord at the outer end of its panel: it presses.</summary>
    Strut,

    /// <summary>A sub-tie, from the middle of the main diagonal up to the top chord at the inner end of its panel: it pulls.</summary>
    Tie,
}

/// <summary>
/// The Baltimore truss: a Pratt truss of long main panels, each halved by a sub-vertical at the middle of its main diagonal,
/// which a sub-strut or a sub-tie holds. Parallel chords. Panel points are numbered a half main panel apart: the main panel
/// points are even, L0, L2 … with U2, U4 … above them; the middles of the main diagonals are odd, M1, M3 … The middle of an end
/// post is always held by a sub-strut.
/// </summary>
public sealed class BaltimoreTruss : TrussForm
{
    private readonly double height;

    /// <summary>A Baltimore truss.</summary>
    /// <param name="panels">Number of panels of the deck, two a main panel: a multiple of 4, from 8 to 200.</param>
    /// <param name="panelLength">Length of a panel of the deck, half a main panel [m].</param>
    /// <param name="height">Height between the chords, from 0.01 to 100 panel lengths [m].</param>
    /// <param name="deck">The chord on which the floorbeams sit.</param>
    /// <param name="subDiagonal">What holds the middle of a main diagonal.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public BaltimoreTruss(int panels, double panelLength, double height, DeckChord deck = DeckChord.Bottom, SubDiagonal subDiagonal = SubDiagonal.Strut)
        : base(CheckedMultiple(panels), 8, panelLength)
    {
        this.height = CheckedHeight(height, panelLength, nameof(height));
        Deck = deck;
        SubDiagonal = subDiagonal;
    }

    /// <inheritdoc/>
    public override string Name => "Baltimore";

    /// <summary>The chord on which the floorbeams sit.</summary>
    public DeckChord Deck { get; }

    /// <summary>What holds the middle of a main diagonal.</summary>
    public SubDiagonal SubDiagonal { get; }

    private bool IsDeckTruss => Deck == DeckChord.Top;

    private protected override void Raise(TrussFrame frame)
    {
        AddJoints(frame);
        AddChord(frame, "L", 0, Panels, IsDeckTruss ? 2 : 1, "bottom chord");
        AddChord(frame, "U", FirstTop, LastTop, IsDeckTruss ? 1 : 2, "top chord");
        for (int i = FirstTop; i <= LastTop; i += 2)
        {
            frame.AddMember($"U{i}", $"L{i}", RoleOfVertical(i));
        }

        for (int left = 0; left < Panels; left += 2)
        {
            AddMainPanel(frame, left);
        }
    }

    private int FirstTop => IsDeckTruss ? 0 : 2;

    private int LastTop => Panels - FirstTop;

    private void AddJoints(TrussFrame frame)
    {
        for (int i = 0; i <= Panels; i += IsDeckTruss ? 2 : 1)
        {
            frame.AddJoint($"L{i}", i * PanelLength, 0, SupportAt(i), !IsDeckTruss);
        }

        for (int i = FirstTop; i <= LastTop; i += IsDeckTruss ? 1 : 2)
        {
            frame.AddJoint($"U{i}", i * PanelLength, height, null, IsDeckTruss);
        }

        for (int i = 1; i < Panels; i += 2)
        {
            frame.AddJoint($"M{i}", i * PanelLength, height / 2);
        }
    }

    private static void AddChord(TrussFrame frame, string letter, int first, int last, int step, string role)
    {
        for (int i = first; i < last; i += step)
        {
            frame.AddMember($"{letter}{i}", $"{letter}{i + step}", role);
        }
    }

    // In the left half the outer end of a main panel is its left one, and its diagonal falls to the right; the right half is the mirror image.
    private void AddMainPanel(TrussFrame frame, int left)
    {
        bool isLeftHalf = left < Panels / 2;
        int outer = isLeftHalf ? left : left + 2, inner = isLeftHalf ? left + 2 : left;
        string middle = $"M{left + 1}";
        frame.AddMember(middle, IsDeckTruss ? $"U{left + 1}" : $"L{left + 1}", "sub-vertical");
        if (!IsDeckTruss && (outer == 0 || outer == Panels))
        {
            frame.AddMember($"L{outer}", middle, "end post");
            frame.AddMember(middle, $"U{inner}", "end post");
            frame.AddMember(middle, $"L{inner}", "sub-strut");
            return;
        }

        frame.AddMember($"U{outer}", middle, "diagonal");
        frame.AddMember(middle, $"L{inner}", "diagonal");
        frame.AddMember(middle, SubDiagonal == SubDiagonal.Strut ? $"L{outer}" : $"U{inner}", SubDiagonal == SubDiagonal.Strut ? "sub-strut" : "sub-tie");
    }

    private string RoleOfVertical(int point) => IsDeckTruss
        ? point == 0 || point == Panels ? "end post" : "vertical"
        : point == 2 || point == Panels - 2 ? "hanger" : "vertical";

    private static int CheckedMultiple(int panels) => panels % 4 == 0
        ? panels
        : throw new ArgumentOutOfRangeException(nameof(panels), panels, $"This form has a multiple of 4 panels, from 8 to {MostPanels}.");
}
