namespace SpanRater.Files;

/// <summary>The kinds of quantity that files and tables hold.</summary>
public enum Quantity
{
    /// <summary>A plain number.</summary>
    Number,

    /// <summary>Length, SI unit metre.</summary>
    Length,

    /// <summary>A length as small as a deflection, SI unit metre; written in inches or millimetres.</summary>
    Deflection,

    /// <summary>Force, SI unit newton.</summary>
    Force,

    /// <summary>Angle; kept in degrees.</summary>
    Angle,

    /// <summary>Area, SI unit square metre.</summary>
    Area,

    /// <summary>Stress or pressure, SI unit pascal.</summary>
    Stress,

    /// <summary>Load per area, SI unit pascal; written in psf or kN/m².</summary>
    Pressure,

    /// <summary>Force per length, SI unit newton per metre.</summary>
    LineLoad,

    /// <summary>Moment, SI unit newton metre.</summary>
    Moment,

    /// <summary>Weight per volume, SI unit newton per cubic metre.</summary>
    UnitWeight,
}
