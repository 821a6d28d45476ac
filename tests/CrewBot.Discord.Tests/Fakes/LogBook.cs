using System.Collections.Concurrent;
using System.Threading.Channels;
using Microsoft.Extensions.Logging;

namespace CrewBot.Discord.Tests.Fakes;

/// <summary>Keeps every line that is logged, exceptions in full.</summary>
internal sealed class LogBook : ILoggerFactory, ILogger
{
    private readonly Channel<string> _fresh = Channel.CreateUnbounded<string>();

    public ConcurrentQueue<string> Lines { get; } = new();

    /// <summary>The next line with this text; others before it are passed over.</summary>
    public async Task<string> LineAsync(string part, CancellationToken cancellationToken)
    {
        while (true)
        {
            var line = await _fresh.Reader.ReadAsync(cancellationToken);
            if (line.Contains(part, StringComparison.Ordinal))
            {
                return line;
            }
        }
    }

    public ILogger CreateLogger(string categoryName) => this;

    public void AddProvider(ILoggerProvider provider) => throw new NotSupportedException();

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(
        LogLevel logLevel,
        EventId eventId,
        TState state,
        Exception? exception,
        Func<TState, Exception?, string> formatter)
    {
        var line = $"{logLevel}: {formatter(state, exception)} {exception}";
        Lines.Enqueue(line);
        _fresh.Writer.TryWrite(line);
    }

    public void Dispose()
    {
    }
}
