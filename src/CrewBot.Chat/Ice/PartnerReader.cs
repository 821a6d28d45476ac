using CrewBot.Chat.Commands;

namespace CrewBot.Chat.Ice;

/// <summary>Takes what another crew goes by: the name of a partner, which is offered, or any crew's key.</summary>
public sealed class PartnerReader : OptionReader<string>
{
    // As long as the longest name that a platform lets a crew have.
    private readonly NameReader _names = new("a partner crew's name, or the key that a crew's owner gave you", longest: 100);

    public override string Accepts => _names.Accepts;

    public override bool CanSuggest => true;

    public override Reading<string> Read(string text, CrewUnits units) => _names.Read(text, units);

    // Two that share a name can only be told apart by their keys.
    public override IEnumerable<string> Suggest(string begun, Caller caller) => caller.Partners
        .GroupBy(partner => partner.Name ?? partner.Key, StringComparer.OrdinalIgnoreCase)
        .SelectMany(called => called.Count() == 1 ? [called.Key] : called.Select(partner => partner.Key))
        .Where(shown => shown.StartsWith(begun, StringComparison.OrdinalIgnoreCase));
}
