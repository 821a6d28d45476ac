using System.Text.Json.Nodes;

namespace CrewBot.Core.Knowledge.Reading;

/// <summary>A value as a file states it, with its place and where to note that it does not fit.</summary>
/// <param name="Node">The value.</param>
/// <param name="Path">The field, as a path from the record down.</param>
/// <param name="Misfits">Every misfit of the record so far.</param>
internal readonly record struct StatedValue(JsonNode Node, string Path, List<Misfit> Misfits)
{
    /// <summary>Notes that the value does not fit; what is read instead is never used.</summary>
    public void Refuse(string remedy) => Misfits.Add(new Misfit(Path, remedy));
}
