namespace CrewBot.Core.Knowledge;

/// <summary>One thing wrong in a knowledge file, and how to put it right.</summary>
/// <param name="File">The file's name.</param>
/// <param name="Record">Section and key, such as <c>species/walleye</c>; empty when the file as a whole is at fault.</param>
/// <param name="Field">The field; empty when the record as a whole is at fault.</param>
/// <param name="Remedy">What is wrong and what to write instead.</param>
public sealed record KnowledgeFault(string File, string Record, string Field, string Remedy)
{
    public override string ToString() =>
        string.Join(": ", new[] { File, Record, Field, Remedy }.Where(part => part.Length > 0));
}
