using System.Globalization;
using SpanRater.Fuzz;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
switch (args)
{
    case ["kill", var count] when int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out int kills):
        return new KillRun(kills, Console.Out).Run();
    case [KillRun.WriterVerb, var folder]:
        KillRun.WriteForever(folder);
        return 0;
}

(FuzzOptions? options, string? wrong) = FuzzOptions.Read(args);
if (options is null)
{
    Console.Error.WriteLine(wrong);
    return 1;
}

return new FuzzRun(options, Console.Out).Run();
