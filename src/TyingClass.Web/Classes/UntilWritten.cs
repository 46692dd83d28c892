using System.Collections.Concurrent;
using TyingClass.Storage.Files;

namespace TyingClass.Web.Classes;

/// <summary>What was worked out of the store, remembered until anything is written: a class that is read and not changed is added up once.</summary>
public sealed class UntilWritten(WriteCount writes)
{
    private const int Most = 200;

    private readonly ConcurrentDictionary<string, (long At, object? Of, object Value)> _kept = [];

    /// <param name="key">What it is, and whose.</param>
    /// <param name="of">What else it was made of, such as the course; another one than before makes it anew.</param>
    /// <param name="work">Reads the store; its result is shared and must not change.</param>
    public T Get<T>(string key, object? of, Func<T> work)
        where T : class
    {
        ArgumentNullException.ThrowIfNull(work);
        // Before the work: what is written meanwhile is then not taken for seen.
        long now = writes.Now;
        if (_kept.TryGetValue(key, out (long At, object? Of, object Value) kept) && kept.At == now && ReferenceEquals(kept.Of, of)) return (T)kept.Value;
        T value = work();
        if (_kept.Count > Most) _kept.Clear();
        _kept[key] = (now, of, value);
        return value;
    }
}
