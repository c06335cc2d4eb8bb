namespace SpanRater;

/// <summary>What one stringer takes of a vehicle by a published table.</summary>
/// <param name="Lanes">Vehicles' worth; presence in it where the table has it [-].</param>
/// <param name="PresenceInIt">Whether the presence factor is in it.</param>
/// <param name="Divisor">D of S/D [m].</param>
/// <param name="Clause">The table.</param>
public sealed record StringerShare(double Lanes, bool PresenceInIt, double Divisor, Clause Clause)
{
    /// <summary>Presence factor of one lane that the table of lanes has in it [-]. Source: AASHTO LRFD 3.6.1.1.2 and 4.6.2.2, from memory.</summary>
    public const double PresenceOfOneLane = 1.20;

    /// <summary>Lanes loaded for which the row holds: one, or two and more.</summary>
    public required bool IsOneLane { get; init; }

    /// <summary>The same without the presence factor [-]: for vehicles that take none.</summary>
    public double WithoutPresence => PresenceInIt && IsOneLane ? Lanes / PresenceOfOneLane : Lanes;
}

/// <summary>
/// What one interior stringer takes of wheels, by deck, spacing and lanes loaded. Sources: AASHTO Standard Specifications, 17th ed. (2002), Table 3.23.1, and AASHTO LRFD,
/// Table 4.6.2.2.2a-1, both from memory; the lever rule where they end.
/// </summary>
public static class StringerDistribution
{
    private const double Foot = 0.3048, Inch = 0.0254, ThickLaminated = 6 * Inch, DeepGrid = 4 * Inch;

    private static readonly Row[] WheelLines =
    [
        new(DeckType.Plank, null, null, 4.0, 3.75, null, null),
        new(DeckType.NailLaminated, false, null, 4.5, 4.0, null, null),
        new(DeckType.NailLaminated, true, null, 5.0, 4.25, 5, 6.5),
        new(DeckType.GluedLaminated, false, null, 4.5, 4.0, null, null),
        new(DeckType.GluedLaminated, true, StringerMaterial.GluedLaminatedTimber, 6.0, 5.0, 6, 7.5),
        new(DeckType.GluedLaminated, true, StringerMaterial.Steel, 5.25, 4.5, 5.5, 7),
        new(DeckType.Concrete, null, StringerMaterial.Steel, 7.0, 5.5, 10, 14),
        new(DeckType.Concrete, null, StringerMaterial.Timber, 6.0, 5.0, 6, 10),
        new(DeckType.Concrete, null, StringerMaterial.Concrete, 6.5, 6.0, 6, 10),
        new(DeckType.SteelGrid, false, null, 4.5, 4.0, null, null),
        new(DeckType.SteelGrid, true, null, 6.0, 5.0, 6, 10.5),
        new(DeckType.CorrugatedSteel, null, null, 5.5, 4.5, null, null),
    ];

    private static readonly Row[] InLanes =
    [
        new(DeckType.Plank, null, null, 6.7, 7.5, 5, 5),
        new(DeckType.NailLaminated, null, null, 8.3, 8.5, 6, 6),
        new(DeckType.GluedLaminated, null, null, 10, 10, 6, 6),
    ];

    /// <summary>What the table gives; null where it has no row, or the spacing is above its limit, and the lever rule holds.</summary>
    /// <param name="type">The deck.</param>
    /// <param name="thickness">Its thickness [m]; null where it is not known, which counts as thin.</param>
    /// <param name="beam">What the stringers are of.</param>
    /// <param name="spacing">Distance of stringers [m].</param>
    /// <param name="lanes">Lanes loaded.</param>
    /// <param name="table">The table.</param>
    public static StringerShare? Of(DeckType type, double? thickness, StringerMaterial beam, double spacing, int lanes, DistributionTable table)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing);
        ArgumentOutOfRangeException.ThrowIfLessThan(lanes, 1);
        bool isThick = thickness >= (type == DeckType.SteelGrid ? DeepGrid : ThickLaminated) - 1e-9, isOne = lanes == 1;
        Row? row = (table == DistributionTable.WheelLines ? WheelLines : InLanes)
            .FirstOrDefault(r => r.Type == type && (r.IsThick is null || r.IsThick == isThick) && (r.Beam is null || r.Beam == beam));
        if (row is null || spacing > ((isOne ? row.OneLimit : row.MoreLimit) * Foot) + 1e-9)
        {
            return null;
        }

        double divisor = (isOne ? row.One : row.More) * Foot;
        return table == DistributionTable.WheelLines
            ? new StringerShare(spacing / divisor / 2, false, divisor, FloorClauses.WheelLines) { IsOneLane = isOne }
            : new StringerShare(spacing / divisor, true, divisor, FloorClauses.InLanes) { IsOneLane = isOne };
    }

    /// <summary>What an interior stringer takes by the lever rule, the deck cut over every stringer: vehicles' worth without presence [-].</summary>
    /// <remarks>The line of its reaction falls from 1 over it to 0 over its neighbours: the worst has a wheel over it, and vehicles 4 ft apart.</remarks>
    /// <param name="spacing">Distance of stringers [m].</param>
    /// <param name="gauge">Distance of wheel lines [m].</param>
    /// <param name="lanes">Lanes loaded.</param>
    public static double InteriorByLever(double spacing, double gauge, int lanes)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(spacing);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gauge);
        double[] wheels = [.. Enumerable.Range(0, lanes).SelectMany(v => (double[])[v * (gauge + LeverRule.BetweenVehicles), (v * (gauge + LeverRule.BetweenVehicles)) + gauge])];
        return wheels.Max(over => wheels.Sum(w => Math.Max(0, 1 - (Math.Abs(w - over) / spacing)))) / 2;
    }

    private sealed record Row(DeckType Type, bool? IsThick, StringerMaterial? Beam, double One, double More, double? OneLimit, double? MoreLimit);
}

/// <summary>Shear of timber stringers under wheels. Source: AASHTO Standard Specifications, 17th ed. (2002), 13.6.5.2, and LRFD 4.6.2.2.2a, from memory.</summary>
public static class TimberShear
{
    /// <summary>Distance of the section from the support: three depths, at most a quarter of the span [m].</summary>
    /// <param name="depth">Depth of the stringer [m].</param>
    /// <param name="span">Its span [m].</param>
    public static double Distance(double depth, double span) => Math.Min(3 * depth, span / 4);

    /// <summary>What counts of the shear: half of 0.60 of one wheel line, undistributed, and of the distributed shear [-].</summary>
    /// <param name="undistributed">One wheel line: half a vehicle, presence in it [-].</param>
    /// <param name="distributed">What the stringer takes as for moment [-].</param>
    public static double Share(double undistributed, double distributed) => 0.5 * ((0.60 * undistributed) + distributed);
}
