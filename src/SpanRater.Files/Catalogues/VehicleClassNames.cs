namespace SpanRater.Files;

/// <summary>The words for the classes of vehicles, in files and in what goes out.</summary>
public static class VehicleClassNames
{
    private static readonly (VehicleClass Class, string Name)[] Names =
    [
        (VehicleClass.Design, "design"),
        (VehicleClass.Legal, "legal"),
        (VehicleClass.Screening, "screening"),
        (VehicleClass.Emergency, "emergency"),
        (VehicleClass.Permit, "permit"),
        (VehicleClass.Farm, "farm"),
        (VehicleClass.Maintenance, "maintenance"),
        (VehicleClass.Crowd, "crowd"),
    ];

    /// <summary>All words, for a message.</summary>
    public static string List => string.Join(", ", Names.Select(n => n.Name));

    /// <summary>The word for a class.</summary>
    /// <param name="vehicleClass">The class.</param>
    public static string Name(VehicleClass vehicleClass) => Names.First(n => n.Class == vehicleClass).Name;

    /// <summary>The class of a word; null with a finding where there is none.</summary>
    internal static VehicleClass? Read(string text, Place where, FindingList findings)
    {
        foreach ((VehicleClass vehicleClass, string name) in Names)
        {
            if (string.Equals(name, text, StringComparison.OrdinalIgnoreCase))
            {
                return vehicleClass;
            }
        }

        findings.Error(where, $"unknown class \"{text}\".{NearestName.Question(text, Names.Select(n => n.Name))} The classes are: {List}.");
        return null;
    }
}
