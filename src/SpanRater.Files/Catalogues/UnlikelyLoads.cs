using System.Globalization;

namespace SpanRater.Files;

/// <summary>Names what vehicles, loadings and crowds hardly are: a slipped decimal point, or a unit taken for another. The limits are common practice, without a source.</summary>
internal static class UnlikelyLoads
{
    /// <summary>What a number may exceed its limit by without being beyond it: round-off of its unit [-].</summary>
    private const double RoundOff = 1e-9;

    /// <summary>A vehicle that weighs less than 1 kip in all.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="weight">Its weight [N].</param>
    /// <param name="mend">What to check.</param>
    /// <param name="where">Where its weight stands.</param>
    /// <param name="findings">Takes the warning.</param>
    public static void SayIfLight(string name, double weight, string mend, Place where, FindingList findings)
    {
        if (IsBelow(weight, 1, "kip"))
        {
            findings.Warning(where, $"\"{name}\" weighs {Both(weight, "kip", "kN")} in all, less than any vehicle does: {mend}.");
        }
    }

    /// <summary>A gauge under 1 ft or over 12 ft.</summary>
    public static void SayIfGaugeIsOdd(string name, double gauge, string lines, Place where, FindingList findings)
    {
        if (IsOutside(gauge, 1, 12, "ft"))
        {
            findings.Warning(where, $"\"{name}\" has its {lines} {Both(gauge, "ft", "m")} apart, and a gauge is from 1 to 12 ft (0.3 to 3.7 m): check gauge and its unit.");
        }
    }

    /// <summary>A track longer than 30 ft.</summary>
    public static void SayIfTrackIsLong(string name, double length, Place where, FindingList findings)
    {
        if (IsAbove(length, 30, "ft"))
        {
            findings.Warning(where, $"\"{name}\" has tracks {Both(length, "ft", "m")} long, longer than 30 ft (9.1 m): length is that of a track on the ground. Check it and its unit.");
        }
    }

    /// <summary>A crowd below 20 or above 200 psf.</summary>
    public static void SayIfCrowdIsOdd(string name, double pressure, Place where, FindingList findings)
    {
        if (IsOutside(pressure, 20, 200, "psf"))
        {
            findings.Warning(where, $"\"{name}\" is a crowd of {Both(pressure, "psf", "kPa")}, and people or animals are from 20 to 200 psf (1 to 9.6 kPa): check pressure and its unit.");
        }
    }

    /// <summary>A crowd narrower than 1 ft or wider than 12 ft along the kerb.</summary>
    public static void SayIfCrowdWidthIsOdd(string name, double width, Place where, FindingList findings)
    {
        if (IsOutside(width, 1, 12, "ft"))
        {
            findings.Warning(where, $"\"{name}\" is a crowd {Both(width, "ft", "m")} wide, and one along a kerb is from 1 to 12 ft (0.3 to 3.7 m): check width and its unit; where it fills the roadway leave width out.");
        }
    }

    /// <summary>A part of the axle loads below a half or above twice.</summary>
    public static void SayIfTimesIsOdd(double times, Place where, FindingList findings)
    {
        if (times is < 0.5 or > 2)
        {
            findings.Warning(where, string.Create(CultureInfo.InvariantCulture, $"times = {times}: every axle load of the vehicles is multiplied by it, and it is from 0.5 to 2 where a standard asks for it. Check it."));
        }
    }

    /// <summary>A lane load under 0.05 or above 3 klf.</summary>
    public static void SayIfLaneIsOdd(double load, Place where, FindingList findings)
    {
        if (IsOutside(load, 0.05, 3, "klf"))
        {
            findings.Warning(where, $"the lane load is {Both(load, "klf", "kN/m")}, and lane loads are from 0.05 to 3 klf (0.73 to 43.8 kN/m): check lane and its unit.");
        }
    }

    /// <summary>Refuses the weight that a loading is posted by where it is far from what its trains weigh.</summary>
    /// <param name="loading">The loading, its trains in it.</param>
    /// <param name="where">Where its weight stands.</param>
    /// <param name="findings">Takes the fault.</param>
    public static void RefuseStrayWeight(Loading loading, Place where, FindingList findings)
    {
        if (loading.PostedWeight is not { } weight)
        {
            return;
        }

        if (loading.TrainWeight is not { } train)
        {
            if (IsOutside(weight, 1, 100, "US ton"))
            {
                findings.Error(where, $"weight = {Both(weight, "US ton", "kN")} is no weight of a legal load, and a posting is reckoned from it: write one from 1 to 100 US ton, or leave weight out, and it is not posted.");
            }
        }
        else if (weight < 0.25 * train || weight > 4 * train)
        {
            string trains = loading.Trains.Count == 1 ? "its train weighs" : "its heaviest train weighs";
            findings.Error(
                where,
                string.Create(CultureInfo.InvariantCulture, $"weight = {Both(weight, "US ton", "kN")} is {weight / train:0.##} times what {trains}, {Both(train, "US ton", "kN")}, and a posting is reckoned from it: write a weight from a quarter to four times that, or leave weight out, and it is not posted."));
        }
    }

    private static bool IsOutside(double si, double least, double most, string unit) => IsBelow(si, least, unit) || IsAbove(si, most, unit);

    internal static bool IsBelow(double si, double least, string unit) => si < least * Unit.Find(unit)!.Size * (1 - RoundOff);

    internal static bool IsAbove(double si, double most, string unit) => si > most * Unit.Find(unit)!.Size * (1 + RoundOff);

    internal static string Both(double si, string one, string other) => $"{Figure(si, one)} {one} ({Figure(si, other)} {other})";

    private static string Figure(double si, string unit) => (si / Unit.Find(unit)!.Size).ToString("#,0.###", CultureInfo.InvariantCulture);
}
