namespace TyingClass.Web.Security;

/// <summary>For how long one who guesses is made to wait.</summary>
/// <param name="Key">What the wrong tries are counted for.</param>
/// <param name="Free">So many wrong ones cost nothing.</param>
/// <param name="Most">The longest wait, however many there were.</param>
public readonly record struct DelayRule(string Key, int Free, TimeSpan Most);

/// <summary>
/// Waits that grow with wrong tries, and only with those: 1 s, 2 s, 4 s and so on up to a limit. A try that is right is never refused for what others got
/// wrong; it waits at most as long as the limit says. Tries that are under way count as wrong until they are known to be right, so that many at once are no
/// way around.
/// </summary>
public sealed class Delays(TimeProvider time)
{
    /// <summary>So many may wait for one key at a time; one more is told to come back.</summary>
    public const int MostWaiting = 10;

    private const int MostKeys = 20_000;

    private static readonly TimeSpan Forgotten = TimeSpan.FromMinutes(30);

    private readonly Lock _gate = new();
    private readonly Dictionary<string, Count> _counts = new(StringComparer.Ordinal);

    /// <summary>Waits as long as the rules say.</summary>
    /// <param name="own">Of whoever tries: a right try forgets its wrong ones.</param>
    /// <param name="others">Wider ones: of a name from everywhere, of an address whatever the name.</param>
    /// <returns>Null when too many wait already; nothing was counted then.</returns>
    /// <exception cref="OperationCanceledException">Whoever tried has left. The try counts as wrong.</exception>
    public async Task<DelayedTry?> TakeAsync(DelayRule own, IReadOnlyList<DelayRule> others, CancellationToken left)
    {
        DelayRule[] rules = [own, .. others];
        TimeSpan wait;
        lock (_gate)
        {
            Prune();
            wait = rules.Max(Wait);
            if (wait > TimeSpan.Zero && Of(own.Key).Waiting >= MostWaiting) return null;
            foreach (DelayRule rule in rules)
            {
                Of(rule.Key).Wrong++;
                Of(rule.Key).LastAt = time.GetTimestamp();
            }

            if (wait > TimeSpan.Zero) Of(own.Key).Waiting++;
        }

        if (wait > TimeSpan.Zero) await WaitAsync(own.Key, wait, left);
        return new DelayedTry(() => Forget(own, others));
    }

    private async Task WaitAsync(string key, TimeSpan wait, CancellationToken left)
    {
        try
        {
            await Task.Delay(wait, time, left);
        }
        finally
        {
            lock (_gate) Of(key).Waiting--;
        }
    }

    private TimeSpan Wait(DelayRule rule)
    {
        int over = Of(rule.Key).Wrong - rule.Free;
        return over < 0 ? TimeSpan.Zero : TimeSpan.FromSeconds(Math.Min(rule.Most.TotalSeconds, Math.Pow(2, Math.Min(over, 20))));
    }

    private void Forget(DelayRule own, IReadOnlyList<DelayRule> others)
    {
        lock (_gate)
        {
            Of(own.Key).Wrong = 0;
            foreach (DelayRule rule in others) Of(rule.Key).Wrong = Math.Max(0, Of(rule.Key).Wrong - 1);
        }
    }

    private Count Of(string key)
    {
        if (!_counts.TryGetValue(key, out Count? count)) _counts[key] = count = new Count { LastAt = time.GetTimestamp() };
        else if (count.Waiting == 0 && time.GetElapsedTime(count.LastAt) > Forgotten) count.Wrong = 0;
        return count;
    }

    // Bounded, whatever is sent: the longest untouched go first.
    private void Prune()
    {
        if (_counts.Count < MostKeys) return;
        foreach (string old in _counts.Where(c => c.Value.Waiting == 0 && time.GetElapsedTime(c.Value.LastAt) > Forgotten).Select(c => c.Key).ToList())
            _counts.Remove(old);
        if (_counts.Count < MostKeys) return;
        foreach (string old in _counts.Where(c => c.Value.Waiting == 0).OrderBy(c => c.Value.LastAt).Take(MostKeys / 2).Select(c => c.Key).ToList())
            _counts.Remove(old);
    }

    private sealed class Count
    {
        public int Wrong { get; set; }

        public int Waiting { get; set; }

        public long LastAt { get; set; }
    }
}

/// <summary>A try that has waited; wrong unless it is said to be right.</summary>
public sealed class DelayedTry(Action forget)
{
    public void WasRight() => forget();
}
