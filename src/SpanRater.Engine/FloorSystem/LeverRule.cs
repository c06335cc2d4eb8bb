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

    /// <summary>Distance from the kerb where a vehicle does not fit with the one given, 1 ft [m].</summary>
    public const double ReducedWheelToKerb = 1 * Foot;

    /// <summary>Lengths closer than this are equal [m]: feet converted to metres and back must not lose a lane.</summary>
    private const double SameLength = 1e-9;

    /// <summary>Lanes that fit a roadway: one under 18 ft, two from 18 to 24 ft, above that whole 12 ft lanes.</summary>
    /// <param name="roadway">Clear width between kerbs [m].</param>
    public static int LanesOn(double roadway) =>
        roadway < (18 * Foot) - SameLength ? 1 : roadway <= (24 * Foot) + SameLength ? 2 : (int)((roadway + SameLength) / (12 * Foot));

    /// <summary>Shares of one vehicle, or of several alike abreast, whichever loads the truss more with its presence factor.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="gauge">Distance between the vehicle's wheel lines [m].</param>
    /// <param name="mostLanes">Lanes that may be loaded at once; null for as many as fit.</param>
    /// <param name="presence">Presence factor by number of loaded lanes [-].</param>
    public static ShareOutcome Share(Deck deck, double gauge, int? mostLanes, Func<int, double> presence)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(presence);
        if (deck.TrussShare is { } given)
        {
            var share = new LateralShare(given, 0, 1, [], deck.WheelToKerb);
            return new ShareOutcome.Found(share, share);
        }

        if (deck.Trusses != 2)
        {
            return new ShareOutcome.NotTwoTrusses(deck.Trusses);
        }

        if (deck is not { TrussSpacing: { } spacing, Roadway: { } roadway })
        {
            return new ShareOutcome.NotGiven(deck.TrussSpacing is null, deck.Roadway is null);
        }

        if (WheelToKerbFor(deck, roadway, gauge, 1) is null)
        {
            return new ShareOutcome.TooWide(gauge + (2 * Math.Min(deck.WheelToKerb, ReducedWheelToKerb)), roadway);
        }

        double leftKerb = ((spacing - roadway) / 2) + deck.RoadwayOffset, rightKerb = ((spacing - roadway) / 2) - deck.RoadwayOffset;
        int lanes = Math.Min(LanesOn(roadway), mostLanes ?? int.MaxValue);
        LateralShare left = Largest(deck, roadway, gauge, lanes, presence, leftKerb, spacing);
        LateralShare right = Largest(deck, roadway, gauge, lanes, presence, rightKerb, spacing);
        double outermost = Math.Min(left.Wheels[0], right.Wheels[0]);
        return outermost < -SameLength
            ? new ShareOutcome.WheelOutside(spacing - outermost, spacing)
            : new ShareOutcome.Found(left, right);
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

    private static LateralShare Largest(Deck deck, double roadway, double gauge, int lanes, Func<int, double> presence, double kerb, double spacing)
    {
        LateralShare? largest = null;
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

            double value = presence(n) * wheels.Sum(w => (spacing - w) / spacing) / 2;
            if (largest is null || value > largest.Value)
            {
                largest = new LateralShare(value, n, presence(n), wheels, toKerb);
            }
        }

        return largest!;
    }

    // The distance given, else 1 ft, else the vehicles do not fit.
    private static double? WheelToKerbFor(Deck deck, double roadway, double gauge, int vehicles)
    {
        double free = roadway - (vehicles * gauge) - ((vehicles - 1) * BetweenVehicles) + SameLength;
        return free >= 2 * deck.WheelToKerb ? deck.WheelToKerb
            : deck.WheelToKerb > ReducedWheelToKerb && free >= 2 * ReducedWheelToKerb ? ReducedWheelToKerb
            : null;
    }
}
