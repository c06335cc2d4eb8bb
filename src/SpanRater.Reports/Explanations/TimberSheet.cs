using System.Globalization;
using SpanRater.Files;
using static SpanRater.Reports.CapacitySheet;

namespace SpanRater.Reports;

/// <summary>A timber on the capacity sheet: its value before adjustment, each factor, and the loss to buckling.</summary>
internal static class TimberSheet
{
    public static IEnumerable<ResultBlock> Of(TimberStrength timber, MemberSection section, DisplayUnits units)
    {
        string name = timber.Mode == MemberMode.TimberTension ? "Ft" : "Fc";
        yield return new Equation($"{name} = {SectionWording.Stress(timber.Stress.Reference, units)}{string.Concat(timber.Stress.Factors.Select(f => $" × {f.Name} {Number(f.Value)}"))} = {SectionWording.Stress(timber.Stress.Value, units)}").Block;
        if (timber.Mode == MemberMode.TimberCompression)
        {
            yield return new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Slenderness le/d = {timber.Slenderness:0.0}; buckling leaves CP = {timber.StabilityFactor:0.000} of it, by the modulus for stability Emin."));
        }

        string net = timber.Mode == MemberMode.TimberTension && section.NetArea is { } left && left < section.Area ? $", net of {Area(section.Area, units)}" : "";
        string stability = timber.Mode == MemberMode.TimberCompression ? $" × CP {Number(timber.StabilityFactor)}" : "";
        yield return new Equation($"{Area(timber.Area, units)}{net} × {SectionWording.Stress(timber.Stress.Value, units)}{stability}{Factors(timber)} = {Force(timber.Value, units)}").Block;
    }
}
