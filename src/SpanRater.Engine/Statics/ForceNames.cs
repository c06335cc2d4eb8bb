namespace SpanRater;

/// <summary>The unknown forces of a truss in one row, members first, then reaction components, with their names and directions.</summary>
public sealed class ForceNames
{
    private readonly Truss truss;
    private readonly IReadOnlyList<EquilibriumSystem.ReactionComponent> reactions;

    internal ForceNames(Truss truss, EquilibriumSystem equilibrium)
    {
        this.truss = truss;
        reactions = equilibrium.Reactions;
    }

    /// <summary>Number of forces.</summary>
    public int Count => truss.Members.Count + reactions.Count;

    /// <summary>Name of a member, or joint and direction of a reaction: <c>L0 up</c>.</summary>
    /// <param name="force">Position of the force.</param>
    public string this[int force]
    {
        get
        {
            if (IsMember(force))
            {
                return truss.Members[force].Name;
            }

            (int joint, double x, double y) = reactions[force - truss.Members.Count];
            string direction = (x, y) switch
            {
                (1, 0) => "right",
                (-1, 0) => "left",
                (0, 1) => "up",
                (0, -1) => "down",
                _ => "along the normal",
            };
            return $"{truss.Joints[joint].Name} {direction}";
        }
    }

    /// <summary>True for a member, false for a reaction.</summary>
    /// <param name="force">Position of the force.</param>
    public bool IsMember(int force) => force < truss.Members.Count;

    /// <summary>Joint at which a reaction acts.</summary>
    /// <param name="force">Position of a reaction.</param>
    public int JointOf(int force) => reactions[force - truss.Members.Count].Joint;

    /// <summary>How far a force runs to the right and rises where it acts on a joint, and the length along it: a member away from the joint [m], a reaction as a unit vector.</summary>
    /// <param name="force">Position of the force.</param>
    /// <param name="joint">The joint on which it acts; an end of the member.</param>
    public (double Run, double Rise, double Length) DirectionAt(int force, int joint)
    {
        if (!IsMember(force))
        {
            EquilibriumSystem.ReactionComponent reaction = reactions[force - truss.Members.Count];
            return (reaction.X, reaction.Y, 1);
        }

        Joint here = truss.Joints[joint];
        Joint there = truss.Joints[truss.FromJoint(force) == joint ? truss.ToJoint(force) : truss.FromJoint(force)];
        return (there.X - here.X, there.Y - here.Y, truss.Length(force));
    }
}
