namespace SpanRater.Files;

/// <summary>The rating method that bridge.toml names, and what goes with the user's own factors.</summary>
internal static class MethodChoice
{
    /// <summary>Keys of [rating] whose place is taken by factors.toml, and the key there.</summary>
    private static readonly (string Key, string Given)[] Replaced =
    [
        ("impact", "dynamic_allowance of [traffic]"),
        ("surface", "dynamic_allowance of [traffic]"),
        ("adtt", "factor of [traffic]"),
        ("permit_factor", "factor of [traffic]"),
        ("emergency_factor", "factor of [traffic]"),
        ("relieving_dc", "favourable of [components]"),
        ("relieving_dw", "favourable of [wearing_surface]"),
    ];

    /// <summary>The method; null, with a finding, where there is none of that name or its factors are not there.</summary>
    public static RatingMethod? Read(TomlSection section, (bool AreThere, PartialFactorRating? Method) factors, FindingList findings)
    {
        if (section.Text("method") is not { } name)
        {
            return null;
        }

        if (string.Equals(name, PartialFactorRating.ShortName, StringComparison.OrdinalIgnoreCase))
        {
            foreach ((string key, string given) in Replaced.Where(r => section.Has(r.Key)))
            {
                findings.Error(section.PlaceOf(key), $"{key} does not go with method = \"{PartialFactorRating.ShortName}\": {BridgeFolder.FactorsFile} says it, as {given}. Leave {key} out here.");
            }

            if (!factors.AreThere)
            {
                findings.Error(
                    section.PlaceOf("method"),
                    $"method = \"{PartialFactorRating.ShortName}\" takes every factor from {BridgeFolder.FactorsFile} in the bridge folder, and there is none: nothing is preset. Write it, and fill in each value:{FactorsToml.FormIndented}");
            }

            return factors.Method;
        }

        RatingMethod? method = RatingMethod.Find(name);
        if (method is null)
        {
            string[] methods = [.. RatingMethod.All.Select(m => m.Name), PartialFactorRating.ShortName];
            findings.Error(section.PlaceOf("method"), $"unknown method \"{name}\".{NearestName.Question(name, methods)} The methods are: {string.Join(", ", methods)}.");
        }
        else if (factors.AreThere)
        {
            findings.Warning(new Place(BridgeFolder.FactorsFile), NotUsed(method));
        }

        return method;
    }

    /// <summary>The warning where there are factors and another method, or none.</summary>
    public static string NotUsed(RatingMethod? method) =>
        $"is not used: {(method is null ? $"{BridgeFolder.BridgeFile} names no method" : $"the method is {method.Name}, which has its own factors")}. Write method = \"{PartialFactorRating.ShortName}\" under [rating] of {BridgeFolder.BridgeFile}, or take the file away.";

    /// <summary>Warns of loads asked for that have no factor among the user's own.</summary>
    public static void WarnOfLoadsWithoutFactor(
        RatingMethod? method, TomlSection section, IReadOnlyList<(string Text, Place Where)>? vehicles, Catalogue catalogue, FindingList findings)
    {
        if (method?.OwnFactors is not { } factors)
        {
            return;
        }

        if (vehicles is null && factors.Traffic is null)
        {
            findings.Warning(section.Where, $"no vehicles are named, which asks for every legal and emergency one, and of each of them: {RatingWording.FactorMissing(VehicleClass.Legal)}.");
        }

        foreach ((string name, Place where) in vehicles ?? [])
        {
            if (catalogue.Find(name) is { } load && factors.FactorOf(load.Class) is null)
            {
                findings.Warning(where, $"\"{name}\" is of class {VehicleClassNames.Name(load.Class)}, and {RatingWording.FactorMissing(load.Class)}.");
            }
        }
    }
}
