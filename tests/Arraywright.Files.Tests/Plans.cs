namespace Arraywright.Files.Tests;

/// <summary>Plans to start from.</summary>
internal static class Plans
{
    /// <summary>The smallest plan with a wiring. Line 1 is <c>panels:</c>; tests rely on its lines and columns.</summary>
    public const string Small =
        """
        panels:
          - name: a
            count: 4
            power: 120 W
            voc: 22.9 V
            isc: 6.72 A
            vmp: 18.9 V
            imp: 6.35 A
        inputs:
          - name: in
            max_voltage: 60 V
            rated_current: 10 A
            wiring: a + a | a + a

        """;

    /// <summary>A plan with every key of the file.</summary>
    public const string Full =
        """
        plan: Lambing shed, north field
        goal: day
        place:
          latitude: 54.6
          longitude: -3.1
          elevation: 210 m
          coldest: -14 C
          weather: ../weather/some.epw
          time_zone: Europe/London
          horizon:
            - { azimuth: 135 deg, height: 12 deg }
            - { azimuth: 90 deg, height: 4.5 deg }
          albedo: [70 %, 70 %, 0.5, 20 %, 20 %, 20 %, 20 %, 20 %, 20 %, 20 %, 20 %, 60 %]
        mount:
          tilt: 40 deg
          azimuth: 170 deg
          kind: close roof
          soiling: 4 %
        sky: hay-davies
        panels:
          - name: shed-120
            count: 4
            power: 120 W
            voc: 22.9 V
            isc: 6.72 A
            vmp: 18.9 V
            imp: 6.35 A
            voc_temperature: -0.29 %/K
            isc_temperature: 0.05 %/K
            power_temperature: -0.38 %/K
            cells: 36
            bypass_diodes: 2
            max_series_fuse: 15 A
            max_system_voltage: 600 V
            tolerance: 3 %
            noct: 45 C
            technology: mono perc
            shade: { groups: [80 %, 0 %] }
            tilt: 60 deg
            azimuth: 200 deg
            price: 85.5 EUR
          - name: old
            count: 1
            power: 60 W
            voc: 21.6 V
            isc: 3.74 A
            shade:
              - { from: 7:30, to: 10:00, fraction: 60 % }
              - { from: 15, to: 17, fraction: 0.25 }
        candidates:
          - name: mill-200
            power: 200 W
            voc: 24.3 V
            isc: 10.41 A
            price: 120 EUR
        units:
          - name: dairy-store
            max_power: { value: 0.8 kW, evidence: label }
            battery: { capacity: 1.2 kWh, from: 20 %, to: 95 %, load: 40 W }
        inputs:
          - name: left
            unit: dairy-store
            max_voltage: 60 V
            start_voltage: 14 V
            mpp_voltage: 12..45 V
            max_current: 10 A
            max_short_circuit_current:
              value: 14 A
              evidence: maker
              note: letter of 2026-03-02, "array short-circuit current"
              exceed: 20 %
            max_power: 400 W
            efficiency: 95 %
            wiring: (shed-120 + shed-120) | (shed-120 + shed-120)
          - name: right
            max_voltage: 100 V
            rated_current: { value: 8 A, evidence: label }
            battery: { capacity: 500 Wh }
        cable:
          length: 25 ft
          size: 10 AWG
          string_length: 2 m
          string_size: 2.5 mm2
          contact: 0.4 mohm

        """;

    /// <summary>The plan of a text that must have no fault.</summary>
    public static Plan Read(string text)
    {
        PlanReading reading = PlanFile.Read(text, "plan.yaml");
        Assert.Empty(reading.Faults);
        return Assert.IsType<Plan>(reading.Plan);
    }

    /// <summary>The smallest plan with one piece of its text put in place of another, which must occur.</summary>
    public static string Changed(string from, string to)
    {
        Assert.Contains(from, Small, StringComparison.Ordinal);
        int at = Small.IndexOf(from, StringComparison.Ordinal);
        return string.Concat(Small.AsSpan(0, at), to, Small.AsSpan(at + from.Length));
    }
}
