namespace SpanRater.Files;

/// <summary>The rules of standards for uniform loads that files may name.</summary>
internal static class IntensityRules
{
    private static readonly LoadIntensity[] All = [new FootbridgePressure(), new SidewalkPressure(), new HighwayLaneLoad()];

    /// <summary>Their names, for a message.</summary>
    public static string List(bool perArea) => string.Join(", ", All.Where(r => r.IsPerArea == perArea).Select(r => $"\"{r.Name}\""));

    /// <summary>Whether a text is the name of a rule, whatever its case.</summary>
    public static LoadIntensity? Find(string name, bool perArea) =>
        All.FirstOrDefault(r => r.IsPerArea == perArea && string.Equals(r.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>The rule that a key names; null, with a finding, where there is none.</summary>
    public static LoadIntensity? Named(TomlSection section, string key, bool perArea, FindingList findings)
    {
        if (section.Text(key) is not { } name)
        {
            return null;
        }

        if (Find(name, perArea) is { } rule)
        {
            return rule;
        }

        findings.Error(section.PlaceOf(key), $"{key} = \"{name}\" is no rule that is known.{NearestName.Question(name, All.Where(r => r.IsPerArea == perArea).Select(r => r.Name))} The rules are: {List(perArea)}.");
        return null;
    }
}
