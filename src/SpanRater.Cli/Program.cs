using System.Globalization;
using SpanRater.Cli;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
using var stop = new CancellationTokenSource();
Console.CancelKeyPress += (_, pressed) =>
{
    // The second time the process ends at once.
    pressed.Cancel = !stop.IsCancellationRequested;
    stop.Cancel();
};
return CommandLineProgram.Run(args, Surroundings.OfThisProcess() with { Stop = stop.Token });
