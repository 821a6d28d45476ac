namespace CrewBot.Worker.Rooms;

/// <summary>What a room itself understands, beside the commands.</summary>
internal enum RoomWord
{
    None,
    Help,
    Why,
    Share,
    PicturesOn,
    PicturesOff,
    Leave,
}
