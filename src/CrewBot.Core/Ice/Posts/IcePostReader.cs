namespace CrewBot.Core.Ice.Posts;

/// <summary>
/// Reads a report of ice out of what somebody wrote: thickness with its unit, kind, place, hazard and time, by grammar and
/// meaning. It takes the lower bound of ranges, marks guesses and hearsay, and fills nothing in.
/// </summary>
public static class IcePostReader
{
    /// <summary>Reads a post.</summary>
    /// <param name="text">As written, of any length.</param>
    /// <param name="posted">When it was posted, in the writer's own time.</param>
    /// <param name="names">Names of the crew's waters and spots, which are places whatever words they are made of.</param>
    public static IcePost Read(string text, DateTimeOffset posted, params IReadOnlyList<string> names)
    {
        string[][] known = [.. names.Select(name => name.ToLowerInvariant().Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries)).Where(name => name.Length > 0)];
        var sentences = PostText.SentencesOf(text);
        var isOfCatch = sentences.Any(PostMeasure.IsOfCatch) && !sentences.Any(PostMeasure.IsOfDrilling);
        var reading = new PostReading(known, posted, isOfCatch);
        foreach (var sentence in sentences)
        {
            if (PostSense.Jokes(sentence))
            {
                return IcePost.Nothing;
            }

            reading.Take(sentence);
        }

        return reading.Result();
    }
}
