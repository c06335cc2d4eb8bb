namespace SpanRater;

/// <summary>The kinds of parts that are rated.</summary>
public enum PartKind
{
    /// <summary>A member of a truss.</summary>
    TrussMember,

    /// <summary>Planks or laminations that the wheels stand on.</summary>
    Deck,

    /// <summary>A beam along the span, from floorbeam to floorbeam.</summary>
    Stringer,

    /// <summary>A beam across, from truss to truss.</summary>
    Floorbeam,

    /// <summary>What hangs a floorbeam's end from the truss.</summary>
    Hanger,

    /// <summary>A pin.</summary>
    Pin,

    /// <summary>The head of an eyebar, around the pin.</summary>
    EyebarHead,

    /// <summary>Plates on a member's end around the pin.</summary>
    PinPlate,

    /// <summary>Rivets.</summary>
    Rivets,

    /// <summary>Bolts.</summary>
    Bolts,

    /// <summary>Gusset plates.</summary>
    Gusset,
}

/// <summary>The effects that are rated.</summary>
public enum PartEffect
{
    /// <summary>A force [N].</summary>
    Force,

    /// <summary>A bending moment [N·m].</summary>
    Moment,

    /// <summary>A shear [N].</summary>
    Shear,

    /// <summary>A pressure of one part on another, as a force [N].</summary>
    Bearing,
}
