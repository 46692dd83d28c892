namespace TyingClass.Web.Progress;

/// <summary>How often, in words.</summary>
public static class CountWords
{
    public static string Attempts(int count) => count == 1 ? "1 attempt" : FormattableString.Invariant($"{count} attempts");

    public static string Times(int count) => count switch { 1 => "once", 2 => "twice", _ => FormattableString.Invariant($"{count} times") };
}
