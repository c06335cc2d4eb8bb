using System.Globalization;
using System.Runtime.CompilerServices;

namespace SpanRater.Tests;

/// <summary>The whole suite runs under a culture that writes 1,5 for one and a half.</summary>
internal static class CommaCulture
{
    [ModuleInitializer]
    internal static void Use()
    {
        var culture = CultureInfo.GetCultureInfo("de-DE");
        CultureInfo.DefaultThreadCurrentCulture = culture;
        CultureInfo.DefaultThreadCurrentUICulture = culture;
        CultureInfo.CurrentCulture = culture;
    }
}
