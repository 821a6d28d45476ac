namespace CrewBot.Discord.Wire;

internal enum ResponseType
{
    Message = 4,
    DeferredMessage = 5,
    DeferredUpdate = 6,
    UpdateMessage = 7,
    Choices = 8,
    Modal = 9,
}
