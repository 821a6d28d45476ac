using System.Runtime.InteropServices;
using System.Text.Json;
using CrewBot.Discord.Wire;

namespace CrewBot.Discord.Gateway;

/// <summary>The three frames that the bot ever sends.</summary>
internal static class OutgoingFrames
{
    private const string Client = "crewbot";

    public static byte[] Heartbeat(long? sequence) => JsonSerializer.SerializeToUtf8Bytes(
        new OutgoingFrame<long?>(GatewayOperation.Heartbeat, sequence), WireJson.Default.HeartbeatFrame);

    public static byte[] Identify(BotToken token, ShardId shard) => JsonSerializer.SerializeToUtf8Bytes(
        new OutgoingFrame<Identify>(GatewayOperation.Identify, new Identify
        {
            Token = token.Value,
            Shard = [shard.Number, shard.Count],
            Properties = new ClientProperties(OperatingSystemName, Client, Client),
        }),
        WireJson.Default.IdentifyFrame);

    public static byte[] Resume(BotToken token, GatewaySession session) => JsonSerializer.SerializeToUtf8Bytes(
        new OutgoingFrame<Resume>(GatewayOperation.Resume, new Resume
        {
            Token = token.Value,
            SessionId = session.Id!,
            Seq = session.Sequence,
        }),
        WireJson.Default.ResumeFrame);

    private static string OperatingSystemName =>
        RuntimeInformation.IsOSPlatform(OSPlatform.Windows) ? "windows"
        : RuntimeInformation.IsOSPlatform(OSPlatform.OSX) ? "macos"
        : "linux";
}
