using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>What it is about a part that sets two flies apart: its water on the scale, its air under water, where that is most of its share.</summary>
internal static class FinerThing
{
    private const double Most = 0.5;

    public static Reason Of(Reason reason, QuantityQuery query, FlyFigures before, FlyFigures after) =>
        reason with { Shares = [.. reason.Shares.Select(s => Of(s, query, before, after))] };

    private static ReasonShare Of(ReasonShare share, QuantityQuery query, FlyFigures before, FlyFigures after)
    {
        if (share.What.Kind != ThingKind.Part) return share;
        BodyPart? was = Part(before), now = Part(after);
        double least = Most * Math.Abs(share.Si), density = before.Conditions.Water.DensityKgM3;
        double water = (now?.HeldWaterKg ?? 0) - (was?.HeldWaterKg ?? 0), air = Air(now) - Air(was);
        return query.Quantity.Name switch
        {
            "mass with held water" or "held water" when Math.Abs(water) > least => share with { What = share.What with { Kind = ThingKind.HeldWater } },
            "wet weight" when Math.Abs(air) * density > least => share with { What = share.What with { Kind = ThingKind.Air } },
            "displaced volume" when Math.Abs(air) > least => share with { What = share.What with { Kind = ThingKind.Air } },
            _ => share,
        };

        BodyPart? Part(FlyFigures fly) => fly.Body.Parts.FirstOrDefault(p => p.Name == share.What.Part);
        double Air(BodyPart? part) =>
            part?.Air.Sum(a => query.State == WetState.Fresh || double.IsPositiveInfinity(a.SoakTimeS) ? a.FreshVolumeM3 : 0) ?? 0;
    }
}
