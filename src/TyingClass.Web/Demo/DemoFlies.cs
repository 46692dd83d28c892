using System.Reflection;

namespace TyingClass.Web.Demo;

/// <summary>The invented students' recipes as they were first written down.</summary>
internal static class DemoFlies
{
    /// <param name="name">Of the file under Demo/Flies, without its ending.</param>
    public static string Text(string name)
    {
        using Stream stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name + ".fly.yaml")
            ?? throw new ArgumentException($"There is no invented fly {name}.", nameof(name));
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    /// <summary>One change to a recipe: <paramref name="old"/> must stand there, and is replaced where it first does.</summary>
    public static string Change(string recipeText, string old, string by)
    {
        int at = recipeText.IndexOf(old, StringComparison.Ordinal);
        return at < 0 ? throw new ArgumentException($"“{old}” does not stand in the recipe.", nameof(old))
            : recipeText[..at] + by + recipeText[(at + old.Length)..];
    }
}
