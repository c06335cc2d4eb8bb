using System.Globalization;

namespace SpanRater.Files;

/// <summary>bridge.toml: what is said once about a bridge.</summary>
/// <param name="Name">Name.</param>
/// <param name="Built">Year, or null.</param>
/// <param name="Deck">The deck.</param>
/// <param name="Rating">How it is to be rated.</param>
/// <param name="MethodPlace">Where the method stands, or should.</param>
/// <param name="Dead">How the dead load comes together.</param>
internal sealed record BridgeToml(string Name, int? Built, Deck Deck, RatingSettings Rating, Place MethodPlace, DeadSettings Dead)
{
    private static readonly string[] BareWords = ["", "yes", "true", "on", "1", "y", "no", "none", "false", "off", "0", "n", "not", "never"];

    /// <summary>What the floor bears beside its own parts; null where that is not said.</summary>
    public FloorSettings? Floor { get; init; }

    /// <summary>What holds the top chord of a pony truss; null for any other truss.</summary>
    public PonySettings? Pony { get; init; }

    /// <summary>What the file says; null where it has no usable name or is no TOML.</summary>
    public static BridgeToml? Read(string text, string file, Catalogue catalogue, (bool AreThere, PartialFactorRating? Method) factors, FindingList findings)
    {
        if (TomlFile.Read(text, file, findings) is not { } toml)
        {
            return null;
        }

        string? name = toml.Root.Text("name");
        if (!toml.Root.Has("name"))
        {
            findings.Error(new Place(file, 1, 1), "key \"name\" is missing: write name = \"…\" at the top.");
        }

        int? built = toml.Root.WholeNumber("built", 1700, 2100, "write the year the bridge was built, such as 1908.");
        toml.Root.SayWhatIsUnknown();

        Deck deck = toml.Find("deck", findings) is { } deckSection ? ReadDeck(deckSection, findings) : new Deck();
        TomlSection? ratingSection = toml.Find("rating", findings);
        RatingSettings rating = ratingSection is null ? new RatingSettings() : ReadRating(ratingSection, catalogue, factors, findings);
        if (ratingSection?.Has("method") != true && factors.AreThere)
        {
            findings.Warning(new Place(BridgeFolder.FactorsFile), MethodChoice.NotUsed(null));
        }

        DeadSettings dead = toml.Find("dead", findings) is { } deadSection ? DeadSettings.Read(deadSection, findings) : new DeadSettings(new Place(file));
        foreach (TomlSection other in toml.Tables.Where(t => t.Name is not ("deck" or "rating" or "dead" or "floor" or "pony")))
        {
            findings.Error(other.Where, $"unknown table [{other.Name}].{NearestName.Question(other.Name, ["deck", "rating", "dead", "floor", "pony"])} The tables are [deck], [rating], [dead], [floor] and [pony].");
        }

        FloorSettings? floor = toml.Find("floor", findings) is { } floorSection ? FloorSettings.Read(floorSection, findings) : null;
        return name is null ? null : new BridgeToml(name, built, deck, rating, ratingSection?.PlaceOf("method") ?? new Place(file), dead) { Floor = floor, Pony = toml.Find("pony", findings) is { } pony ? PonySettings.Read(pony, findings) : null };
    }

    private static Deck ReadDeck(TomlSection section, FindingList findings)
    {
        IReadOnlyList<string>? names = section.Texts("truss_names");
        if (names is not null && (names.Count != 2 || names[0] == names[1] || names.Any(string.IsNullOrWhiteSpace)))
        {
            findings.Error(section.PlaceOf("truss_names"), "truss_names are two different names, the left truss first: truss_names = [\"north\", \"south\"].");
            names = null;
        }

        var deck = new Deck();
        deck = deck with
        {
            Trusses = section.WholeNumber("trusses", 1, 20, "write how many trusses carry the deck.") ?? deck.Trusses,
            TrussNames = names ?? deck.TrussNames,
            TrussSpacing = section.PositiveQuantity("truss_spacing", Quantity.Length),
            Roadway = section.PositiveQuantity("roadway", Quantity.Length),
            RoadwayOffset = section.Quantity("roadway_offset", Quantity.Length) ?? 0,
            WheelToKerb = section.Quantity("wheel_to_kerb", Quantity.Length) ?? deck.WheelToKerb,
            TrussShare = section.Number("truss_share", 0.001, 10, "write the share of one vehicle that one truss carries, such as 0.75; a percentage is divided by 100."),
            TrussShareReason = section.Text("truss_share_reason") is { } reason ? string.Join(' ', reason.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)) : null,
        };
        if (section.Has("truss_share_reason") && !section.Has("truss_share"))
        {
            findings.Error(section.PlaceOf("truss_share_reason"), "truss_share_reason is given without truss_share: write the share that it speaks of, such as truss_share = 0.75, or remove the reason.");
        }
        else if (deck.TrussShare is not null && !section.Has("truss_share_reason"))
        {
            findings.Warning(section.PlaceOf("truss_share"), "truss_share replaces the lever rule, and no reason is given: write who found it and how, truss_share_reason = \"…\".");
        }

        if (deck.TrussShare < (1.0 / deck.Trusses) - 1e-9)
        {
            findings.Error(
                section.PlaceOf("truss_share"),
                string.Create(CultureInfo.InvariantCulture, $"truss_share = {deck.TrussShare:0.###} is less than an even part of one vehicle over {deck.Trusses} trusses, {1.0 / deck.Trusses:0.###}: one truss always carries that much. Write the share of the truss that carries most."));
        }

        if (deck.WheelToKerb < 0)
        {
            findings.Error(section.PlaceOf("wheel_to_kerb"), "wheel_to_kerb must not be below zero.");
        }

        if (deck is { TrussShare: null, Trusses: 2, TrussSpacing: { } spacing, Roadway: { } roadway })
        {
            double wheel = (roadway / 2) + Math.Abs(deck.RoadwayOffset) - deck.WheelToKerb, outside = wheel - (spacing / 2);
            if (outside <= 1e-9 && wheel + deck.WheelToKerb > (spacing / 2) + 1e-9)
            {
                findings.Warning(section.PlaceOf("roadway"), "a kerb stands beyond a truss. Right for a deck that overhangs its trusses; for trusses beside the roadway, check roadway, roadway_offset and truss_spacing.");
            }
            else if (outside > 1e-9)
            {
                findings.Error(
                    section.PlaceOf("roadway"),
                    string.Create(CultureInfo.InvariantCulture, $"the outer wheel line would stand {outside:0.00} m ({outside / 0.3048:0.0} ft) outside a truss: check roadway, roadway_offset, truss_spacing and wheel_to_kerb. If the deck does overhang, give truss_share."));
            }
        }

        section.SayWhatIsUnknown();
        return deck;
    }

    private static RatingSettings ReadRating(TomlSection section, Catalogue catalogue, (bool AreThere, PartialFactorRating? Method) factors, FindingList findings)
    {
        RatingMethod? method = MethodChoice.Read(section, factors, findings);
        Condition? condition = null;
        if (section.Text("condition") is { } word)
        {
            if (Enum.TryParse(word, ignoreCase: true, out Condition known) && Enum.IsDefined(known) && !char.IsAsciiDigit(word[0]))
            {
                condition = known;
            }
            else
            {
                findings.Error(section.PlaceOf("condition"), $"condition = \"{word}\": write \"good\", \"fair\" or \"poor\".");
            }
        }

        IReadOnlyList<(string Text, Place Where)>? vehicles = section.TextsWithPlaces("vehicles");
        foreach ((string vehicle, Place where) in vehicles ?? [])
        {
            if (catalogue.Find(vehicle) is null && !catalogue.HasNamed(vehicle))
            {
                findings.Error(where, $"no catalogue has a vehicle \"{vehicle}\".{NearestName.Question(vehicle, catalogue.Names)} List them with: spanrater vehicles.");
            }
        }

        if (vehicles is { Count: 0 })
        {
            findings.Error(section.PlaceOf("vehicles"), "vehicles is an empty list: name some, or leave the key out for all legal and emergency vehicles.");
        }

        MethodChoice.WarnOfLoadsWithoutFactor(method, section, vehicles, catalogue, findings);
        if (section.Has("crawl_speed") && section.Has("impact"))
        {
            findings.Error(section.PlaceOf("crawl_speed"), "crawl_speed leaves impact out and impact gives it: keep one of the two.");
        }

        string? crawlSpeed = CrawlSpeedIn(section, findings);
        var settings = new RatingSettings
        {
            Surface = SurfaceOf(section, findings),
            CrawlSpeed = crawlSpeed,
            Method = method,
            Impact = section.Number("impact", 0, 1, "write the allowance as a fraction, such as 0.33 for 33%."),
            TruckTraffic = section.Number("adtt", 0, 1e6, "write average daily truck traffic, one direction, such as 80."),
            Condition = condition,
            Vehicles = vehicles?.Select(v => catalogue.Find(v.Text)?.Name ?? v.Text).Distinct().ToList(),
            Confirmed = ConfirmedIn(section, findings),
            EmergencyFactor = section.Number("emergency_factor", 1, 5, "write the LRFR live-load factor of emergency vehicles as your copy has it, 1 or more, such as 1.3."),
            PermitFactor = section.Number("permit_factor", 1, 5, "write the live-load factor of permit vehicles, 1 or more, such as 1.3."),
            RelievingComponents = section.Number("relieving_dc", 0, 1, "write the factor on components that relieve, from 0 to 1, such as 0.90."),
            RelievingWearingSurface = section.Number("relieving_dw", 0, 1, "write the factor on a wearing surface that relieves, from 0 to 1, such as 0.65."),
        };
        section.SayWhatIsUnknown();
        return settings;
    }

    // The key switches impact off: a bare word would do so without saying who holds vehicles to that speed.
    private static string? CrawlSpeedIn(TomlSection section, FindingList findings)
    {
        string? enforced = section.Text("crawl_speed")?.Trim();
        if (enforced is not null && BareWords.Contains(enforced, StringComparer.OrdinalIgnoreCase))
        {
            findings.Error(section.PlaceOf("crawl_speed"), $"crawl_speed = \"{enforced}\": the key leaves impact out, and says how vehicles are held to crawl speed, such as \"gate and guard, one vehicle at a time\". Where they are not, leave the key out.");
            return null;
        }

        return enforced;
    }

    private static List<string> ConfirmedIn(TomlSection section, FindingList findings)
    {
        string[] known = [.. Clauses.ToConfirm.Select(c => c.Name)];
        var confirmed = new List<string>();
        foreach ((string name, Place where) in section.TextsWithPlaces("confirmed") ?? [])
        {
            if (Clauses.FindToConfirm(name) is { } clause)
            {
                confirmed.Add(clause.Name);
            }
            else
            {
                findings.Error(where, $"confirmed: there is no value \"{name}\" to confirm.{NearestName.Question(name, known)} The values to confirm are: {string.Join(", ", known)}.");
            }
        }

        return confirmed;
    }

    private static RidingSurface? SurfaceOf(TomlSection section, FindingList findings)
    {
        switch (section.Text("surface"))
        {
            case null:
                return null;
            case "smooth":
                return RidingSurface.Smooth;
            case "minor deviations":
                return RidingSurface.MinorDeviations;
            case "rough":
                return RidingSurface.Rough;
            case { } word:
                findings.Error(section.PlaceOf("surface"), $"surface = \"{word}\": write \"smooth\", \"minor deviations\" or \"rough\", approaches and joints included.");
                return null;
        }
    }
}
