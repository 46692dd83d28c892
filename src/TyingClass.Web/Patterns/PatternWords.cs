namespace TyingClass.Web.Patterns;

internal static class PatternWords
{
    public const string StaleForm =
        "The form had gone stale: it was open for long, or someone signed in or out in this browser meanwhile. Nothing was saved. What you typed stands "
        + "below; send it again.";
}
