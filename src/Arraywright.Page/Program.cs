using Arraywright.Page.Shell;
using Microsoft.AspNetCore.Components.WebAssembly.Hosting;

// Each step is a task of its own, so that the page answers a person in between.
await Task.Delay(1);
WebAssemblyHostBuilder builder = WebAssemblyHostBuilder.CreateDefault(args);
builder.RootComponents.Add<App>("#app");
await Task.Delay(1);
WebAssemblyHost host = builder.Build();
await Task.Delay(1);
await host.RunAsync();
