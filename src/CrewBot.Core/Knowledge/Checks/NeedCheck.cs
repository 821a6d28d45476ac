namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a need.</summary>
internal static class NeedCheck
{
    private const int MostPer = 20;

    public static IEnumerable<Misfit> Misfits(NeedRule need)
    {
        if (need.Per is < 1 or > MostPer)
        {
            yield return new("per", "One piece serves 1 to 20.");
        }

        if (need.Basis == NeedBasis.Seats && need.Family is not (GearFamily.Shelter or GearFamily.Vehicle))
        {
            yield return new("basis", "Seats are in shelters and vehicles.");
        }

        foreach (var misfit in FieldCheck.Text("why", need.Why, FieldCheck.Sentence))
        {
            yield return misfit;
        }
    }
}
