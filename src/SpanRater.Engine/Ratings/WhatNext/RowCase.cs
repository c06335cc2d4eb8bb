using MathNet.Numerics.RootFinding;

namespace SpanRater;

/// <summary>One rating row whose capacity follows from its member's make, and what its factor would be with another make.</summary>
internal sealed class RowCase
{
    private readonly StrengthRules rules;
    private readonly Condition? condition;

    private RowCase(MemberRow row, MemberMake make, StrengthRules rules, Condition? condition)
    {
        Row = row;
        Make = make;
        this.rules = rules;
        this.condition = condition;
    }

    public MemberRow Row { get; }

    public MemberMake Make { get; }

    /// <summary>The lowest row of each member of each truss that may govern and whose capacity follows from its make, the lowest first.</summary>
    public static IReadOnlyList<RowCase> Lowest(BridgeRating rating)
    {
        return
        [
            .. rating.MemberRows.Where(r => r is { Resistance: not null, Factor: not null, FactorAt: not null } && rating.MayGovern(r))
                .DistinctBy(r => (r.Truss, r.MemberIndex))
                .Select(r => new RowCase(r, r.Resistance!.Make, rating.Method.StrengthsAt(r.Level)!, rating.Bridge.Rating.Condition)),
        ];
    }

    /// <summary>Capacity with another make [N]; 0 where nothing is left or no rule holds any more.</summary>
    public double CapacityOf(MemberMake make) => ResistanceOf(make)?.Value ?? 0;

    /// <summary>What leads to that capacity; null where nothing is left or no rule holds any more.</summary>
    public MemberResistance? ResistanceOf(MemberMake make) => MemberCapacity.Of(make, Row.Sense, rules, condition).Resistance;

    /// <summary>The factor with another make [-].</summary>
    public double FactorOf(MemberMake make) => Row.FactorWith(CapacityOf(make)) ?? double.PositiveInfinity;

    /// <summary>The make with some readings changed; null where nothing would be left of it.</summary>
    public MemberMake? With(IEnumerable<(Reading Reading, double Value)> changed)
    {
        Observation[] seen = [.. Make.Section.Observations];
        foreach ((Reading reading, double value) in changed)
        {
            seen[reading.Index] = reading.With(value);
        }

        return FoundSection.Create(Make.Section.AsBuilt, seen).Section is { } section ? Make with { Section = section } : null;
    }

    /// <summary>The factor with some readings changed; 0 where nothing would be left of the member [-].</summary>
    public double FactorWith(IEnumerable<(Reading Reading, double Value)> changed) => With(changed) is { } make ? FactorOf(make) : 0;

    /// <summary>The capacity at which the factor is 1 [N]; null where none makes it so.</summary>
    public double? NeededCapacity()
    {
        double low = 0, high = Math.Max(Row.Capacity!.Value, 1);
        for (int doubled = 0; (Row.FactorWith(high) ?? double.PositiveInfinity) < 1; doubled++)
        {
            if (doubled == 40)
            {
                return null;
            }

            high *= 2;
        }

        double Excess(double capacity) => Math.Min(Row.FactorWith(capacity) ?? 2, 2) - 1;
        return Excess(low) >= 0 ? 0 : Brent.FindRoot(Excess, low, high, high * 1e-12);
    }
}
