namespace CrewBot.Core.Ice;

/// <summary>What a kind of ice is counted as.</summary>
public static class IceKinds
{
    /// <summary>
    /// Whether the kind counts as no ice at all, at any thickness: grey (Canadian Red Cross), candled (Minnesota DNR tips),
    /// layered (Saskatchewan Water Security Agency), slush and ice refrozen after a thaw (this project's rule).
    /// </summary>
    public static bool BearsNothing(this IceKind kind) => kind is not (IceKind.Clear or IceKind.White or IceKind.Unknown);
}
