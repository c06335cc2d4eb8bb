namespace SpanRater;

/// <summary>
/// A partial-factor basis as its user gives it: nothing in it is preset, and no national annex stands behind it. Immutable.
/// </summary>
/// <param name="Basis">What the factors are, in the user's words.</param>
/// <param name="Source">Where they are from, in the user's words.</param>
/// <param name="Level">Name of the one level that is rated.</param>
/// <param name="Dead">Factors on dead load: adding is unfavourable, relieving is favourable.</param>
/// <param name="Traffic">Factors of traffic; null where none are given.</param>
/// <param name="Crowd">Factor on crowds and on service vehicles, which take no dynamic allowance [-]; null where none is given.</param>
public sealed record PartialFactors(string Basis, string Source, string Level, DeadFactors Dead, TrafficFactors? Traffic, double? Crowd)
{
    /// <summary>Factors on the resistance of members with sections; null where none are given, so that capacities are.</summary>
    public PartialResistance? Resistance { get; init; }

    /// <summary>Whether a class of live load takes the factor on crowds and service vehicles; every other class is traffic.</summary>
    /// <param name="vehicleClass">The class.</param>
    public static bool IsCrowd(VehicleClass vehicleClass) => vehicleClass is VehicleClass.Crowd or VehicleClass.Maintenance;

    /// <summary>The factor on a class of live load [-]; null where none is given.</summary>
    /// <param name="vehicleClass">The class.</param>
    public double? FactorOf(VehicleClass vehicleClass) => IsCrowd(vehicleClass) ? Crowd : Traffic?.Factor;
}

/// <summary>Factors on the resistance of metal members.</summary>
/// <param name="CrossSection">γM0, on the yield of cross-sections [-].</param>
/// <param name="Instability">γM1, on members that buckle [-].</param>
/// <param name="Rupture">γM2, on the rupture of net sections [-].</param>
/// <param name="Curve">Buckling curve of every member.</param>
public sealed record PartialResistance(double CrossSection, double Instability, double Rupture, BucklingCurve Curve);

/// <summary>Factors of traffic.</summary>
/// <param name="Factor">Factor on the live load [-].</param>
/// <param name="Impact">Dynamic allowance [-]; 0 where it is in the load model.</param>
/// <param name="Lanes">Factor by number of loaded lanes, from one lane up; the last holds for more [-].</param>
public sealed record TrafficFactors(double Factor, double Impact, IReadOnlyList<double> Lanes);
