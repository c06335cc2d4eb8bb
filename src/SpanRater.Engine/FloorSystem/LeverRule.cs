namespace SpanRater;

/// <summary>
/// The lever rule for two trusses: floorbeams span simply between them, so a wheel line is shared by its distances.
/// The vehicle stands as near to the kerb of the truss considered as it may; two abreast keep 4 ft between their
/// wheel lines. Sources: AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.2.3.2 (lanes by roadway width, 2 ft from
/// the kerb, 4 ft between passing vehicles), from memory.
/// </summary>
public static class LeverRule
{
    private const double Foot = 0.3048;

    /// <summary>Least distance between the wheel lines of vehicles abreast, 4 ft [m].</summary>
    public const double BetweenVehicles = 4 * Foot;

    /// <summary>Width of a lane load, 10 ft [m].</summary>
    public const double LaneLoadWidth = 10 * Foot;

    /// <summary>Distance from the kerb where a vehicle does not fit with the one given, 1 ft [m].</summary>
    public const double ReducedWheelToKerb = 1 * Foot;

    /// <summary>Lengths closer than this are equal [m]: feet converted to metres and back must not lose a lane.</summary>
    internal const double SameLength = 1e-9;

    /// <summary>Lanes that fit a roadway: one under 18 ft, two from 18 to 24 ft, above that whole 12 ft lanes.</summary>
    /// <param name="roadway">Clear width between kerbs [m].</param>
    public static int LanesOn(double roadway) =>
        roadway < (18 * Foot) - SameLength ? 1 : roadway <= (24 * Foot) + SameLength ? 2 : (int)((roadway + SameLength) / (12 * Foot));

    /// <summary>Shares of one vehicle, and of several alike abreast, each with its presence factor.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="gauge">Distance between the vehicle's wheel lines [m].</param>
    /// <param name="mostLanes">Lanes that may be loaded at once; null for as many as fit.</param>
    /// <param name="presence">Presence factor by number of loaded lanes [-].</param>
    public static ShareOutcome Share(Deck deck, double gauge, int? mostLanes, Func<int, double> presence)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(presence);
        if (Given(deck) is { } outcome)
        {
            return outcome;
        }

        double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value;
        if (WheelToKerbFor(deck, roadway, gauge, 1) is null)
        {
            return new ShareOutcome.TooWide(gauge + (2 * Math.Min(deck.WheelToKerb, ReducedWheelToKerb)), roadway);
        }

        int lanes = deck.LanesLoaded(LanesOn(roadway), mostLanes);
        IReadOnlyList<LateralShare> left = Abreast(deck, roadway, gauge, lanes, presence, KerbFrom(deck, 0), spacing);
        IReadOnlyList<LateralShare> right = Abreast(deck, roadway, gauge, lanes, presence, KerbFrom(deck, 1), spacing);
        double outermost = left.Concat(right).Min(s => s.Wheels[0]);
        return outermost < -SameLength
            ? new ShareOutcome.WheelOutside(spacing - outermost, spacing)
            : new ShareOutcome.Found(left, right);
    }

    /// <summary>
    /// Shares of a lane load, 10 ft wide or as wide as its lane where the roadway has no room for that, its edge at the kerb; the
    /// loads of further lanes stand edge to edge, as vehicles abreast have their middles 10 ft apart. Sources: AASHTO LRFD 3.6.1.2.4 and
    /// Standard Specifications, 17th ed. (2002), 3.6.1 (10 ft); Manual for Bridge Evaluation, 3rd ed. (2018), 6A.2.3.2 (two
    /// lanes of half the roadway from 18 ft up); from memory.
    /// </summary>
    /// <param name="deck">The deck.</param>
    /// <param name="mostLanes">Lanes that may be loaded at once; null for as many as fit.</param>
    /// <param name="presence">Presence factor by number of loaded lanes [-].</param>
    public static ShareOutcome LaneShare(Deck deck, int? mostLanes, Func<int, double> presence)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(presence);
        if (Given(deck) is { } outcome)
        {
            return outcome;
        }

        double spacing = deck.TrussSpacing!.Value, roadway = deck.Roadway!.Value;
        int lanes = deck.LanesLoaded(LanesOn(roadway), mostLanes);
        double fromKerb = deck.VehiclesHeldToMiddle ? (roadway - Math.Min(LaneLoadWidth, roadway)) / 2 : 0;
        LateralShare[] On(double kerb) =>
        [
            .. Enumerable.Range(1, lanes).Select(n =>
            {
                double width = Math.Min(LaneLoadWidth, roadway / n);
                LateralStrip[] strips = [.. Enumerable.Range(0, n).Select(i => new LateralStrip(kerb + (i * width), kerb + ((i + 1) * width)))];
                return new LateralShare(presence(n) * strips.Sum(s => (spacing - s.Middle) / spacing), n, presence(n), [], deck.WheelToKerb) { Strips = strips };
            }),
        ];
        return new ShareOutcome.Found(On(KerbFrom(deck, 0) + fromKerb), On(KerbFrom(deck, 1) + fromKerb));
    }

    /// <summary>
    /// Where a crowd stands that loads a truss most: from its kerb to the other, or over the width given, and not beyond the other
    /// truss, where it would relieve. Null where the deck does not say enough.
    /// </summary>
    /// <param name="deck">The deck.</param>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <param name="width">Width of the crowd from the kerb of the truss [m]; null for the whole roadway.</param>
    public static CrowdShare? CrowdOn(Deck deck, int truss, double? width)
    {
        ArgumentNullException.ThrowIfNull(deck);
        if (deck is not { Trusses: 2, TrussSpacing: { } spacing, Roadway: { } roadway })
        {
            return null;
        }

        double kerb = KerbFrom(deck, truss);
        var strip = new LateralStrip(kerb, Math.Min(kerb + Math.Min(width ?? roadway, roadway), Math.Max(kerb, spacing)));
        return new CrowdShare(strip, strip.Width * (spacing - strip.Middle) / spacing);
    }

    /// <summary>
    /// Two different vehicles abreast, each with the part of its load that the truss takes; null where they do not fit, or where
    /// the roadway has one lane.
    /// </summary>
    /// <param name="deck">The deck.</param>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <param name="near">Gauge of the vehicle nearer to the truss [m].</param>
    /// <param name="far">Gauge of the other [m].</param>
    /// <param name="presence">Presence factor of two lanes [-].</param>
    public static (LateralShare Near, LateralShare Far)? Pair(Deck deck, int truss, double near, double far, double presence)
    {
        ArgumentNullException.ThrowIfNull(deck);
        if (deck is not { TrussShare: null, Trusses: 2, TrussSpacing: { } spacing, Roadway: { } roadway } || deck.LanesLoaded(LanesOn(roadway), 2) < 2)
        {
            return null;
        }

        if (WheelToKerbIn(deck, roadway - near - far - BetweenVehicles) is not { } toKerb)
        {
            return null;
        }

        double first = KerbFrom(deck, truss) + toKerb, second = first + near + BetweenVehicles;
        LateralShare Of(double wheel, double gauge) =>
            new(presence * (((spacing - wheel) / spacing) + ((spacing - wheel - gauge) / spacing)) / 2, 2, presence, [wheel, wheel + gauge], toKerb);
        return (Of(first, near), Of(second, far));
    }

    /// <summary>How many vehicles alike fit between the kerbs side by side; 0 where not even one does.</summary>
    /// <param name="deck">The deck; its roadway must be given.</param>
    /// <param name="gauge">Distance between the vehicle's wheel lines [m].</param>
    /// <exception cref="ArgumentException">The roadway is not given.</exception>
    public static int MostAbreast(Deck deck, double gauge)
    {
        ArgumentNullException.ThrowIfNull(deck);
        double roadway = deck.Roadway ?? throw new ArgumentException("The width of the roadway is not given.", nameof(deck));
        int abreast = 0;
        while (WheelToKerbFor(deck, roadway, gauge, abreast + 1) is not null)
        {
            abreast++;
        }

        return abreast;
    }

    // The share that was given, or what is missing for the lever rule; null where the rule can be used.
    private static ShareOutcome? Given(Deck deck)
    {
        if (deck.TrussShare is { } given)
        {
            var share = new LateralShare(given, 0, 1, [], deck.WheelToKerb);
            return new ShareOutcome.Found([share], [share]);
        }

        return deck.Trusses != 2 ? new ShareOutcome.NotTwoTrusses(deck.Trusses)
            : deck is { TrussSpacing: not null, Roadway: not null } ? null
            : new ShareOutcome.NotGiven(deck.TrussSpacing is null, deck.Roadway is null);
    }

    // Distance of a truss's own kerb from it, toward the other truss [m].
    internal static double KerbFrom(Deck deck, int truss) =>
        ((deck.TrussSpacing!.Value - deck.Roadway!.Value) / 2) + (truss == 0 ? deck.RoadwayOffset : -deck.RoadwayOffset);

    private static List<LateralShare> Abreast(Deck deck, double roadway, double gauge, int lanes, Func<int, double> presence, double kerb, double spacing)
    {
        var shares = new List<LateralShare>();
        for (int n = 1; n <= lanes; n++)
        {
            if (WheelToKerbFor(deck, roadway, gauge, n) is not { } toKerb)
            {
                break;
            }

            var wheels = new List<double>();
            for (int vehicle = 0; vehicle < n; vehicle++)
            {
                double first = kerb + toKerb + (vehicle * (gauge + BetweenVehicles));
                wheels.Add(first);
                wheels.Add(first + gauge);
            }

            shares.Add(new LateralShare(presence(n) * wheels.Sum(w => (spacing - w) / spacing) / 2, n, presence(n), wheels, toKerb));
        }

        return shares;
    }

    // Half of what is free where vehicles are held to the middle; else the distance given, else 1 ft. Null where they do not fit.
    internal static double? WheelToKerbFor(Deck deck, double roadway, double gauge, int vehicles) =>
        WheelToKerbIn(deck, roadway - (vehicles * gauge) - ((vehicles - 1) * BetweenVehicles));

    internal static double? WheelToKerbIn(Deck deck, double between)
    {
        double free = between + SameLength;
        return deck.VehiclesHeldToMiddle ? free >= 2 * Math.Min(deck.WheelToKerb, ReducedWheelToKerb) ? between / 2 : null
            : free >= 2 * deck.WheelToKerb ? deck.WheelToKerb
            : deck.WheelToKerb > ReducedWheelToKerb && free >= 2 * ReducedWheelToKerb ? ReducedWheelToKerb
            : null;
    }
}
