using System.Text;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Knowledge;

/// <summary>A crew's file, laid over the built-in knowledge.</summary>
internal static class Overlay
{
    public const string File = "crew.json";

    public static KnowledgeReading Read(string json) => Read(Encoding.UTF8.GetBytes(json));

    public static KnowledgeReading Read(byte[] content)
    {
        using var stream = new MemoryStream(content);
        return KnowledgeReader.Read(File, stream);
    }
}
