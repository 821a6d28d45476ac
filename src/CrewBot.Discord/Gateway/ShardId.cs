namespace CrewBot.Discord.Gateway;

internal readonly record struct ShardId(int Number, int Count)
{
    public override string ToString() => $"{Number} of {Count}";
}
