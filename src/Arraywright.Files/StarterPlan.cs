namespace Arraywright.Files;

/// <summary>The plan that <c>arraywright new</c> writes: complete, commented, to be changed line by line.</summary>
public static class StarterPlan
{
    /// <summary>The starter plan as YAML.</summary>
    public const string Text =
        """
        # A plan for Arraywright. Change the figures to yours; what follows a # is for you to read.
        # Every figure needs its unit. Leave out what you do not know: it is filled in, and listed as assumed.

        plan: Beekeeper's hut, top orchard
        goal: year                    # year, day or peak

        place:
          latitude: 54.6              # degrees, north positive
          longitude: -3.1             # degrees, east positive
          elevation: 210 m
          # coldest: -14 C            # coldest air with the panels connected; left out: from the climate

        mount:
          tilt: 40 deg                # from horizontal
          azimuth: 180 deg            # clockwise from north: 90 is east, 180 south, 270 west
          kind: open rack             # open rack, close roof or flat on ground

        # The panels at hand, one item a kind. Copy the figures from the label at the back.
        panels:
          - name: orchard-100         # letters, digits and hyphens
            count: 2
            power: 100 W
            voc: 22.3 V               # open circuit: nothing connected
            isc: 5.86 A               # short circuit
            vmp: 18.4 V               # at maximum power
            imp: 5.44 A
            voc_temperature: -0.30 %/K
            isc_temperature: 0.05 %/K
            cells: 36
            max_series_fuse: 15 A

          - name: old-60              # a second kind; delete it if there is none
            count: 1
            power: 60 W
            voc: 21.6 V
            isc: 3.74 A
            vmp: 17.5 V
            imp: 3.43 A

        # Where the panels are to be connected. max_voltage is hard: nothing moves it.
        inputs:
          - name: hut-store
            max_voltage: 60 V
            mpp_voltage: 14..55 V
            rated_current: 10 A       # a printed current of unknown meaning; better, if you know which:
            # max_current: 10 A       #   what the input draws at most
            # max_short_circuit_current: 14 A   # what the panels may have at most
            max_power: 240 W
            battery: { capacity: 500 Wh, from: 20 %, to: 100 %, load: 15 W }
            # wiring: 2*orchard-100 | old-60    # to judge a wiring of your own with `arraywright check`

        cable:
          length: 6 m                 # one way, from the panels to the input
          size: 4 mm2                 # or such as 12 AWG

        """;
}
