namespace SpanRater;

/// <summary>
/// The K-truss: every vertical but the one at midspan has a joint at its middle, from which two diagonals run to the top
/// and the bottom of the next vertical towards midspan. Parallel chords, a through truss.
/// </summary>
public sealed class KTruss : TrussForm
{
    private readonly double height;

    /// <summary>A K-truss.</summary>
    /// <param name="panels">Number of panels, even, from 4 to 200.</param>
    /// <param name="panelLength">Length of a panel [m].</param>
    /// <param name="height">Height between the chords, from 0.01 to 100 panel lengths [m].</param>
    /// <exception cref="ArgumentOutOfRangeException">A measure is outside its range.</exception>
    public KTruss(int panels, double panelLength, double height)
        : base(CheckedEven(panels), 4, panelLength) => this.height = CheckedHeight(height, panelLength, nameof(height));

    /// <inheritdoc/>
    public override string Name => "K-truss";

    private protected override void Raise(TrussFrame frame)
    {
        int middle = Panels / 2;
        for (int i = 0; i <= Panels; i++)
        {
            frame.AddJoint($"L{i}", i * PanelLength, 0, SupportAt(i), isPanelPoint: true);
        }

        for (int i = 1; i < Panels; i++)
        {
            frame.AddJoint($"U{i}", i * PanelLength, height);
        }

        for (int i = 1; i < Panels; i++)
        {
            if (i != middle)
            {
                frame.AddJoint($"M{i}", i * PanelLength, height / 2);
            }
        }

        for (int i = 0; i < Panels; i++)
        {
            frame.AddMember($"L{i}", $"L{i + 1}", "bottom chord");
        }

        for (int i = 1; i < Panels - 1; i++)
        {
            frame.AddMember($"U{i}", $"U{i + 1}", "top chord");
        }

        frame.AddMember("L0", "U1", "end post");
        frame.AddMember($"U{Panels - 1}", $"L{Panels}", "end post");
        for (int i = 1; i < Panels; i++)
        {
            if (i == middle)
            {
                frame.AddMember($"U{i}", $"L{i}", "vertical");
                continue;
            }

            int next = i < middle ? i + 1 : i - 1;
            frame.AddMember($"U{i}", $"M{i}", "vertical");
            frame.AddMember($"M{i}", $"L{i}", "vertical");
            frame.AddMember($"M{i}", $"U{next}", "mid-joint diagonal");
            frame.AddMember($"M{i}", $"L{next}", "mid-joint diagonal");
        }
    }
}
