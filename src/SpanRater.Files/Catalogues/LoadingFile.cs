namespace SpanRater.Files;

/// <summary>Reads the loadings, crowds and tracked vehicles of a catalogue: what is more than one train, or none.</summary>
internal static class LoadingFile
{
    private static readonly string[] TableNames = ["loading", "crowd", "tracked"];

    /// <summary>What a text holds. Adds every name, faulty ones among them.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name in findings.</param>
    /// <param name="findings">Takes what is wrong.</param>
    /// <param name="named">Takes every name.</param>
    /// <param name="drafts">Takes the loadings, whose vehicles other files may hold.</param>
    public static List<CatalogueEntry> Read(string text, string file, FindingList findings, HashSet<string> named, List<LoadingDraft> drafts)
    {
        var entries = new List<CatalogueEntry>();
        if (TomlFile.Read(text, file, findings) is not { } toml)
        {
            return entries;
        }

        toml.Root.SayWhatIsUnknown();
        foreach (TomlSection section in toml.Tables)
        {
            if (!TableNames.Contains(section.Name))
            {
                findings.Error(section.Where, $"unknown table [{section.Name}].{NearestName.Question(section.Name, TableNames)} A catalogue of loadings holds {string.Join(", ", TableNames.Select(t => $"[[{t}]]"))} tables.");
                continue;
            }

            if (section.Text("name") is { } name)
            {
                named.Add(name);
            }

            foreach (string key in RequiredOf(section.Name).Where(k => !section.Has(k)))
            {
                findings.Error(section.Where, $"a {NounOf(section.Name)} needs the key \"{key}\".");
            }

            switch (section.Name)
            {
                case "loading":
                    if (LoadingDraft.Read(section, findings) is { } draft)
                    {
                        drafts.Add(draft);
                    }

                    break;
                case "crowd":
                    Add(ReadCrowd(section, findings));
                    break;
                default:
                    Add(ReadTracked(section, findings));
                    break;
            }

            section.SayWhatIsUnknown();

            void Add(LiveLoad? load)
            {
                if (load is not null)
                {
                    entries.Add(new CatalogueEntry(load, section.PlaceOf("name")));
                }
            }
        }

        return entries;
    }

    private static string[] RequiredOf(string table) => table switch
    {
        "loading" => ["name", "class"],
        "crowd" => ["name"],
        _ => ["name", "class", "weight", "length"],
    };

    private static string NounOf(string table) => table == "tracked" ? "tracked vehicle" : table;

    private static Crowd? ReadCrowd(TomlSection section, FindingList findings)
    {
        string? name = section.Text("name");
        VehicleClass? vehicleClass = section.Has("class") ? ClassOf(section, findings) : VehicleClass.Crowd;
        string source = section.Text("source") ?? "";
        double? width = section.PositiveQuantity("width", Quantity.Length);
        double? pressure = section.PositiveQuantity("pressure", Quantity.Pressure);
        LoadIntensity? rule = IntensityRules.Named(section, "rule", perArea: true, findings);
        if (section.Has("pressure") == section.Has("rule"))
        {
            findings.Error(
                section.Where,
                $"a crowd has a load per area: write pressure = \"90 psf\", or rule = one of {IntensityRules.List(perArea: true)}{(section.Has("rule") ? "; not both" : "")}.");
            return null;
        }

        if (width is { } wide)
        {
            UnlikelyLoads.SayIfCrowdWidthIsOdd(name ?? "", wide, section.PlaceOf("width"), findings);
        }

        if (pressure is { } perArea)
        {
            UnlikelyLoads.SayIfCrowdIsOdd(name ?? "", perArea, section.PlaceOf("pressure"), findings);
        }

        LoadIntensity? intensity = rule ?? (pressure is { } p ? new ConstantPressure(p, source) : null);
        return name is not null && vehicleClass is { } c && intensity is not null ? new Crowd(name, c, intensity, width, source) : null;
    }

    private static TrackedVehicle? ReadTracked(TomlSection section, FindingList findings)
    {
        string? name = section.Text("name");
        VehicleClass? vehicleClass = ClassOf(section, findings);
        string source = section.Text("source") ?? "";
        double? weight = section.PositiveQuantity("weight", Quantity.Force), length = section.PositiveQuantity("length", Quantity.Length);
        double? gauge = section.PositiveQuantity("gauge", Quantity.Length);
        if (weight is { } heavy)
        {
            UnlikelyLoads.SayIfLight(name ?? "", heavy, "check weight and its unit", section.PlaceOf("weight"), findings);
        }

        if (length is { } track)
        {
            UnlikelyLoads.SayIfTrackIsLong(name ?? "", track, section.PlaceOf("length"), findings);
        }

        if (gauge is { } apart)
        {
            UnlikelyLoads.SayIfGaugeIsOdd(name ?? "", apart, "tracks", section.PlaceOf("gauge"), findings);
        }

        return name is not null && vehicleClass is { } c && weight is { } w && length is { } l
            ? new TrackedVehicle(name, c, w, l, gauge ?? Vehicle.StandardGauge, source)
            : null;
    }

    internal static VehicleClass? ClassOf(TomlSection section, FindingList findings) =>
        section.Text("class") is { } word ? VehicleClassNames.Read(word, section.PlaceOf("class"), findings) : null;
}
