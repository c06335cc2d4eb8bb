namespace SpanRater.Files;

/// <summary>A loading as its file says it, before its vehicles are found among all catalogues.</summary>
/// <param name="Loading">The loading, without its vehicles.</param>
/// <param name="Vehicles">Names of its vehicles.</param>
/// <param name="InOneLane">True where they follow one another in one lane; false where the worst of them counts.</param>
/// <param name="Times">Part of each vehicle's axle loads that counts [-].</param>
/// <param name="Headway">From the last axle of one vehicle to the first of the next; null where none is given.</param>
/// <param name="Where">Where its name stands.</param>
internal sealed record LoadingDraft(Loading Loading, IReadOnlyList<string> Vehicles, bool InOneLane, double Times, AxleGap? Headway, Place Where)
{
    /// <summary>Where the weight stands that it is posted by.</summary>
    public required Place WeightAt { get; init; }

    /// <summary>The draft of a table; null where it cannot be used.</summary>
    public static LoadingDraft? Read(TomlSection section, FindingList findings)
    {
        string? name = section.Text("name");
        VehicleClass? vehicleClass = LoadingFile.ClassOf(section, findings);
        string source = section.Text("source") ?? "";
        IReadOnlyList<string>? vehicles = section.Texts("vehicles");
        string? take = section.Text("take");
        if (take is not (null or "worst" or "sum"))
        {
            findings.Error(section.PlaceOf("take"), $"take = \"{take}\": write \"worst\" or \"sum\".");
        }

        double? times = TimesOf(section, vehicles?.Count ?? 0, findings);
        LaneLoad? lane = LaneOf(section, source, findings);
        AxleGap? headway = HeadwayOf(section, take, vehicles?.Count ?? 0, findings);
        double? deckOver = section.PositiveQuantity("deck_over", Quantity.Length), weight = section.PositiveQuantity("weight", Quantity.Force);
        bool interior = section.YesOrNo("interior_supports") ?? false;
        if (vehicles is null or { Count: 0 } && !section.Has("lane"))
        {
            findings.Error(section.Has("vehicles") ? section.PlaceOf("vehicles") : section.Where, "a loading names no vehicle and has no lane load: write vehicles = [\"…\"], a lane load, or both.");
            return null;
        }

        return name is not null && vehicleClass is { } c
            ? new LoadingDraft(
                new Loading(name, c, [], lane, source) { DeckOver = deckOver, ForInteriorSupports = interior, PostedWeight = weight },
                vehicles ?? [],
                take == "sum",
                times ?? 1,
                headway,
                section.PlaceOf("name"))
            { WeightAt = section.PlaceOf("weight") }
            : null;
    }

    private static double? TimesOf(TomlSection section, int vehicles, FindingList findings)
    {
        double? times = section.Number("times", 0.01, 10, "write the part of the axle loads that counts, such as 0.75.");
        if (times is not null && vehicles == 0)
        {
            findings.Error(section.PlaceOf("times"), "times goes with vehicles, and there are none: write vehicles = [\"…\"], or leave times out.");
        }
        else if (times is { } part)
        {
            UnlikelyLoads.SayIfTimesIsOdd(part, section.PlaceOf("times"), findings);
        }

        return times;
    }

    private static LaneLoad? LaneOf(TomlSection section, string source, FindingList findings)
    {
        double? moment = section.PositiveQuantity("point_moment", Quantity.Force), shear = section.PositiveQuantity("point_shear", Quantity.Force);
        bool impact = section.YesOrNo("lane_impact") ?? false;
        if (!section.Has("lane"))
        {
            foreach (string key in ((string[])["point_moment", "point_shear", "lane_impact"]).Where(section.Has))
            {
                findings.Error(section.PlaceOf(key), $"{key} goes with a lane load, and there is none: write lane = \"0.64 klf\", or leave {key} out.");
            }

            _ = section.Text("lane");
            return null;
        }

        LoadIntensity? intensity = (section.HasText("lane") ? IntensityRules.Find(section.Text("lane")!, perArea: false) : null)
            ?? (section.PositiveQuantity("lane", Quantity.LineLoad) is { } load ? new ConstantLineLoad(load, source) : null);
        if (intensity is ConstantLineLoad constant)
        {
            UnlikelyLoads.SayIfLaneIsOdd(constant.Load, section.PlaceOf("lane"), findings);
        }

        return intensity is null ? null : new LaneLoad(intensity, moment, shear, impact);
    }

    // Nothing is said of a headway where the word before it, or its own length, is at fault already.
    private static AxleGap? HeadwayOf(TomlSection section, string? take, int vehicles, FindingList findings)
    {
        bool inOneLane = take == "sum", isApart = take is null or "worst";
        double? least = section.PositiveQuantity("headway", Quantity.Length), most = section.PositiveQuantity("headway_max", Quantity.Length);
        if (inOneLane && vehicles > 1 && !section.Has("headway"))
        {
            findings.Error(section.Where, "vehicles that follow one another in one lane need the key \"headway\": from the last axle of one to the first of the next, such as headway = \"30 ft\".");
        }
        else if (isApart && (section.Has("headway") || section.Has("headway_max")))
        {
            findings.Error(section.PlaceOf(section.Has("headway") ? "headway" : "headway_max"), "a headway is for vehicles that follow one another in one lane: write take = \"sum\" as well, or leave it out.");
        }
        else if (most < least || (most is not null && !section.Has("headway")))
        {
            findings.Error(section.PlaceOf("headway_max"), "headway_max is the largest headway, and headway the smallest: low value first.");
        }

        return least is { } l && !(most < l) ? new AxleGap(l, most ?? l) : null;
    }
}
