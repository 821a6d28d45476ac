namespace CrewBot.Discord.Wire;

/// <summary>A message as the bot writes it: created, edited, or given as an answer.</summary>
internal sealed record MessageBody
{
    public string? Content { get; init; }
    public List<Embed>? Embeds { get; init; }
    public required AllowedMentions AllowedMentions { get; init; }
    public MessageFlags? Flags { get; init; }
    public List<Component>? Components { get; init; }

    /// <summary>On an edit, the whole list of files that shall remain; left out, nothing changes.</summary>
    public IReadOnlyList<AttachmentPlaceholder>? Attachments { get; init; }

    /// <summary>With <see cref="EnforceNonce"/>, sending the same value again within minutes makes no second message.</summary>
    public string? Nonce { get; init; }

    public bool? EnforceNonce { get; init; }
    public MessageReference? MessageReference { get; init; }
}
