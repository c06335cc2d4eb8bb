namespace SpanRater;

/// <summary>Buckling about one axis.</summary>
/// <param name="Factor">K; null where a rule gives the slenderness itself [-].</param>
/// <param name="Length">Unbraced length [m].</param>
/// <param name="Radius">Radius of gyration [m].</param>
/// <param name="Slenderness">Slenderness of the section as one piece, or what a rule puts in its place [-].</param>
/// <param name="ElasticForce">Elastic critical force, give of the binding and elastic frames in it [N].</param>
public sealed record BucklingAxis(double? Factor, double Length, double Radius, double Slenderness, double ElasticForce)
{
    /// <summary>Force at which the legs of a built-up member buckle between the points that hold them; null where there is no such limit [N].</summary>
    public double? LegForce { get; init; }

    /// <summary>The chord on elastic frames; null where there are none.</summary>
    public PonyChord? Pony { get; init; }

    /// <summary>What holds the parts together about this axis; null where that does not count.</summary>
    public Binding? Binding { get; init; }

    /// <summary>What the binding makes of the column; null where it does not count.</summary>
    public BoundParts? Bound { get; init; }
}

/// <summary>What goes into a column whose parts slide along each other.</summary>
/// <param name="WholeForce">Elastic critical force as one piece, elastic frames in it [N].</param>
/// <param name="WholeSlenderness">Slenderness as one piece [-].</param>
/// <param name="LegRadius">Radius of gyration of one part between its connections [m].</param>
/// <param name="FreeLength">Length of a part between its connections, missing lacing counted [m].</param>
public sealed record BoundParts(double WholeForce, double WholeSlenderness, double LegRadius, double FreeLength)
{
    /// <summary>Shear angle per shear force of lacing or battens [1/N]; null of stitched parts.</summary>
    public double? ShearFlexibility { get; init; }

    /// <summary>Moment of inertia of one leg between battens [m⁴]; null without them.</summary>
    public double? LegInertia { get; init; }

    /// <summary>Distance between the centroids of welded parts [m]; null of others.</summary>
    public double? Separation { get; init; }
}

/// <summary>The column that a member is at one cut.</summary>
/// <param name="InPlane">Buckling in the plane of the truss, about x.</param>
/// <param name="OutOfPlane">Buckling out of the plane of the truss, about y.</param>
public sealed record ColumnAxes(BucklingAxis InPlane, BucklingAxis OutOfPlane)
{
    /// <summary>The axis with the lesser elastic critical force; in plane where both are alike.</summary>
    public BucklingAxis Governing => OutOfPlane.ElasticForce < InPlane.ElasticForce ? OutOfPlane : InPlane;
}

/// <summary>One mode at one cut.</summary>
/// <param name="Place">Name of the cut; null for the member away from all cuts.</param>
/// <param name="Section">The section there.</param>
/// <param name="Strength">The strength.</param>
public sealed record ModeAtCut(string? Place, MemberSection Section, MemberStrength Strength)
{
    /// <summary>The column; null in tension.</summary>
    public ColumnAxes? Axes { get; init; }

    /// <summary>Moment of the member's own weight in it, factored [N·m]; 0 where none counts.</summary>
    public double OwnMoment { get; init; }

    /// <summary>How far the force is off the centroid across the truss, bow in it [m]; 0 in modes without a moment.</summary>
    public double EccentricityX { get; init; }

    /// <summary>The same in the plane of the truss [m].</summary>
    public double EccentricityY { get; init; }

    /// <summary>The stresses of the timber; null of metal.</summary>
    public TimberDesign? Timber { get; init; }
}

/// <summary>What a member carries in one sense at one level, with all that led to it.</summary>
public sealed record MemberResistance
{
    /// <summary>What it is made of.</summary>
    public required MemberMake Make { get; init; }

    /// <summary>Every mode at every cut, in the order examined.</summary>
    public required IReadOnlyList<ModeAtCut> Modes { get; init; }

    /// <summary>Condition and system factors; null where the method has none.</summary>
    public MemberFactors? Factors { get; init; }

    /// <summary>A member more slender than the standard allows; null where it is not.</summary>
    public SlendernessWarning? Slender { get; init; }

    /// <summary>Whether eyebars are rated by their bodies alone, since heads are not measured.</summary>
    public bool HeadsNotMeasured { get; init; }

    /// <summary>The mode that governs: the least strength, the earlier of equal ones.</summary>
    public ModeAtCut Governing => Modes.MinBy(m => m.Strength.Value)!;

    /// <summary>The capacity, all factors in it [N].</summary>
    public double Value => Governing.Strength.Value * (Factors?.Value ?? 1);
}

/// <summary>A resistance, or every datum that is missing for it.</summary>
/// <param name="Resistance">The resistance; null where something is missing.</param>
/// <param name="Missing">What is missing.</param>
public sealed record ResistanceCheck(MemberResistance? Resistance, IReadOnlyList<MissingDatum> Missing);
