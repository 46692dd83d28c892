using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>What to say when a text as a whole is no set of keys.</summary>
internal static class RootAdvice
{
    /// <summary>Adds nothing when something was already said that explains it.</summary>
    public static void Add(YamlNode? root, ErrorList errors)
    {
        if (root is null or YamlText { Value: "" })
        {
            if (errors.Count == 0) errors.Add(1, 1, null, "The text is empty. Begin with the fly's name, as in “recipe: Slate Minnow”.");
        }
        else if (root is not (YamlMap or YamlSpoiled))
        {
            errors.Add(root, null,
                "A recipe is made of lines such as “recipe: Slate Minnow” and “intent: point down”, each a key, a colon and a value. This text begins with "
                    + "something else.");
        }
    }
}
