using CrewBot.Core.Fish;
using CrewBot.Core.Knowledge;
using CrewBot.Core.Lines;
using UnitsNet;

namespace CrewBot.Core.Rigs;

/// <summary>What to beware of with a rig, each with what set it off.</summary>
internal static class RigCautions
{
    private static readonly Temperature Freezing = Temperature.FromDegreesCelsius(0);
    private static readonly Speed LightWind = Speed.FromMetersPerSecond(3);
    private static readonly Length WaterFilm = Length.FromMicrometers(20);

    public static IReadOnlyList<Caution> For(RigAsk ask, Presentation presentation, TiedRig tied, RigNumbers numbers)
    {
        var cautions = new List<Caution>();
        AddTeeth(cautions, ask, tied);
        AddFrost(cautions, ask, tied);
        AddPressure(cautions, ask);
        AddHole(cautions, ask, numbers);
        if (tied.Hook is { } hook && hook.Opens.Low < WorkingPull.Of(ask.Species.Weights[ask.Size]))
        {
            cautions.Add(new(
                $"Take a strong-wire hook: a fine-wire {hook.Name} may open at {hook.Opens.Low}.",
                $"the fish's pull against {hook.Name}"));
        }

        if (ask.Rules is { BarblessOnly: true } barbless)
        {
            cautions.Add(new($"Barbless only: pinch every barb flat before it goes down.", $"the rules of {barbless.Name}"));
        }

        if (presentation.Trebles > 0)
        {
            cautions.Add(new(
                $"Free trebles and cold hands: hold the fish's head in the hole and use long pliers.",
                $"a {presentation.Name} carries {presentation.Trebles}"));
        }

        return cautions;
    }

    private static void AddTeeth(List<Caution> cautions, RigAsk ask, TiedRig tied)
    {
        var cutter = ask.AlsoThere.FirstOrDefault(other => other.Teeth == Teeth.Cuts);
        if (cutter is null || ask.Species.Teeth == Teeth.Cuts)
        {
            return;
        }

        if (tied.Leader is { Line.Material.Use: LineUse.Bite })
        {
            cautions.Add(new($"Wire costs you {ask.Species.Name} bites; it saves the lure when a {cutter.Name} takes it.", $"{cutter.Name} also there"));
        }
        else
        {
            cautions.Add(new($"A {cutter.Name} will cut this leader: that is the price of more {ask.Species.Name} bites. A wire leader saves the lure and costs bites.", $"{cutter.Name} also there"));
        }
    }

    private static void AddFrost(List<Caution> cautions, RigAsk ask, TiedRig tied)
    {
        if (ask.Place != Place.Open || ask.Air is not { } air || air >= Freezing)
        {
            return;
        }

        var line = tied.Mainline;
        if (line.Material.Key != "braid")
        {
            cautions.Add(new($"{line.Material.InFrost}", $"{air} in the open"));
            return;
        }

        var freezes = LineIcing.FreezeTime(
            WaterFilm,
            LineIcing.CoefficientInWind(line.Diameter, LightWind, AirFilm.NearMinusTen),
            TemperatureDelta.FromDegreesCelsius(-air.DegreesCelsius));
        cautions.Add(new(
            $"At {air} wet braid freezes within seconds. Dip the tip and strip the ice with your fingers, never reel through it; or spool single-strand fluorocarbon or nylon.",
            $"{air} in the open: a film of {WaterFilm:fine} sets in about {freezes} in a light wind"));
    }

    private static void AddPressure(List<Caution> cautions, RigAsk ask)
    {
        if (ask.Species.BarotraumaDepth is { } limit && ask.Depth >= limit)
        {
            cautions.Add(new(
                $"At {limit} and deeper, {ask.Species.Name} often can't go back down alive: keep what you may, or move shallower.",
                $"from {ask.Depth} the gas in it swells {BarotraumaExpansion.FactorFrom(ask.Depth, BarotraumaExpansion.SeaLevel):0.0}-fold on the way up"));
        }
    }

    private static void AddHole(List<Caution> cautions, RigAsk ask, RigNumbers numbers)
    {
        var size = ask.Size.ToString().ToLowerInvariant();
        if (!numbers.Hole.Passes)
        {
            cautions.Add(new($"A {size} {ask.Species.Name} won't come up through {ask.Hole:gap}: drill a wider hole.", $"hole {ask.Hole:gap}"));
        }
        else if (numbers.Hole.Tight)
        {
            cautions.Add(new($"A {size} {ask.Species.Name} only just comes up through {ask.Hole:gap}: clear the rim, keep the hooks off the ice.", $"hole {ask.Hole:gap}"));
        }
    }
}
