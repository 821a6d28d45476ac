namespace CrewBot.Core.Tests.Ice.Posts;

public class PostTableTests(ITestOutputHelper output)
{
    [Theory]
    [InlineData("posts.txt", 100)]
    [InlineData("posts-blind-1.txt", 95)]
    [InlineData("posts-blind-2.txt", 95)]
    [InlineData("posts-blind-3.txt", 90)]
    [InlineData("posts-blind-4.txt", 90)]
    [InlineData("posts-blind-5.txt", 85)]
    [InlineData("posts-blind-6.txt", 80)]
    public void Read_InventedPosts_SaysWhatTheTableSays(string file, int least)
    {
        var rows = PostTable.Read(file);
        var missed = rows.Select(row => (row.Post, Expected: PostTable.Ordered(row.Expected), Told: PostTable.Told(row.Post, row.Expected)))
            .Where(row => row.Expected != row.Told)
            .ToList();
        var score = $"{file}: {rows.Count - missed.Count} of {rows.Count}";
        output.WriteLine(score);

        Assert.True(
            (rows.Count - missed.Count) * 100 >= least * rows.Count,
            score + "\n" + string.Join('\n', missed.Select(row => $"{row.Post}\n   expected {row.Expected}\n   told     {row.Told}")));
    }
}
