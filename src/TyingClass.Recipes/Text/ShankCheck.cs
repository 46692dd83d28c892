using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Text;

/// <summary>
/// Whether the parts find room on the shank. Beads, cones and wraps take their stretch for themselves; dressings are tied over one
/// another and may run a little way onto the bend, as tyers do.
/// </summary>
internal static class ShankCheck
{
    // A thread's breadth: nobody ties closer than that.
    internal const double ThreadM = 0.1e-3;

    // Wraps are pushed into the hollow back of a bead or cone, common practice; how far is an estimate.
    private const double HollowShare = 0.25;

    public static void Inspect(HookSpec spec, MapReader hookMap, ImmutableArray<ReadPart> parts)
    {
        if (!HookScale.TryResolve(spec, out ResolvedHook? hook, out string? problem))
        {
            hookMap.Errors.Add(hookMap.Map, hookMap.Path, $"Hook: {problem}");
            return;
        }

        Placed[] placed = [.. parts.Where(p => p.Clean).Select(p => new Placed(p, PartExtents.Of(p.Spec, hook)))];
        Placed[] onShank = [.. placed.Where(p => StaysOn(p, hook))];
        for (int j = 1; j < onShank.Length; j++)
        {
            for (int i = 0; i < j; i++) CheckPair(onShank[i], onShank[j]);
        }
    }

    /// <summary>How far back a part may reach, m: dressing a little way onto the bend.</summary>
    internal static double EndM(KindOfPart kind, ResolvedHook hook) => hook.ShankM + (kind.Hold == ShankHold.None ? hook.BendDepthM : 0) + ThreadM;

    private static bool StaysOn(Placed part, ResolvedHook hook)
    {
        double endM = EndM(part.Kind, hook);
        string shank = $"the shank, which is {Show(hook.ShankM)} long";
        if (part.FrontM > endM)
            part.Complain("at", $"It begins at {Show(part.FrontM)}, behind the end of {shank}. Move it forward.");
        else if (part.RearM > endM)
            part.Complain(part.Read.Map.Has("to") ? "to" : "at",
                $"It reaches from {Show(part.FrontM)} to {Show(part.RearM)} and hangs off {shank}. Move it forward or make it shorter.");
        else if (part.MustHaveLength && part.RearM - part.FrontM < ThreadM)
            part.Complain("at", $"It begins at {Show(part.FrontM)}, which leaves no room on {shank}. Move it forward, or say where it ends with “to”.");
        else return true;
        return false;
    }

    private static void CheckPair(Placed earlier, Placed later)
    {
        (Placed front, Placed rear) = later.FrontM >= earlier.FrontM ? (earlier, later) : (later, earlier);
        double overlapM = Math.Min(front.RearM, rear.RearM) - rear.FrontM;
        if (overlapM <= ThreadM || Allowed(earlier, later, front, rear, overlapM)) return;
        rear.Complain("at",
            $"It begins at {Show(rear.FrontM)}, but the {front.Read.Name} takes up the shank from {Show(front.FrontM)} to {Show(front.RearM)}. Move it "
                + $"to {ShowUp(front.RearM)} or farther back.");
    }

    private static bool Allowed(Placed earlier, Placed later, Placed front, Placed rear, double overlapM) => (front.Hold, rear.Hold) switch
    {
        // A second layer lies wholly on the first.
        (ShankHold.Wound, ShankHold.Wound) => later.FrontM >= earlier.FrontM - ThreadM && later.RearM <= earlier.RearM + ThreadM,
        (ShankHold.Solid, ShankHold.Wound) => overlapM <= HollowShare * (front.RearM - front.FrontM),
        (ShankHold.Solid or ShankHold.Wound, ShankHold.Solid) => false,

        // Eyes stand beside the shank: their lashing, in their middle, is what needs room; over wraps it finds it.
        (ShankHold.Lashed, ShankHold.Solid) => rear.FrontM >= front.MiddleM,
        (ShankHold.Solid, ShankHold.Lashed) => rear.MiddleM >= front.RearM,
        (ShankHold.Lashed, ShankHold.Lashed) => front.Side != rear.Side,
        _ => true,
    };

    private static string Show(double lengthM) => Units.Write(lengthM, Dimension.Length);

    // Rounded up, so that what is advised is accepted.
    private static string ShowUp(double lengthM) => Show(Math.Ceiling(Math.Round(lengthM * 1e4, 6)) / 1e4);

    private readonly record struct Placed(ReadPart Read, (double FrontM, double RearM) Extent)
    {
        public ShankHold Hold => Kind.Hold;

        public Side Side => Read.Spec.Side ?? Kind.UsualSide;

        public double FrontM => Extent.FrontM;

        public double RearM => Extent.RearM;

        public bool MustHaveLength => Kind.MustHaveLength(Read.Spec);

        public double MiddleM => (FrontM + RearM) / 2;

        public KindOfPart Kind => KindsOfPart.Of(Read.Spec);

        public void Complain(string key, string text) => Read.Map.Complain(key, text);
    }
}
