namespace TyingClass.CommandLine;

/// <summary>What the process says when it ends.</summary>
internal static class ExitCodes
{
    public const int AllIsWell = 0;

    /// <summary>The fly or the answer falls short of what is asked.</summary>
    public const int FallsShort = 1;

    /// <summary>A usage or input error; the message is on standard error.</summary>
    public const int InputError = 2;
}
