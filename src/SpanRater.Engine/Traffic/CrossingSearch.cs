using System.Numerics;
using System.Runtime.CompilerServices;

namespace SpanRater;

/// <summary>
/// Finds, for a train with fixed gaps, the greatest and the least effect on each line while it crosses, whichever way it drives:
/// the peaks of <see cref="RollingPlan"/> without where they occur. Holds the workspace of one thread.
/// </summary>
/// <remarks>
/// As the train drives on, an effect is straight until an axle comes to a panel point; there its slope changes by the axle load
/// times the bend of the line. So the arrivals are visited in order, and each costs two products and a look at the value, however many
/// axles there are. Many lines are visited at once, those of a shape once for all. Sums run on over a
/// few arrivals for each axle on the deck, and are then made anew from the axles, so that round-off does not pile up. Products and sums are not fused: the numbers are the same on every machine.
/// </remarks>
public sealed class CrossingSearch
{
    /// <summary>Arrivals after which sums are made anew, at least.</summary>
    private const int FewestSteps = 32;

    /// <summary>Arrivals for each axle on the deck after which sums are made anew: what that takes is then at most two fifths of what the arrivals take.</summary>
    private const int StepsAnAxle = 4;

    private readonly CrossedLines lines;
    private readonly AxleOrder order;
    private readonly double[] most;
    private readonly double[] lowest;
    private double[] offsets = [];
    private double[] reversed = [];
    private int[] passed = [];
    private Step[] steps = [];
    private Standing[] standing = [];
    private Stretch[] stretches = [];
    private int stretchCount;
    private int standingCount;

    /// <summary>Makes a workspace.</summary>
    /// <param name="lines">The lines that trains will cross.</param>
    public CrossingSearch(CrossedLines lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        this.lines = lines;
        order = new AxleOrder(lines.Stations, RollingPlan.OnPanelPoint * (lines.Stations[^1] - lines.Stations[0]));
        most = new double[lines.Blocks * CrossedLines.Width];
        lowest = new double[most.Length];
    }

    /// <summary>Lets a train cross, once each way, every axle counted.</summary>
    /// <param name="loads">Axle loads, front to back, finite and not negative, at least one [N].</param>
    /// <param name="gaps">Distance of each axle from the one ahead, finite and not negative; one less than the axles [m].</param>
    /// <param name="greatest">Takes the greatest effect on each line in the worse direction, at least 0: before the train is on [N].</param>
    /// <param name="least">Takes the least effect, at most 0 [N].</param>
    /// <exception cref="ArgumentException">The lengths do not match, or a load or gap is negative or not finite.</exception>
    public void Cross(ReadOnlySpan<double> loads, ReadOnlySpan<double> gaps, Span<double> greatest, Span<double> least)
    {
        double weight = Checked(loads, gaps, greatest, least);
        Drive(loads, gaps, turned: false);
        Collect(lines.Shaped.Right, greatest, least);
        if (!lines.Shaped.Mirrored)
        {
            loads.CopyTo(reversed);
            reversed.AsSpan(0, loads.Length).Reverse();
            Drive(reversed.AsSpan(0, loads.Length), gaps, turned: true);
        }

        Collect(lines.Shaped.Left, greatest, least);
        double zero = RollingPlan.ZeroEffect * weight;
        for (int i = 0; i < greatest.Length; i++)
        {
            greatest[i] = greatest[i] <= zero ? 0 : greatest[i];
            least[i] = least[i] >= -zero ? 0 : least[i];
        }
    }

    private double Checked(ReadOnlySpan<double> loads, ReadOnlySpan<double> gaps, Span<double> greatest, Span<double> least)
    {
        if (loads.Length == 0 || gaps.Length != loads.Length - 1)
        {
            throw new ArgumentException($"{gaps.Length} gaps for {loads.Length} axles; there must be an axle, and one gap less than axles.", nameof(gaps));
        }

        if (greatest.Length != lines.Count || least.Length != lines.Count)
        {
            throw new ArgumentException($"Room for {greatest.Length} greatest and {least.Length} least effects; there must be {lines.Count} of each.", nameof(greatest));
        }

        double weight = 0, length = 0;
        foreach (double load in loads)
        {
            weight = load >= 0 ? weight + load : double.NaN;
        }

        foreach (double gap in gaps)
        {
            length = gap >= 0 ? length + gap : double.NaN;
        }

        if (!double.IsFinite(weight) || !double.IsFinite(length))
        {
            throw new ArgumentException("Axle loads and gaps must be finite and not negative.", double.IsFinite(weight) ? nameof(gaps) : nameof(loads));
        }

        greatest.Clear();
        least.Clear();
        if (offsets.Length < loads.Length)
        {
            offsets = new double[loads.Length];
            reversed = new double[loads.Length];
            passed = new int[loads.Length];
            steps = new Step[loads.Length * lines.Stations.Length];
            stretches = new Stretch[(steps.Length / FewestSteps) + 1];
        }

        return weight;
    }

    // Both directions in their turn: a train that drives left is its mirror image, or itself back to front, driving right.
    private void Drive(ReadOnlySpan<double> loads, ReadOnlySpan<double> gaps, bool turned)
    {
        for (int k = 1; k < loads.Length; k++)
        {
            offsets[k] = offsets[k - 1] + gaps[turned ? gaps.Length - k : k - 1];
        }

        int count = TakeSteps(loads, order.Of(offsets.AsSpan(0, loads.Length)));
        for (int block = 0; block < lines.Blocks; block++)
        {
            CrossBlock(block, count);
        }
    }

    private int TakeSteps(ReadOnlySpan<double> loads, ReadOnlySpan<Arrival> arrivals)
    {
        double[] stations = lines.Stations;
        int width = CrossedLines.Width, last = stations.Length - 1, first = 0, next = 0, since = 0, limit = FewestSteps;
        ReadOnlySpan<double> behind = offsets.AsSpan(0, loads.Length);
        Span<Step> into = steps.AsSpan(0, arrivals.Length);
        stretchCount = 0;
        standingCount = 0;
        stretches[stretchCount++] = new Stretch(0, 0);
        double x = arrivals[0].Front;
        for (int n = 0; n < arrivals.Length; n++)
        {
            Arrival arrival = arrivals[n];
            double front = stations[arrival.Station] + behind[arrival.Axle];
            if (since == limit)
            {
                since = 0;
                limit = Math.Max(FewestSteps, StepsAnAxle * (next - first));
                Stand(loads, front, first, next);
                stretches[stretchCount++] = new Stretch(n, standingCount);
                x = front;
            }

            double load = loads[arrival.Axle], jump = 0;
            passed[arrival.Axle] = arrival.Station + 1;
            if (arrival.Station == 0)
            {
                next++;
                jump = lines.Jumps ? load : 0;
            }
            else if (arrival.Station == last)
            {
                first++;
                jump = lines.Jumps ? -load : 0;
            }

            into[n] = new Step(front - x, load, arrival.Station * width, jump);
            x = front;
            since++;
        }

        return arrivals.Length;
    }

    // The axles on the deck, each between two panel points: a share of its load to each.
    private void Stand(ReadOnlySpan<double> loads, double front, int first, int next)
    {
        double[] stations = lines.Stations;
        if (standing.Length < standingCount + next - first)
        {
            Array.Resize(ref standing, 2 * (standingCount + next - first));
        }

        for (int k = first; k < next; k++)
        {
            int left = passed[k] - 1;
            double share = (front - offsets[k] - stations[left]) / (stations[left + 1] - stations[left]);
            standing[standingCount++] = new Standing(left * CrossedLines.Width, loads[k], loads[k] * (1 - share), loads[k] * share);
        }
    }

    private void CrossBlock(int block, int count)
    {
        int size = Vector<double>.Count, width = CrossedLines.Width, at = block * lines.BlockLength;
        ref double ordinates = ref lines.Ordinates[at];
        ref double slopes = ref lines.Slopes[at];
        ref double bends = ref lines.Bends[at];
        Vector<double> highA = Vector<double>.Zero, highB = Vector<double>.Zero, lowA = Vector<double>.Zero, lowB = Vector<double>.Zero;
        for (int s = 0; s < stretchCount; s++)
        {
            Vector<double> valueA = Vector<double>.Zero, valueB = Vector<double>.Zero, slopeA = Vector<double>.Zero, slopeB = Vector<double>.Zero;
            int from = s == 0 ? 0 : stretches[s - 1].Standing;
            foreach (ref readonly Standing axle in standing.AsSpan(from, stretches[s].Standing - from))
            {
                valueA += (At(ref ordinates, axle.Row) * axle.OnLeft) + (At(ref ordinates, axle.Row + width) * axle.OnRight);
                valueB += (At(ref ordinates, axle.Row + size) * axle.OnLeft) + (At(ref ordinates, axle.Row + width + size) * axle.OnRight);
                slopeA += At(ref slopes, axle.Row) * axle.Load;
                slopeB += At(ref slopes, axle.Row + size) * axle.Load;
            }

            int end = s + 1 < stretchCount ? stretches[s + 1].Step : count;
            foreach (ref readonly Step step in steps.AsSpan(stretches[s].Step, end - stretches[s].Step))
            {
                valueA += slopeA * step.Way;
                valueB += slopeB * step.Way;
                highA = Vector.MaxNative(highA, valueA);
                highB = Vector.MaxNative(highB, valueB);
                lowA = Vector.MinNative(lowA, valueA);
                lowB = Vector.MinNative(lowB, valueB);
                if (step.Jump != 0)
                {
                    valueA += At(ref ordinates, step.Row) * step.Jump;
                    valueB += At(ref ordinates, step.Row + size) * step.Jump;
                    highA = Vector.MaxNative(highA, valueA);
                    highB = Vector.MaxNative(highB, valueB);
                    lowA = Vector.MinNative(lowA, valueA);
                    lowB = Vector.MinNative(lowB, valueB);
                }

                slopeA += At(ref bends, step.Row) * step.Load;
                slopeB += At(ref bends, step.Row + size) * step.Load;
            }
        }

        highA.CopyTo(most, block * width);
        highB.CopyTo(most, (block * width) + size);
        lowA.CopyTo(lowest, block * width);
        lowB.CopyTo(lowest, (block * width) + size);
    }

    private void Collect(ShapedLine[] shaped, Span<double> greatest, Span<double> least)
    {
        for (int i = 0; i < shaped.Length; i++)
        {
            (int shape, double factor) = shaped[i];
            if (shape < 0)
            {
                continue;
            }

            double one = factor * most[shape], other = factor * lowest[shape];
            greatest[i] = double.MaxNative(greatest[i], double.MaxNative(one, other));
            least[i] = double.MinNative(least[i], double.MinNative(one, other));
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<double> At(ref double table, int index) => Unsafe.As<double, Vector<double>>(ref Unsafe.Add(ref table, index));

    /// <summary>An axle comes to a panel point.</summary>
    /// <param name="Way">How far the train has driven since the step before, or since the stretch began [m].</param>
    /// <param name="Load">Load of the axle [N].</param>
    /// <param name="Row">Row of the panel point in the tables of a block.</param>
    /// <param name="Jump">Load by which the ordinate there comes on; 0 but at the ends of the deck [N].</param>
    private readonly record struct Step(double Way, double Load, int Row, double Jump);

    /// <summary>An axle between two panel points.</summary>
    /// <param name="Row">Row of the one to its left in the tables of a block.</param>
    /// <param name="Load">Its load [N].</param>
    /// <param name="OnLeft">Its share to the left one [N].</param>
    /// <param name="OnRight">Its share to the right one [N].</param>
    private readonly record struct Standing(int Row, double Load, double OnLeft, double OnRight);

    /// <summary>Steps over which sums run on.</summary>
    /// <param name="Step">The first of them.</param>
    /// <param name="Standing">End of the axles that stand on the deck at its beginning.</param>
    private readonly record struct Stretch(int Step, int Standing);
}
