namespace SpanRater;

/// <summary>Where a joint stands in the height of its truss.</summary>
public enum ChordPlace
{
    /// <summary>On the bottom chord.</summary>
    Bottom,

    /// <summary>On the top chord.</summary>
    Top,

    /// <summary>Between the chords.</summary>
    Between,
}

/// <summary>Tells top from bottom joints by geometry alone.</summary>
public static class Chords
{
    /// <summary>Heights are equal within this part of the height of the truss [-].</summary>
    private const double Same = 1e-9;

    /// <summary>Where a joint stands: the lowest of the truss at its x, the highest, or between. Where both meet, as at an end, the half of the height decides.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="joint">Position of the joint.</param>
    public static ChordPlace PlaceOf(Truss truss, int joint)
    {
        ArgumentNullException.ThrowIfNull(truss);
        (double x, double y) = (truss.Joints[joint].X, truss.Joints[joint].Y);
        double bottom = truss.Joints.Min(j => j.Y), height = truss.Joints.Max(j => j.Y) - bottom;
        double lowest = y, highest = y;
        for (int m = 0; m < truss.Members.Count; m++)
        {
            Joint a = truss.Joints[truss.FromJoint(m)], b = truss.Joints[truss.ToJoint(m)];
            if (a.X > b.X)
            {
                (a, b) = (b, a);
            }

            if (x < a.X || x > b.X)
            {
                continue;
            }

            // An upright bar over this joint reaches from one end to the other.
            double at = a.X == b.X ? a.Y : a.Y + ((b.Y - a.Y) * (x - a.X) / (b.X - a.X)), other = a.X == b.X ? b.Y : at;
            lowest = Math.Min(lowest, Math.Min(at, other));
            highest = Math.Max(highest, Math.Max(at, other));
        }

        bool isLowest = y - lowest <= Same * height, isHighest = highest - y <= Same * height;
        return (isLowest, isHighest) switch
        {
            (true, true) => y - bottom <= height / 2 ? ChordPlace.Bottom : ChordPlace.Top,
            (true, false) => ChordPlace.Bottom,
            (false, true) => ChordPlace.Top,
            _ => ChordPlace.Between,
        };
    }
}
