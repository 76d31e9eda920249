using Arraywright.Cli;

using Host host = Host.OfThisProcess();
return CommandLine.Run(args, host);
