using System.Reflection;

namespace CrewBot.Core.Tests.Published;

public sealed class PublishedTableTests
{
    [Fact]
    public void Rows_EveryQuantity_IsCheckedBySomeTest()
    {
        var checkedQuantities = typeof(PublishedTableTests).Assembly.GetTypes()
            .SelectMany(type => type.GetMethods())
            .SelectMany(method => method.GetCustomAttributes<PublishedRowsAttribute>())
            .SelectMany(attribute => attribute.Quantities)
            .Distinct()
            .Order();

        Assert.Equal(PublishedTable.Rows.Select(row => row.Quantity).Distinct().Order(), checkedQuantities);
    }

    [Fact]
    public void Rows_Each_NamesItsSource() =>
        Assert.All(PublishedTable.Rows, row => Assert.False(string.IsNullOrWhiteSpace(row.Source)));
}
