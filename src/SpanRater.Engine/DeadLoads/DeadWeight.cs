namespace SpanRater;

/// <summary>What gives an item of dead load its weight.</summary>
public abstract record DeadWeight
{
    private DeadWeight()
    {
    }

    /// <summary>Weight of one of it per length of the span [N/m]; null where it is not spread along the span.</summary>
    public abstract double? PerLength { get; }

    /// <summary>A layer across the deck.</summary>
    /// <param name="Thickness">Thickness [m].</param>
    /// <param name="Width">Width [m].</param>
    /// <param name="UnitWeight">Weight per volume [N/m³].</param>
    /// <param name="Published">The material whose published weight was taken; null where the weight was given.</param>
    public sealed record Layer(double Thickness, double Width, double UnitWeight, PublishedUnitWeight? Published) : DeadWeight
    {
        /// <inheritdoc/>
        public override double? PerLength => Thickness * Width * UnitWeight;
    }

    /// <summary>A weight per area of deck.</summary>
    /// <param name="Pressure">Weight per area [Pa].</param>
    /// <param name="Width">Width [m].</param>
    public sealed record Area(double Pressure, double Width) : DeadWeight
    {
        /// <inheritdoc/>
        public override double? PerLength => Pressure * Width;
    }

    /// <summary>A weight per length, as of a kerb, a rail or a pipe.</summary>
    /// <param name="Load">Weight per length [N/m].</param>
    public sealed record Line(double Load) : DeadWeight
    {
        /// <inheritdoc/>
        public override double? PerLength => Load;
    }

    /// <summary>A weight at each of some joints, as of a floorbeam.</summary>
    /// <param name="Load">Weight at each joint [N].</param>
    public sealed record AtJoints(double Load) : DeadWeight
    {
        /// <inheritdoc/>
        public override double? PerLength => null;
    }

    /// <summary>The members of one truss, half of each at either end. Weights are those of the members as built: steel lost to rust is no relief.</summary>
    /// <param name="PerMember">Weight per length of each member, in the order of the truss [N/m].</param>
    /// <param name="Part">1 for the bare members; the allowance for what is on them, rivets, lacing and gussets [-].</param>
    public sealed record Members(IReadOnlyList<double> PerMember, double Part) : DeadWeight
    {
        /// <inheritdoc/>
        public override double? PerLength => null;
    }
}
