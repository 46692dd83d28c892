using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text.Yaml;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>
/// A recipe as typed: every field the very string the user wrote, right or wrong, unknown keys included. A form turns into a draft,
/// a draft into text, and the parser's errors come back to the field by their path. Immutable.
/// </summary>
public sealed class RecipeDraft : IEquatable<RecipeDraft>
{
    private readonly YamlMap _root;

    private RecipeDraft(YamlMap root) => _root = root;

    /// <summary>Nothing typed yet.</summary>
    public static RecipeDraft Empty { get; } = new(new YamlMap([]));

    internal YamlMap Root => _root;

    /// <summary>How many parts are listed.</summary>
    public int PartCount => Parts?.Items.Length ?? 0;

    /// <summary>Every field with its path, in the order of the text. Fields under keys that no path can name are left out.</summary>
    public IEnumerable<KeyValuePair<string, string>> Values => DraftTree.Leaves(_root, "");

    private YamlList? Parts => _root.Find("parts") as YamlList;

    /// <summary>Reads text as far as its layout goes; values may be wrong. Fails only where the layout itself is broken.</summary>
    public static ParseResult<RecipeDraft> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        ErrorList errors = new();
        (YamlNode? root, _) = RecipeYaml.Read(text, errors);
        if (root is not YamlMap) RootAdvice.Add(root, errors);
        return root is YamlMap map && errors.Count == 0
            ? ParseResult<RecipeDraft>.Of(new RecipeDraft(RetrieveInOneLine(map)))
            : ParseResult<RecipeDraft>.Failed(errors.InOrder());
    }

    /// <summary>
    /// Builds a draft from a posted form. Blank fields are left out, names that are no path are ignored, and gaps in the
    /// numbering of the parts are closed.
    /// </summary>
    public static RecipeDraft FromFields(IEnumerable<KeyValuePair<string, string>> fields) =>
        new(DraftTree.FromFields(fields));

    /// <summary>The draft of a finished recipe.</summary>
    public static RecipeDraft Of(Recipe recipe) => RecipeWriter.Draft(recipe);

    /// <summary>What is typed in a field, or null when it is not there or is no single value.</summary>
    public string? Get(string path) =>
        DraftPath.TryParse(path, out ImmutableArray<DraftStep> steps) && DraftTree.Find(_root, steps) is YamlText scalar ? scalar.Value : null;

    /// <summary>The single values of one group, "hook" or "parts[2]", in their order.</summary>
    public IReadOnlyList<KeyValuePair<string, string>> Fields(string path) =>
        DraftPath.TryParse(path, out ImmutableArray<DraftStep> steps) && DraftTree.Find(_root, steps) is YamlMap map
            ? [.. map.Entries.Where(e => e.Value is YamlText).Select(e => KeyValuePair.Create(e.Key, ((YamlText)e.Value).Value))]
            : [];

    /// <summary>Sets a field, making its group if need be; null takes it away.</summary>
    /// <exception cref="ArgumentException">The path is malformed or points past the end of a list.</exception>
    public RecipeDraft With(string path, string? value) =>
        new((YamlMap?)DraftTree.Set(_root, DraftPath.Parse(path), value is null ? null : new YamlText(value)) ?? new YamlMap([]));

    /// <summary>Adds a part at the end of the tying order.</summary>
    public RecipeDraft AddPart(params IEnumerable<KeyValuePair<string, string>> fields) => InsertPart(PartCount, fields);

    /// <summary>Puts a part in at <paramref name="index"/>, 0 … <see cref="PartCount"/>.</summary>
    public RecipeDraft InsertPart(int index, params IEnumerable<KeyValuePair<string, string>> fields)
    {
        YamlMap part = new([.. fields.Select(f => new YamlEntry(f.Key, new YamlText(f.Value)))]);
        return WithParts((Parts?.Items ?? []).Insert(index, part));
    }

    public RecipeDraft RemovePart(int index) => WithParts((Parts?.Items ?? []).RemoveAt(index));

    /// <summary>Moves a part to another place in the tying order.</summary>
    public RecipeDraft MovePart(int from, int to)
    {
        ImmutableArray<YamlNode> items = Parts?.Items ?? [];
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)from, (uint)items.Length, nameof(from));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)to, (uint)items.Length, nameof(to));
        return WithParts(items.RemoveAt(from).Insert(to, items[from]));
    }

    /// <summary>YAML that reads back as the same draft; strings that YAML could misread are quoted.</summary>
    public string ToText() => TreeWriter.Write(_root);

    public bool Equals([NotNullWhen(true)] RecipeDraft? other) => other is not null && ToText() == other.ToText();

    public override bool Equals(object? obj) => Equals(obj as RecipeDraft);

    public override int GetHashCode() => ToText().GetHashCode(StringComparison.Ordinal);

    // A form has one field for it.
    private static YamlMap RetrieveInOneLine(YamlMap root) =>
        (root.Find("fishing") as YamlMap)?.Find("retrieve") is YamlList list && RetrieveText.InOneLine(list) is { } line
            ? (YamlMap)DraftTree.Set(root, DraftPath.Parse("fishing.retrieve"), new YamlText(line))!
            : root;

    private RecipeDraft WithParts(ImmutableArray<YamlNode> items) =>
        new((YamlMap)DraftTree.Set(_root, [new DraftStep("parts", 0)], new YamlList(items))!);
}
