namespace SpanRater.Files;

/// <summary>Reads the loadings of a catalogue: what is more than one train.</summary>
internal static class LoadingFile
{
    /// <summary>The loadings of a text, each with the place of its name. Adds every name, faulty ones among them.</summary>
    public static List<CatalogueEntry> Read(string text, string file, FindingList findings, HashSet<string> named)
    {
        var entries = new List<CatalogueEntry>();
        if (TomlFile.Read(text, file, findings) is not { } toml)
        {
            return entries;
        }

        toml.Root.SayWhatIsUnknown();
        foreach (TomlSection section in toml.Tables)
        {
            if (section.Name != "loading")
            {
                findings.Error(section.Where, $"unknown table [{section.Name}].{NearestName.Question(section.Name, ["loading"])} A catalogue of loadings holds [[loading]] tables.");
                continue;
            }

            if (section.Text("name") is { } name)
            {
                named.Add(name);
            }

            if (ReadLoading(section, findings) is { } loading)
            {
                entries.Add(new CatalogueEntry(loading, section.PlaceOf("name")));
            }

            section.SayWhatIsUnknown();
        }

        return entries;
    }

    private static Loading? ReadLoading(TomlSection section, FindingList findings)
    {
        string? name = section.Text("name");
        string? word = section.Text("class");
        string source = section.Text("source") ?? "";
        IReadOnlyList<string>? vehicles = section.Texts("vehicles");
        string? take = section.Text("take");
        double? lane = section.PositiveQuantity("lane", Quantity.LineLoad);
        _ = section.PositiveQuantity("point_moment", Quantity.Force);
        _ = section.PositiveQuantity("point_shear", Quantity.Force);
        _ = section.PositiveQuantity("headway", Quantity.Length);
        if (take is not (null or "worst" or "sum"))
        {
            findings.Error(section.PlaceOf("take"), $"take = \"{take}\": write \"worst\" or \"sum\".");
        }

        foreach (string key in (string[])["name", "class", "vehicles"])
        {
            if (!section.Has(key))
            {
                findings.Error(section.Where, $"a loading needs the key \"{key}\".");
            }
        }

        VehicleClass? vehicleClass = word is null ? null : VehicleClassNames.Read(word, section.PlaceOf("class"), findings);
        return name is not null && vehicleClass is { } c && vehicles is not null
            ? new Loading(name, c, vehicles, lane is not null, source)
            : null;
    }
}
