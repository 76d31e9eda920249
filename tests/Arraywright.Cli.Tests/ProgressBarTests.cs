namespace Arraywright.Cli.Tests;

public sealed class ProgressBarTests
{
    [Fact]
    public void Work_of_less_than_a_second_shows_no_bar()
    {
        Clock clock = new();
        Assert.Empty(Show(clock, shown: true, bar =>
        {
            clock.Pass(0.99);
            bar.Report(0.5);
        }));
    }

    [Fact]
    public void Longer_work_shows_how_far_it_is_and_wipes_the_bar_at_its_end()
    {
        Clock clock = new();
        string text = Show(clock, shown: true, bar =>
        {
            clock.Pass(1.5);
            bar.Report(0.25);
            bar.Report(0.3);
            clock.Pass(0.2);
            bar.Report(2);
        });
        string[] drawn = text.Split('\r', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(3, drawn.Length);
        Assert.Equal("  working [##########..............................]  25 %", drawn[0]);
        Assert.Equal("  working [########################################] 100 %", drawn[1]);
        Assert.True(drawn[2].Length >= drawn[1].Length && drawn[2].Trim().Length == 0);
    }

    [Fact]
    public void Where_nobody_sees_it_nothing_is_drawn()
    {
        Clock clock = new();
        Assert.Empty(Show(clock, shown: false, bar =>
        {
            clock.Pass(5);
            bar.Report(0.5);
        }));
    }

    private static string Show(Clock clock, bool shown, Action<ProgressBar> work)
    {
        StringWriter error = new();
        using (ProgressBar bar = new(error, shown, clock))
        {
            work(bar);
        }

        return error.ToString();
    }

    private sealed class Clock : TimeProvider
    {
        private long _ticks;

        public override long TimestampFrequency => TimeSpan.TicksPerSecond;

        public override long GetTimestamp() => _ticks;

        public void Pass(double seconds) => _ticks += TimeSpan.FromSeconds(seconds).Ticks;
    }
}
