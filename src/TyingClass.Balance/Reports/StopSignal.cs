namespace TyingClass.Balance.Reports;

/// <summary>
/// How whoever asked for a calculation ends it before it is done: because nobody waits for it any longer, or because it has had its time.
/// </summary>
/// <remarks>It belongs to the call, not to the fly: with or without it a report that is finished is the same report. So it travels beside the
/// arguments, and what calls the engine by way of several rooms need not hand it through each of them.</remarks>
public static class StopSignal
{
    private static readonly AsyncLocal<CancellationToken> Given = new();

    /// <summary>From here until what is returned is disposed of, calculations of this call end when the token says so.</summary>
    public static IDisposable By(CancellationToken token)
    {
        CancellationToken before = Given.Value;
        Given.Value = token;
        return new Back(before);
    }

    /// <exception cref="OperationCanceledException">The asker wants it no more.</exception>
    internal static void Heed() => Given.Value.ThrowIfCancellationRequested();

    private sealed class Back(CancellationToken before) : IDisposable
    {
        public void Dispose() => Given.Value = before;
    }
}
