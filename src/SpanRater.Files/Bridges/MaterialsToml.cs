namespace SpanRater.Files;

/// <summary>materials.toml: what the members are made of, each strength with where it is from.</summary>
internal sealed class MaterialsToml
{
    private const string Table = "material", ByYear = "by year";

    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch;

    // A metal outside these was written with a wrong unit.
    private const double LeastYield = 10 * Ksi, MostYield = 120 * Ksi, LeastModulus = 15_000 * Ksi, MostModulus = 35_000 * Ksi;

    private readonly Dictionary<string, Place> places = new(StringComparer.OrdinalIgnoreCase);

    private MaterialsToml()
    {
    }

    /// <summary>The materials in the order of the file.</summary>
    public List<Material> Materials { get; } = [];

    /// <summary>The material of that name, whatever its case, or null.</summary>
    public Material? Find(string name) => Materials.Find(m => string.Equals(m.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether a material of that name is there, be it good or not.</summary>
    public bool Has(string name) => places.ContainsKey(name);

    /// <summary>Where a material stands.</summary>
    public Place PlaceOf(string name) => places[name];

    /// <summary>The materials of a text; null where it is not TOML. What is faulty is left out and found.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">Its name.</param>
    /// <param name="built">Year the bridge was built; null where bridge.toml does not give one.</param>
    /// <param name="isBuiltRead">Whether bridge.toml was read, so that a missing year is known to be missing.</param>
    /// <param name="findings">Takes what is found.</param>
    public static MaterialsToml? Read(string text, string file, int? built, bool isBuiltRead, FindingList findings)
    {
        if (TomlFile.Read(text, file, findings) is not { } toml)
        {
            return null;
        }

        toml.Root.SayWhatIsUnknown();
        var materials = new MaterialsToml();
        foreach (TomlSection section in toml.Tables)
        {
            if (section.Name != Table)
            {
                findings.Error(section.Where, $"unknown table [{section.Name}].{NearestName.Question(section.Name, [Table])} Each material is a table [[{Table}]].");
                continue;
            }

            materials.Add(section, built, isBuiltRead, findings);
        }

        return materials;
    }

    private void Add(TomlSection section, int? built, bool isBuiltRead, FindingList findings)
    {
        string? name = section.Text("name");
        if (!section.Has("name"))
        {
            findings.Error(section.Where, "key \"name\" is missing in [[material]]: write name = \"…\", the word that members.csv uses for it.");
        }

        MaterialKind? kind = WordOf("kind", section, MaterialWords.Kinds, "what it is", findings);
        bool isNew = name is null || IsNew(name, kind, section, findings);
        if (kind is not { } known)
        {
            // Which keys belong here hangs on the kind: unknown ones wait until it is known.
            return;
        }

        Material? material = known == MaterialKind.Timber
            ? new TimberReader(section, findings).Read(name ?? "")
            : MetalOf(section, name ?? "", known, built, isBuiltRead, findings);
        section.SayWhatIsUnknown();
        if (name is not null && isNew && material is not null)
        {
            Materials.Add(material);
        }
    }

    private bool IsNew(string name, MaterialKind? kind, TomlSection section, FindingList findings)
    {
        if (MaterialWords.Kinds.FirstOrDefault(k => string.Equals(k.Word, name, StringComparison.OrdinalIgnoreCase)) is { Word: { } word } plain && kind is not null && plain.Kind != kind)
        {
            findings.Error(section.PlaceOf("name"), $"a material named \"{name}\" is of kind \"{word}\": give it another name, or mend its kind.");
        }

        if (places.TryAdd(name, section.PlaceOf("name")))
        {
            return true;
        }

        findings.Error(section.PlaceOf("name"), $"material \"{name}\" is there twice, first on line {places[name].Line}: give one another name.");
        return false;
    }

    private static MetalMaterial? MetalOf(TomlSection section, string name, MaterialKind kind, int? built, bool isBuiltRead, FindingList findings)
    {
        var found = new FindingList();
        string? strength = section.Text("strength");
        double? yield = Within(section, "yield", LeastYield, MostYield, "from 10 to 120 ksi (70 to 830 MPa)", found);
        double? ultimate = Within(section, "ultimate", LeastYield, 2 * MostYield, "from 10 to 240 ksi (70 to 1,650 MPa)", found);
        double? modulus = Within(section, "modulus", LeastModulus, MostModulus, "from 15,000 to 35,000 ksi (100 to 240 GPa)", found);
        int? coupons = section.WholeNumber("coupons", 1, 1000, "write the number of pieces that were tested, from 1 on.");
        string? source = section.Text("source");
        MetalStrength? known = null;
        if (section.Has("strength"))
        {
            known = ByYearOf(section, strength, kind, built, isBuiltRead, found);
        }
        else if (section.Has("yield"))
        {
            known = GivenOf(section, yield, ultimate, coupons, source, found);
        }
        else if (((string[])["ultimate", "coupons"]).FirstOrDefault(section.Has) is { } lone)
        {
            found.Error(section.PlaceOf(lone), $"{lone} goes with a yield: write yield = \"…\" with its source.");
        }
        else
        {
            found.Warning(section.Where, $"material \"{name}\": {MissingDatumWording.Of(new MetalMaterial(name, kind, null, modulus, built).MissingYield!)}.");
        }

        findings.AddAll(found);
        return found.HasErrors ? null : new MetalMaterial(name, kind, known, modulus, built);
    }

    private static MetalStrength? ByYearOf(TomlSection section, string? strength, MaterialKind kind, int? built, bool isBuiltRead, FindingList findings)
    {
        if (strength is not null && strength != ByYear)
        {
            findings.Error(section.PlaceOf("strength"), $"strength = \"{strength}\": the only word is \"{ByYear}\", which accepts the published strength for the year of building. A strength of your own is yield = \"…\" with its source.");
            return null;
        }

        foreach (string key in ((string[])["yield", "ultimate", "coupons", "source"]).Where(section.Has))
        {
            findings.Error(section.PlaceOf(key), $"{key} does not go with strength = \"{ByYear}\": keep the one that holds.");
        }

        if (strength is null || findings.HasErrors)
        {
            return null;
        }

        if (PublishedStrength.Find(kind, built) is { } published)
        {
            return MetalStrength.ByYear(published, PublishedStrength.GoesByYear(kind) ? built : null);
        }

        if (PublishedStrength.GoesByYear(kind) && isBuiltRead)
        {
            findings.Error(section.PlaceOf("strength"), $"strength = \"{ByYear}\" takes the year the bridge was built, and bridge.toml does not say it: write built = … there, or here yield = \"…\" with its source.");
        }
        else if (!PublishedStrength.GoesByYear(kind))
        {
            findings.Error(section.PlaceOf("strength"), $"no strength of {MaterialWords.Of(kind)} is published by year: write yield = \"…\" with its source.");
        }

        return null;
    }

    private static MetalStrength? GivenOf(TomlSection section, double? yield, double? ultimate, int? coupons, string? source, FindingList findings)
    {
        AskForSource(section, "yield", findings);
        if (ultimate < yield)
        {
            findings.Error(section.PlaceOf("ultimate"), "ultimate is below yield: no metal breaks before it yields. Swap the two, or mend one.");
        }

        return findings.HasErrors || yield is null || source is null ? null : new MetalStrength(yield.Value, ultimate, OriginOf(source, coupons));
    }

    /// <summary>Asks for the source of a value that is given.</summary>
    internal static void AskForSource(TomlSection section, string of, FindingList findings)
    {
        if (!section.Has("source"))
        {
            findings.Error(section.PlaceOf(of), $"{of} is given without a source: write source = \"…\", where it is from: the tests, a drawing, a mill sheet. Every result prints it.");
        }
    }

    /// <summary>Tested where there are coupons, else given; the source on one line.</summary>
    internal static StrengthOrigin OriginOf(string source, int? coupons)
    {
        string line = string.Join(' ', source.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        return coupons is { } pieces ? new StrengthOrigin.Tested(pieces, line) : new StrengthOrigin.Given(line);
    }

    /// <summary>A stress within limits.</summary>
    internal static double? Within(TomlSection section, string key, double least, double most, string range, FindingList findings)
    {
        double? value = section.PositiveQuantity(key, Quantity.Stress);
        if (value < least || value > most)
        {
            findings.Error(section.PlaceOf(key), $"{key} = \"{section.Text(key)}\" is not believed: write a value {range}, and check its unit.");
            return null;
        }

        return value;
    }

    /// <summary>One of a list of words, which is asked for.</summary>
    internal static T? WordOf<T>(string key, TomlSection section, IReadOnlyList<(string Word, T Value)> words, string whatItIs, FindingList findings)
        where T : struct
    {
        string list = string.Join(", ", words.Select(w => $"\"{w.Word}\""));
        string? text = section.Text(key);
        if (!section.Has(key))
        {
            findings.Error(section.Where, $"key \"{key}\" is missing in [[material]]: write {whatItIs}, {key} = one of {list}.");
        }

        if (text is null)
        {
            return null;
        }

        foreach ((string word, T value) in words)
        {
            if (string.Equals(word, text, StringComparison.OrdinalIgnoreCase))
            {
                return value;
            }
        }

        findings.Error(section.PlaceOf(key), $"{key} = \"{text}\" is not known.{NearestName.Question(text, words.Select(w => w.Word))} Write one of {list}.");
        return null;
    }
}
