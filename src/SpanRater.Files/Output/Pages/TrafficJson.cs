using System.Text.Json;

namespace SpanRater.Files;

/// <summary>The facts of <c>traffic</c>: kN, kN·m, m, MPa and plain numbers.</summary>
internal static class TrafficJson
{
    private static readonly (string Name, double Part)[] Quantiles = [("0.5", 0.5), ("0.9", 0.9), ("0.99", 0.99), ("0.999", 0.999)];

    /// <summary>Writes them.</summary>
    public static void Write(Utf8JsonWriter json, TrafficReading reading, TrafficExtremes extremes, string[] notCounted, string[] assumed)
    {
        TrafficTally tally = reading.Tally;
        TrafficPlan plan = tally.Plan;
        json.WriteString("bridge", plan.Bridge.Name);
        json.WriteString("method", plan.Method.Name);
        json.WriteString("level", plan.Level.Name);
        json.WriteString("caution", $"{TrafficWording.Unfactored} {Words.Caution}");
        json.WriteNumber("trucks", tally.Trucks);
        json.WriteString("firstDay", tally.Trucks > 0 ? TrafficWording.Date(tally.Days.First()) : null);
        json.WriteString("lastDay", tally.Trucks > 0 ? TrafficWording.Date(tally.Days.Last()) : null);
        json.WriteNumber("daysWithTrucks", tally.Days.Count);
        json.WriteForce("meanGross", tally.Trucks > 0 ? tally.Weights.Sum / tally.Trucks : null);
        json.WriteForce("heaviestGross", tally.Trucks > 0 ? tally.Weights.Heaviest : null);
        WriteRemarked(json, "rejected", reading.Rejected);
        WriteRemarked(json, "unlikely", reading.Unlikely);
        json.WriteNumber("outOfOrder", reading.OutOfOrder);
        json.WriteNumberOrNull("firstOutOfOrder", reading.FirstOutOfOrder);
        json.WriteNames("notCounted", notCounted);
        json.WriteNames("assumed", assumed);
        json.WriteStartArray("effects");
        for (int e = 0; e < plan.Effects.Count && tally.Trucks > 0; e++)
        {
            WriteEffect(json, reading, e, extremes);
        }

        json.WriteEndArray();
        WriteExtremes(json, extremes);
        WriteStresses(json, tally);
        WriteFactor(json, tally);
    }

    private static void WriteRemarked(Utf8JsonWriter json, string name, RemarkedRows rows)
    {
        json.WriteNumber($"{name}Rows", rows.Count);
        json.WriteStartArray(name);
        foreach (RowRemark remark in rows.Remarks)
        {
            json.WriteStartObject();
            json.WriteString("reason", RowRemarkWording.Of(remark));
            json.WriteNumber("rows", rows.Of(remark));
            json.WriteNames("first", rows.First(remark).Select(f => f.ToString()));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteEffect(Utf8JsonWriter json, TrafficReading reading, int index, TrafficExtremes extremes)
    {
        TrafficTally tally = reading.Tally;
        TrafficEffect e = tally.Plan.Effects[index];
        double most = tally.Most(e.Channel);
        json.WriteStartObject();
        json.WriteString("truss", e.Truss is { } t ? tally.Plan.Bridge.Deck.TrussNames[t] : null);
        json.WriteString("part", PartWords.Of(e.Kind));
        json.WriteString("name", e.Name);
        json.WriteString("at", e.At.Length > 0 ? e.At : null);
        json.WriteString("effect", PartWords.Of(e.Acts));
        json.WriteString("sense", e.Sense is { } sense ? Words.Of(sense) : null);
        json.WriteNumberOrNull(e.Acts == PartEffect.Moment ? "arm" : "share", e.Factor);
        json.WriteNumberOrNull("impact", e.Impact.Value);
        json.WriteForce("largest", e.Factor * most);
        json.WriteForce("largestWithImpact", e.WithImpact * most);
        if (tally.MostRecord(e.Channel) is { } record)
        {
            json.WriteStartObject("record");
            json.WriteNumber("line", record.Line);
            json.WriteString("time", record.Time);
            json.WriteForce("gross", record.Gross);
            json.WriteBoolean("unlikely", record.IsUnlikely);
            json.WriteStartObject("further");
            foreach ((string name, string value) in reading.Further.Zip(record.Further))
            {
                json.WriteString(name, value);
            }

            json.WriteEndObject();
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("record");
        }

        json.WriteStartObject("quantiles");
        foreach ((string name, double part) in Quantiles)
        {
            json.WriteForce(name, e.Factor * tally.Quantile(e.Channel, part));
        }

        json.WriteEndObject();
        json.WriteForce("binWidth", e.Factor * tally.Plan.Channels[e.Channel].BinWidth);
        json.WriteStartArray("bins");
        foreach (long count in tally.Histogram(e.Channel))
        {
            json.WriteNumberValue(count);
        }

        json.WriteEndArray();
        json.WriteForce("dead", e.Dead);
        json.WriteForce("capacity", e.OnlyPulls ? null : e.Capacity);
        json.WriteBoolean("onlyPulls", e.OnlyPulls);
        json.WriteNumberOrNull("used", e.UsedBy(most));
        json.WriteNumberOrNull("above", tally.Over(index));
        WriteFit(json, e, extremes);
        json.WriteEndObject();
    }

    private static void WriteFit(Utf8JsonWriter json, TrafficEffect e, TrafficExtremes extremes)
    {
        if (extremes.FitOf(e) is not { } fit)
        {
            json.WriteNull("extrapolated");
            return;
        }

        (double low, double high) = fit.Interval(extremes.Period, TrafficExtremes.Confidence);
        json.WriteStartObject("extrapolated");
        json.WriteForce("location", e.Factor * fit.Location);
        json.WriteForce("scale", e.Factor * fit.Scale);
        json.WriteForce("level", e.Factor * fit.ReturnLevel(extremes.Period));
        json.WriteForce("standardError", e.Factor * fit.StandardError(extremes.Period));
        json.WriteForce("low", e.Factor * low);
        json.WriteForce("high", e.Factor * high);
        json.WriteBoolean("largestIsAbove", extremes.IsAbove(e));
        json.WriteNumber("unlikelyBlocks", extremes.UnlikelyOf(e));
        json.WriteEndObject();
    }

    private static void WriteExtremes(Utf8JsonWriter json, TrafficExtremes extremes)
    {
        json.WriteStartObject("extrapolation");
        json.WriteNumberOrNull("years", extremes.Years);
        json.WriteString("block", extremes.Blocks.ByWeek ? "week" : "day");
        json.WriteNumber("blocks", extremes.Blocks.Count);
        json.WriteNumber("confidence", TrafficExtremes.Confidence);
        json.WriteString("whyNot", extremes.WhyNot);
        json.WriteEndObject();
    }

    private static void WriteStresses(Utf8JsonWriter json, TrafficTally tally)
    {
        json.WriteStartArray("stressRanges");
        foreach (TrafficStress s in tally.Plan.Stresses)
        {
            json.WriteStartObject();
            json.WriteString("truss", s.Truss is { } t ? tally.Plan.Bridge.Deck.TrussNames[t] : null);
            json.WriteString("member", tally.Plan.Bridge.Truss.Members[s.Member].Name);
            json.WriteNames("missing", s.Obstacles.Select(o => FatigueWording.Of(o, tally.Plan.Bridge.Truss, DisplayUnits.Si)));
            bool counts = s.Channel is not null && tally.Trucks > 0;
            json.WriteBoolean("counts", counts && TrafficFatigueSection.ComesUnderTension(tally, s));
            json.WriteNumberOrNull("area", s.Area);
            json.WriteNumberOrNull("effective", TrafficFatigueSection.Effective(tally, s) / 1e6);
            json.WriteNumberOrNull("largest", counts ? s.StressOf(tally.Most(s.Channel!.Value)) / 1e6 : null);
            json.WriteNumberOrNull("binWidth", counts ? s.StressOf(tally.Plan.Channels[s.Channel!.Value].BinWidth) / 1e6 : null);
            json.WriteStartArray("bins");
            foreach (long count in counts ? tally.Histogram(s.Channel!.Value) : [])
            {
                json.WriteNumberValue(count);
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteFactor(Utf8JsonWriter json, TrafficTally tally)
    {
        if (TrafficFactorSection.FactorOf(tally) is not { } found)
        {
            json.WriteNull("siteLiveLoadFactor");
            return;
        }

        json.WriteStartObject("siteLiveLoadFactor");
        json.WriteForce("meanOfHeaviestFifth", found.Factor.Mean);
        json.WriteForce("deviationOfHeaviestFifth", found.Factor.Deviation);
        json.WriteNumber("trucksADay", found.Factor.TrucksADay);
        json.WriteString("trucksADayFrom", found.IsOfRecord ? "record" : "adtt");
        json.WriteNumber("oneLane", found.Factor.OneLane);
        json.WriteNumber("oneLaneByFormula", found.Factor.OneLaneByFormula);
        json.WriteNumber("moreLanes", found.Factor.MoreLanes);
        json.WriteNumber("moreLanesByFormula", found.Factor.MoreLanesByFormula);
        json.WriteNumber("leastOneLane", SiteLiveLoadFactor.LeastOneLane);
        json.WriteNumber("leastMoreLanes", SiteLiveLoadFactor.LeastMoreLanes);
        json.WriteString("leastValues", TrafficFactorSection.Check);
        json.WriteString("source", TrafficClauses.SiteFactor.CitationWithMark);
        json.WriteBoolean("usedInRatings", false);
        json.WriteEndObject();
    }
}
