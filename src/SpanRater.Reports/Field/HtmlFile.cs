using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;

namespace SpanRater.Reports;

/// <summary>Renders components to the bytes of a file: UTF-8, lines ending in LF, the same in whatever culture.</summary>
internal static class HtmlFile
{
    /// <summary>The stylesheet that every page holds.</summary>
    public static string Style { get; } = Resource("report.css");

    /// <summary>What the rolling of vehicles adds to it.</summary>
    public static string RollingStyle { get; } = Resource("living.css");

    /// <summary>A whole page.</summary>
    /// <typeparam name="TComponent">The component, from the html element on.</typeparam>
    /// <param name="parameters">Its parameters.</param>
    public static byte[] Page<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.All)] TComponent>(params (string Name, object? Value)[] parameters)
        where TComponent : IComponent =>
        Bytes<TComponent>("<!DOCTYPE html>\n", parameters);

    /// <summary>What a component renders, behind a first line.</summary>
    /// <typeparam name="TComponent">The component.</typeparam>
    /// <param name="first">What stands before it; empty for nothing.</param>
    /// <param name="parameters">Its parameters.</param>
    public static byte[] Bytes<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.All)] TComponent>(string first, params (string Name, object? Value)[] parameters)
        where TComponent : IComponent
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        try
        {
            return Encoding.UTF8.GetBytes(first + Rendered<TComponent>(parameters).GetAwaiter().GetResult());
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    private static async Task<string> Rendered<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.All)] TComponent>((string Name, object? Value)[] parameters)
        where TComponent : IComponent
    {
        using ServiceProvider services = new ServiceCollection().AddSingleton<ILoggerFactory>(NullLoggerFactory.Instance).BuildServiceProvider();
        await using var renderer = new HtmlRenderer(services, NullLoggerFactory.Instance);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var view = ParameterView.FromDictionary(parameters.ToDictionary(p => p.Name, p => p.Value));
            return (await renderer.RenderComponentAsync<TComponent>(view)).ToHtmlString().ReplaceLineEndings("\n");
        });
    }

    /// <summary>A text that is kept in the program.</summary>
    /// <param name="name">Its name.</param>
    public static string Resource(string name)
    {
        using Stream stream = typeof(HtmlFile).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
