using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>The same fly with one part set otherwise: straight instead of crooked, on the other side of the shank.</summary>
/// <param name="Turned">As it stands and as it would.</param>
internal sealed record MendedPart(Thing What, TurnedLine Turned, FlyFigures Fly)
{
    /// <summary>Parts that sit off the middle, each set in it, and parts that are turned about the shank, each set straight.</summary>
    public static IEnumerable<MendedPart> Straightened(FlyFigures fly) =>
    [
        .. Each(fly, part => part.SideOffsetM == 0 ? null : (part with { SideOffsetM = 0 }, new TurnedLine("side offset", "aside", null))),
        .. Each(fly, part => part.ClockedRad == 0 ? null : (part with { ClockedRad = 0 }, new TurnedLine("clocked", "aside", null))),
    ];

    /// <summary>Parts on one side of the shank, each on the other.</summary>
    public static IEnumerable<MendedPart> OnTheOtherSide(FlyFigures fly) => Each(fly, part => (part.Side ?? KindsOfPart.Of(part).UsualSide) switch
    {
        Side.Top => (part with { Side = Side.Under }, new TurnedLine("side", "top", "under")),
        Side.Under => (part with { Side = Side.Top }, new TurnedLine("side", "under", "top")),
        _ => null,
    });

    /// <summary>Metal that is tied near one end of the shank, each piece at the other; what is threaded on the wire stays.</summary>
    public static IEnumerable<MendedPart> AtTheOtherEnd(FlyFigures fly)
    {
        ResolvedHook hook = HookScale.Resolve(fly.Recipe.Hook);
        return Each(fly, part =>
        {
            if (!KindsOfPart.Of(part).IsWeight || KindsOfPart.Of(part).Word is "bead" or "cone") return null;
            (double frontM, double rearM) = PartExtents.Of(part, hook);
            double aside = (frontM + rearM) / 2 / hook.ShankM - 0.5, byM = hook.ShankM - rearM - frontM;
            if (Math.Abs(aside) < NearAnEnd) return null;
            PartSpec moved = part with { AtM = part.AtM + byM, ToM = part.ToM + byM, Said = part.Said.Without("at").Without("to") };
            return (moved, aside > 0 ? new TurnedLine("at", "rear", "front") : new TurnedLine("at", "front", "rear"));
        });
    }

    // Of the length of the shank, from its middle.
    private const double NearAnEnd = 0.15;

    private static IEnumerable<MendedPart> Each(FlyFigures fly, Func<PartSpec, (PartSpec Part, TurnedLine Line)?> mend)
    {
        string[] names = [.. FlyBuilder.Names(fly.Recipe.Parts)];
        for (int i = 0; i < names.Length; i++)
        {
            if (mend(fly.Recipe.Parts[i]) is { } mended
                && FlyFigures.TryBuild(fly.Recipe with { Parts = fly.Recipe.Parts.SetItem(i, mended.Part) }, fly.Start) is { } other)
                yield return new MendedPart(new Thing(ThingKind.Part, names[i]), mended.Line, other);
        }
    }

    /// <summary>As a share of what the fly's figure is now.</summary>
    public ReasonShare Share(QuantityQuery query, double? now)
    {
        double? mended = query.Of(Fly);
        return new ReasonShare(What, now - mended ?? now ?? 0, mended, now) { Turned = [Turned] };
    }
}
