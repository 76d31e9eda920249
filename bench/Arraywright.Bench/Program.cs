using Arraywright.Bench;

// Which part to run: "circuit", "search", "year", "drawing", or all of them; "serve" by itself, with the seconds of each load.
string part = args.Length > 0 ? args[0] : "all";
Console.Out.WriteLine($"{System.Runtime.InteropServices.RuntimeInformation.FrameworkDescription}, {Environment.ProcessorCount} processors, {Machine.Processor()}");
if (part is "circuit" or "all")
{
    CircuitBench.Run(Console.Out);
}

if (part is "search" or "all")
{
    SearchBench.Run(Console.Out, args.Length > 1 ? args[1] : "");
}

if (part is "year" or "all")
{
    YearBench.Run(Console.Out);
}

if (part is "drawing" or "all")
{
    DrawingBench.Run(Console.Out);
}

if (part == "serve")
{
    await ServeBench.RunAsync(Console.Out, args.Length > 1 ? double.Parse(args[1], System.Globalization.CultureInfo.InvariantCulture) : 60);
}
