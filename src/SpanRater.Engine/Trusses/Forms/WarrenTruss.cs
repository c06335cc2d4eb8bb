namespace SpanRater;

/// <summary>
/// The Warren truss: diagonals that rise and fall in turn, and no verticals. A through truss. Joints are numbered from end
/// to end, a half panel apart: L0, U1, L2, U3, L4 …
/// </summary>
public sealed class WarrenTruss : TrussForm
{
    private readonly double height;

    /// <summary>A Warren truss.</summary>
    /// <param name="panels">Number of panels of the bottom chord, from 2 to 200.</param>
    /// <param name="panelLength">Length of a panel of the bottom chord [m].</param>
    /// <param name="height">Height between the chords, from 0.01 to 100 panel lengths [m].</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public WarrenTruss(int panels, double panelLength, double height)
        : base(panels, 2, panelLength) => this.height = CheckedHeight(height, panelLength, nameof(height));

    /// <inheritdoc/>
    public override string Name => "Warren";

    private protected override void Raise(TrussFrame frame)
    {
        int last = 2 * Panels;
        for (int i = 0; i <= last; i += 2)
        {
            frame.AddJoint($"L{i}", i / 2 * PanelLength, 0, SupportAt(i / 2), isPanelPoint: true);
        }

        for (int i = 1; i < last; i += 2)
        {
            frame.AddJoint($"U{i}", i * PanelLength / 2, height);
        }

        for (int i = 0; i < last; i += 2)
        {
            frame.AddMember($"L{i}", $"L{i + 2}", "bottom chord");
        }

        for (int i = 1; i + 2 < last; i += 2)
        {
            frame.AddMember($"U{i}", $"U{i + 2}", "top chord");
        }

        for (int i = 1; i < last; i += 2)
        {
            frame.AddMember($"L{i - 1}", $"U{i}", i == 1 ? "end post" : "diagonal");
            frame.AddMember($"U{i}", $"L{i + 1}", i + 1 == last ? "end post" : "diagonal");
        }
    }
}
