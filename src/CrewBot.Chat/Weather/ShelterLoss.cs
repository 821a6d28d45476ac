using CrewBot.Core.Weather;
using UnitsNet;

namespace CrewBot.Chat.Weather;

/// <summary>The heat that a shelter loses.</summary>
/// <param name="Room">Its size.</param>
/// <param name="Fabric">What its walls let through.</param>
/// <param name="Warmer">What the inside is warmer.</param>
internal sealed record ShelterLoss(RoomSize Room, HeatTransferCoefficient Fabric, TemperatureDelta Warmer)
{
    /// <summary>Through walls and roof.</summary>
    public Power Walls => ShelterHeat.ThroughFabric(Fabric, Room.Skin, Warmer);

    /// <summary>Through them and with the air that comes and goes.</summary>
    public Power With(Frequency changes) => Walls + ShelterHeat.WithAir(changes, Room.Air, Warmer);

    /// <summary>What a heater keeps it warmer by: both losses grow as the difference does.</summary>
    public TemperatureDelta WarmerBy(Power heater, Frequency changes) =>
        TemperatureDelta.FromDegreesCelsius(Warmer.DegreesCelsius * (double)(heater.Watts / With(changes).Watts));
}
