namespace SpanRater;

/// <summary>The ways in which a beam may fail.</summary>
public enum BeamMode
{
    /// <summary>Yield of the outermost fibre.</summary>
    FirstYield,

    /// <summary>The compression flange buckles sideways.</summary>
    LateralBuckling,

    /// <summary>The web in shear.</summary>
    WebShear,

    /// <summary>Timber in bending.</summary>
    TimberBending,

    /// <summary>Timber in shear along the grain.</summary>
    TimberShear,

    /// <summary>Timber pressed across the grain.</summary>
    AcrossGrain,
}

/// <summary>The strength of a beam in one mode by one method, before condition and system factors.</summary>
/// <param name="Mode">The mode.</param>
/// <param name="Nominal">Nominal strength, positive [N·m or N].</param>
/// <param name="Factors">Factors of the method on it.</param>
/// <param name="Clauses">What it rests on.</param>
public abstract record BeamStrength(BeamMode Mode, double Nominal, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
{
    /// <summary>The strength with its factors [N·m or N].</summary>
    public double Value => Factors.Aggregate(Nominal, (value, factor) => value * factor.Value);
}

/// <summary>First yield, or sideways buckling, of a metal beam: a section modulus times a stress.</summary>
/// <param name="Mode">The mode.</param>
/// <param name="Modulus">Elastic section modulus of the weaker fibre [m³].</param>
/// <param name="Stress">Stress at it [Pa].</param>
/// <param name="Factors">Factors of the method.</param>
/// <param name="Clauses">What it rests on.</param>
public sealed record MetalBending(BeamMode Mode, double Modulus, double Stress, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
    : BeamStrength(Mode, Modulus * Stress, Factors, Clauses)
{
    /// <summary>How sideways buckling came to that stress; null of first yield.</summary>
    public LateralBuckling? Lateral { get; init; }
}

/// <summary>Sideways buckling of the compression flange of an I-shape.</summary>
/// <param name="Unbraced">Distance between the points that hold it [m].</param>
/// <param name="Plain">Stress without it [Pa].</param>
/// <param name="Shape">The flange and web.</param>
public sealed record LateralBuckling(double Unbraced, double Plain, FlangeAndWeb Shape)
{
    /// <summary>Length up to which nothing is lost [m]; null where the method has none.</summary>
    public double? ShortLength { get; init; }

    /// <summary>Length from which buckling is elastic [m]; null where the method has none.</summary>
    public double? LongLength { get; init; }
}

/// <summary>What of an I-shape counts in sideways buckling.</summary>
/// <param name="FlangeWidth">Width of the compression flange [m].</param>
/// <param name="FlangeThickness">Its thickness [m].</param>
/// <param name="WebDepth">Depth of the web between the flanges [m].</param>
/// <param name="WebThickness">Thickness of the web [m].</param>
/// <param name="Depth">Whole depth [m].</param>
public sealed record FlangeAndWeb(double FlangeWidth, double FlangeThickness, double WebDepth, double WebThickness, double Depth)
{
    /// <summary>Width of the other flange [m].</summary>
    public required double OtherWidth { get; init; }

    /// <summary>Its thickness [m].</summary>
    public required double OtherThickness { get; init; }

    /// <summary>Radius of gyration of the compression flange and a third of the compressed web [m].</summary>
    public double Radius => FlangeWidth / Math.Sqrt(12 * (1 + (WebDepth * WebThickness / (3 * FlangeWidth * FlangeThickness))));

    /// <summary>Moment of inertia of the compression flange about the web [m⁴].</summary>
    public double FlangeInertia => FlangeThickness * Math.Pow(FlangeWidth, 3) / 12;

    /// <summary>Torsion constant [m⁴].</summary>
    public double Torsion => ((FlangeWidth * Math.Pow(FlangeThickness, 3)) + (OtherWidth * Math.Pow(OtherThickness, 3)) + (WebDepth * Math.Pow(WebThickness, 3))) / 3;

    /// <summary>The I-shape of a section; null where the section is not one I-shape.</summary>
    public static FlangeAndWeb? Of(MemberSection section)
    {
        ArgumentNullException.ThrowIfNull(section);
        if (section.Parts is not [{ Pieces: [{ Shape: var shape }] }] || (shape.Kind != ShapeKind.IBeam && shape.Kind != ShapeKind.WideFlange))
        {
            return null;
        }

        double flange = shape[ShapeDimension.TopFlange] ?? shape[ShapeDimension.Flange]!.Value, other = shape[ShapeDimension.BottomFlange] ?? shape[ShapeDimension.Flange]!.Value;
        double depth = shape[ShapeDimension.Depth]!.Value;
        return new FlangeAndWeb(shape[ShapeDimension.TopWidth] ?? shape[ShapeDimension.Width]!.Value, flange, depth - flange - other, shape[ShapeDimension.Web]!.Value, depth)
        {
            OtherWidth = shape[ShapeDimension.BottomWidth] ?? shape[ShapeDimension.Width]!.Value,
            OtherThickness = other,
        };
    }
}

/// <summary>Shear of metal webs.</summary>
/// <param name="Area">Area of the webs [m²].</param>
/// <param name="Stress">Stress on it, buckling in it [Pa].</param>
/// <param name="Buckling">Part C that the buckling of the web leaves [-].</param>
/// <param name="Factors">Factors of the method.</param>
/// <param name="Clauses">What it rests on.</param>
public sealed record WebShear(double Area, double Stress, double Buckling, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
    : BeamStrength(BeamMode.WebShear, Area * Stress * Buckling, Factors, Clauses);

/// <summary>A timber beam in bending, shear or bearing.</summary>
/// <param name="Mode">The mode.</param>
/// <param name="Section">Section modulus, area in shear (two thirds of width times depth) or area of the bearing [m³ or m²].</param>
/// <param name="Stress">The stress on it, adjusted.</param>
/// <param name="Reduction">Factor of stability in bending, or of a notch in shear [-].</param>
/// <param name="Factors">Factors of the method on the strength as a whole.</param>
/// <param name="Clauses">What it rests on.</param>
public sealed record TimberBeamStrength(
    BeamMode Mode, double Section, AdjustedValue Stress, double Reduction, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
    : BeamStrength(Mode, Section * Stress.Value * Reduction, Factors, Clauses)
{
    /// <summary>Width [m].</summary>
    public required double Width { get; init; }

    /// <summary>Depth; over a notched bearing what is left there [m].</summary>
    public required double Depth { get; init; }

    /// <summary>Slenderness RB in sideways buckling; 0 where that does not count [-].</summary>
    public double Slenderness { get; init; }
}
