using System.Collections.Frozen;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>How one kind of part is drawn: each has a file here, named after it.</summary>
internal abstract class PartArt
{
    private static readonly FrozenDictionary<PartKind, PartArt> ByKind = typeof(PartArt).Assembly.GetTypes()
        .Where(t => t.IsSubclassOf(typeof(PartArt)) && !t.IsAbstract)
        .Select(t => (PartArt)Activator.CreateInstance(t)!)
        .ToFrozenDictionary(a => a.Kind);

    public abstract PartKind Kind { get; }

    /// <summary>Leaves the shank behind the eye free for a head of thread.</summary>
    public virtual bool LeavesRoomForHead => false;

    /// <summary>Slides on the shank until a collar of thread holds it.</summary>
    public virtual bool IsThreaded => false;

    /// <summary>Wire that more wire may be wound on.</summary>
    public virtual bool IsWound => false;

    /// <summary>There is a file that draws it.</summary>
    public static bool Draws(PartKind kind) => ByKind.ContainsKey(kind);

    public static PartArt Of(PartKind kind) => ByKind.TryGetValue(kind, out PartArt? found)
        ? found
        : throw new ArgumentOutOfRangeException(nameof(kind), kind, $"Write src/TyingClass.Drawing/Flies/{kind}Art.cs: nothing draws this kind of part.");

    public abstract IEnumerable<Piece> Draw(Limb limb);

    /// <summary>Diameter of what it lays all round the shank, mm, for what is tied on after it; null when it leaves the shank bare.</summary>
    public virtual double? GirthMm(Limb limb) => null;

    /// <summary>Hides the wire that lies under it.</summary>
    public virtual bool Covers(Limb limb) => false;

    /// <summary>Thickness, mm, that a band of thread adds where it is bound down in sight; null when no thread shows.</summary>
    public virtual double? ThreadMm => null;
}
