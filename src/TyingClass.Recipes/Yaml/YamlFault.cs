namespace TyingClass.Recipes.Yaml;

public enum YamlFaultKind
{
    /// <summary>The library's own complaint stands in <see cref="YamlFault.Detail"/>; nothing is read from here on.</summary>
    Layout,

    /// <summary>The library lost its way without saying where; nothing is read from here on.</summary>
    LibraryFault,

    /// <summary>No value where one must be; nothing is read from here on.</summary>
    MissingValue,

    /// <summary>Nothing is read from here on.</summary>
    TooDeep,

    SecondDocument,
    Version,
    TagDirective,
    Alias,
    Anchor,
    Tag,
    KeyIsNoText,
}

/// <summary>What is wrong and where; whoever reads the tree says it in the words of its readers.</summary>
/// <param name="Detail">The name of an alias, anchor or tag, or the library's complaint.</param>
public sealed record YamlFault(YamlFaultKind Kind, int Line, int Column, string Detail = "");
