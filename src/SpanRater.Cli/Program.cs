using SpanRater.Cli;

return ProgramProcess.Run(args);
