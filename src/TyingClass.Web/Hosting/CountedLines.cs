using System.Globalization;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Logging.Console;

namespace TyingClass.Web.Hosting;

/// <summary>
/// What goes wrong, on the console: the first of a kind whole, its like counted for a minute and told with the next. Twenty thousand bad requests are some
/// dozen lines, and none of them is long. Rotating is for whatever keeps the console's text.
/// </summary>
/// <remarks>
/// Of one kind is what has the same source, number and kind of exception; what came without an exception is of one kind only with the very same words, so
/// that each damaged record is named. A count that nothing follows is not told.
/// </remarks>
internal sealed class CountedLines(TimeProvider time) : ConsoleFormatter(FormatterName)
{
    public const string FormatterName = "counted";

    /// <summary>Of one entry.</summary>
    public const int MostLetters = 4000;

    private const string Host = "Microsoft.Extensions.Hosting.Internal.Host", FailedToStart = "HostedServiceStartupFaulted";

    // Kinds counted at a time: more than there are in this program.
    private const int MostKinds = 200;

    private static readonly TimeSpan Counting = TimeSpan.FromMinutes(1);

    private readonly Lock _gate = new();
    private readonly Dictionary<(string Category, int Id, string Kind), Count> _counts = [];

    public override void Write<TState>(in LogEntry<TState> logEntry, IExternalScopeProvider? scopeProvider, TextWriter textWriter)
    {
        ArgumentNullException.ThrowIfNull(textWriter);
        if (logEntry.Category == Host && IsSaidAnyway(logEntry.EventId, logEntry.Exception)) return;
        DateTimeOffset now = time.GetUtcNow();
        string text = logEntry.Formatter(logEntry.State, logEntry.Exception);
        if (Counted((logEntry.Category, logEntry.EventId.Id, logEntry.Exception?.GetType().FullName ?? text), now) is not { } before) return;
        if (logEntry.Exception is { } exception) text += $"{Environment.NewLine}      {exception}";
        if (text.Length > MostLetters) text = text[..MostLetters] + " … (cut)";
        string more = before == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" ({before:N0} more of this kind since the last line of it)");
        textWriter.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{now:u} {Word(logEntry.LogLevel)}: {logEntry.Category}: {text}{more}"));
    }

    // Why a start failed is said in a sentence, or by the runtime as it ends; work that ends because of it has not failed.
    private static bool IsSaidAnyway(EventId id, Exception? exception) => id.Name == FailedToStart || exception is OperationCanceledException;

    // Null for what is only counted; otherwise how many were counted since the last that was told.
    private long? Counted((string, int, string) kind, DateTimeOffset now)
    {
        lock (_gate)
        {
            if (_counts.TryGetValue(kind, out Count? count))
            {
                if (now - count.ToldAt < Counting)
                {
                    count.Since++;
                    return null;
                }
            }
            else if (_counts.Count >= MostKinds)
            {
                _counts.Clear();
            }

            _counts[kind] = new Count(now);
            return count?.Since ?? 0;
        }
    }

    private static string Word(LogLevel level) => level switch
    {
        LogLevel.Critical => "critical",
        LogLevel.Error => "error",
        LogLevel.Warning => "warning",
        _ => "note",
    };

    private sealed record Count(DateTimeOffset ToldAt)
    {
        public long Since { get; set; }
    }
}
