namespace TyingClass.Web.Hosting;

/// <summary>The server does not start; the message is for whoever started it and says what to do.</summary>
public sealed class StartRefusedException : Exception
{
    public StartRefusedException(string message)
        : base(message)
    {
    }

    public StartRefusedException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
