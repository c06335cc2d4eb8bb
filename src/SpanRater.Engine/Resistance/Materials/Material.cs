namespace SpanRater;

/// <summary>A material of the bridge by its name.</summary>
/// <param name="Name">Its name, unique in the bridge.</param>
/// <param name="Kind">What it is.</param>
public abstract record Material(string Name, MaterialKind Kind);

/// <summary>A metal.</summary>
/// <param name="Name">Its name, unique in the bridge.</param>
/// <param name="Kind">What it is; not timber.</param>
/// <param name="Strength">Its strength; null where none is given.</param>
/// <param name="GivenModulus">Modulus of elasticity that the user gives [Pa], or null.</param>
/// <param name="Built">Year the bridge was built, or null.</param>
public sealed record MetalMaterial(string Name, MaterialKind Kind, MetalStrength? Strength, double? GivenModulus, int? Built) : Material(Name, Kind)
{
    /// <summary>Modulus of elasticity [Pa]: the one given; of steel, 29,000 ksi; null for wrought iron without one.</summary>
    public double? Modulus => GivenModulus ?? (Kind == MaterialKind.WroughtIron ? null : PublishedStrength.Modulus);

    /// <summary>What is missing of the yield; null where it is there.</summary>
    public MissingDatum? MissingYield => Strength is null ? new MissingDatum.Yield(Kind, Built, PublishedStrength.Find(Kind, Built)) : null;

    /// <summary>What is missing of the tensile strength; null where it is there.</summary>
    public MissingDatum? MissingUltimate => MissingYield ?? (Strength!.Ultimate is null ? new MissingDatum.Ultimate(Name) : null);

    /// <summary>What is missing of the modulus; null where it is there.</summary>
    public MissingDatum? MissingModulus => Modulus is null ? new MissingDatum.Modulus(Name) : null;
}

/// <summary>Sawn timber.</summary>
/// <param name="Name">Its name, unique in the bridge.</param>
/// <param name="Values">Its values before any adjustment.</param>
/// <param name="Origin">Where they are from.</param>
/// <param name="Use">How it is used, which adjusts the values.</param>
public sealed record TimberMaterial(string Name, TimberDesignValues Values, StrengthOrigin Origin, TimberUse Use) : Material(Name, MaterialKind.Timber);
