namespace SpanRater;

/// <summary>
/// Axles whose gaps are all fixed in one arrangement of a train, with every position that has one of them on a panel
/// point. For each position and axle it keeps the segment of the deck under the axle and the place within it, so that
/// any number of influence lines can be read at once.
/// </summary>
internal sealed class RigidGroup
{
    private readonly double[] loads;
    private readonly double[] offsets;
    private readonly int[] segments;
    private readonly double[] fractions;
    private readonly DeckEdge[] edges;
    private readonly bool[] touchesEdge;

    /// <param name="stations">x of the panel points.</param>
    /// <param name="loads">Axle loads, front to back.</param>
    /// <param name="offsets">x of each axle from the group's front axle: negative when driving right.</param>
    /// <param name="tolerance">An axle this near to a panel point stands on it.</param>
    public RigidGroup(double[] stations, double[] loads, double[] offsets, double tolerance)
    {
        this.loads = loads;
        this.offsets = offsets;
        Positions = PositionsWithAnAxleOnAPanelPoint(stations, offsets, tolerance);
        int count = Positions.Length * loads.Length;
        segments = new int[count];
        fractions = new double[count];
        edges = new DeckEdge[count];
        touchesEdge = new bool[Positions.Length];
        for (int p = 0; p < Positions.Length; p++)
        {
            for (int k = 0; k < loads.Length; k++)
            {
                Place((p * loads.Length) + k, Positions[p] + offsets[k], stations, tolerance);
                touchesEdge[p] |= edges[(p * loads.Length) + k] is DeckEdge.Left or DeckEdge.Right;
            }
        }
    }

    /// <summary>Where an axle is with respect to the ends of the deck.</summary>
    private enum DeckEdge : byte
    {
        Within,
        Left,
        Right,
        Off,
    }

    /// <summary>x of the group's front axle in every position worth a visit, increasing.</summary>
    public double[] Positions { get; }

    /// <summary>Number of axles.</summary>
    public int AxleCount => loads.Length;

    /// <summary>x of each axle from the group's front axle [m].</summary>
    public IReadOnlyList<double> Offsets => offsets;

    /// <summary>Axle loads, front to back [N].</summary>
    public IReadOnlyList<double> Loads => loads;

    /// <summary>x of the group's last axle in a position.</summary>
    public double LastAxle(int position) => Positions[position] + offsets[^1];

    /// <summary>Whether an axle stands on an end of the deck, where the response may jump.</summary>
    public bool TouchesEdge(int position) => touchesEdge[position];

    /// <summary>Effect of the group in a position, in the sense sought (positive when it adds to it).</summary>
    public double Effect(int position, Approach approach, ReadOnlySpan<double> ordinates, double sign, bool leaveOutRelieving)
    {
        double sum = 0;
        if (approach == Approach.At && !leaveOutRelieving)
        {
            // The same sums as below, without asking what no axle within the deck needs to be asked.
            for (int k = 0, i = position * loads.Length; k < loads.Length; k++, i++)
            {
                if (edges[i] != DeckEdge.Off)
                {
                    double t = fractions[i];
                    sum += sign * loads[k] * (((1 - t) * ordinates[segments[i]]) + (t * ordinates[segments[i] + 1]));
                }
            }

            return sum;
        }

        for (int k = 0; k < loads.Length; k++)
        {
            double effect = sign * loads[k] * OrdinateUnder(position, k, approach, ordinates);
            sum += leaveOutRelieving && effect < 0 ? 0 : effect;
        }

        return sum;
    }

    /// <summary>Adds each axle of the group, front to back, with what it contributes.</summary>
    public void Describe(int position, Approach approach, ReadOnlySpan<double> ordinates, double sign, bool leaveOutRelieving, List<AxleEffect> into)
    {
        for (int k = 0; k < loads.Length; k++)
        {
            double ordinate = OrdinateUnder(position, k, approach, ordinates);
            double effect = loads[k] * ordinate;
            into.Add(new AxleEffect(loads[k], Positions[position] + offsets[k], ordinate, leaveOutRelieving && sign * effect < 0 ? 0 : effect));
        }
    }

    /// <summary>The same for a group that stands anywhere between a position and the next.</summary>
    public void Describe(double front, int positionToTheLeft, ReadOnlySpan<double> ordinates, List<AxleEffect> into)
    {
        double left = Positions[positionToTheLeft], right = Positions[positionToTheLeft + 1], t = (front - left) / (right - left);
        for (int k = 0; k < loads.Length; k++)
        {
            // No axle passes a panel point on the way, so its ordinate changes evenly.
            double from = OrdinateUnder(positionToTheLeft, k, Approach.JustRight, ordinates);
            double ordinate = from + (t * (OrdinateUnder(positionToTheLeft + 1, k, Approach.JustLeft, ordinates) - from));
            into.Add(new AxleEffect(loads[k], front + offsets[k], ordinate, loads[k] * ordinate));
        }
    }

    private double OrdinateUnder(int position, int axle, Approach approach, ReadOnlySpan<double> ordinates)
    {
        int i = (position * loads.Length) + axle;
        bool counts = edges[i] switch
        {
            DeckEdge.Off => false,
            DeckEdge.Left => approach != Approach.JustLeft,
            DeckEdge.Right => approach != Approach.JustRight,
            _ => true,
        };
        if (!counts)
        {
            return 0;
        }

        // On a panel point the fraction is exactly 0 or 1, and so is the ordinate exactly that of the panel point.
        double t = fractions[i];
        return ((1 - t) * ordinates[segments[i]]) + (t * ordinates[segments[i] + 1]);
    }

    private void Place(int i, double x, double[] stations, double tolerance)
    {
        int last = stations.Length - 1;
        if (x < stations[0] - tolerance || x > stations[last] + tolerance)
        {
            edges[i] = DeckEdge.Off;
            return;
        }

        int segment = Array.BinarySearch(stations, x);
        segment = Math.Clamp(segment >= 0 ? segment : ~segment - 1, 0, last - 1);
        double left = stations[segment], right = stations[segment + 1];
        segments[i] = segment;
        fractions[i] = x <= left + tolerance ? 0 : x >= right - tolerance ? 1 : (x - left) / (right - left);
        edges[i] = x <= stations[0] + tolerance ? DeckEdge.Left : x >= stations[last] - tolerance ? DeckEdge.Right : DeckEdge.Within;
    }

    private static double[] PositionsWithAnAxleOnAPanelPoint(double[] stations, double[] offsets, double tolerance)
    {
        var positions = new List<double>(stations.Length * offsets.Length);
        foreach (double station in stations)
        {
            foreach (double offset in offsets)
            {
                positions.Add(station - offset);
            }
        }

        positions.Sort();

        // Two axles on two panel points at once give the same position twice, up to the last bit.
        var distinct = new List<double>(positions.Count);
        foreach (double position in positions)
        {
            if (distinct.Count == 0 || position - distinct[^1] > tolerance)
            {
                distinct.Add(position);
            }
        }

        return [.. distinct];
    }
}
