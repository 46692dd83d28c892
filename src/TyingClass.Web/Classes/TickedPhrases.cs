namespace TyingClass.Web.Classes;

/// <summary>Words with the phrases that were ticked beside them.</summary>
public static class TickedPhrases
{
    /// <param name="field">Of the words; its phrases are sent beside it.</param>
    public static string With(IFormCollection form, string field)
    {
        ArgumentNullException.ThrowIfNull(form);
        string typed = form[field].ToString();
        string[] ticked = [.. form[$"{field}-phrase"].OfType<string>().Where(p => p.Length > 0 && !typed.Contains(p, StringComparison.Ordinal))];
        return ticked.Length == 0 ? typed : string.Join('\n', [.. typed.Trim().Length == 0 ? [] : new[] { typed.TrimEnd() }, .. ticked]);
    }
}
