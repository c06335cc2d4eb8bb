namespace SpanRater.Files;

/// <summary>Reads one timber of materials.toml.</summary>
internal sealed class TimberReader(TomlSection section, FindingList findings)
{
    private const double Psi = PublishedStrength.PoundPerSquareInch;

    private static readonly string[] GradeKeys = ["species", "grade"];

    private static readonly string[] ValueKeys = ["bending", "tension", "shear", "compression_across", "compression", "modulus", "least_modulus"];

    /// <summary>The timber; null, with every fault found, where something is missing or faulty.</summary>
    public TimberMaterial? Read(string name)
    {
        var found = new FindingList();
        TimberSizeClass? sizeClass = MaterialsToml.WordOf("class", section, MaterialWords.SizeClasses, "its size class", found);
        string? species = section.Text("species"), grade = section.Text("grade"), source = section.Text("source");
        double?[] values = [.. ValueKeys.Select(k => ValueOf(k, found))];
        int? coupons = section.WholeNumber("coupons", 1, 1000, "write the number of pieces that were tested, from 1 on.");
        TimberUse? use = UseOf(found);
        bool isGraded = GradeKeys.Any(section.Has), isGiven = ValueKeys.Any(section.Has);
        (TimberDesignValues Values, StrengthOrigin Origin)? strength = null;
        if (isGraded && isGiven)
        {
            found.Error(section.PlaceOf(ValueKeys.First(section.Has)), "a timber has either species and grade, whose values are published, or values of its own: keep the ones that hold.");
        }
        else if (isGiven)
        {
            strength = GivenOf(values, sizeClass, source, coupons, found);
        }
        else
        {
            strength = GradedOf(species, grade, sizeClass, found);
        }

        findings.AddAll(found);
        return found.HasErrors || strength is not { } known || use is null ? null : new TimberMaterial(name, known.Values, known.Origin, use);
    }

    private double? ValueOf(string key, FindingList found) => key.Contains("modulus", StringComparison.Ordinal)
        ? MaterialsToml.Within(section, key, 100_000 * Psi, 3_000_000 * Psi, "from 100,000 to 3,000,000 psi (0.7 to 20 GPa)", found)
        : MaterialsToml.Within(section, key, 20 * Psi, 5000 * Psi, "from 20 to 5,000 psi (0.14 to 34 MPa)", found);

    private TimberUse? UseOf(FindingList found)
    {
        bool? isWet = MaterialsToml.WordOf("service", section, [("wet", true), ("dry", false)], "whether it is wet in service", found);
        LoadDuration? duration = MaterialsToml.WordOf("duration", section, MaterialWords.Durations, "how long the load lasts in sum", found);
        bool? isRepetitive = section.YesOrNo("repetitive");
        return isWet is { } wet && duration is { } known ? new TimberUse(wet, known, isRepetitive ?? false) : null;
    }

    private (TimberDesignValues Values, StrengthOrigin Origin)? GivenOf(double?[] values, TimberSizeClass? sizeClass, string? source, int? coupons, FindingList found)
    {
        MaterialsToml.AskForSource(section, ValueKeys.First(section.Has), found);
        foreach (string key in ValueKeys.Where(k => !section.Has(k)))
        {
            found.Error(section.Where, $"key \"{key}\" is missing in [[material]]: a timber with values of its own gives all of {string.Join(", ", ValueKeys)}.");
        }

        if (values is not [{ } bending, { } tension, { } shear, { } across, { } along, { } modulus, { } least] || sizeClass is not { } known || source is null)
        {
            return null;
        }

        if (least > modulus)
        {
            found.Error(section.PlaceOf("least_modulus"), "least_modulus, for stability, is above modulus: swap the two, or mend one.");
        }

        return (new TimberDesignValues("", known, "", bending, tension, shear, across, along, modulus, least), MaterialsToml.OriginOf(source, coupons));
    }

    private (TimberDesignValues Values, StrengthOrigin Origin)? GradedOf(string? species, string? grade, TimberSizeClass? sizeClass, FindingList found)
    {
        foreach (string key in ((string[])["source", "coupons"]).Where(section.Has))
        {
            found.Error(section.PlaceOf(key), $"{key} goes with values of one's own; those of a species and grade are published. Take {key} away, or give {string.Join(", ", ValueKeys)}.");
        }

        string[] kinds = [.. TimberDesignValues.Published.Select(r => r.Species).Distinct()];
        if (!section.Has("species"))
        {
            found.Error(section.Where, $"key \"species\" is missing in [[material]]: write one of {Listed(kinds)}, or values of your own with their source.");
        }

        if (!section.Has("grade"))
        {
            found.Error(section.Where, "key \"grade\" is missing in [[material]]: write the grade, as it was stamped or as someone qualified graded it; none is assumed.");
        }

        if (species is null || grade is null || sizeClass is not { } known)
        {
            return null;
        }

        if (!kinds.Contains(species, StringComparer.OrdinalIgnoreCase))
        {
            found.Error(section.PlaceOf("species"), $"species = \"{species}\" is not known.{NearestName.Question(species, kinds)} Write one of {Listed(kinds)}, or values of your own with their source.");
            return null;
        }

        TimberDesignValues[] rows = [.. TimberDesignValues.Published.Where(r => string.Equals(r.Species, species, StringComparison.OrdinalIgnoreCase))];
        if (rows.All(r => r.SizeClass != known))
        {
            found.Error(section.PlaceOf("class"), $"{rows[0].Species} has no published values of that class in the program. Write one of {Listed(rows.Select(r => MaterialWords.SizeClasses.First(c => c.Class == r.SizeClass).Word).Distinct())}, or values of your own with their source.");
            return null;
        }

        if (TimberDesignValues.Find(species, known, grade) is not { } row)
        {
            string[] grades = [.. rows.Where(r => r.SizeClass == known).Select(r => r.Grade)];
            found.Error(section.PlaceOf("grade"), $"grade = \"{grade}\" is not known.{NearestName.Question(grade, grades)} Write one of {Listed(grades)}, or values of your own with their source.");
            return null;
        }

        return (row, new StrengthOrigin.ByGrade(row));
    }

    private static string Listed(IEnumerable<string> words) => string.Join(", ", words.Select(w => $"\"{w}\""));
}
