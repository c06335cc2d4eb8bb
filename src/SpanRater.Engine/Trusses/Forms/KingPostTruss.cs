namespace SpanRater;

/// <summary>The king post truss: two panels, two end posts that lean on each other, and a post between them that hangs the floorbeam.</summary>
public sealed class KingPostTruss : TrussForm
{
    private readonly double height;

    /// <summary>A king post truss.</summary>
    /// <param name="panelLength">Length of each of its two panels [m].</param>
    /// <param name="height">Height of the post, from 0.01 to 100 panel lengths [m].</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public KingPostTruss(double panelLength, double height)
        : base(2, 2, panelLength) => this.height = CheckedHeight(height, panelLength, nameof(height));

    /// <inheritdoc/>
    public override string Name => "king post";

    private protected override void Raise(TrussFrame frame)
    {
        for (int i = 0; i <= 2; i++)
        {
            frame.AddJoint($"L{i}", i * PanelLength, 0, SupportAt(i), isPanelPoint: true);
        }

        frame.AddJoint("U1", PanelLength, height);
        frame.AddMember("L0", "L1", "bottom chord");
        frame.AddMember("L1", "L2", "bottom chord");
        frame.AddMember("U1", "L1", "king post");
        frame.AddMember("L0", "U1", "end post");
        frame.AddMember("U1", "L2", "end post");
    }
}
