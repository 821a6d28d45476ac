using System.Text.Json;
using System.Text.Json.Serialization;
using UnitsNet;

namespace CrewBot.Core.Knowledge;

/// <summary>How quantities, hook sizes and names stand in knowledge files, and that nothing unknown may stand there.</summary>
internal static class KnowledgeFormat
{
    public static JsonSerializerOptions CreateOptions()
    {
        var options = new JsonSerializerOptions
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            RespectNullableAnnotations = true,
            RespectRequiredConstructorParameters = true,
        };
        options.Converters.Add(new QuantityJsonConverter<Length>("24 ft", ReadLength));
        options.Converters.Add(new QuantityJsonConverter<Mass>("1/8 oz", ReadMass));
        options.Converters.Add(new QuantityJsonConverter<Force>("10 lb", ReadTest));
        options.Converters.Add(new QuantityJsonConverter<Density>("11.34 g/cm3", ReadDensity));
        options.Converters.Add(new QuantityJsonConverter<Pressure>("2 GPa", ReadModulus));
        options.Converters.Add(new HookSizeJsonConverter());
        AddName<Mood>(options);
        AddName<SizeClass>(options);
        AddName<Teeth>(options);
        AddName<Shyness>(options);
        AddName<StationNear>(options);
        AddName<BaitKind>(options);
        AddName<LineUse>(options);
        AddName<KnotKind>(options);
        AddName<HardwareKind>(options);
        AddName<ShotScale>(options);
        AddName<BreakPlace>(options);
        AddName<BreakLook>(options);
        return options;
    }

    private static Length? ReadLength(double number, string unit) => unit switch
    {
        "m" => Length.FromMeters(number),
        "cm" => Length.FromCentimeters(number),
        "mm" => Length.FromMillimeters(number),
        "ft" => Length.FromFeet(number),
        "in" => Length.FromInches(number),
        _ => null,
    };

    private static Mass? ReadMass(double number, string unit) => unit switch
    {
        "g" => Mass.FromGrams(number),
        "kg" => Mass.FromKilograms(number),
        "oz" => Mass.FromOunces(number),
        "lb" => Mass.FromPounds(number),
        _ => null,
    };

    // A line's test is a force, but every label states it as a weight.
    private static Force? ReadTest(double number, string unit) => unit switch
    {
        "lb" => Force.FromPoundsForce(number),
        "kg" => Force.FromKilogramsForce(number),
        "N" => Force.FromNewtons(number),
        _ => null,
    };

    private static Density? ReadDensity(double number, string unit) => unit switch
    {
        "g/cm3" => Density.FromGramsPerCubicCentimeter(number),
        "kg/m3" => Density.FromKilogramsPerCubicMeter(number),
        _ => null,
    };

    private static Pressure? ReadModulus(double number, string unit) =>
        unit == "GPa" ? Pressure.FromGigapascals(number) : null;

    private static void AddName<T>(JsonSerializerOptions options)
        where T : struct, Enum =>
        options.Converters.Add(new NameJsonConverter<T>());
}
