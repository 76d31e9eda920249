using System.IO.Compression;
using System.Net;
using Arraywright.Energy;
using Arraywright.Host.Api;
using Arraywright.Host.Page;
using Microsoft.AspNetCore.HttpOverrides;
using Microsoft.AspNetCore.ResponseCompression;
using Microsoft.AspNetCore.Server.Kestrel.Core;

namespace Arraywright.Host;

/// <summary>Puts the host together.</summary>
public static class ArraywrightHost
{
    /// <summary>Time after the request to stop in which work under way may end by itself; then it gives the best so far.</summary>
    internal static readonly TimeSpan Drain = TimeSpan.FromSeconds(5);

    private const int MostConnections = 1024;

    /// <summary>Places whose sun is kept between questions, about a megabyte each.</summary>
    private const int MostPlaces = 48;
    private static readonly string[] OwnNames = ["localhost", "127.0.0.1", "[::1]"];

    /// <summary>The host, ready to start.</summary>
    public static WebApplication Build(HostSettings settings)
    {
        WebApplicationBuilder builder = WebApplication.CreateSlimBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.Configuration.Sources.Clear();
        builder.Logging.ClearProviders().AddSimpleConsole(console => console.SingleLine = true).SetMinimumLevel(LogLevel.Warning);
        builder.WebHost.ConfigureKestrel(kestrel => Limit(kestrel, settings));
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = Drain + TimeSpan.FromSeconds(4));
        builder.Services.AddSingleton(settings);
        builder.Services.AddSingleton<Lanes>();
        builder.Services.AddSingleton<AnswerCache>();
        builder.Services.AddSingleton(new SunMemory(MostPlaces));
        builder.Services.AddSingleton<Answering>();
        builder.Services.AddSingleton(PageFiles.Read(settings.PageFolder ?? Path.Combine(AppContext.BaseDirectory, "page"), settings.BasePath));
        builder.Services.AddRateLimiter(limiter => ClientRate.Configure(limiter, settings));
        builder.Services.AddResponseCompression(Compress);
        builder.Services.Configure<BrotliCompressionProviderOptions>(brotli => brotli.Level = CompressionLevel.Fastest);
        builder.Services.Configure<GzipCompressionProviderOptions>(gzip => gzip.Level = CompressionLevel.Fastest);
        builder.Services.AddHostFiltering(hosts => hosts.AllowedHosts = AllowedHosts(settings));
        builder.Services.Configure<ForwardedHeadersOptions>(forwarded => forwarded.ForwardedHeaders = ForwardedHeaders.XForwardedFor | ForwardedHeaders.XForwardedProto | ForwardedHeaders.XForwardedHost);
        builder.Services.AddCors(cors => cors.AddDefaultPolicy(policy => policy.WithOrigins([.. settings.Origins]).WithMethods("GET", "POST").WithHeaders("Content-Type")));
        WebApplication app = builder.Build();
        Assemble(app, settings);
        return app;
    }

    /// <summary>Where a started host is.</summary>
    public static Uri Address(WebApplication app) => new(new Uri(app.Urls.First()), app.Services.GetRequiredService<HostSettings>().BasePath + "/");

    private static void Assemble(WebApplication app, HostSettings settings)
    {
        PageFiles page = app.Services.GetRequiredService<PageFiles>();
        if (settings.IsBehindProxy)
        {
            app.UseForwardedHeaders();
        }

        app.UseHostFiltering();
        app.Use(Problem.InsteadOfFailure);
        if (settings.BasePath.Length > 0)
        {
            app.UsePathBase(settings.BasePath);
            app.Use(OnlyUnderBase);
        }

        app.Use(SecurityHeaders.For(page));
        app.UseRouting();
        if (settings.Origins.Count > 0)
        {
            app.UseCors();
        }

        app.UseRateLimiter();
        app.UseResponseCompression();
        app.MapGet("/health", () => TypedResults.Text("ok\n"));
        ApiRoutes.Map(app);
        PageRoutes.Map(app, page);
    }

    /// <summary>The page knows itself by its base path alone: from the root it is shown the way, elsewhere there is nothing.</summary>
    private static Task OnlyUnderBase(HttpContext context, RequestDelegate next)
    {
        HttpRequest request = context.Request;
        if (request.PathBase.HasValue && request.Path.HasValue)
        {
            return next(context);
        }

        HostSettings settings = context.RequestServices.GetRequiredService<HostSettings>();
        if (request.Path == "/health")
        {
            return next(context);
        }

        if (request.PathBase.HasValue || request.Path == "/")
        {
            context.Response.Redirect(settings.BasePath + "/");
        }
        else
        {
            context.Response.StatusCode = StatusCodes.Status404NotFound;
        }

        return Task.CompletedTask;
    }

    private static void Limit(KestrelServerOptions kestrel, HostSettings settings)
    {
        kestrel.AddServerHeader = false;
        kestrel.Listen(settings.Listen, settings.Port);
        kestrel.Limits.MaxRequestBodySize = PlanBody.MostBytes;
        kestrel.Limits.MaxConcurrentConnections = MostConnections;
        kestrel.Limits.RequestHeadersTimeout = TimeSpan.FromSeconds(10);
        kestrel.Limits.MaxRequestHeadersTotalSize = 16 << 10;
    }

    private static void Compress(ResponseCompressionOptions options)
    {
        // Nothing secret is in an answer, so that its length may tell what it holds.
        options.EnableForHttps = true;
        options.MimeTypes = ["application/json", "application/problem+json", "application/schema+json", "application/vnd.oai.openapi+json", "text/plain"];
        options.Providers.Add<BrotliCompressionProvider>();
        options.Providers.Add<GzipCompressionProvider>();
    }

    /// <summary>A page of another site that has its name lead here must not be answered.</summary>
    private static List<string> AllowedHosts(HostSettings settings) => settings.IsLoopback || settings.Names.Count > 0
        ? [.. OwnNames, Named(settings.Listen), .. settings.Names]
        : ["*"];

    private static string Named(IPAddress address) => address.AddressFamily == System.Net.Sockets.AddressFamily.InterNetworkV6 ? $"[{address}]" : address.ToString();
}
