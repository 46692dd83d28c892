namespace TyingClass.Storage.Files;

/// <summary>The data could not be opened, read or written. The message is for the person who runs the server: it names the folder and what to do.</summary>
public sealed class StorageException : Exception
{
    public StorageException(string message)
        : base(message)
    {
    }

    public StorageException(string message, Exception cause)
        : base(message, cause)
    {
    }

    /// <summary>True when another process, or another store in this one, has the folder open.</summary>
    public bool FolderInUse { get; init; }

    /// <summary>True when something that was kept is missing, and whoever runs the server may choose to go on without it.</summary>
    public bool IsLoss => Lost is not null;

    /// <summary>What is missing, without what can be done about it; null where nothing is.</summary>
    public string? Lost { get; init; }
}
