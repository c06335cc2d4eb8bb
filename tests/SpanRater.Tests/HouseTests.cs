using System.Reflection;
using System.Xml.Linq;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests;

/// <summary>The rules of the house that a compiler does not see.</summary>
public class HouseTests
{
    [Theory]
    [InlineData("SpanRater.Engine", "", "MathNet.Numerics")]
    [InlineData("SpanRater.Files", "SpanRater.Engine", "CsvHelper Tomlyn UnitsNet")]
    [InlineData("SpanRater.Pictures", "SpanRater.Files", "ScottPlot")]
    [InlineData("SpanRater.Reports", "SpanRater.Pictures", "Microsoft.AspNetCore.Components.Web")]
    [InlineData("SpanRater.Cli", "SpanRater.Reports", "Spectre.Console System.CommandLine")]
    public void Project_ReferencesOneWay_AndKnowsItsOwnPackagesOnly(string project, string reference, string packages)
    {
        var file = XDocument.Load(Path.Combine(Repository.Root, "src", project, project + ".csproj"));
        Assert.Equal(
            reference.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            file.Descendants("ProjectReference").Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value)));
        Assert.Equal(
            packages.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            file.Descendants("PackageReference").Select(r => r.Attribute("Include")!.Value));
    }

    [Fact]
    public void Engine_PublicSignatures_NameNoTypeOfAPackage()
    {
        Assembly engine = typeof(Truss).Assembly;
        IEnumerable<Type> types = engine.GetExportedTypes().SelectMany(t =>
            t.GetMembers(BindingFlags.Public | BindingFlags.Instance | BindingFlags.Static | BindingFlags.DeclaredOnly).SelectMany(m => m switch
            {
                MethodInfo method => method.GetParameters().Select(p => p.ParameterType).Append(method.ReturnType),
                ConstructorInfo made => made.GetParameters().Select(p => p.ParameterType),
                PropertyInfo property => [property.PropertyType],
                FieldInfo field => [field.FieldType],
                _ => [],
            }));
        Assert.All(types.SelectMany(WithArguments), t => Assert.True(
            t.Assembly == engine || t.Assembly.GetName().Name!.StartsWith("System.", StringComparison.Ordinal), $"{t} is a type of {t.Assembly.GetName().Name}"));
    }

    [Fact]
    public void SourceFile_PastFiveHundredLines_IsTwo() =>
        Assert.All(
            Directory.EnumerateFiles(Path.Combine(Repository.Root, "src"), "*.cs", SearchOption.AllDirectories).Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)),
            f => Assert.InRange(File.ReadLines(f).Count(), 1, 500));

    private static IEnumerable<Type> WithArguments(Type type) =>
        type.HasElementType ? WithArguments(type.GetElementType()!)
        : type.IsGenericType ? type.GetGenericArguments().Where(a => !a.IsGenericParameter).SelectMany(WithArguments).Append(type)
        : type.IsGenericParameter ? []
        : [type];
}
