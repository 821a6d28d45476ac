namespace CrewBot.Core.Knowledge.Checks;

/// <summary>What must hold of a presentation, alone and beside the others.</summary>
internal static class PresentationCheck
{
    private const int BiteLength = 90;
    private const double HighestMetres = 10;
    private const int CallsLength = 70;
    private const int BodyLength = 40;
    private const int LastStep = 6;
    private const int LastStepByLoudness = 5;
    private const int Loudest = 4;
    private const int MostHooks = 6;

    public static IEnumerable<Misfit> Misfits(Presentation presentation, TradeKnowledge all) =>
    [
        .. Texts(presentation),
        .. Height(presentation),
        .. Scale(presentation, all),
        .. Hooks(presentation),
        .. LureStepsCheck.Misfits(presentation),
        .. presentation.Outfits.Values.Where(key => !all.Outfits.Has(key))
            .Select(key => new Misfit("outfits", FieldCheck.Unknown("outfit", key))),
        .. FieldCheck.Keys("materials", presentation.Materials, all.LureMaterials, "lure material"),
        .. Sinking(presentation),
        .. KnotOf(presentation, all),
    ];

    private static IEnumerable<Misfit> Texts(Presentation presentation)
    {
        if (presentation.Work.Count == 0)
        {
            yield return new("work", "Say how to work it in at least one mood.");
        }

        var texts = presentation.Work.Values.SelectMany(text => FieldCheck.Text("work", text, FieldCheck.Sentence))
            .Concat(FieldCheck.Text("bite", presentation.Bite, BiteLength))
            .Concat(FieldCheck.Text("calls", presentation.Calls, CallsLength))
            .Concat(FieldCheck.Text("body", presentation.Body, BodyLength));
        foreach (var misfit in texts)
        {
            yield return misfit;
        }
    }

    private static IEnumerable<Misfit> Height(Presentation presentation)
    {
        if (presentation.OffBottom is { } off && Enum.GetValues<Mood>().Any(mood => off[mood].Meters is not (>= 0 and <= HighestMetres)))
        {
            yield return new("offBottom", "Heights off the bottom lie from 0 to 10 m.");
        }
    }

    private static IEnumerable<Misfit> Scale(Presentation presentation, TradeKnowledge all)
    {
        if (presentation.Step is < 1 or > LastStep)
        {
            yield return new("step", "Steps run from 1 (passive) to 6; leave it out for one beside the scale.");
        }

        if (presentation.Loudness is < 0 or > Loudest)
        {
            yield return new("loudness", "Loudness runs from 0 (silent) to 4 (heard across the flat).");
        }

        // Step 6, the large soft body, calls by bulk; up to step 5 a step up the scale is never a step down in noise.
        if (presentation.Step > LastStepByLoudness)
        {
            yield break;
        }

        foreach (var other in all.Presentations.Where(other => other.Step <= LastStepByLoudness))
        {
            if (other.Step > presentation.Step && other.Loudness < presentation.Loudness)
            {
                yield return new("loudness", $"{other.Key}, higher on the scale, is quieter: it may not be.", other.Key);
            }

            if (other.Step < presentation.Step && other.Loudness > presentation.Loudness)
            {
                yield return new("loudness", $"{other.Key}, lower on the scale, is louder: it may not be.", other.Key);
            }
        }
    }

    private static IEnumerable<Misfit> Hooks(Presentation presentation)
    {
        if (presentation.Hooks is < 1 or > MostHooks)
        {
            yield return new("hooks", "Count 1 to 6 hooks, a treble as one.");
        }

        if (presentation.Trebles < 0 || presentation.Trebles > presentation.Hooks)
        {
            yield return new("trebles", "Trebles are counted among the hooks: from 0 to the number of hooks.");
        }
    }

    private static IEnumerable<Misfit> Sinking(Presentation presentation)
    {
        if (presentation.BodyDensity?.GramsPerCubicCentimeter is <= 1 or > 20)
        {
            yield return new("bodyDensity", "A body that sinks is denser than water: above 1 and up to 20 g/cm3.");
        }

        foreach (var misfit in FieldCheck.Share("fall", presentation.Fall))
        {
            yield return misfit;
        }
    }

    private static IEnumerable<Misfit> KnotOf(Presentation presentation, TradeKnowledge all)
    {
        if (!all.Knots.Has(presentation.Knot))
        {
            yield return new("knot", FieldCheck.Unknown("knot", presentation.Knot));
        }
        else if (all.Knots[presentation.Knot].Kind == KnotKind.Join)
        {
            yield return new("knot", $"{presentation.Knot} joins two lines: name a knot that ties to a lure.");
        }
    }
}
