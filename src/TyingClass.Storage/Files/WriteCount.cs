namespace TyingClass.Storage.Files;

/// <summary>How often the data file was written since the start. What was worked out of it holds as long as the count stays.</summary>
public sealed class WriteCount
{
    private long _count;

    /// <summary>To be read before the store is: a write that comes in between then only makes the next one work it out again.</summary>
    public long Now => Interlocked.Read(ref _count);

    internal void Add() => Interlocked.Increment(ref _count);
}
