using System.Globalization;
using System.Runtime.CompilerServices;

namespace SpanRater.Tests;

/// <summary>
/// The whole suite runs under a culture that writes −1.234,5 for minus one thousand two hundred and thirty-four and a half.
/// It is made by hand, so that it needs no culture tables on the machine.
/// </summary>
internal static class CommaCulture
{
    [ModuleInitializer]
    internal static void Use()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        culture.NumberFormat.NumberDecimalSeparator = ",";
        culture.NumberFormat.NumberGroupSeparator = ".";
        culture.NumberFormat.NegativeSign = "−";
        CultureInfo.DefaultThreadCurrentCulture = culture;
        CultureInfo.DefaultThreadCurrentUICulture = culture;
        CultureInfo.CurrentCulture = culture;
    }
}
