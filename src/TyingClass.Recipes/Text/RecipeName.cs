namespace TyingClass.Recipes.Text;

/// <summary>The fly's name: one visible line.</summary>
internal static class RecipeName
{
    public static string? Read(MapReader map)
    {
        if (map.Text("recipe", "“Slate Minnow”")?.Trim() is not { } name) return null;
        if (name.Any(c => char.IsControl(c) || Invisible.Is(c)))
            map.Complain("recipe", "The name holds a line end or a character that cannot be seen. Retype it on one line.");
        else if (name.Length > Limits.LongestName)
            map.Complain("recipe", $"The name is {name.Length} characters long. Shorten it to {Limits.LongestName}.");
        else return name;
        return null;
    }
}
