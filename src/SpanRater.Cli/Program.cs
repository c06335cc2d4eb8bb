using System.Globalization;
using SpanRater.Cli;

CultureInfo.DefaultThreadCurrentCulture = CultureInfo.InvariantCulture;
CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
return CommandLineProgram.Run(args, Surroundings.OfThisProcess());
