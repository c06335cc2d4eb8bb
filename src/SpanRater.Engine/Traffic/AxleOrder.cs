namespace SpanRater;

/// <summary>
/// The order in which the axles of a train that drives right come to the panel points. A queue holds what each axle on the deck
/// comes to next. Whoever is first in it is on time, and joins it again with its next panel point: where panels are even always as the
/// last, since no other axle has farther to go, so that the order costs the same for each arrival, however many axles there are.
/// </summary>
internal sealed class AxleOrder
{
    private readonly double[] keys;
    private Arrival[] queue = [];

    /// <param name="stations">x of the panel points [m].</param>
    /// <param name="tolerance">An axle this near to a panel point stands on it [m].</param>
    public AxleOrder(double[] stations, double tolerance)
    {
        // Of axles that stand on the two ends of the deck at once, one comes on before the other goes off: both ends belong to the deck.
        keys = [.. stations];
        keys[0] -= tolerance / 2;
        keys[^1] += tolerance / 2;
    }

    /// <summary>Every arrival of an axle at a panel point, in order.</summary>
    /// <param name="offsets">Distance of each axle behind the front one, not decreasing [m].</param>
    public ReadOnlySpan<Arrival> Of(ReadOnlySpan<double> offsets)
    {
        int count = keys.Length * offsets.Length, last = keys.Length - 1, queued = 0;
        if (queue.Length < count)
        {
            queue = new Arrival[count];
        }

        Join(new Arrival(keys[0] + offsets[0], 0, 0), ref queued);
        for (int n = 0; n < count; n++)
        {
            (int axle, int station) = (queue[n].Axle, queue[n].Station);
            if (station < last)
            {
                Join(new Arrival(keys[station + 1] + offsets[axle], axle, station + 1), ref queued);
            }

            if (station == 0 && axle + 1 < offsets.Length)
            {
                Join(new Arrival(keys[0] + offsets[axle + 1], axle + 1, 0), ref queued);
            }
        }

        return queue.AsSpan(0, count);
    }

    // From the back; never past the one whose turn it is, which is not later.
    private void Join(Arrival arrival, ref int queued)
    {
        int at = queued++;
        while (at > 0 && queue[at - 1].Front > arrival.Front)
        {
            queue[at] = queue[at - 1];
            at--;
        }

        queue[at] = arrival;
    }
}

/// <summary>An axle at a panel point.</summary>
/// <param name="Front">x of the front axle by which arrivals are ordered [m].</param>
/// <param name="Axle">The axle, front to back.</param>
/// <param name="Station">The panel point.</param>
internal readonly record struct Arrival(double Front, int Axle, int Station);
