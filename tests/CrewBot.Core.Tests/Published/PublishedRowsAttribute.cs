using System.Reflection;
using Xunit.Sdk;
using Xunit.v3;

namespace CrewBot.Core.Tests.Published;

/// <summary>Runs a theory once for every published row of the named quantities.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class PublishedRowsAttribute(params string[] quantities) : DataAttribute
{
    public IReadOnlyList<string> Quantities { get; } = quantities;

    public override ValueTask<IReadOnlyCollection<ITheoryDataRow>> GetData(
        MethodInfo testMethod, DisposalTracker disposalTracker)
    {
        IReadOnlyCollection<ITheoryDataRow> rows =
            [.. PublishedTable.Rows
                .Where(row => Quantities.Contains(row.Quantity))
                .Select(row => new TheoryDataRow<PublishedRow>(row))];
        return ValueTask.FromResult(rows);
    }

    public override bool SupportsDiscoveryEnumeration() => false;
}
