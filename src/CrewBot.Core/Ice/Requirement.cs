using UnitsNet;

namespace CrewBot.Core.Ice;

/// <summary>The thickness that published rules ask for, the most demanding of all that apply; or why there is none.</summary>
/// <param name="Figures">Every figure that was weighed, the governing one first; empty when there is none.</param>
/// <param name="WhyNone">Why no figure is given; null when one is.</param>
public sealed record Requirement(IReadOnlyList<IceFigure> Figures, FormattableString? WhyNone)
{
    /// <summary>The thickness of uniform, clear, sound ice that the governing rule asks for; null when there is none.</summary>
    public Length? Thickness => Figures.Count > 0 ? IceLength.Of(IceLength.Required(Figures[0].Thickness)) : null;

    /// <summary>Weighs the rules for a load.</summary>
    /// <param name="load">What would be on the ice.</param>
    /// <param name="authority">The table the crew chose; null for none.</param>
    /// <param name="crew">The crew's own figures.</param>
    /// <param name="permitted">Whether the local authority permits driving here; without that a road vehicle gets no figure.</param>
    /// <param name="air">What is known of the air; where nothing is, the figures of cold weather are given.</param>
    /// <param name="now">The instant of the question.</param>
    public static Requirement For(
        IceLoad load, AuthorityTable? authority, IReadOnlyList<CrewFigure> crew, bool permitted, AirSince air, DateTimeOffset now)
    {
        if (WhyNot(load, authority, permitted, air) is { } none)
        {
            return new([], none);
        }

        if (WarmRule.FactorFor(air.IsKnown ? air.AboveFreezing(now) : TimeSpan.Zero) is not { } factor)
        {
            return new([], $"above freezing for 24 h, or nobody knows better: stay off (Minnesota DNR, 24 Dec 2013)");
        }

        var figures = All(load, authority, crew).Select(figure => factor == 1 ? figure : figure with
        {
            Thickness = figure.Thickness * factor,
            Rule = $"{figure.Rule}, doubled, for 6 h or more of the last 24 were above freezing or nobody knows that they were below (Minnesota DNR, 24 Dec 2013)",
        });
        return new([.. figures.OrderByDescending(figure => IceLength.Required(figure.Thickness))], null);
    }

    private static FormattableString? WhyNot(IceLoad load, AuthorityTable? authority, bool permitted, AirSince air) =>
        air.FellSuddenly ? $"the air fell by 20 °C or more within a day, which cracks ice: stay off for a day (a figure from memory, to be confirmed)"
        : load.StandsTooLong ? $"nothing published here is for what stands longer than {IceLoad.LongestStay.Hours:0} h: ask the local authority"
        : !load.IsRoadVehicle ? null
        : authority?.AdvisesAgainst.Contains(load.Use) == true ? $"{authority.Name} ({authority.Date}) advises against it at any thickness: do not drive"
        : !permitted ? (FormattableString)$"do not drive on the ice: some authorities advise against it at any thickness"
        : null;

    private static IEnumerable<IceFigure> All(IceLoad load, AuthorityTable? authority, IReadOnlyList<CrewFigure> crew)
    {
        var uses = load.Stands && load.Use != IceUse.Gathering ? [load.Use, IceUse.Gathering] : (IceUse[])[load.Use];
        foreach (var use in uses)
        {
            yield return ProjectFigures.For(use);
            if (authority is not null && authority.Figures.TryGetValue(use, out var printed))
            {
                yield return new(printed, $"{ProjectFigures.For(use).Rule}", authority.Name, authority.Date);
            }

            foreach (var own in crew.Where(own => own.Use == use))
            {
                yield return new(own.Thickness, $"the crew's own figure", own.Reference, "as the crew gave it");
            }
        }

        if (load.IsVehicle)
        {
            yield return new(BearingFormulas.Moving(load.Total), $"√(P/3.5) cm for a moving load, P = {load.Total.Kilograms:0} kg", "L. W. Gold, Canadian Geotechnical Journal 8", "1971");
        }

        if (load.Stands)
        {
            yield return new(BearingFormulas.Standing(load.Total), $"8 √W in for what stands or gathers, W = {load.Total.ShortTons:0.00} short tons", "O. P. Smith, University of Alaska Anchorage", "2004");
        }
    }
}
