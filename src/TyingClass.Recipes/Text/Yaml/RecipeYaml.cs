using System.Text.RegularExpressions;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>Recipe text into a tree, its faults said in a tyer's words.</summary>
internal static partial class RecipeYaml
{
    // A recipe needs three levels; more is a mistake or an attack.
    private const int DeepestLevel = 8;

    /// <summary>The tree, and whether the text was read to its end: if not, what is missing may only be unread.</summary>
    public static (YamlNode? Root, bool Complete) Read(string text, ErrorList errors)
    {
        // Notepad puts a byte order mark in front.
        if (text.StartsWith('\uFEFF')) text = text[1..];
        if (!TextGuard.Inspect(text, errors)) return (null, false);
        // To YAML a “#” begins a remark; to a tyer “#6” is a hook's size. The sign gives way to a space, so that every place stays where it is.
        text = NumberedSize().Replace(text, "${key} ");
        string[] lines = TextLines.Of(text);
        (YamlNode? root, bool complete) = YamlTree.Read(text, DeepestLevel, fault => Tell(fault, lines, errors));
        return (PartKeys.Translated(root), complete);
    }

    private static void Tell(YamlFault fault, string[] lines, ErrorList errors)
    {
        (int line, int column, string advice) = fault.Kind == YamlFaultKind.Layout
            ? LayoutAdvice.For(fault.Detail, (fault.Line, fault.Column), lines)
            : (fault.Line, fault.Column, Advice(fault, lines));
        errors.Add(line, column, null, advice);
    }

    private static string Advice(YamlFault fault, string[] lines) => fault.Kind switch
    {
        YamlFaultKind.SecondDocument => "A second recipe begins here. One text holds one fly: put the second one in a text of its own.",
        YamlFaultKind.Version => "Recipes are written in YAML 1.2. Delete the line that begins with %YAML.",
        YamlFaultKind.TagDirective => "Tags have no place in a recipe. Delete the line that begins with %TAG.",
        YamlFaultKind.TooDeep => "Lists and groups are nested far deeper here than any recipe needs. Check the indentation and the brackets.",
        YamlFaultKind.Alias =>
            $"{WordList.Quote("*" + fault.Detail)} refers to another place in the text (an alias), which a recipe may not do. "
            + "Write the value out here, or put it in quotes if the star is meant.",
        YamlFaultKind.Anchor =>
            $"{WordList.Quote("&" + fault.Detail)} names this place for later use (an anchor), which a recipe may not do. Delete it, or put the value in "
                + "quotes if the sign is meant.",
        YamlFaultKind.Tag =>
            $"{WordList.Quote(fault.Detail.Replace("tag:yaml.org,2002:", "!!", StringComparison.Ordinal))} is a tag, which has no place in a recipe. "
            + "Delete it, or put the value in quotes if the sign is meant.",
        YamlFaultKind.KeyIsNoText => "A list or group stands where a key should be. Write a word, a colon and a value, such as “size: 6”.",
        YamlFaultKind.LibraryFault when lines.Any(l => l.IndexOfAny(['{', '[']) >= 0) => LayoutAdvice.Brackets,
        _ => LayoutAdvice.General,
    };

    [GeneratedRegex(@"(?<key>^[ ]*(?:- +)?size:[ ]+)#(?=[ ]?[0-9]{1,2}(?:/0)?[ ]*(?:#.*)?\r?$)", RegexOptions.Multiline)]
    private static partial Regex NumberedSize();
}
