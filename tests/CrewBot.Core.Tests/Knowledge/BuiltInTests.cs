using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Tests.Knowledge;

public sealed class BuiltInTests
{
    [Fact]
    public void BuiltIn_AsShipped_IsRead() => Assert.Equal(22, TradeKnowledge.BuiltIn.Species.Count);
}
