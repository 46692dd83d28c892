using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <param name="Number">Its place in tying order, from 1.</param>
/// <param name="Clean">Read without a complaint.</param>
internal sealed record ReadPart(PartSpec Spec, MapReader Map, int Number, bool Clean)
{
    public string Name => $"{Words.Parts.For(Spec.Kind)} (part {Number})";
}

/// <summary>The list of parts.</summary>
internal static class PartReader
{
    private const string ListAdvice = "The parts are a list. Begin each with a dash and its kind, as in “- part: bead”, its other keys straight below “part”.";

    /// <summary>The parts that could be read, each with its place in the text and whether it was free of mistakes.</summary>
    public static ImmutableArray<ReadPart> Read(MapReader recipe)
    {
        switch (recipe.Map.Find("parts"))
        {
            case YamlList list:
                if (list.Items.Length > Limits.MostParts)
                    recipe.Errors.Add(list.Items[Limits.MostParts], "parts",
                        $"There are {list.Items.Length} parts; a fly may have at most {Limits.MostParts}, so that it can be worked out while you wait. "
                            + "Write parts that are alike and lie together as one.");
                return ReadItems([.. list.Items.Take(Limits.MostParts)], recipe);
            case null or YamlSpoiled:
                return [];
            default:
                recipe.Complain("parts", ListAdvice);
                return [];
        }
    }

    /// <summary>Works out what was said in words, and looks at ends and ranges that could not be told before.</summary>
    public static ImmutableArray<ReadPart> Settled(ImmutableArray<ReadPart> parts, HookSpec spec)
    {
        if (parts.All(p => p.Spec.Said.IsEmpty) || !HookScale.TryResolve(spec, out ResolvedHook? hook, out _)) return parts;
        ImmutableArray<PartSpec> settled = Places.Settle([.. parts.Select(p => p.Spec)], hook);
        return [.. parts.Select((part, i) => part.Spec.Said.IsEmpty ? part : Checked(part with { Spec = settled[i] }))];
    }

    private static ReadPart Checked(ReadPart part)
    {
        int before = part.Map.Errors.Count;
        KindOfPart kind = KindsOfPart.Of(part.Spec);
        Limit lengths = kind.LimitOf("length");
        if (part.Spec.Said["length"] is { } words && part.Spec.LengthM is { } lengthM && (lengthM < lengths.LowSi || lengthM > lengths.HighSi))
            part.Map.Complain("length", lengths.OutOfRange(words));
        if (part.Clean) CheckEnd(part.Map, part.Spec, kind);
        return part with { Clean = part.Clean && part.Map.Errors.Count == before };
    }

    private static ImmutableArray<ReadPart> ReadItems(ImmutableArray<YamlNode> items, MapReader recipe)
    {
        List<ReadPart> parts = [];
        for (int i = 0; i < items.Length; i++)
        {
            ImmutableArray<string> tied = FlyBuilder.Names([.. parts.Select(p => p.Spec)]);
            if (ReadItem(items[i], i, recipe, tied) is { } part) parts.Add(part);
        }

        return [.. parts];
    }

    private static ReadPart? ReadItem(YamlNode item, int index, MapReader recipe, ImmutableArray<string> tied)
    {
        int before = recipe.Errors.Count;
        string path = $"parts[{index}]";
        if (item is YamlSpoiled) return null;
        if (item is not YamlMap node)
        {
            recipe.Errors.Add(item, path, $"Part {index + 1}: {ListAdvice}");
            return null;
        }

        string label = $"Part {index + 1}";
        PartKind? kind = Kind(new MapReader(node, path, label, recipe.Complete, recipe.Errors));
        if (kind is { } known) label = $"{label} ({Words.Parts.For(known)})";
        MapReader map = new(node, path, label, recipe.Complete, recipe.Errors);
        CheckKeys(map, kind);
        map.Missing("part", $"Say what it is, as in “part: bead”. It may be {WordList.Or(Words.Parts.Words)}.");
        PartSpec part = ReadFields(map, KindsOfPart.Of(kind ?? default), tied);
        return kind is null ? null : new ReadPart(part, map, index + 1, recipe.Errors.Count == before);
    }

    private static PartKind? Kind(MapReader map)
    {
        if (map.Text("part", "“bead”") is not { } text) return null;
        if (Words.Parts.TryGet(text, out PartKind kind)) return kind;
        map.Complain("part",
            $"{WordList.Quote(text)} is not a part known here.{KindsOfPart.Hint(text)} It may be {WordList.Or(Words.Parts.Words)}.");
        return null;
    }

    private static void CheckKeys(MapReader map, PartKind? kind)
    {
        KindOfPart? known = kind is { } k ? KindsOfPart.Of(k) : null;
        ImmutableArray<string> keys = known?.Keys ?? PartKeys.All;
        map.CheckKeys(keys, key => PartKeys.All.Contains(key)
            ? $"{WordList.Quote(key)} does not apply to {known?.WithArticle}. {known?.Instead(key)} It takes {WordList.And(keys)}."
            : $"{WordList.Quote(key)} is not a key of a part.{PartKeys.Hint(key, keys)} It takes {WordList.And(keys)}.");
    }

    private static PartSpec ReadFields(MapReader map, KindOfPart kind, ImmutableArray<string> tied)
    {
        (int? balls, string? ballMaterial) = BallText.Read(map);
        PartMeasureReader measures = new(map, kind, tied);
        PartSpec part = new(kind.Kind)
        {
            Material = Material(map),
            DensityKgM3 = map.Quantity("density", Limits.Density),
            SizeM = measures.Size(),
            DiameterM = measures.Diameter(),
            Turns = WholeNumber(map, "turns", Limits.FewestTurns, Limits.MostTurns, 18),
            Balls = balls,
            BallMaterial = ballMaterial,
            Loops = WholeNumber(map, "loops", 1, Limits.MostLoops, 2),
            LengthM = measures.Length(),
            MassKg = map.Quantity("mass", Limits.Mass),
            AtM = measures.At(),
            ToM = measures.To(),
            Side = SideOf(map, kind),
            Tied = map.Choice("tied", Words.Ties),
            SideOffsetM = map.Quantity("side offset", Limits.SideOffset) ?? 0,
            ClockedRad = map.Quantity("clocked", Limits.Clocked) ?? 0,
        };
        part = part with { Said = measures.Said };
        // What hangs on the hook or on other parts is looked at when those are known.
        if (part.Said.IsEmpty) CheckEnd(map, part, kind);
        return part;
    }

    private static void CheckEnd(MapReader map, PartSpec part, KindOfPart kind)
    {
        if (part.ToM is not { } toM) return;
        if (toM <= part.AtM)
            map.Complain("to",
                $"The part ends at {Units.Write(toM, Dimension.Length)}, which is not behind its front edge "
                    + $"at {Units.Write(part.AtM, Dimension.Length)}. “to” is its rear edge, so it must be the larger.");
        else if (kind.Keys.Contains("to") && kind.EndComplaint(part) is { } complaint)
            map.Complain("to", complaint);
    }

    private static string? Material(MapReader map)
    {
        if (map.Text("material", "“brass”") is not { } text) return null;
        if (Materials.TryFind(WordList.Plain(text), out Material? material) || Materials.TryFind(TradeText.Metal(text), out material)) return material.Name;
        string hint = Units.TryParse(text, Dimension.Density, out _, out _)
            ? $" If a density is meant, write “density: {text.Trim()}” instead."
            : Nearest.Hint(text, Materials.All.Select(m => m.Name)) is { Length: > 0 } near ? near + Color(text) : "";
        map.Complain("material", $"{WordList.Quote(text)} is not in the materials table.{hint} For anything else leave “material” out and give its “density”.");
        return null;
    }

    private static string Color(string text) => TradeText.HasColor(text) ? " Colors are not kept there; write them under “steps”." : "";

    private static Side? SideOf(MapReader map, KindOfPart kind)
    {
        if (map.Choice("side", kind.Sides.Contains(Side.Beside) ? Words.AllSides : Words.Sides) is not { } side) return null;
        if (kind.Sides.Contains(side)) return side;
        map.Complain("side", kind.SideAdvice);
        return null;
    }

    private static int? WholeNumber(MapReader map, string key, int least, int most, int example)
    {
        if (map.Text(key, $"{example}") is not { } text) return null;
        if (int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least && number <= most) return number;
        map.Complain(key, $"{WordList.Quote(text)} is not a number of {key}. Write a whole number from {least} to {most}, such as {example}, with no unit.");
        return null;
    }
}
