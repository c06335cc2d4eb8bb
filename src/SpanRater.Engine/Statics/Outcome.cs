using System.Diagnostics.CodeAnalysis;

namespace SpanRater;

/// <summary>Either an answer or the reason why there is none.</summary>
/// <typeparam name="T">The answer.</typeparam>
public sealed class Outcome<T>
    where T : class
{
    private Outcome(T? value, Refusal? refusal)
    {
        Value = value;
        Refusal = refusal;
    }

    /// <summary>The answer; null where it is refused.</summary>
    public T? Value { get; }

    /// <summary>Why there is no answer; null where there is one.</summary>
    public Refusal? Refusal { get; }

    /// <summary>Gives the answer, or says why there is none.</summary>
    /// <param name="value">The answer.</param>
    /// <param name="refusal">The reason.</param>
    /// <returns>True when there is an answer.</returns>
    public bool TryGet([NotNullWhen(true)] out T? value, [NotNullWhen(false)] out Refusal? refusal)
    {
        value = Value;
        refusal = Refusal;
        return Value is not null;
    }

    /// <summary>An answer.</summary>
    /// <param name="value">The answer.</param>
    public static implicit operator Outcome<T>(T value) => new(value ?? throw new ArgumentNullException(nameof(value)), null);

    /// <summary>A reason why there is no answer.</summary>
    /// <param name="refusal">The reason.</param>
    public static implicit operator Outcome<T>(Refusal refusal) => new(null, refusal ?? throw new ArgumentNullException(nameof(refusal)));
}
