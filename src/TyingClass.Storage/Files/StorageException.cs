namespace TyingClass.Storage.Files;

/// <summary>The data could not be opened, read or written. The message is for the person who runs the server: it names the folder and what to do.</summary>
public class StorageException : Exception
{
    public StorageException(string message)
        : base(message)
    {
    }

    public StorageException(string message, Exception cause)
        : base(message, cause)
    {
    }
}

/// <summary>Someone else has the data folder open.</summary>
public sealed class FolderInUseException(string message, Exception cause) : StorageException(message, cause);
