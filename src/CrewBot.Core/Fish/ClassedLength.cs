using CrewBot.Core.Knowledge;

namespace CrewBot.Core.Fish;

/// <summary>A length put in its category.</summary>
/// <param name="Category">The category.</param>
/// <param name="By">The table that was used.</param>
/// <remarks>
/// Gabelhouse (1984) and the later authors named in each species' record. The metric and the inch bounds were set
/// separately: a perch of 25.0 cm is "preferred" by one and, at 9.84 in, "quality" by the other. The unit that the
/// angler measured in decides.
/// </remarks>
public sealed record ClassedLength(LengthCategory Category, UnitFamily By)
{
    /// <summary>Puts a fish in its category; a length equal to a bound belongs to the higher one.</summary>
    /// <returns>Null when the species has no categories.</returns>
    public static ClassedLength? Of(Species species, ExactLength total) =>
        species.LengthCategories is { } tables ? Of(tables, total) : null;

    /// <summary>Puts a length in its category; a length equal to a bound belongs to the higher one.</summary>
    public static ClassedLength Of(LengthCategoryTables tables, ExactLength total)
    {
        var bounds = tables.For(total.Family);
        var category = Enum.GetValues<LengthCategory>()
            .Last(category => category == LengthCategory.Substock
                || total.Nanometres >= ExactLength.NanometresOf(bounds[category]));
        return new ClassedLength(category, total.Family);
    }
}
