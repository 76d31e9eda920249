using System.Net;

namespace Arraywright.Host.Tests;

public sealed class SettingsReadingTests
{
    [Fact]
    public void Every_argument_sets_its_setting()
    {
        HostSettings read = SettingsReading.Read(["--listen=::1", "--port=81", "--base=/sun", "--page=x=y", "--name=a", "--name=b", "--origin=https://c", "--proxy=true", "--rate=3", "--limit=7"], out string wrong)!;
        Assert.Empty(wrong);
        Assert.Equal((IPAddress.IPv6Loopback, 81, "/sun", "x=y", true, 3, 7.0), (read.Listen, read.Port, read.BasePath, read.PageFolder, read.IsBehindProxy, read.RatePerS, read.LimitS));
        Assert.Equal(["a", "b"], read.Names);
        Assert.Equal(["https://c"], read.Origins);
    }

    [Fact]
    public void With_nothing_said_only_this_machine_is_listened_to()
    {
        HostSettings read = SettingsReading.Read([], out _)!;
        Assert.Equal((IPAddress.Loopback, 8080), (read.Listen, read.Port));
        Assert.True(read.IsLoopback);
    }

    [Theory]
    [InlineData("--port=65536")]
    [InlineData("--port")]
    [InlineData("--rate=0")]
    [InlineData("--listen=here")]
    [InlineData("8080")]
    public void What_is_no_setting_is_refused(string argument)
    {
        Assert.Null(SettingsReading.Read([argument], out string wrong));
        Assert.Contains($"found \"{argument}\"", wrong, StringComparison.Ordinal);
    }
}
