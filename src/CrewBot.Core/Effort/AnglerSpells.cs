namespace CrewBot.Core.Effort;

/// <summary>One angler's spells in the order they were let down, with how far back one may still have been down.</summary>
internal sealed class AnglerSpells
{
    private readonly (FishedSpell Spell, int Index)[] _spells;
    private readonly DateTimeOffset[] _latestUp;

    public AnglerSpells(IEnumerable<(FishedSpell Spell, int Index)> spells)
    {
        _spells = [.. spells.OrderBy(pair => pair.Spell.Down).ThenBy(pair => pair.Index)];
        _latestUp = new DateTimeOffset[_spells.Length];
        var latest = DateTimeOffset.MinValue;
        for (var at = 0; at < _spells.Length; at++)
        {
            _latestUp[at] = latest = _spells[at].Spell.Up > latest ? _spells[at].Spell.Up : latest;
        }
    }

    /// <summary>
    /// The spell that took a fish: down at that time, with its presentation; where the fish does not say, only if all that
    /// were down had the same one.
    /// </summary>
    /// <returns>The spell's index; null when there is none.</returns>
    public int? Taking(CaughtFish fish)
    {
        (FishedSpell Spell, int Index)? taking = null;
        for (var at = LastDownBy(fish.At); at >= 0 && _latestUp[at] >= fish.At; at--)
        {
            var (spell, _) = _spells[at];
            if (spell.Up < fish.At || (fish.Presentation is not null && spell.Presentation is not null && spell.Presentation != fish.Presentation))
            {
                continue;
            }

            if (taking is { } other && other.Spell.Presentation != spell.Presentation)
            {
                if (fish.Presentation is null)
                {
                    return null;
                }

                // One says what took the fish, the other says nothing.
                taking = spell.Presentation is null ? taking : _spells[at];
                continue;
            }

            taking ??= _spells[at];
        }

        return taking?.Index;
    }

    private int LastDownBy(DateTimeOffset time)
    {
        var (low, high) = (0, _spells.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _spells[middle].Spell.Down <= time ? (middle + 1, high) : (low, middle);
        }

        return low - 1;
    }
}
