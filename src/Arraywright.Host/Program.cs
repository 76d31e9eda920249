using System.Net.Sockets;
using Arraywright.Host;
using Microsoft.AspNetCore.Connections;

if (SettingsReading.Read(args, out string wrong) is not { } settings)
{
    Console.Error.WriteLine($"arraywright-host: {wrong}");
    return 2;
}

// Two threads that compute must not keep the others from being heard.
ThreadPool.GetMinThreads(out int workers, out int ports);
ThreadPool.SetMinThreads(workers + 8, ports);
try
{
    await using WebApplication app = ArraywrightHost.Build(settings);
    await app.StartAsync();
    Greeting.Print(Console.Out, settings, ArraywrightHost.Address(app));
    await app.WaitForShutdownAsync();
    return 0;
}
catch (IOException failure) when (failure.GetBaseException() is AddressInUseException or SocketException { SocketErrorCode: SocketError.AddressAlreadyInUse })
{
    Console.Error.WriteLine($"arraywright: port {settings.Port} is taken; expected a free one, such as --port {settings.Port + 1}, or --port 0 for any");
    return 2;
}
catch (Exception failure) when (failure is IOException or SocketException)
{
    Console.Error.WriteLine($"arraywright: cannot listen on {settings.Listen}: {failure.GetBaseException().Message}");
    return 2;
}
