namespace SpanRater;

/// <summary>The dimensions that shapes have.</summary>
public enum ShapeDimension
{
    /// <summary>Width: of a plate that lies, an eyebar's body, a square bar, a timber; a leg that lies; of both flanges.</summary>
    Width,

    /// <summary>Depth: of a plate that stands, a timber; a leg that stands; over both flanges.</summary>
    Depth,

    /// <summary>Thickness: of a plate or an eyebar, of both legs of an angle, of a pipe's wall.</summary>
    Thickness,

    /// <summary>Thickness of the leg of an angle that stands, the one as long as its depth.</summary>
    UprightLeg,

    /// <summary>Thickness of the leg of an angle that lies, the one as long as its width.</summary>
    FlatLeg,

    /// <summary>Thickness of a web.</summary>
    Web,

    /// <summary>Thickness of both flanges; where they taper, in the middle of the overhang.</summary>
    Flange,

    /// <summary>Thickness of the top flange.</summary>
    TopFlange,

    /// <summary>Thickness of the bottom flange.</summary>
    BottomFlange,

    /// <summary>Width of the top flange.</summary>
    TopWidth,

    /// <summary>Width of the bottom flange.</summary>
    BottomWidth,

    /// <summary>Diameter of a round bar, outer diameter of a pipe.</summary>
    Diameter,

    /// <summary>Diameter at the root of the thread of a bar that is not upset.</summary>
    Root,

    /// <summary>Width of an eyebar's head across the pin.</summary>
    HeadWidth,

    /// <summary>Diameter of an eyebar's pin hole.</summary>
    PinHole,
}
