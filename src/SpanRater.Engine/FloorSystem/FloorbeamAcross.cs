namespace SpanRater;

/// <summary>
/// Wheels, lane loads and crowds placed across the roadway so that a floorbeam, simple between two trusses, bends most. Lanes,
/// distance from the kerb and between vehicles as in <see cref="LeverRule"/>. A share given for the trusses has no part in it.
/// </summary>
/// <remarks>
/// With the section under a wheel, the line of the moment rises to it from both trusses; every other vehicle lies wholly to one side and
/// brings more the nearer it stands, and moving it there takes it away from its kerb. So vehicles abreast stand as near to one another
/// as they may, and the group moves as one between the kerbs: the moment under each wheel is a quadratic of its place.
/// </remarks>
public static class FloorbeamAcross
{
    /// <summary>The worst placement of one vehicle, and of several alike abreast.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="gauge">Distance between the vehicle's wheel lines [m].</param>
    /// <param name="mostLanes">Lanes that may be loaded at once; null for as many as fit.</param>
    /// <param name="presence">Presence factor by number of loaded lanes [-].</param>
    public static AcrossOutcome Wheels(Deck deck, double gauge, int? mostLanes, Func<int, double> presence)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(presence);
        if (Missing(deck) is { } missing)
        {
            return new AcrossOutcome.None(missing);
        }

        double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value, kerb = LeverRule.KerbFrom(deck, 0);
        if (LeverRule.WheelToKerbFor(deck, roadway, gauge, 1) is null)
        {
            return new AcrossOutcome.None(new ShareOutcome.TooWide(gauge + (2 * Math.Min(deck.WheelToKerb, LeverRule.ReducedWheelToKerb)), roadway));
        }

        int lanes = deck.LanesLoaded(LeverRule.LanesOn(roadway), mostLanes);
        var placements = new List<AcrossPlacement>();
        for (int n = 1; n <= lanes && LeverRule.WheelToKerbFor(deck, roadway, gauge, n) is { } toKerb; n++)
        {
            double[] places = [.. Enumerable.Range(0, n).Select(v => v * (gauge + LeverRule.BetweenVehicles)).SelectMany(p => (double[])[p, p + gauge])];
            double least = kerb + toKerb, most = Math.Max(least, kerb + roadway - toKerb - places[^1]);
            if (Outside(least, most + places[^1], spacing) is { } outside)
            {
                return new AcrossOutcome.None(outside);
            }

            double[] loads = [.. places.Select(_ => presence(n) / 2)];
            placements.Add(Placed(spacing, loads, places, least, most, n, presence(n)));
        }

        return new AcrossOutcome.Found(placements);
    }

    /// <summary>The worst placement of lane loads, edge to edge, for each unit that one lane brings.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="mostLanes">Lanes that may be loaded at once; null for as many as fit.</param>
    /// <param name="presence">Presence factor by number of loaded lanes [-].</param>
    public static AcrossOutcome Strips(Deck deck, int? mostLanes, Func<int, double> presence)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(presence);
        if (Missing(deck) is { } missing)
        {
            return new AcrossOutcome.None(missing);
        }

        double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value, kerb = LeverRule.KerbFrom(deck, 0);
        if (Outside(kerb, kerb + roadway, spacing) is { } outside)
        {
            return new AcrossOutcome.None(outside);
        }

        int lanes = deck.LanesLoaded(LeverRule.LanesOn(roadway), mostLanes);
        return new AcrossOutcome.Found(
        [
            .. Enumerable.Range(1, lanes).Select(n =>
            {
                double width = Math.Min(LeverRule.LaneLoadWidth, roadway / n), half = n * width / 2;
                double middle = deck.VehiclesHeldToMiddle ? kerb + (roadway / 2) : Middle(spacing, kerb, kerb + roadway, half);
                (double moment, double section) = Covered(spacing, middle, 2 * half);
                return new AcrossPlacement(presence(n) * moment / width, section, [], n, presence(n))
                {
                    Strips = [.. Enumerable.Range(0, n).Select(i => new LateralStrip(middle - half + (i * width), middle - half + ((i + 1) * width)))],
                };
            }),
        ]);
    }

    /// <summary>
    /// The worst placement of a crowd, for each unit that one metre of its width brings, moment in m²: between the kerbs and the
    /// trusses, beyond which it would relieve. Null where the deck does not say enough.
    /// </summary>
    /// <param name="deck">The deck.</param>
    /// <param name="width">Width of the crowd [m]; null for the whole roadway.</param>
    public static AcrossPlacement? Crowd(Deck deck, double? width)
    {
        ArgumentNullException.ThrowIfNull(deck);
        if (Missing(deck) is not null)
        {
            return null;
        }

        double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value, kerb = LeverRule.KerbFrom(deck, 0);
        double left = Math.Max(0, kerb), right = Math.Min(spacing, kerb + roadway);
        if (right <= left)
        {
            return null;
        }

        double covered = Math.Min(width ?? roadway, right - left), middle = Middle(spacing, left, right, covered / 2);
        (double moment, double section) = Covered(spacing, middle, covered);
        return new AcrossPlacement(moment, section, [], 0, 1) { Strips = [new LateralStrip(middle - (covered / 2), middle + (covered / 2))] };
    }

    /// <summary>
    /// Two different vehicles abreast, either one on the left, where together they bend the floorbeam most: the part of each in the
    /// moment, presence factor and reactions included [N·m], and the placement, whose moment is their sum. Null where they do not fit,
    /// where the roadway has one lane, and where a wheel would stand outside the trusses.
    /// </summary>
    /// <param name="deck">The deck.</param>
    /// <param name="nearGauge">Gauge of the one vehicle, whose part is Own [m].</param>
    /// <param name="farGauge">Gauge of the other [m].</param>
    /// <param name="nearReaction">What the one vehicle brings to the floorbeam [N].</param>
    /// <param name="farReaction">What the other brings [N].</param>
    /// <param name="presence">Presence factor of two lanes [-].</param>
    public static (double Own, double Other, AcrossPlacement Placement)? MostOfPair(
        Deck deck, double nearGauge, double farGauge, double nearReaction, double farReaction, double presence)
    {
        ArgumentNullException.ThrowIfNull(deck);
        if (Missing(deck) is not null || deck.LanesLoaded(LeverRule.LanesOn(deck.Roadway!.Value), 2) < 2)
        {
            return null;
        }

        double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value, kerb = LeverRule.KerbFrom(deck, 0);
        double width = nearGauge + LeverRule.BetweenVehicles + farGauge;
        if (LeverRule.WheelToKerbIn(deck, roadway - width) is not { } toKerb)
        {
            return null;
        }

        double least = kerb + toKerb, most = Math.Max(least, kerb + roadway - toKerb - width);
        if (Outside(least, most + width, spacing) is not null)
        {
            return null;
        }

        double near = presence * nearReaction / 2, far = presence * farReaction / 2;
        AcrossPlacement nearLeft = Placed(
            spacing, [near, near, far, far], [0, nearGauge, nearGauge + LeverRule.BetweenVehicles, width], least, most, 2, presence);
        AcrossPlacement farLeft = Placed(
            spacing, [far, far, near, near], [0, farGauge, farGauge + LeverRule.BetweenVehicles, width], least, most, 2, presence);
        bool onLeft = nearLeft.Moment >= farLeft.Moment;
        AcrossPlacement worst = onLeft ? nearLeft : farLeft;
        var beam = new SimpleSpan(spacing);
        double own = near * worst.Wheels.Skip(onLeft ? 0 : 2).Take(2).Sum(w => beam.MomentOrdinate(worst.Section, w));
        return (own, worst.Moment - own, worst);
    }

    /// <summary>The same on the influence line of a section of a trussed floorbeam.</summary>
    internal static (double Own, double Other, AcrossPlacement Placement)? MostOfPairOn(
        AcrossLine line, Deck deck, double nearGauge, double farGauge, double nearReaction, double farReaction, double presence)
    {
        if (Missing(deck) is not null || deck.LanesLoaded(LeverRule.LanesOn(deck.Roadway!.Value), 2) < 2
            || LeverRule.WheelToKerbIn(deck, deck.Roadway.Value - nearGauge - LeverRule.BetweenVehicles - farGauge) is not { } toKerb)
        {
            return null;
        }

        double first = LeverRule.KerbFrom(deck, 0) + toKerb, last = LeverRule.KerbFrom(deck, 0) + deck.Roadway.Value - toKerb;
        if (Outside(first, last, deck.TrussSpacing!.Value) is not null)
        {
            return null;
        }

        (double own, double other, IReadOnlyList<double> wheels) = line.WorstPair(first, last, (nearGauge, nearReaction), (farGauge, farReaction), LeverRule.BetweenVehicles);
        return (presence * own, presence * other, new AcrossPlacement(presence * (own + other), line.Section, wheels, 2, presence));
    }

    private static ShareOutcome? Missing(Deck deck) =>
        deck.Trusses != 2 ? new ShareOutcome.NotTwoTrusses(deck.Trusses)
        : deck is { TrussSpacing: not null, Roadway: not null } ? null
        : new ShareOutcome.NotGiven(deck.TrussSpacing is null, deck.Roadway is null);

    private static ShareOutcome.WheelOutside? Outside(double left, double right, double spacing)
    {
        double beyond = Math.Max(-left, right - spacing);
        return beyond > LeverRule.SameLength ? new ShareOutcome.WheelOutside(spacing + beyond, spacing) : null;
    }

    private static AcrossPlacement Placed(double spacing, double[] loads, double[] places, double least, double most, int lanes, double presence)
    {
        (double moment, double section, double first) = new SimpleSpan(spacing).MostMomentWithin(loads, places, least, most);
        return new AcrossPlacement(moment, section, [.. places.Select(p => first + p)], lanes, presence);
    }

    // The middle of a load so wide, as near to midspan as its limits let it.
    private static double Middle(double spacing, double left, double right, double half) =>
        Math.Clamp(spacing / 2, left + half, Math.Max(left + half, right - half));

    // A unit load on each metre of a width b about c: the moment is largest where the shear is zero, b c (L − c) (1 − b/2L) / L there.
    private static (double Moment, double Section) Covered(double spacing, double middle, double width) =>
        (width * middle * (spacing - middle) * (1 - (width / (2 * spacing))) / spacing,
            middle - (width / 2) + (width * (spacing - middle) / spacing));
}
