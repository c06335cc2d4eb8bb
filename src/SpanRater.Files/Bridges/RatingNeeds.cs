namespace SpanRater.Files;

/// <summary>What a rating starts from: a method and the dead load. Neither has a default.</summary>
public static class RatingNeeds
{
    /// <summary>What a bridge lacks to be rated, a sentence each; empty where nothing is missing.</summary>
    /// <param name="reading">What the folder gave; it must have a bridge.</param>
    public static IReadOnlyList<string> Missing(BridgeReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var missing = new List<string>();
        if (reading.Bridge!.Rating.Method is null)
        {
            missing.Add(WithoutMethod(reading));
        }

        if (WithoutComponents(reading.Bridge) is { } withoutComponents)
        {
            missing.Add(withoutComponents);
        }

        return missing;
    }

    /// <summary>That the method is missing, and where it belongs.</summary>
    /// <param name="reading">What the folder gave.</param>
    public static string WithoutMethod(BridgeReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return $"{reading.MethodPlace}: the rating method is missing: write method = \"LRFR\", \"LFR\", \"ASR\" or \"partial factors\" under [rating].";
    }

    /// <summary>That the dead load of the components is missing; null where it is there.</summary>
    /// <param name="bridge">The bridge.</param>
    public static string? WithoutComponents(Bridge bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        return bridge.FindCase(Bridge.ComponentsCase) is not null ? null
            : $"{BridgeFolder.LoadsFile}: has no case {Bridge.ComponentsCase}{(bridge.DeadAccount?.TakeOff is null ? "" : $", and the take-off no item of it")}, the dead load of the components on one truss: a bridge is not rated without it.";
    }
}
