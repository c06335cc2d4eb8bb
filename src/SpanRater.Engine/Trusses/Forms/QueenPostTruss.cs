namespace SpanRater;

/// <summary>The queen post truss: three panels, two end posts, a strut between their heads and two posts that hang the floorbeams.</summary>
public sealed class QueenPostTruss : TrussForm
{
    private readonly double height;

    /// <summary>A queen post truss.</summary>
    /// <param name="panelLength">Length of each of its three panels [m].</param>
    /// <param name="height">Height of the posts, from 0.01 to 100 panel lengths [m].</param>
    /// <param name="centre">How the centre panel is braced.</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public QueenPostTruss(double panelLength, double height, CentrePanel centre = CentrePanel.OneDiagonal)
        : base(3, 3, panelLength)
    {
        this.height = CheckedHeight(height, panelLength, nameof(height));
        Centre = centre;
    }

    /// <inheritdoc/>
    public override string Name => "queen post";

    /// <summary>How the centre panel is braced.</summary>
    public CentrePanel Centre { get; }

    private protected override void Raise(TrussFrame frame)
    {
        for (int i = 0; i <= 3; i++)
        {
            frame.AddJoint($"L{i}", i * PanelLength, 0, SupportAt(i), isPanelPoint: true);
        }

        frame.AddJoint("U1", PanelLength, height);
        frame.AddJoint("U2", 2 * PanelLength, height);
        for (int i = 0; i < 3; i++)
        {
            frame.AddMember($"L{i}", $"L{i + 1}", "bottom chord");
        }

        frame.AddMember("U1", "U2", "top chord");
        frame.AddMember("U1", "L1", "queen post");
        frame.AddMember("U2", "L2", "queen post");
        frame.AddMember("L0", "U1", "end post");
        frame.AddMember("U2", "L3", "end post");
        if (Centre != CentrePanel.Open)
        {
            bool rods = Centre == CentrePanel.CrossedRods;
            frame.AddMember("U1", "L2", rods ? "counter" : "diagonal", rods);
        }

        if (Centre == CentrePanel.CrossedRods)
        {
            frame.AddMember("L1", "U2", "counter", tensionOnly: true);
        }
    }
}
