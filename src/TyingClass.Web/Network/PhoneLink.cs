namespace TyingClass.Web.Network;

/// <summary>For the partial _PhoneLink: an address to type and its code for a camera.</summary>
/// <param name="Path">Where the code leads, the query with it.</param>
/// <param name="Words">What one does there: "Join the class".</param>
/// <param name="Shown">Typed by hand; null for the path itself without its query.</param>
public sealed record PhoneLink(string Path, string Words, string? Shown = null)
{
    public string TypedPath => Shown ?? Path.Split('?')[0];
}
