namespace SpanRater;

/// <summary>
/// A beam on two supports under moving loads: the exact largest moment and shear, with no step size. Immutable; safe to share.
/// </summary>
/// <remarks>
/// Moment: for a section held fixed the moment of a moving train is straight between the positions with an axle on the section or
/// at an end of the span, and highest with an axle on the section. The line of the moment rises to the section and falls from it,
/// so every other axle brings most the nearer it stands: least gaps. With axle j on the section and a run of axles S about it,
/// the moment of S is a quadratic of the position that opens downward. The line produced beyond the ends of the span is negative,
/// so S never brings more than the true moment, and the run that is on the span brings just that: the largest of the quadratics'
/// vertices, held within the span, is the largest moment.
/// Shear: the line falls toward the far end on both sides of the section and jumps up at it, so an axle stands just beyond the
/// section, those behind it as near as they may, and those between section and support, which relieve, as far off as they may.
/// Source: statics of a simple beam (any text on structural analysis, moving loads).
/// </remarks>
public sealed class SimpleSpan
{
    /// <summary>A span.</summary>
    /// <param name="length">Distance between its supports, positive [m].</param>
    public SimpleSpan(double length)
    {
        if (!(length > 0 && double.IsFinite(length)))
        {
            throw new ArgumentOutOfRangeException(nameof(length), length, "A span is a positive length [m].");
        }

        Length = length;
    }

    /// <summary>Distance between its supports [m].</summary>
    public double Length { get; }

    /// <summary>The largest moment anywhere on the span.</summary>
    /// <param name="train">The axles; both directions are tried.</param>
    /// <param name="uniform">Uniform load all along the span, taken at the same section [N/m].</param>
    public SpanPeak? MostMoment(AxleTrain train, double uniform = 0)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentOutOfRangeException.ThrowIfNegative(uniform);
        double[] gaps = [.. train.Gaps.Select(g => g.Least)];
        SpanPeak? most = null;
        foreach (Direction direction in (Direction[])[Direction.Right, Direction.Left])
        {
            double[] places = Places(gaps, direction);
            for (int j = 0; j < places.Length; j++)
            {
                foreach ((int from, int to) in RunsAbout(j, places.Length))
                {
                    double section = Vertex(train.Loads, places, j, from, to, uniform);
                    SpanPeak peak = MomentAt(train.Loads, places, j, section, uniform, direction, gaps);
                    most = Better(most, peak);
                }
            }
        }

        return most;
    }

    /// <summary>The largest shear at a section; at a support that is the end reaction. Null at the other support, where there is none of that sense.</summary>
    /// <param name="train">The axles; both directions are tried.</param>
    /// <param name="fromSupport">Distance of the section from the left support [m].</param>
    /// <param name="uniform">Uniform load all along the span [N/m].</param>
    public SpanPeak? MostShear(AxleTrain train, double fromSupport = 0, double uniform = 0)
    {
        SpanPeak? most = Shears(train, fromSupport, uniform).Aggregate((SpanPeak?)null, Better);
        return most is { Effect: > 0 } ? most : null;
    }

    /// <summary>The shear with each axle in turn just beyond the section, both ways: of which the largest is the largest there is, and the worst where axles count apart.</summary>
    /// <param name="train">The axles.</param>
    /// <param name="fromSupport">Distance of the section from the left support [m].</param>
    /// <param name="uniform">Uniform load all along the span [N/m].</param>
    public IEnumerable<SpanPeak> Shears(AxleTrain train, double fromSupport = 0, double uniform = 0)
    {
        ArgumentNullException.ThrowIfNull(train);
        ArgumentOutOfRangeException.ThrowIfNegative(uniform);
        Within(fromSupport);
        return
            from direction in (Direction[])[Direction.Right, Direction.Left]
            from j in Enumerable.Range(0, train.Loads.Count)

                // Driving right, the axles behind j (from gap j on) are those toward the support.
            let gaps = (double[])[.. train.Gaps.Select((g, i) => (direction == Direction.Right) == (i >= j) ? g.Most : g.Least)]
            select ShearAt(train, Places(gaps, direction), j, fromSupport, uniform, direction, gaps);
    }

    /// <summary>The largest moment of a lane load: at midspan.</summary>
    /// <param name="uniform">Uniform load [N/m].</param>
    /// <param name="point">Concentrated load that goes with it; 0 for none [N].</param>
    public SpanPeak LaneMoment(double uniform, double point)
    {
        double middle = Length / 2, ordinate = Length / 4;
        return new SpanPeak((uniform * Length * Length / 8) + (point * ordinate), middle, middle, Direction.Right, [], PointOf(point, middle, ordinate));
    }

    /// <summary>The largest shear of a lane load at a section, the uniform load only where it adds.</summary>
    /// <param name="uniform">Uniform load [N/m].</param>
    /// <param name="point">Concentrated load that goes with it; 0 for none [N].</param>
    /// <param name="fromSupport">Distance of the section from the left support [m].</param>
    public SpanPeak LaneShear(double uniform, double point, double fromSupport = 0)
    {
        Within(fromSupport);
        double beyond = Length - fromSupport, ordinate = beyond / Length;
        return new SpanPeak((uniform * beyond * ordinate / 2) + (point * ordinate), fromSupport, fromSupport, Direction.Right, [], PointOf(point, fromSupport, ordinate));
    }

    /// <summary>
    /// The largest moment of loads in a rigid group of which every one stays on the span while its first is within limits: the
    /// moment [N·m], the section and the first load's place [m].
    /// </summary>
    internal (double Moment, double Section, double First) MostMomentWithin(IReadOnlyList<double> loads, IReadOnlyList<double> places, double least, double most)
    {
        (double Moment, double Section, double First) best = (double.NegativeInfinity, 0, 0);
        for (int j = 0; j < places.Count; j++)
        {
            double section = Math.Clamp(Vertex(loads, places, j, 0, places.Count - 1, 0), least + places[j], most + places[j]);
            double first = section - places[j], moment = 0;
            for (int k = 0; k < places.Count; k++)
            {
                moment += loads[k] * MomentOrdinate(section, first + places[k]);
            }

            if (moment > best.Moment + (1e-12 * Math.Abs(moment)))
            {
                best = (moment, section, first);
            }
        }

        return best;
    }

    /// <summary>Moment at a section of a unit load at a place [m]; 0 off the span.</summary>
    public double MomentOrdinate(double section, double place) =>
        Math.Max(0, place <= section ? place * (Length - section) / Length : section * (Length - place) / Length);

    private static AxleEffect[] PointOf(double point, double station, double ordinate) =>
        point > 0 ? [new AxleEffect(point, station, ordinate, point * ordinate)] : [];

    private static IEnumerable<(int From, int To)> RunsAbout(int axle, int count) =>
        from first in Enumerable.Range(0, axle + 1)
        from last in Enumerable.Range(axle, count - axle)
        select (first, last);

    // Of equal peaks the first one found.
    private static SpanPeak Better(SpanPeak? most, SpanPeak peak) =>
        most is null || peak.Effect > most.Effect + (1e-12 * Math.Abs(most.Effect)) ? peak : most;

    // Place of each axle from the front one [m].
    private static double[] Places(double[] gaps, Direction direction)
    {
        var places = new double[gaps.Length + 1];
        for (int g = 0; g < gaps.Length; g++)
        {
            places[g + 1] = places[g] + (direction == Direction.Right ? -gaps[g] : gaps[g]);
        }

        return places;
    }

    // The section under axle j where the moment of a run of axles is largest, (W/L + w/2) z (L − z) − z D/L + const.
    private double Vertex(IReadOnlyList<double> loads, IReadOnlyList<double> places, int j, int from, int to, double uniform)
    {
        double weight = 0, first = 0;
        for (int k = from; k <= to; k++)
        {
            weight += loads[k];
            first += loads[k] * (places[k] - places[j]);
        }

        return Math.Clamp((Length / 2) - (first / (2 * (weight + (uniform * Length / 2)))), 0, Length);
    }

    private SpanPeak MomentAt(IReadOnlyList<double> loads, double[] places, int j, double section, double uniform, Direction direction, double[] gaps)
    {
        var axles = new AxleEffect[places.Length];
        for (int k = 0; k < places.Length; k++)
        {
            double at = section + places[k] - places[j], ordinate = MomentOrdinate(section, at);
            axles[k] = new AxleEffect(loads[k], at, ordinate, loads[k] * ordinate);
        }

        double effect = axles.Sum(a => a.Effect) + (uniform * section * (Length - section) / 2);
        return new SpanPeak(effect, section, axles[0].Station, direction, gaps, axles);
    }

    private SpanPeak ShearAt(AxleTrain train, double[] places, int j, double section, double uniform, Direction direction, double[] gaps)
    {
        var axles = new AxleEffect[places.Length];
        for (int k = 0; k < places.Length; k++)
        {
            double away = places[k] - places[j], at = section + away;
            double ordinate = at < 0 || at > Length ? 0 : away >= 0 ? (Length - at) / Length : -at / Length;
            bool leftOut = ordinate < 0 && train.RelievingAxles == RelievingAxles.LeftOut;
            axles[k] = new AxleEffect(train.Loads[k], at, ordinate, leftOut ? 0 : train.Loads[k] * ordinate);
        }

        double effect = axles.Sum(a => a.Effect) + (uniform * ((Length / 2) - section));
        return new SpanPeak(effect, section, axles[0].Station, direction, gaps, axles);
    }

    private void Within(double fromSupport)
    {
        if (!(fromSupport >= 0 && fromSupport <= Length))
        {
            throw new ArgumentOutOfRangeException(nameof(fromSupport), fromSupport, $"The section must be on the span of {Length} m.");
        }
    }
}
