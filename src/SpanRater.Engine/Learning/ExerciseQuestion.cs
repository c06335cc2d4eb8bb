namespace SpanRater;

/// <summary>What a question of an exercise asks for.</summary>
public enum AskedQuantity
{
    /// <summary>The upward reaction at a joint [N].</summary>
    Reaction,

    /// <summary>The force in a member, tension positive [N].</summary>
    MemberForce,

    /// <summary>The force in a member for a unit load down at a panel point [-].</summary>
    Ordinate,

    /// <summary>The largest force of one sense in a member as a train crosses in either direction [N].</summary>
    Peak,
}

/// <summary>A question of an exercise.</summary>
/// <param name="Quantity">What it asks for.</param>
/// <param name="Member">Name of the member; null for a reaction.</param>
/// <param name="Joint">Name of the joint of a reaction, or of the panel point of an ordinate; else null.</param>
/// <param name="Sense">The sense of a peak; else null.</param>
public sealed record ExerciseQuestion(AskedQuantity Quantity, string? Member, string? Joint, Sense? Sense);

/// <summary>A mistake that is often made.</summary>
public enum Mistake
{
    /// <summary>The sign of a reaction or an ordinate is turned round.</summary>
    SignFlipped,

    /// <summary>Tension was taken for compression, or compression for tension.</summary>
    SenseFlipped,

    /// <summary>Sine and cosine were exchanged at every joint.</summary>
    SineForCosine,

    /// <summary>Sine and cosine were exchanged at the joint where the member was found.</summary>
    SineForCosineAtJoint,

    /// <summary>The member's own part across or along was divided by the wrong one of sine and cosine.</summary>
    SineForCosineOfMember,

    /// <summary>The reaction at a support was left out of the equations of its joint.</summary>
    ReactionLeftOut,

    /// <summary>The reaction of the other support was given.</summary>
    OtherReaction,

    /// <summary>The ordinate at another panel point was given.</summary>
    OtherPanelPoint,

    /// <summary>The train was driven in one direction only.</summary>
    OneDirectionOnly,

    /// <summary>Every axle was counted with the largest ordinate.</summary>
    AllAxlesAtPeak,

    /// <summary>The number is a thousand times too large or too small: N for kN, lb for kip.</summary>
    Thousandfold,

    /// <summary>A number in kip was given as kN, or one in kN as kip.</summary>
    KipForKilonewton,
}

/// <summary>What comes out where a mistake is made; found by solving again with the mistake in it.</summary>
/// <param name="Mistake">The mistake.</param>
/// <param name="Where">Name of the joint it was made at, or of the panel point; null where it has no place.</param>
/// <param name="Value">What comes out [N; - for an ordinate].</param>
public sealed record MistakenValue(Mistake Mistake, string? Where, double Value);
