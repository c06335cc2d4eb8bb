namespace SpanRater;

/// <summary>A face of a part, as it looks in the section.</summary>
public enum SectionFace
{
    /// <summary>Towards smaller x.</summary>
    Left,

    /// <summary>Towards larger x.</summary>
    Right,

    /// <summary>Towards smaller y.</summary>
    Bottom,

    /// <summary>Towards larger y.</summary>
    Top,
}
