using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Exercises;

/// <summary>What a repair may change, what a composed fly must be, and the parts box.</summary>
internal static partial class AllowReader
{
    private static readonly string[] HookKeys = ["size", "shank", "wire", "gape", "eye", "bend", "mass"];
    private static readonly string[] FishingKeys =
    [
        "leader", "knot", "water", "speed", "retrieve", "repeat", "count down", "line", "line out", "leader length", "rod tip", "water depth", "current",
        "wetted",
    ];

    public static ImmutableArray<AllowedChange> Allow(FieldReader fields, Recipe? given)
    {
        ImmutableArray<AllowedChange>.Builder all = ImmutableArray.CreateBuilder<AllowedChange>();
        foreach ((YamlNode place, string path, YamlNode? value) in fields.Pairs("allow"))
        {
            if (PathComplaint(path, given) is { } complaint) fields.Errors.Add(place, complaint);
            else if (RangeText.Rule(path, path[(path.LastIndexOf('.') + 1)..], value, place, fields.Errors) is { } rule) all.Add(rule);
        }

        return all.ToImmutable();
    }

    /// <summary>What is wrong with a path into the fly given, or null.</summary>
    public static string? PathComplaint(string path, Recipe? given)
    {
        const string Forms = "Write hook.eye, parts[0].size, fishing.knot, intent, or parts to let parts come and go; parts are numbered from 0.";
        if (path is "intent" or "parts" or "hook" or "fishing") return null;
        if (Pattern().Match(path) is not { Success: true } match) return $"“{FieldReader.Clip(path)}” is not a place in a recipe. {Forms}";
        string key = match.Groups["key"].Value;
        if (match.Groups["group"].Value is { Length: > 0 } group)
        {
            string[] keys = group == "hook" ? HookKeys : FishingKeys;
            return keys.Contains(key) ? null : $"{group} has no “{key}”.{Nearest.Hint(key, keys)} It has {string.Join(", ", keys)}.";
        }

        int index = int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture);
        if (given is null) return null;
        if (index >= given.Parts.Length) return $"The fly given has {given.Parts.Length} parts, numbered 0 to {given.Parts.Length - 1}; there is no {path}.";
        ImmutableArray<string> known = KindsOfPart.Of(given.Parts[index]).Keys;
        return key.Length == 0 || known.Contains(key)
            ? null
            : $"{FlyBuilder.Names(given.Parts)[index]} (part {index}) has no “{key}”.{Nearest.Hint(key, known)} It has {string.Join(", ", known)}.";
    }

    public static ImmutableArray<AllowedChange> Fixed(FieldReader fields)
    {
        ImmutableArray<AllowedChange>.Builder all = ImmutableArray.CreateBuilder<AllowedChange>();
        if (fields.Node("intent") is { } intent && RangeText.Rule("intent", "intent", intent, intent, fields.Errors) is { } rule) all.Add(rule);
        foreach (string group in new[] { "hook", "fishing" })
        {
            foreach (YamlEntry entry in fields.Group(group)?.Entries ?? [])
            {
                YamlText place = new(entry.Key, entry.Line, entry.Column);
                if (PathComplaint($"{group}.{entry.Key}", null) is { } complaint) fields.Errors.Add(place, complaint);
                else if (RangeText.Rule($"{group}.{entry.Key}", entry.Key, entry.Value, place, fields.Errors) is { } found) all.Add(found);
            }
        }

        return all.ToImmutable();
    }

    public static ImmutableArray<BoxEntry> Box(FieldReader fields)
    {
        ImmutableArray<BoxEntry>.Builder box = ImmutableArray.CreateBuilder<BoxEntry>();
        foreach (YamlNode item in fields.Items("parts box"))
        {
            if (item is not YamlMap map)
            {
                fields.Errors.Add(item, "Each entry of the parts box begins with its kind, as in “- part: bead”, its limits below.");
                continue;
            }

            FieldReader entry = new(map, "a parts box entry", fields.Errors);
            string? part = entry.RequiredText("part", "bead");
            ImmutableArray<string> kinds = KindsOfPart.Words;
            if (part is null) continue;
            if (!kinds.Contains(part))
            {
                fields.Errors.Add(entry.At("part"),
                    $"“{FieldReader.Clip(part)}” is not a kind of part.{Nearest.Hint(part, kinds)} It may be {string.Join(", ", kinds)}.");
                continue;
            }

            ImmutableArray<string> keys = KindsOfPart.Find(part)!.Keys;
            entry.CheckKeys([.. keys, "at most"]);
            box.Add(new BoxEntry(part, entry.WholeNumber("at most", 1, 60), [.. map.Entries
                .Where(e => e.Key is not ("part" or "at most") && keys.Contains(e.Key))
                .Select(e => RangeText.Rule(e.Key, e.Key, e.Value, e.Value, fields.Errors))
                .OfType<AllowedChange>()]));
        }

        return box.ToImmutable();
    }

    [GeneratedRegex(@"\A(?:(?<group>hook|fishing)\.(?<key>[a-z ]+)|parts\[(?<index>[0-9]{1,3})\](?:\.(?<key>[a-z ]+))?)\z")]
    private static partial Regex Pattern();
}
