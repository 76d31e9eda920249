using System.Reflection;
using System.Runtime.CompilerServices;
using Arraywright.Electrical;

namespace Arraywright.Tests.Assembly;

/// <summary>What every public type of the library has in common.</summary>
public sealed class ShapeTests
{
    /// <summary>What a name of a number ends in: its unit, or that it has none.</summary>
    private static readonly string[] Units =
    [
        "Seconds", "JulianDay", "julianDay",
        "V", "A", "W", "Wh", "KWh", "Ohm", "Siemens", "S", "C", "K", "M", "Mm2", "H", "Ev", "Deg", "Hour", "WPerM2", "KWhPerM2", "KWhPerM2Day", "Watts", "Fractions",
        "MPerS", "PerK", "APerK", "VPerK", "SPerM", "Fraction", "Percent", "Share", "Index", "Bar", "Hours", "Au", "Min", "Pa", "JulianDay",
    ];

    /// <summary>Numbers whose unit stands elsewhere, with the reason.</summary>
    private static readonly Dictionary<string, string> Exceptions = new(StringComparer.Ordinal)
    {
        ["Finding.Value"] = "its unit is Finding.Unit",
        ["Finding.Limit"] = "its unit is Finding.Unit",
        ["Limit.Figure"] = "amps or watts, by the member that holds the limit",
        ["Limit.Allowed"] = "amps or watts, by the member that holds the limit",
        ["Panel.Price"] = "the user's currency",
        ["PanelLabel.Price"] = "the user's currency",
        ["PartPrice.Price"] = "the user's currency",
        ["Piece.Price"] = "the user's currency",
        ["ShoppingLine.UnitPrice"] = "the user's currency",
        ["ShoppingLine.Price"] = "the user's currency",
        ["PartsAlternative.ExtraPrice"] = "the user's currency",
        ["SearchReport.Considered"] = "a count, past the range of integers",
        ["SearchReport.Feasible"] = "a count, past the range of integers",
        ["SearchProblem.Weights"] = "any positive unit, as its documentation says",
        ["SandiaMounting.A"] = "the coefficient a of the published model, no unit",
        ["PanelFit.IdealityPerCell"] = "the ideality factor n, no unit",
        ["PanelFit.Tolerance"] = "a fraction, of residuals that are fractions",
        ["FitResiduals.ShortCircuit"] = "a fraction of the label figure",
        ["FitResiduals.OpenCircuit"] = "a fraction of the label figure",
        ["FitResiduals.MaximumPowerCurrent"] = "a fraction of the label figure",
        ["FitResiduals.Slope"] = "a fraction",
        ["FitResiduals.OpenCircuitCoefficient"] = "a fraction",
        ["FitResiduals.Largest"] = "a fraction",
        ["HoursLimited.Current"] = "hours, as the type says",
        ["HoursLimited.Power"] = "hours, as the type says",
        ["HoursLimited.Voltage"] = "hours, as the type says",
        ["HoursLimited.Off"] = "hours, as the type says",
        ["BatteryReport.LowestStateOfCharge"] = "a state of charge, 0 to 1",
        ["EnergyMoment.StateOfCharge"] = "a state of charge, 0 to 1",
        ["BatteryReport.HoursToFull"] = "hours, as it says",
        ["ExpectedReading.Standard"] = "its unit is ExpectedReading.Unit",
        ["ExpectedReading.Now"] = "its unit is ExpectedReading.Unit",
        ["ExpectedReading.Least"] = "its unit is ExpectedReading.Unit",
        ["ExpectedReading.Most"] = "its unit is ExpectedReading.Unit",
        ["EnergyOptions.UsualEfficiency"] = "an efficiency, 0 to 1",
    };

    /// <summary>The same for what methods take and give; a name such as CurrentAt says amps by the quantity.</summary>
    private static readonly Dictionary<string, string> MethodExceptions = new(StringComparer.Ordinal)
    {
        ["AirMass.Relative: Relative"] = "a ratio",
        ["CellTemperature.At: At"] = "°C, as its documentation says",
        ["ClearDay.ShareKeptOff: ShareKeptOff"] = "a share",
        ["ClearSky.Of: turbidity"] = "the Linke turbidity, no unit",
        ["Circuit.CurrentAt: CurrentAt"] = "amps, by the quantity",
        ["Circuit.VoltageAt: VoltageAt"] = "volts, by the quantity",
        ["ColdVoltage.Of: Of"] = "volts, by the type",
        ["Exponential.Of: Of"] = "a pure number",
        ["Exponential.Of: x"] = "a pure number",
        ["SunDay.Of: noonGuess"] = "a Julian day",
    };

    private static readonly Type[] Public = [.. typeof(Plan).Assembly.GetExportedTypes()];

    [Fact]
    public void Every_public_type_is_sealed_static_a_struct_an_enum_or_a_closed_tree() =>
        Assert.Empty(Public.Where(type => type is { IsSealed: false, IsInterface: false } && !IsClosed(type) && type != typeof(Wiring) && type != typeof(CircuitTree)).Select(type => type.Name));

    /// <summary>Whether no other assembly can add to its kinds: it is abstract, and nothing outside can call a constructor but that of a record's copy.</summary>
    private static bool IsClosed(Type type) => type.IsAbstract && type
        .GetConstructors(BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic)
        .All(made => made.IsPrivate || made.IsFamilyAndAssembly || (made.GetParameters() is [{ } only] && only.ParameterType == type));

    [Fact]
    public void No_field_is_static_and_can_change() =>
        Assert.Empty(typeof(Plan).Assembly.GetTypes()
            .Where(type => !type.IsDefined(typeof(CompilerGeneratedAttribute)) && !type.Name.StartsWith('<'))
            .SelectMany(type => type.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.DeclaredOnly))
            .Where(field => field is { IsInitOnly: false, IsLiteral: false } && !field.IsDefined(typeof(CompilerGeneratedAttribute)))
            .Select(field => $"{field.DeclaringType!.Name}.{field.Name}"));

    [Fact]
    public void Every_public_number_says_its_unit()
    {
        string[] silent =
        [
            .. Public
                .SelectMany(type => type.GetProperties(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly))
                .Where(property => IsNumber(property.PropertyType) && !Units.Any(unit => property.Name.EndsWith(unit, StringComparison.Ordinal)))
                .Select(property => $"{property.DeclaringType!.Name}.{property.Name}")
                .Where(name => !Exceptions.ContainsKey(name)),
        ];
        Assert.Empty(silent);
    }

    [Fact]
    public void Every_public_method_says_the_unit_of_what_it_gives_and_takes()
    {
        string[] silent =
        [
            .. from type in Public
               from method in type.GetMethods(BindingFlags.Instance | BindingFlags.Static | BindingFlags.Public | BindingFlags.DeclaredOnly)
               where !method.IsSpecialName && !method.IsDefined(typeof(CompilerGeneratedAttribute)) && method.Name != "Deconstruct"
               from named in method.GetParameters().Select(parameter => (parameter.Name, Type: parameter.ParameterType)).Append((method.Name, Type: method.ReturnType))
               where IsNumber(named.Type) && !Units.Any(unit => named.Name!.EndsWith(unit, StringComparison.Ordinal) || string.Equals(named.Name, unit, StringComparison.OrdinalIgnoreCase))
               select $"{type.Name}.{method.Name}: {named.Name}",
        ];
        Assert.Equal(MethodExceptions.Keys.Order(StringComparer.Ordinal), silent.Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_exception_from_saying_the_unit_is_still_needed()
    {
        HashSet<string> there = [.. Public.SelectMany(type => type.GetMembers().Select(member => $"{type.Name}.{member.Name}"))];
        Assert.All(Exceptions.Keys, name => Assert.Contains(name, there));
    }

    private static bool IsNumber(Type type) =>
        type == typeof(double) || type == typeof(double?) || type == typeof(Sourced<double>) || type == typeof(double[])
        || type == typeof(System.Collections.Immutable.ImmutableArray<double>);
}
