namespace SpanRater;

/// <summary>What a part carries, with all that led to it.</summary>
public abstract record PartResistance
{
    /// <summary>The capacity, all factors in it [N or N·m].</summary>
    public abstract double Value { get; }

    /// <summary>What it is made of; null of what is of no one material.</summary>
    public abstract Material? Material { get; }

    /// <summary>What the capacity rests on.</summary>
    public abstract IEnumerable<Clause> Clauses { get; }

    /// <summary>Condition and system factors; null where the method has none.</summary>
    public abstract MemberFactors? PartFactors { get; }

    /// <summary>Name of the cut, bar or plane that governs; null where there is only one.</summary>
    public abstract string? Place { get; }
}
