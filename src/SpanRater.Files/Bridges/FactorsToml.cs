namespace SpanRater.Files;

/// <summary>factors.toml: the partial factors that the user gives, every one of them.</summary>
internal static class FactorsToml
{
    /// <summary>The whole file, its values left to be filled.</summary>
    public const string Form = """
        basis = "…"               # what the factors are: standard, its parts, national annex, edition
        source = "…"              # where you read them
        level = "…"               # name of the level that is rated, such as assessment

        [components]
        unfavourable = …          # factor where they add to the effect
        favourable = …            # factor where they relieve it

        [wearing_surface]
        unfavourable = …
        favourable = …

        [traffic]                 # leave out where no traffic is rated
        factor = …
        dynamic_allowance = …     # 0 where it is in the load model
        lanes = […]               # factor for one loaded lane, for two, and so on; the last holds for more

        [crowd]                   # crowds and service vehicles; leave out where neither is rated
        factor = …

        [resistance]              # members of metal with sections; leave out where capacities are given
        gamma_m0 = …
        gamma_m1 = …
        gamma_m2 = …
        buckling_curve = "…"      # a0, a, b, c or d, for every member
        """;

    private const string Dead = "components", Wearing = "wearing_surface", Traffic = "traffic", Crowd = "crowd", Resistance = "resistance";

    private static readonly string[] TableNames = [Dead, Wearing, Traffic, Crowd, Resistance];

    /// <summary>The form for a message: indented under it, or inside a sentence.</summary>
    public static string FormIndented => string.Concat(Form.ReplaceLineEndings("\n").Split('\n').Select(line => line.Length == 0 ? "\n" : $"\n    {line}"));

    /// <summary>The method of a text; null, with every fault found, where something is missing or faulty.</summary>
    public static PartialFactorRating? Read(string text, string file, FindingList findings)
    {
        var found = new FindingList();
        PartialFactorRating? method = TomlFile.Read(text, file, found) is { } toml ? Of(toml, file, found) : null;
        findings.AddAll(found);
        return found.HasErrors ? null : method;
    }

    private static PartialFactorRating? Of(TomlFile toml, string file, FindingList findings)
    {
        foreach (string key in ((string[])["basis", "source", "level"]).Where(k => !toml.Root.Has(k)))
        {
            findings.Error(new Place(file, 1, 1), $"key \"{key}\" is missing: write {key} = \"…\" at the top, {WhatIs(key)}.");
        }

        string? basis = Line(toml.Root.Text("basis")), source = Line(toml.Root.Text("source")), level = Line(toml.Root.Text("level"));
        toml.Root.SayWhatIsUnknown();
        foreach (TomlSection other in toml.Tables.Where(t => !TableNames.Contains(t.Name)))
        {
            findings.Error(other.Where, $"unknown table [{other.Name}].{NearestName.Question(other.Name, TableNames)} The tables are {string.Join(", ", TableNames.Select(t => $"[{t}]"))}.");
        }

        (double Adding, double Relieving)? components = DeadOf(toml, Dead, "the dead load of the components", file, findings);
        (double Adding, double Relieving)? wearing = DeadOf(toml, Wearing, "the wearing surface, asked for even where there is none", file, findings);
        TomlSection? trafficTable = toml.Find(Traffic, findings), crowdTable = toml.Find(Crowd, findings);
        if (trafficTable is null && crowdTable is null)
        {
            findings.Error(new Place(file), "has no factor on any live load: write the table [traffic] with factor, dynamic_allowance and lanes, the table [crowd] with factor, or both.");
        }

        TrafficFactors? traffic = trafficTable is null ? null : TrafficOf(trafficTable, findings);
        double? crowd = crowdTable is null ? null : CrowdOf(crowdTable, findings);
        PartialResistance? resistance = toml.Find(Resistance, findings) is { } resistanceTable ? ResistanceOf(resistanceTable, findings) : null;
        return !findings.HasErrors && components is { } dc && wearing is { } dw
            ? new PartialFactorRating(new PartialFactors(
                basis!, source!, level!, new DeadFactors(dc.Adding, dw.Adding, dc.Relieving, dw.Relieving), traffic, crowd)
            { Resistance = resistance })
            : null;
    }

    private static string WhatIs(string key) => key switch
    {
        "basis" => "what the factors are; every rating prints it",
        "source" => "where you read them; every rating prints it",
        _ => "the name of the level that is rated, such as \"assessment\"",
    };

    // Texts are printed within sentences: on one line.
    private static string? Line(string? text) => text is null ? null : string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static (double Adding, double Relieving)? DeadOf(TomlFile toml, string table, string of, string file, FindingList findings)
    {
        if (toml.Find(table, findings) is not { } section)
        {
            findings.Error(new Place(file), $"the table [{table}] is missing: write it with unfavourable and favourable, the factors on {of}.");
            return null;
        }

        AskFor(section, ["unfavourable", "favourable"], findings);
        double? adding = section.Number("unfavourable", 0.5, 5, "write the factor where it adds to the effect, from 0.5 to 5.");
        double? relieving = section.Number("favourable", 0, 5, "write the factor where it relieves the effect, from 0 to 5.");
        section.SayWhatIsUnknown();
        if (relieving > adding)
        {
            findings.Error(section.PlaceOf("favourable"), "favourable is above unfavourable: what relieves would count for more than what adds. Swap the two, or mend one.");
        }

        return adding is { } a && relieving is { } r ? (a, r) : null;
    }

    private static TrafficFactors? TrafficOf(TomlSection section, FindingList findings)
    {
        AskFor(section, ["factor", "dynamic_allowance", "lanes"], findings);
        double? factor = section.Number("factor", 0.5, 5, "write the factor on traffic, from 0.5 to 5.");
        double? impact = section.Number("dynamic_allowance", 0, 2, "write the allowance as a fraction, from 0 to 2: 0.3 for 30%, 0 where it is in the load model.");
        IReadOnlyList<double>? lanes = section.Numbers("lanes", 0.01, 2, "write a list of factors from 0.01 to 2, for one loaded lane, for two and so on, such as lanes = [1.0, 0.9].");
        section.SayWhatIsUnknown();
        return factor is { } f && impact is { } i && lanes is not null ? new TrafficFactors(f, i, lanes) : null;
    }

    private static double? CrowdOf(TomlSection section, FindingList findings)
    {
        AskFor(section, ["factor"], findings);
        double? factor = section.Number("factor", 0.5, 5, "write the factor on crowds and service vehicles, from 0.5 to 5.");
        section.SayWhatIsUnknown();
        return factor;
    }

    private static PartialResistance? ResistanceOf(TomlSection section, FindingList findings)
    {
        AskFor(section, ["gamma_m0", "gamma_m1", "gamma_m2", "buckling_curve"], findings);
        double? Gamma(string key) => section.Number(key, 0.8, 3, "write the partial factor on resistance, from 0.8 to 3.");
        double? crossSection = Gamma("gamma_m0"), instability = Gamma("gamma_m1"), rupture = Gamma("gamma_m2");
        BucklingCurve? curve = null;
        if (section.Text("buckling_curve") is { } name && (curve = BucklingCurve.Find(name)) is null)
        {
            findings.Error(section.PlaceOf("buckling_curve"), $"buckling_curve = \"{name}\": write {string.Join(", ", BucklingCurve.All.Select(c => c.Name))}.");
        }

        section.SayWhatIsUnknown();
        return crossSection is { } m0 && instability is { } m1 && rupture is { } m2 && curve is not null ? new PartialResistance(m0, m1, m2, curve) : null;
    }

    private static void AskFor(TomlSection section, string[] keys, FindingList findings)
    {
        foreach (string key in keys.Where(k => !section.Has(k)))
        {
            findings.Error(section.Where, $"key \"{key}\" is missing in [{section.Name}]: no factor is preset; write {key} = {(key == "lanes" ? "[…]" : key == "buckling_curve" ? "\"…\"" : "…")}.");
        }
    }
}
