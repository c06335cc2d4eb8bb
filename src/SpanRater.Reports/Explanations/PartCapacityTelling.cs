using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How the capacity of a part of the floor or of a connection follows: every mode with its equation, its numbers and its value.</summary>
internal static class PartCapacityTelling
{
    /// <summary>The sheet.</summary>
    public static IEnumerable<ResultBlock> Of(PartResistance resistance, PartRow row, SheetUnits sheet) => resistance switch
    {
        HangerResistance hanger => CapacitySheet.OfBars(hanger.Bars, hanger.IsRodOfBeam ? $"the rod of {row.Name}" : row.Name, sheet),
        TrussedResistance trussed => TrussedTelling.Of(trussed, row.Name, sheet),
        BeamResistance beam => BeamTelling.Of(beam, row.Name, sheet),
        ConnectionResistance connection => ConnectionTelling.Of(connection, row, sheet),
        _ => throw new ArgumentOutOfRangeException(nameof(resistance), resistance, "Every resistance has its telling."),
    };
}
