using System.Text.Json;
using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class HandbookTests
{
    private static readonly string Page = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Promised", "knowledge.md"));

    [Fact]
    public void Page_OnKnowledge_NamesEverySectionAndField()
    {
        var sections = typeof(TradeKnowledge).GetProperties()
            .Where(property => property.PropertyType.IsGenericType)
            .ToDictionary(property => property.Name, property => property.PropertyType.GetGenericArguments()[0]);

        Assert.Equal(14, sections.Count);
        Assert.All(sections.Keys, section => Assert.Contains($"## {JsonNamingPolicy.CamelCase.ConvertName(section)}\n", Page, StringComparison.Ordinal));
        Assert.All(
            sections.Values.SelectMany(record => record.GetProperties()).Where(field => field.CanWrite).Select(field => JsonNamingPolicy.CamelCase.ConvertName(field.Name)),
            field => Assert.Contains($"`{field}`", Page, StringComparison.Ordinal));
    }
}
