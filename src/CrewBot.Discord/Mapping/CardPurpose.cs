namespace CrewBot.Discord.Mapping;

internal enum CardPurpose
{
    /// <summary>The reply as asked for.</summary>
    Answer,

    /// <summary>The reply's reasons and workings.</summary>
    Why,

    /// <summary>The reply for the whole crew.</summary>
    Shared,

    /// <summary>The reply's pictures, its words left to the card that they were asked for on.</summary>
    Picture,

    /// <summary>The reply's pictures for the whole crew.</summary>
    SharedPicture,
}
