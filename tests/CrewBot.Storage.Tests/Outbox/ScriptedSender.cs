using System.Threading.Channels;
using CrewBot.Storage.Outbox;

namespace CrewBot.Storage.Tests.Outbox;

/// <summary>A platform that keeps what it is sent, and fails where it is told to.</summary>
internal sealed class ScriptedSender : IPostSender
{
    private readonly Dictionary<string, Queue<Exception>> _faults = [];
    private readonly Dictionary<string, Task> _stalls = [];
    private readonly Dictionary<string, PostMessage> _byNonce = [];
    private readonly Channel<string> _told = Channel.CreateUnbounded<string>();
    private readonly Lock _gate = new();
    private int _messages;

    /// <summary>What every message says now, by its number.</summary>
    public SortedDictionary<string, string> Shown { get; } = [];

    /// <summary>The place that this process does not serve.</summary>
    public string? Unreachable { get; init; }

    public void FailAt(string place, params Exception[] faults) => _faults[place] = new Queue<Exception>(faults);

    public void StallAt(string place, Task until) => _stalls[place] = until;

    /// <summary>The next thing that was asked of the platform.</summary>
    public async Task<string> NextAsync(CancellationToken cancellationToken) => await _told.Reader.ReadAsync(cancellationToken);

    /// <summary>Whether nothing more was asked.</summary>
    public bool IsQuiet => !_told.Reader.TryPeek(out _);

    public bool Reaches(string crew, string place) => place != Unreachable;

    public Task<PostMessage> ShowAsync(string crew, Post post, CancellationToken cancellationToken) =>
        ActAsync($"show {crew} {post.Place} {post.Body}", post.Place, () =>
        {
            if (!_byNonce.TryGetValue(post.Nonce, out var message))
            {
                message = new PostMessage(post.Place, $"m{++_messages}");
                _byNonce[post.Nonce] = message;
                Shown[message.Id] = post.Body;
            }

            return message;
        });

    public Task<PostMessage> EditAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken) =>
        ActAsync($"edit {crew} {message.Id} {post.Body}", post.Place, () =>
        {
            Shown[message.Id] = post.Body;
            return message;
        });

    public Task RemoveAsync(string crew, Post post, PostMessage message, CancellationToken cancellationToken) =>
        ActAsync($"remove {crew} {message.Id}", post.Place, () => Shown.Remove(message.Id));

    /// <summary>The platform does what it was asked and the answer is lost.</summary>
    public static Exception LostAnswer { get; } = new HttpRequestException("answer lost");

    private async Task<T> ActAsync<T>(string what, string place, Func<T> act)
    {
        await (_stalls.GetValueOrDefault(place) ?? Task.CompletedTask);
        lock (_gate)
        {
            Exception? fault = null;
            _ = _faults.TryGetValue(place, out var faults) && faults.TryDequeue(out fault);
            var result = fault is null || ReferenceEquals(fault, LostAnswer) ? act() : default;
            _told.Writer.TryWrite(fault is null ? what : $"{what}: {fault.Message}");
            return fault is null ? result! : throw fault;
        }
    }
}
