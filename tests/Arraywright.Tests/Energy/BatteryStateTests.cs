using Arraywright.Energy;
using Arraywright.Gear;

namespace Arraywright.Tests.Energy;

public sealed class BatteryStateTests
{
    private static readonly Battery Store = new(1000, 0.2, 1, 0) { MaxChargeW = 400 };

    [Fact]
    public void It_charges_at_its_own_power_and_turns_the_rest_away()
    {
        BatteryState state = new(Store);
        (double room, double served) = state.Step(600, 0, 1);
        Assert.Equal(400, room);
        Assert.Equal(0, served);
        Assert.Equal(600, state.StoredWh);
    }

    [Fact]
    public void The_load_is_served_first_from_what_comes_in_then_from_the_battery()
    {
        BatteryState state = new(Store);
        Assert.Equal((100, 100), state.Step(100, 100, 1));
        Assert.Equal(200, state.StoredWh);
        Assert.Equal((30, 130), state.Step(30, 130, 1)); // 100 Wh of the 200
        Assert.Equal(100, state.StoredWh);
        Assert.Equal((0, 100), state.Step(0, 500, 1)); // empty
        Assert.Equal(0, state.StoredWh);
    }

    [Fact]
    public void A_reserve_is_not_drawn()
    {
        BatteryState state = new(Store with { ReserveFraction = 0.15 });
        Assert.Equal((0, 50), state.Step(0, 200, 1));
        Assert.Equal(150, state.StoredWh);
    }

    /// <summary>By hand: half-way from 95 to 100 % the power has fallen half-way from 400 W to 5 % of 1000 Wh an hour: 225 W, for a quarter of an hour 56 Wh; but only 25 Wh have room.</summary>
    [Fact]
    public void It_slows_down_near_full_and_stops_at_full()
    {
        BatteryState state = new(Store with { FromFraction = 0.975 });
        (double room, _) = state.Step(400, 0, 0.01);
        Assert.Equal(225, room, 1e-9);
        state.Step(400, 0, 10);
        Assert.True(state.IsFull);
        Assert.Equal((0, 0), state.Step(400, 0, 1));
    }

    [Theory]
    [InlineData(BatteryChemistry.IronPhosphate, 400)]
    [InlineData(BatteryChemistry.Nickel, 225)] // half-way from 80 to 100 %
    [InlineData(BatteryChemistry.Lead, 225)]
    public void Chemistry_decides_where_it_begins_to_slow_down(BatteryChemistry chemistry, double acceptedW)
    {
        BatteryState state = new(Store with { FromFraction = 0.9, Chemistry = chemistry });
        Assert.Equal(acceptedW, state.Step(1000, 0, 0.01).RoomW, 1e-9);
    }
}
