namespace SpanRater;

/// <summary>A standard, law or practice that numbers are taken from.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Edition">Its edition; empty where its name says it.</param>
public sealed record Standard(string Name, string Edition)
{
    /// <summary>Rating of bridges in service.</summary>
    public static Standard Manual { get; } = new("AASHTO Manual for Bridge Evaluation", "3rd ed. (2018)");

    /// <summary>Design by load and resistance factors.</summary>
    public static Standard LoadAndResistanceFactorDesign { get; } = new("AASHTO LRFD", "8th ed. (2017)");

    /// <summary>The older design standard, by load factors or allowable stresses.</summary>
    public static Standard StandardSpecifications { get; } = new("AASHTO Standard Specifications", "17th ed. (2002)");

    /// <summary>How emergency vehicles are rated.</summary>
    public static Standard EmergencyMemo { get; } = new("FHWA memo of 3 November 2016", "");

    /// <summary>Federal regulations on highways.</summary>
    public static Standard FederalRegulations { get; } = new("23 CFR", "");

    /// <summary>Federal law on highways.</summary>
    public static Standard FederalLaw { get; } = new("23 U.S.C.", "");

    /// <summary>Footbridges.</summary>
    public static Standard Footbridges { get; } = new("AASHTO LRFD Guide Specifications for Pedestrian Bridges", "(2009)");

    /// <summary>Footbridges, the older guide.</summary>
    public static Standard OldFootbridges { get; } = new("AASHTO Guide Specifications for Design of Pedestrian Bridges", "(1997)");

    /// <summary>Traffic loads on bridges, Europe.</summary>
    public static Standard EuropeanTraffic { get; } = new("EN 1991-2", "(2003)");

    /// <summary>Steel structures, Europe.</summary>
    public static Standard EuropeanSteel { get; } = new("EN 1993-1-1", "(2005)");

    /// <summary>Loads for highway bridges, United Kingdom.</summary>
    public static Standard BritishLoads { get; } = new("UK BD 37/01", "");

    /// <summary>Vibration of floors and footbridges.</summary>
    public static Standard FloorVibrations { get; } = new("AISC Steel Design Guide 11", "(1997)");

    /// <summary>Dimensions and properties of American shapes, without fillets in its angles.</summary>
    public static Standard SteelManual { get; } = new("AISC ASD Manual", "9th ed. (1989)");

    /// <summary>Timber bridges.</summary>
    public static Standard TimberBridges { get; } = new("USDA Timber Bridges", "(1990)");

    /// <summary>Design of wood construction.</summary>
    public static Standard TimberSpecification { get; } = new("National Design Specification for Wood Construction", "(2018)");

    /// <summary>Design values of wood.</summary>
    public static Standard TimberSupplement { get; } = new("National Design Specification, Supplement: Design Values", "(2018)");

    /// <summary>Buckling of columns and frames: Timoshenko and Gere.</summary>
    public static Standard ElasticStability { get; } = new("Timoshenko and Gere, Theory of Elastic Stability", "2nd ed. (1961)");

    /// <summary>Gusset plates in service.</summary>
    public static Standard GussetGuide { get; } = new("FHWA-IF-09-014, Load Rating Guidance for Gusset Plates", "(2009)");

    /// <summary>Road signs.</summary>
    public static Standard TrafficSigns { get; } = new("Manual on Uniform Traffic Control Devices", "(2003)");

    /// <summary>What the trade does, without a clause to quote.</summary>
    public static Standard Practice { get; } = new("common practice", "");
}
