namespace CrewBot.Discord.Mapping;

/// <summary>The platform's published limits, in characters unless the name says otherwise.</summary>
internal static class Limits
{
    public const int Title = 256;
    public const int CardText = 4096;
    public const int ButtonLabel = 80;
    public const int ButtonsInARow = 5;
    public const int Rows = 5;
    public const int CustomId = 100;
    public const int SelectPrompt = 150;
    public const int SelectOptions = 25;
    public const int SelectLabel = 100;
    public const int Choices = 25;
    public const int ChoiceText = 100;
    public const int CommandName = 32;
    public const int MenuCommands = 15;
    public const int Description = 100;
    public const int OptionsOnALevel = 25;
    public const int WholeCommand = 8000;
    public const int SlashCommands = 100;
    public const int FormTitle = 45;
    public const int FormLabel = 45;
    public const int FormHint = 100;
    public const int Nonce = 25;
    public const int ThreadName = 100;
    public const int FileDescription = 1024;
}
