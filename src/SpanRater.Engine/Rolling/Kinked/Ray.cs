namespace SpanRater;

/// <summary>A family of positions followed as the weight of the train changes: every line's straight part is constant + λ rate.</summary>
internal sealed class Ray
{
    private readonly double[] constants;
    private readonly double[] rates;
    private readonly double[] start;
    private readonly double[] rate;

    public Ray(Family family, double[] constants, double[] rates, double[] start, double[] rate, double least, double most)
    {
        Family = family;
        this.constants = constants;
        this.rates = rates;
        this.start = start;
        this.rate = rate;
        Least = least;
        Most = most;
    }

    public Family Family { get; }

    /// <summary>Smallest scale of the train at which the family exists.</summary>
    public double Least { get; }

    /// <summary>Largest scale of the train at which the family exists.</summary>
    public double Most { get; }

    /// <summary>Straight parts of all lines at a scale.</summary>
    public void At(double scale, Span<double> straight)
    {
        for (int line = 0; line < straight.Length; line++)
        {
            straight[line] = constants[line] + (scale * rates[line]);
        }
    }

    /// <summary>An effect at a scale, all kinks counted.</summary>
    public double Total(KinkedResponse response, int effect, double scale)
    {
        double total = constants[effect] + (scale * rates[effect]);
        foreach (int k in response.KinksOf(effect))
        {
            int line = response.Effects + k;
            total += response.Parts[k][effect] * Math.Max(0, constants[line] + (scale * rates[line]));
        }

        return total;
    }

    /// <summary>The smallest scale at which an effect, with its sign, reaches a limit; null where it never does.</summary>
    /// <param name="response">The response.</param>
    /// <param name="effect">The effect.</param>
    /// <param name="sign">+1 for tension, -1 for compression.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="noRate">What an effect may change by round-off for each unit of scale: so little reaches no limit, however large the scale.</param>
    public double? Reaches(KinkedResponse response, int effect, double sign, double limit, double noRate)
    {
        double from = Least, value = sign * Total(response, effect, from);
        if (value >= limit)
        {
            return value > noRate * from ? from : null;
        }

        // Straight between the scales at which a take-over begins or ends.
        IReadOnlyList<int> kinks = response.KinksOf(effect);
        Span<double> turns = stackalloc double[kinks.Count + 1];
        int count = 0;
        foreach (int k in kinks)
        {
            int line = response.Effects + k;
            double turn = -constants[line] / rates[line];
            if (turn > from && turn < Most)
            {
                turns[count++] = turn;
            }
        }

        turns[..count].Sort();
        for (int t = 0; t < count; t++)
        {
            double next = sign * Total(response, effect, turns[t]);
            if (next >= limit && next - value > noRate * (turns[t] - from))
            {
                return from + ((turns[t] - from) * ((limit - value) / (next - value)));
            }

            (from, value) = (turns[t], next);
        }

        // The last piece: to the end of the family, or without end.
        double to = double.IsFinite(Most) ? Most : from + Math.Max(1, Math.Abs(from));
        double last = sign * Total(response, effect, to);
        if (!(last - value > noRate * (to - from)))
        {
            return null;
        }

        if (double.IsFinite(Most))
        {
            return last >= limit ? from + ((to - from) * ((limit - value) / (last - value))) : null;
        }

        double slope = (last - value) / (to - from);
        return from + ((limit - value) / slope);
    }

    /// <summary>Scales above one and up to another at which a take-over begins or ends, and the effect, with its sign, is not below a limit.</summary>
    public List<double> TurnsBeyond(KinkedResponse response, int effect, double sign, double limit, double from, double to)
    {
        var turns = new List<double>();
        for (int k = 0; k < response.Kinks; k++)
        {
            int line = response.Effects + k;
            double turn = -constants[line] / rates[line];
            if (turn > from && turn < Math.Min(to, Most) && sign * Total(response, effect, turn) >= limit)
            {
                turns.Add(turn);
            }
        }

        return turns;
    }

    /// <summary>x of every axle, front to back, at a scale [m].</summary>
    public double[] AxleStations(double scale)
    {
        var axles = new List<double>();
        for (int g = 0; g < start.Length; g++)
        {
            double front = FrontOf(g, scale);
            axles.AddRange(Family.Arrangement.Groups[g].Offsets.Select(offset => front + offset));
        }

        return [.. axles];
    }

    /// <summary>Each axle, front to back, with what it adds to an effect at a scale; the loads at that scale.</summary>
    /// <param name="ordinates">Ordinates of the line that holds there.</param>
    /// <param name="scale">Scale of the train.</param>
    public List<AxleEffect> Axles(double[] ordinates, double scale)
    {
        var axles = new List<AxleEffect>();
        for (int g = 0; g < start.Length; g++)
        {
            GroupPlace place = Family.Places[g];
            if (place.IsFloating)
            {
                Family.Arrangement.Groups[g].Describe(FrontOf(g, scale), place.Position, ordinates, axles);
            }
            else
            {
                Family.Arrangement.Groups[g].Describe(place.Position, place.Approach, ordinates, 1, leaveOutRelieving: false, axles);
            }
        }

        return [.. axles.Select(a => a with { Load = a.Load * scale, Effect = a.Effect * scale })];
    }

    /// <summary>All gaps, front to back, at a scale [m].</summary>
    public double[] Gaps(double scale)
    {
        Arrangement arrangement = Family.Arrangement;
        var free = new double[start.Length - 1];
        for (int g = 0; g < free.Length; g++)
        {
            free[g] = arrangement.TowardFront * (FrontOf(g, scale) + arrangement.Groups[g].Offsets[^1] - FrontOf(g + 1, scale));
        }

        return arrangement.GapsWith(free);
    }

    private double FrontOf(int group, double scale) => (start[group] == 0 ? 0 : start[group] / scale) + rate[group];
}
