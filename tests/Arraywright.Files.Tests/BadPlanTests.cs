using System.Diagnostics;

namespace Arraywright.Files.Tests;

/// <summary>One change each to a plan that is otherwise good.</summary>
public sealed partial class BadPlanTests
{
    /// <summary>What to replace in the smallest plan, by what, where the fault is (line:column), and a piece of what it says.</summary>
    public static TheoryData<string, string, string, string> Changes => new()
    {
        // Numbers and units.
        { "22.9 V", "22,9 V", "5:10", "write a decimal point, not a comma" },
        { "22.9 V", "22,9", "5:10", "write a decimal point, not a comma" },
        { "22.9 V", "22.9", "5:10", "add the unit, V" },
        { "22.9 V", "'22.9'", "5:10", "add the unit, V" },
        { "6.72 A", "6.72", "6:10", "add the unit, A or mA" },
        { "120 W", "120", "4:12", "add the unit, W or kW" },
        { "22.9 V", "22.9 A", "5:10", "the unit must be V, not \"A\"" },
        { "22.9 V", "22.9 Volt", "5:10", "the unit must be V" },
        { "22.9 V", "22.9 mV", "5:10", "the unit must be V" },
        { "6.72 A", "6.72 V", "6:10", "the unit must be A" },
        { "120 W", "120 Wh", "4:12", "the unit must be W or kW" },
        { "120 W", "120 VA", "4:12", "the unit must be W or kW" },
        { "22.9 V", "V", "5:10", "begin with the number" },
        { "22.9 V", "V 22.9", "5:10", "begin with the number" },
        { "22.9 V", "about 22 V", "5:10", "begin with the number" },
        { "22.9 V", "22.9 V 5 A", "5:10", "the unit must be V" },
        { "22.9 V", "22.9 V or so", "5:10", "the unit must be V" },
        { "22.9 V", "22.9.1 V", "5:10", "write one ordinary number" },
        { "22.9 V", "22..9 V", "5:10", "write one ordinary number" },
        { "22.9 V", "--22.9 V", "5:10", "begin with the number" },
        { "22.9 V", "2 2.9 V", "5:10", "write one ordinary number" },
        { "22.9 V", "NaN V", "5:10", "finite number" },
        { "22.9 V", ".nan", "5:10", "finite number" },
        { "22.9 V", "NaN", "5:10", "finite number" },
        { "22.9 V", "inf V", "5:10", "finite number" },
        { "22.9 V", "-.inf", "5:10", "finite number" },
        { "22.9 V", "Infinity V", "5:10", "finite number" },
        { "22.9 V", "1e999 V", "5:10", "too large" },
        { "22.9 V", "-1e999 V", "5:10", "too large" },
        { "22.9 V", "1e99999999999999999999 V", "5:10", "too large" },
        { "22.9 V", "1e300 V", "5:10", "a voltage from 0.3 V to 1500 V" },
        { "22.9 V", "1e-300 V", "5:10", "a voltage from 0.3 V to 1500 V" },
        { "22.9 V", "99999999999999999999999999999999999999999999 V", "5:10", "too large or too long" },
        { "22.9 V", "0x16 V", "5:10", "ordinary decimals" },
        { "22.9 V", "0 V", "5:10", "from 0.3 V" },
        { "22.9 V", "-22.9 V", "5:10", "from 0.3 V" },
        { "22.9 V", "22_900 V", "5:10", "write one ordinary number" },
        { "22.9 V", "1/2 V", "5:10", "write one ordinary number" },
        { "22.9 V", "\u0662\u0662 V", "5:10", "begin with the number" },
        { "22.9 V", "", "5:9", "found nothing" },
        { "22.9 V", "~", "5:10", "found nothing" },
        { "22.9 V", "null", "5:10", "found nothing" },
        { "22.9 V", "\"\"", "5:10", "a voltage such as" },
        { "22.9 V", "yes", "5:10", "begin with the number" },
        { "22.9 V", "[22.9 V]", "5:10", "found a list" },
        { "22.9 V", "{ value: 22.9 V }", "5:10", "found a group of keys" },
        { "22.9 V", "22.9 V\u2009", "5:10", "the unit must be V" },
        { "22.9 V", "22.9 \u2126", "5:10", "the unit must be V" },
        { "120 W", "-120 W", "4:12", "a power from 0.1 W to 3000 W" },
        { "120 W", "120 kW", "4:12", "a power from 0.1 W to 3000 W" },
        { "120 W", "1.000,5 W", "4:12", "decimal point" },

        // Counts.
        { "count: 4", "count: -4", "3:12", "a whole number from 1 to 200" },
        { "count: 4", "count: 0", "3:12", "a whole number from 1 to 200" },
        { "count: 4", "count: 4.5", "3:12", "a whole number" },
        { "count: 4", "count: 4.0", "3:12", "a whole number" },
        { "count: 4", "count: 10000", "3:12", "a whole number from 1 to 200" },
        { "count: 4", "count: 99999999999999999999", "3:12", "a whole number" },
        { "count: 4", "count: four", "3:12", "a whole number" },
        { "count: 4", "count: 4x", "3:12", "a whole number" },
        { "count: 4", "count: 0x4", "3:12", "a whole number" },
        { "count: 4", "count: 4 panels", "3:12", "a whole number" },
        { "count: 4", "count: NaN", "3:12", "a whole number" },
        { "count: 4", "count:", "3:11", "found nothing" },
        { "count: 4", "count: [4]", "3:12", "found a list" },
        { "count: 4", "cells: 36", "2:5", "a panel without \"count\"" },
        { "count: 4", "count: 4\n    cells: 0", "4:12", "a whole number from 1 to 400" },
        { "count: 4", "count: 4\n    bypass_diodes: -1", "4:20", "a whole number from 0" },
        { "count: 4", "count: 4\n    bypass_diodes: two", "4:20", "a whole number from 0" },

        // Names.
        { "name: a", "name: shed 120", "2:11", "use a hyphen" },
        { "name: a", "name: shed_120", "2:11", "use a hyphen" },
        { "name: a", "name: a+b", "2:11", "\"+\" cannot stand in a name" },
        { "name: a", "name: a|b", "2:11", "\"|\" cannot stand in a name" },
        { "name: a", "name: (a)", "2:11", "a name of letters, digits and hyphens" },
        { "name: a", "name: -a", "2:11", "begin and end it with a letter" },
        { "name: a", "name: \"\"", "2:11", "a name of letters, digits and hyphens" },
        { "name: a", "name: \"a\\u202Eb\"", "2:11", "cannot stand in a name" },
        { "name: a", "name: aaaaaaaaaabbbbbbbbbbccccccccccddddddddddeeeee", "2:11", "at most 40 characters" },
        { "name: a", "name:", "2:10", "found nothing" },
        { "name: in", "name: a", "10:11", "stands on line 2 already" },
        { "name: in", "name: A", "10:11", "stands on line 2 already" },
        { "name: in", "nam: in", "10:5", "did you mean \"name\"?" },
        { "- name: a\n    count", "- count", "2:5", "a panel without \"name\"" },

        // Keys.
        { "voc:", "vco:", "5:5", "did you mean \"voc\"?" },
        { "voc:", "Voc:", "5:5", "did you mean \"voc\"?" },
        { "vmp:", "vmpp:", "7:5", "did you mean \"vmp\"?" },
        { "max_voltage:", "max-voltage:", "11:5", "did you mean \"max_voltage\"?" },
        { "max_voltage:", "maxVoltage:", "11:5", "did you mean \"max_voltage\"?" },
        { "max_voltage:", "max_volts:", "11:5", "did you mean \"max_voltage\"?" },
        { "rated_current:", "rated_curent:", "12:5", "did you mean \"rated_current\"?" },
        { "count: 4", "count: 4\n    efficiency: 95 %", "4:5", "\"efficiency\" belongs to an input" },
        { "count: 4", "count: 4\n    colour: blue", "4:5", "the keys here are name, count, power" },
        { "count: 4", "count: 4\n    \"\": 1", "4:5", "the unknown key \"\"" },
        { "count: 4", "count: 4\n    1: 1", "4:5", "the unknown key \"1\"" },
        { "count: 4", "count: 4\n    count: 5", "4:5", "it stands on line 3 already" },
        { "panels:", "pannels:", "1:1", "did you mean \"panels\"?" },
        { "panels:", "panels: &all", "1:9", "without a YAML anchor" },
        { "inputs:", "input:", "9:1", "did you mean \"inputs\"?" },
        { "inputs:", "panels:", "9:1", "it stands on line 1 already" },
        { "inputs:", "<<: 1\ninputs:", "9:1", "merge keys" },
        { "inputs:", "inputs: 5\nplan:", "9:9", "a list, each item beginning with" },
        { "inputs:", "? [a, b]\n: 1\ninputs:", "9:3", "a key, which is one word" },
        { "    max_voltage: 60 V\n", "", "10:5", "an input without \"max_voltage\"" },
        { "    voc: 22.9 V\n", "", "2:5", "a panel without \"voc\"" },
        { "    isc: 6.72 A\n", "", "2:5", "a panel without \"isc\"" },

        // Shape of the file.
        { "panels:\n  - name: a\n   ", "panels:\n    name: a\n   ", "2:5", "begin each item with a hyphen" },
        { "  - name: a\n", "  - a\n  - name: a\n", "2:5", "keys such as \"name: shed-120\"" },
        { "    count: 4", "   count: 4", "3:4", "check how far the line is indented" },
        { "    count: 4", "     count: 4", "3:11", "begin keys of one group in the same column" },
        { "    count: 4", "\tcount: 4", "3:1", "found a tab; expected spaces" },
        { "    count: 4", "  \t  count: 4", "3:3", "found a tab; expected spaces" },
        { "count: 4", "count 4", "3:5", "\"key: value\"" },
        { "count: 4", "count:4", "3:5", "\"key: value\"" },
        { "count: 4", "count: \"4", "3:12", "quot" },
        { "count: 4", "count: '4", "3:12", "quot" },
        { "count: 4", "count: \"\\q\"", "3:12", "backslash" },
        { "count: 4", "count: [4", "3:12", "bracket" },
        { "count: 4", "count: {4", "3:12", "bracket" },
        { "count: 4", "count: 4]", "3:12", "a whole number" },
        { "count: 4", "count: @4", "3:12", "special character in quotes" },
        { "count: 4", "count: `4`", "3:12", "special character in quotes" },
        { "count: 4", "count: %4", "3:12", "special character in quotes" },
        { "count: 4", "count: - 4", "3:12", "begin the list on the line after its key" },
        { "count: 4", "count: *four", "3:12", "an asterisk begins a YAML alias" },
        { "count: 4", "count: &four 4", "3:12", "without a YAML anchor" },
        { "count: 4", "count: !!int 4", "3:12", "without a YAML tag" },
        { "count: 4", "count: !evil 4", "3:12", "without a YAML tag" },
        { "count: 4", "count: ! 4", "3:12", "without a YAML tag" },
        { "inputs:", "plan: shed: north\ninputs:", "9:11", "put text that has a colon in quotes" },
        { "inputs:", "---\ninputs:", "9:1", "a second document" },
        { "inputs:", "plan: \"a\\nb\"\ninputs:", "9:7", "keep it on one line" },
        { "inputs:", "plan: \"\"\ninputs:", "9:7", "a line of text" },
        { "inputs:", "plan: [a]\ninputs:", "9:7", "found a list" },
        { "inputs:", "plan: a\u0000b\ninputs:", "9:8", "invisible character U+0000" },
        { "inputs:", "plan: a\u001B[31mb\ninputs:", "9:8", "invisible character U+001B" },
        { "inputs:", "goal: fast\ninputs:", "9:7", "one of: year, day, peak" },
        { "inputs:", "goal: yaer\ninputs:", "9:7", "did you mean \"year\"?" },
        { "inputs:", "goal: {}\ninputs:", "9:7", "one of: year, day, peak" },

        // Labels that cannot be true.
        { "18.9 V", "23.5 V", "7:10", "vmp" },
        { "18.9 V", "22.9 V", "7:10", "Was voc typed into vmp?" },
        { "6.35 A", "6.9 A", "8:10", "imp" },
        { "120 W", "1200 W", "4:12", "power" },
        { "120 W", "12 W", "4:12", "power" },
        { "count: 4", "count: 4\n    voc_temperature: 0.29 %/K", "4:22", "voc_temperature" },
        { "count: 4", "count: 4\n    voc_temperature: -0.29", "4:22", "add the unit, %/K, V/K or mV/K" },
        { "count: 4", "count: 4\n    voc_temperature: -0.29 %", "4:22", "a change a degree; write %/K" },
        { "count: 4", "count: 4\n    voc_temperature: -65 mA/K", "4:22", "the unit must be %/K" },
        { "count: 4", "count: 4\n    isc_temperature: 3 mV/K", "4:22", "the unit must be %/K" },
        { "count: 4", "count: 4\n    voc_temperature: -500 V/K", "4:22", "check its unit" },
        { "    power: 120 W\n    voc: 22.9 V\n    isc: 6.72 A\n    vmp: 18.9 V\n", "    power_temperature: -0.4 W/K\n    voc: 22.9 V\n    isc: 6.72 A\n", "4:24", "without \"power\"" },
        { "    imp: 6.35 A\n", "    power_temperature: 0.4 %/K\n", "8:24", "power_temperature" },
        { "    power: 120 W\n    voc: 22.9 V\n    isc: 6.72 A\n    vmp: 18.9 V\n    imp: 6.35 A\n", "    voc: 22.9 V\n    isc: 6.72 A\n", "2:5", "power is missing" },
        { "count: 4", "count: 4\n    tolerance: 3", "4:16", "add the unit, %" },
        { "count: 4", "count: 4\n    tolerance: 300 %", "4:16", "a percentage from 0 % to 50 %" },
        { "count: 4", "count: 4\n    noct: 450 C", "4:11", "a temperature from 20 C to 80 C" },
        { "count: 4", "count: 4\n    noct: 318 K", "4:11", "write degrees Celsius" },
        { "count: 4", "count: 4\n    technology: glass", "4:17", "one of: crystalline silicon" },
        { "count: 4", "count: 4\n    technology: topcom", "4:17", "did you mean \"topcon\"?" },
        { "count: 4", "count: 4\n    price: 85 EUR", "4:12", "write the bare number" },
        { "count: 4", "count: 4\n    price: -1", "4:12", "from 0 to 1000000" },
        { "count: 4", "count: 4\n    tilt: 95 deg", "4:11", "an angle from 0 deg to 90 deg" },
        { "count: 4", "count: 4\n    tilt: 30", "4:11", "add the unit, deg" },
        { "count: 4", "count: 4\n    azimuth: south", "4:14", "begin with the number" },

        // Shade.
        { "count: 4", "count: 4\n    shade: 30", "4:12", "a share from 0 % to 100 %" },
        { "count: 4", "count: 4\n    shade: 130 %", "4:12", "a share from 0 % to 100 %" },
        { "count: 4", "count: 4\n    shade: much", "4:12", "a list of hours" },
        { "count: 4", "count: 4\n    shade: []", "4:12", "0 hours of shade" },
        { "count: 4", "count: 4\n    shade: [0.3, 0.4]", "4:13", "hours of shade such as" },
        { "count: 4", "count: 4\n    shade: [{ from: 10:00, to: 9:00, fraction: 50 % }]", "4:32", "an hour later than \"from\"" },
        { "count: 4", "count: 4\n    shade: [{ from: 25, to: 26, fraction: 50 % }]", "4:21", "from 0:00 to 24:00" },
        { "count: 4", "count: 4\n    shade: [{ from: 7:75, to: 9, fraction: 50 % }]", "4:21", "write hours and minutes" },
        { "count: 4", "count: 4\n    shade: [{ from: 7, to: 9 }]", "4:13", "without \"fraction\"" },
        { "count: 4", "count: 4\n    shade: [{ from: 7, to: 9, fraction: 1 }, { from: 8, to: 10, fraction: 0.5 }]", "4:54", "do not overlap" },
        { "count: 4", "count: 4\n    bypass_diodes: 2\n    shade: { groups: [1, 0, 0] }", "5:22", "3 shares; expected 2" },
        { "count: 4", "count: 4\n    shade: { groups: 30 % }", "4:22", "a list of shares" },
        { "count: 4", "count: 4\n    shade: { group: [30 %] }", "4:14", "did you mean \"groups\"?" },

        // Inputs.
        { "60 V", "60", "11:18", "add the unit, V" },
        { "60 V", "{ value: 60 V, exceed: 10 % }", "11:18", "voltage is hard" },
        { "60 V", "0.5 V", "11:18", "a voltage from 1 V to 2000 V" },
        { "60 V", "60000 V", "11:18", "a voltage from 1 V to 2000 V" },
        { "10 A", "10", "12:20", "add the unit, A or mA" },
        { "10 A", "{ evidence: maker }", "12:20", "a limit without \"value\"" },
        { "10 A", "{ value: 10, evidence: maker }", "12:29", "add the unit, A or mA" },
        { "10 A", "{ value: 10 A, evidence: friend }", "12:45", "one of: none, label, manual, maker" },
        { "10 A", "{ value: 10 A, evidence: lable }", "12:45", "did you mean \"label\"?" },
        { "10 A", "{ value: 10 A, evidnce: maker }", "12:35", "did you mean \"evidence\"?" },
        { "10 A", "{ value: 10 A, evidence: maker, exceed: 20 }", "12:60", "add the unit, %" },
        { "10 A", "{ value: 10 A, evidence: maker, exceed: -5 % }", "12:60", "a percentage from 0 %" },
        { "10 A", "[10 A, 12 A]", "12:20", "found a list" },
        { "10 A", "0 A", "12:20", "a current from" },
        { "10 A", "-10 A", "12:20", "a current from" },
        { "rated_current: 10 A", "start_voltage: 70 V", "12:20", "at most \"max_voltage\"" },
        { "rated_current: 10 A", "mpp_voltage: 12..70 V", "12:18", "at most \"max_voltage\"" },
        { "rated_current: 10 A", "mpp_voltage: 45 V", "12:18", "two points between them" },
        { "rated_current: 10 A", "mpp_voltage: 12..45", "12:18", "add the unit, V" },
        { "rated_current: 10 A", "mpp_voltage: 45..12 V", "12:18", "the lower end first" },
        { "rated_current: 10 A", "mpp_voltage: 12 A..45 V", "12:18", "the unit must be V" },
        { "rated_current: 10 A", "mpp_voltage: ..45 V", "12:18", "a range such as \"12..45 V\"" },
        { "rated_current: 10 A", "mpp_voltage: 12,5..45 V", "12:18", "decimal point" },
        { "rated_current: 10 A", "efficiency: 0.95", "12:17", "add the unit, %" },
        { "rated_current: 10 A", "efficiency: 120 %", "12:17", "a percentage from 30 % to 100 %" },
        { "rated_current: 10 A", "battery: 900 Wh", "12:14", "a group of keys such as \"capacity: 900 Wh\"" },
        { "rated_current: 10 A", "battery: { capacity: 75 Ah }", "12:26", "multiply the amp-hours" },
        { "rated_current: 10 A", "battery: { from: 20 % }", "12:14", "a battery without \"capacity\"" },
        { "rated_current: 10 A", "battery: { capacity: 900 Wh, from: 90 %, to: 20 % }", "12:50", "above \"from\"" },
        { "rated_current: 10 A", "battery: { capacity: 900 Wh, load: -5 W }", "12:40", "a power from 0 W" },
        { "rated_current: 10 A", "unit: dairy", "12:11", "an unknown unit \"dairy\"" },
        { "inputs:", "units: [{ name: dairy }]\ninputs:", "9:17", "that no input belongs to" },
        { "inputs:", "units: dairy\ninputs:", "9:8", "a list, each item beginning with" },
        { "inputs:", "units: []\ninputs:", "9:8", "an empty list" },

        // Wirings.
        { "a + a | a + a", "a + b | a + a", "13:17", "an unknown panel \"b\"" },
        { "a + a | a + a", "a + a | a + a | a", "13:13", "5 of \"a\" in the wiring; expected at most 4" },
        { "a + a | a + a", "5*a", "13:15", "at most 4, as many as there are" },
        { "a + a | a + a", "1000000*a", "13:13", "in the wiring" },
        { "a + a | a + a", "a + ", "13:16", "in the wiring" },
        { "a + a | a + a", "a + + a", "13:17", "in the wiring" },
        { "a + a | a + a", "(a + a", "13:19", "in the wiring" },
        { "a + a | a + a", "a + a)", "13:18", "in the wiring" },
        { "a + a | a + a", "a & a", "13:15", "in the wiring" },
        { "a + a | a + a", "'a & a'", "13:16", "in the wiring" },
        { "a + a | a + a", "a a", "13:15", "in the wiring" },
        { "a + a | a + a", "0*a", "13:13", "in the wiring" },
        { "a + a | a + a", "a*2", "13:14", "in the wiring" },
        { "a + a | a + a", "\"\"", "13:14", "in the wiring" },
        { "a + a | a + a", "[a, a]", "13:13", "found a list" },
        { "a + a | a + a", "*a", "13:13", "in a wiring write \"2*name\"" },
        { "a + a | a + a", "| a", "13:13", "begins with \"|\" in quotes" },

        // Place, mount, cable.
        { "inputs:", "place: { latitude: 54.6 }\ninputs:", "9:8", "a place without \"longitude\"" },
        { "inputs:", "place: { latitude: 95, longitude: 0 }\ninputs:", "9:20", "from -90 to 90" },
        { "inputs:", "place: { latitude: 54.6, longitude: 181 }\ninputs:", "9:37", "from -180 to 180" },
        { "inputs:", "place: { latitude: 54\u00B036', longitude: 0 }\ninputs:", "9:20", "a latitude in degrees" },
        { "inputs:", "place: { latitude: \"54,6\", longitude: 0 }\ninputs:", "9:20", "decimal point" },
        { "inputs:", "place: { latitude: 54.6, longitude: 0, elevation: 210 }\ninputs:", "9:51", "add the unit, m or ft" },
        { "inputs:", "place: { latitude: 54.6, longitude: 0, elevation: 9 km }\ninputs:", "9:51", "the unit must be m or ft" },
        { "inputs:", "place: { latitude: 54.6, longitude: 0, coldest: -14 }\ninputs:", "9:49", "add the unit, C or F" },
        { "inputs:", "place: { latitude: 54.6, longitude: 0, coldest: -400 F }\ninputs:", "9:49", "from -90 C to 40 C" },
        { "inputs:", "place: { latitude: 54.6, longitude: 0, weather: }\ninputs:", "9:49", "found nothing" },
        { "inputs:", "place: Carlisle\ninputs:", "9:8", "a group of keys such as \"latitude: 54.6\"" },
        { "inputs:", "mount: { tilt: 40 }\ninputs:", "9:16", "add the unit, deg" },
        { "inputs:", "mount: { azimuth: 400 deg }\ninputs:", "9:19", "from 0 deg to 360 deg" },
        { "inputs:", "mount: { kind: balcony }\ninputs:", "9:16", "one of: open rack, close roof, flat on ground" },
        { "inputs:", "cable: { length: 8 }\ninputs:", "9:18", "add the unit, m or ft" },
        { "inputs:", "cable: { length: -8 m }\ninputs:", "9:18", "a length from 0 m to 1000 m" },
        { "inputs:", "cable: { size: 4 }\ninputs:", "9:16", "add the unit, mm2 or AWG" },
        { "inputs:", "cable: { size: 4 mm }\ninputs:", "9:16", "not its diameter" },
        { "inputs:", "cable: { size: 10.5 AWG }\ninputs:", "9:16", "a wire gauge is a whole number" },
        { "inputs:", "cable: { size: 99 AWG }\ninputs:", "9:16", "a cable size from 0.1 mm2 to 500 mm2" },
        { "inputs:", "cable: { size: 5/0 AWG }\ninputs:", "9:16", "write one ordinary number" },
        { "inputs:", "cable: { contact: 2 kohm }\ninputs:", "9:19", "the unit must be mohm or ohm" },
        { "inputs:", "cable: [8 m]\ninputs:", "9:8", "found a list" },
    };

    [Theory]
    [MemberData(nameof(Changes))]
    public void A_bad_change_is_reported_at_its_place(string from, string to, string place, string says)
    {
        Stopwatch watch = Stopwatch.StartNew();
        PlanReading reading = PlanFile.Read(Plans.Changed(from, to), "bad.yaml");

        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(1));
        Assert.Null(reading.Plan);
        string[] faults = [.. reading.Faults.Select(fault => fault.ToString())];
        Assert.True(
            Array.Exists(faults, fault => fault.StartsWith($"bad.yaml:{place}: ", StringComparison.Ordinal) && fault.Contains(says, StringComparison.Ordinal)),
            $"No fault at {place} that says: {says}\n" + string.Join("\n", faults));
        AssertInOrder(reading.Faults);
    }

    [Fact]
    public void There_are_at_least_150_bad_changes() => Assert.True(Changes.Count >= 150);

    private static void AssertInOrder(IReadOnlyList<Fault> faults)
    {
        Assert.NotEmpty(faults);
        (int Line, int Column) last = (0, 0);
        foreach (Fault fault in faults)
        {
            Assert.True(fault.Line > 0 && fault.Column > 0);
            Assert.True((fault.Line, fault.Column).CompareTo(last) >= 0);
            Assert.DoesNotContain("\n", fault.ToString(), StringComparison.Ordinal);
            Assert.NotEmpty(fault.Found);
            Assert.NotEmpty(fault.Expected);
            last = (fault.Line, fault.Column);
        }
    }
}
