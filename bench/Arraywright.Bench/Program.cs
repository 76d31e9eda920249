using Arraywright.Bench;

// Which part to run: "circuit", "search", "year", "drawing", or all of them.
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
