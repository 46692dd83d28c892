using System.Collections.Immutable;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>Finding and changing places in a draft's tree. Trees are never changed, only copied along the way to the change.</summary>
internal static class DraftTree
{
    public static YamlNode? Find(YamlNode? node, ReadOnlySpan<DraftStep> steps)
    {
        foreach (DraftStep step in steps)
        {
            node = (node, step.Key) switch
            {
                (YamlMap map, { } key) => map.Find(key),
                (YamlList list, null) when step.Index < list.Items.Length => list.Items[step.Index],
                _ => null,
            };
        }

        return node;
    }

    public static YamlNode? Find(YamlNode? node, ImmutableArray<DraftStep> steps) => Find(node, steps.AsSpan());

    public static YamlNode? Set(YamlNode? node, ImmutableArray<DraftStep> steps, YamlNode? leaf) =>
        Set(node, steps.AsSpan(), leaf, RecipeParser.Keys);

    public static IEnumerable<KeyValuePair<string, string>> Leaves(YamlNode node, string path) => node switch
    {
        YamlText scalar => [KeyValuePair.Create(path, scalar.Value)],
        YamlList list => list.Items.SelectMany((item, i) => Leaves(item, $"{path}[{i}]")),
        YamlMap map => map.Entries.Where(e => DraftPath.IsKey(e.Key)).SelectMany(e => Leaves(e.Value, path.Length == 0 ? e.Key : $"{path}.{e.Key}")),
        _ => [],
    };

    public static YamlMap FromFields(IEnumerable<KeyValuePair<string, string>> fields)
    {
        (ImmutableArray<DraftStep> Steps, string Value)[] typed =
        [
            .. fields.Where(f => !string.IsNullOrWhiteSpace(f.Value))
                .Select(f => (DraftPath.TryParse(f.Key, out ImmutableArray<DraftStep> steps) ? steps : [], f.Value))
                .Where(f => IsFormField(f.Item1)),
        ];
        int[] noteNumbers = [.. typed.Where(f => f.Steps.Length == 2 && f.Steps[0].Key == "steps").Select(f => f.Steps[1].Index).Distinct().Order()];
        int[] partNumbers = [.. typed.Where(f => f.Steps.Length == 3).Select(f => f.Steps[1].Index).Distinct().Order()];
        YamlNode root = new YamlMap([]);
        foreach ((ImmutableArray<DraftStep> steps, string value) in typed.OrderBy(f => f.Steps[^1].Key is null || f.Steps.Length == 3 ? f.Steps[1].Index : -1))
        {
            ImmutableArray<DraftStep> closed = steps.Length == 3 ? steps.SetItem(1, new DraftStep(null, Array.IndexOf(partNumbers, steps[1].Index)))
                : steps[^1].Key is null ? steps.SetItem(1, new DraftStep(null, Array.IndexOf(noteNumbers, steps[1].Index)))
                : steps;
            root = Set(root, closed, new YamlText(value)) ?? root;
        }

        return (YamlMap)root;
    }

    // "recipe", "hook.size", "parts[0].at".
    private static bool IsFormField(ImmutableArray<DraftStep> steps) => steps switch
    {
        [{ Key: "recipe" or "intent" }] => true,
        [{ Key: "hook" or "fishing" }, { Key: not null }] => true,
        [{ Key: "parts" }, { Key: null }, { Key: not null }] => true,
        [{ Key: "steps" }, { Key: null }] => true,
        _ => false,
    };

    private static YamlNode? Set(YamlNode? node, ReadOnlySpan<DraftStep> steps, YamlNode? leaf, ImmutableArray<string> order)
    {
        if (steps.IsEmpty) return leaf;
        return steps[0].Key is { } key
            ? SetKey(node as YamlMap ?? new YamlMap([]), key, steps[1..], leaf, order)
            : SetItem(node as YamlList ?? new YamlList([]), steps[0].Index, steps[1..], leaf, order);
    }

    private static YamlMap SetKey(YamlMap map, string key, ReadOnlySpan<DraftStep> rest, YamlNode? leaf, ImmutableArray<string> order)
    {
        YamlEntry? old = map.Entry(key);

        // Taking away what is not there must not make groups on the way.
        if (old is null && leaf is null) return map;
        YamlNode? value = Set(old?.Value, rest, leaf, OrderWithin(key));
        ImmutableArray<YamlEntry> entries = map.Entries;
        if (old is not null)
        {
            int at = entries.IndexOf(old);
            return map with { Entries = value is null ? entries.RemoveAt(at) : entries.SetItem(at, old with { Value = value }) };
        }

        int rank = Rank(key, order);
        int place = 0;
        while (place < entries.Length && Rank(entries[place].Key, order) <= rank) place++;
        return map with { Entries = entries.Insert(place, new YamlEntry(key, value!)) };
    }

    private static YamlList SetItem(YamlList list, int index, ReadOnlySpan<DraftStep> rest, YamlNode? leaf, ImmutableArray<string> order)
    {
        if (index > list.Items.Length || (index == list.Items.Length && leaf is null))
            throw new ArgumentException($"The list has {list.Items.Length} items; there is no place {index}.", nameof(index));
        YamlNode? value = Set(index < list.Items.Length ? list.Items[index] : null, rest, leaf, order);
        return new YamlList(
            value is null ? list.Items.RemoveAt(index)
            : index < list.Items.Length ? list.Items.SetItem(index, value)
            : list.Items.Add(value));
    }

    // Keys are put in where a reader expects them, whatever order a form sends.
    private static ImmutableArray<string> OrderWithin(string group) => group switch
    {
        "hook" => [.. HookReader.Keys],
        "parts" => PartKeys.All,
        "fishing" => [.. FishingReader.Keys],
        _ => [],
    };

    private static int Rank(string key, ImmutableArray<string> order) => order.IndexOf(key) is var rank and >= 0 ? rank : int.MaxValue;
}
