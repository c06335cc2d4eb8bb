using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings.WhatNext;

/// <summary>
/// The king post with a hanger of two eyebars 2.5 × 0.75 in of a metal of 30 ksi, rated by allowable stress at operating level: 0.75 × 30 ksi on the
/// area that was read. All else has capacities that never govern.
/// </summary>
internal static class MeasuredHanger
{
    public const double Inch = 0.0254, Ksi = 6_894_757.293168361, AllowedStress = 0.75 * 30 * Ksi;

    /// <summary>Capacity by hand of a thickness [N].</summary>
    public static double CapacityOf(double thickness) => AllowedStress * 2 * 2.5 * Inch * thickness;

    /// <summary>One axle of 100 kN with impact, which is all in the hanger [N].</summary>
    public const double Live = 100_000 * (1 + ImpactOf120Feet);

    /// <summary>Dead load of the hanger [N].</summary>
    public const double Dead = 60_000;

    /// <summary>Factor by hand of a thickness [-].</summary>
    public static double FactorOf(double thickness) => (CapacityOf(thickness) - Dead) / Live;

    public static Observation Thickness(string place, double inches, double doubt) =>
        new Observation.Remaining(ShapeDimension.Thickness, inches * Inch) { Place = place, Part = "bars", Doubt = doubt * Inch };

    public static BridgeRating Rated(params IReadOnlyList<Observation> seen) => Rated(1, seen);

    /// <summary>The rating for one axle of 100 kN times a scale.</summary>
    public static BridgeRating Rated(double scale, IReadOnlyList<Observation> seen) =>
        BridgeRater.Rate(BridgeWith(seen), RatingMethod.Find("ASR")!, [new Vehicle("axle", VehicleClass.Legal, new AxleTrain([scale * 100_000], []), Vehicle.StandardGauge, "made up for the test")]).Value!;

    public static Bridge BridgeWith(IReadOnlyList<Observation> seen)
    {
        SectionShape bar = SectionShape.Create(ShapeKind.Eyebar, new Dictionary<ShapeDimension, double> { [ShapeDimension.Width] = 2.5 * Inch, [ShapeDimension.Thickness] = 0.75 * Inch }).Shape!;
        var section = new MemberSection("hanger", [new SectionPart("bars", [new SectionPiece(bar, null), new SectionPiece(bar, null)])]);
        var make = new MemberMake
        {
            Section = FoundSection.Create(section, seen).Section!,
            Material = new MetalMaterial("metal", MaterialKind.Steel, new MetalStrength(30 * Ksi, 60 * Ksi, new StrengthOrigin.Tested(6, "made up for the test")), null, null),
            InPlaneLength = 80 * Foot,
        };
        Bridge bridge = Of(Dead / 1000);
        GivenCapacities strong = new(Enum.GetValues<GivenCapacity>().ToDictionary(kind => kind, _ => 1e8));
        return bridge with { Capacities = [strong, strong, strong, strong, GivenCapacities.None], Makes = [null, null, null, null, make] };
    }
}
