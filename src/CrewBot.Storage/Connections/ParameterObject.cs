using System.Diagnostics.CodeAnalysis;

namespace CrewBot.Storage.Connections;

/// <summary>What is said of the objects whose properties are a statement's parameters.</summary>
internal static class ParameterObject
{
    /// <summary>What is kept of them though no code names it: the properties are found by what a statement calls them.</summary>
    public const DynamicallyAccessedMemberTypes Kept = DynamicallyAccessedMemberTypes.PublicProperties;
}
