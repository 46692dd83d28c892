using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Text;

/// <summary>Which keys each kind of part takes, in the order they are written.</summary>
public static class PartKeys
{
    private static readonly ImmutableArray<string> Order =
        ["part", "material", "density", "size", "diameter", "turns", "length", "mass", "at", "to", "side", "tied", "side offset", "clocked"];

    private static readonly FrozenDictionary<PartKind, ImmutableArray<string>> ByKind = new Dictionary<PartKind, ImmutableArray<string>>
    {
        [PartKind.Bead] = Sorted("size", "mass"),
        [PartKind.Cone] = Sorted("size", "length", "mass"),
        [PartKind.DumbbellEyes] = Sorted("size", "mass", "side"),
        [PartKind.Wraps] = Sorted("diameter", "turns", "mass", "to"),
        [PartKind.Body] = Sorted("diameter", "mass", "to", "side"),
        [PartKind.Hackle] = Sorted("diameter", "mass", "to", "side"),
        [PartKind.Wing] = Sorted("length", "mass", "side", "tied", "to"),
        [PartKind.Tail] = Sorted("length", "mass", "side"),
        [PartKind.Legs] = Sorted("length", "mass", "side"),
        [PartKind.Foam] = Sorted("diameter", "mass", "to", "side"),
        [PartKind.Resin] = Sorted("diameter", "mass", "to", "side"),
    }.ToFrozenDictionary();

    /// <summary>Every key any part takes.</summary>
    public static ImmutableArray<string> All => Order;

    /// <summary>The keys of one kind.</summary>
    public static ImmutableArray<string> For(PartKind kind) => ByKind[kind];

    /// <summary>Where around the shank a kind may sit; eyes are lashed on top or under, never around.</summary>
    public static ImmutableArray<Side> SidesFor(PartKind kind) =>
        kind == PartKind.DumbbellEyes ? [Side.Top, Side.Under] : [Side.Top, Side.Under, Side.Around];

    private static ImmutableArray<string> Sorted(params string[] own) =>
        [.. Order.Where(k => k is "part" or "material" or "density" or "at" or "side offset" or "clocked" || own.Contains(k))];
}
