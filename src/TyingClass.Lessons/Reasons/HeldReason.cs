using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Reasons;

/// <summary>
/// Which of two flies comes back harder, told by where each carries its metal. Flies of different make are not one another with a part put in: what such a part
/// would do on the other fly is no reason.
/// </summary>
internal static class HeldReason
{
    /// <returns>Null where the two are of one make, or no metal holds the one that comes back harder.</returns>
    public static AnswerReason? Of(QuantityQuery query, (string Name, FlyFigures Fly) first, (string Name, FlyFigures Fly) second, UnitSystem units)
    {
        if (!Differences.Between(first.Fly.Recipe, second.Fly.Recipe).All.Any(d => d.Turned.Any(t => t.Key.Length == 0))) return null;
        if (query.Of(first.Fly) is not { } a || query.Of(second.Fly) is not { } b || Math.Abs(a - b) < query.Quantity.NoticeableSi) return null;
        ((string name, FlyFigures fly), FlyFigures other) = a > b ? (first, second.Fly) : (second, first.Fly);
        LedgerEntry[] holding = [.. fly.Ledger(query).Where(e => e.KeelMomentGmm > 0 && WayOpening.IsMetal(e.Part)).OrderByDescending(e => e.KeelMomentGmm)];
        if (holding.Length == 0 || Side(fly, holding[0].Part) is not { } side || Standing(side) is not { } standing) return null;
        string? around = other.Body.Parts.Where(p => WayOpening.IsMetal(p.Name) && Side(other, p.Name) == Recipes.Model.Side.Around)
            .MaxBy(p => p.Masses.Sum(m => m.MassKg))?.Name;
        Thing metal = new(ThingKind.Part, holding[0].Part);
        string told = WayOpening.OfHeld(name, metal, standing, around is null ? null : new Thing(ThingKind.Part, around));
        Reason reason = OneFlyReason.Without(query, fly);
        reason = reason with { Shares = [.. reason.Shares.OrderByDescending(s => s.What == metal)] };
        return new AnswerReason(told, $"{Cause(first)} {Cause(second)}", [reason])
        {
            Picture = AskedPicture.Of(reason, FlyPair.Change) with { Part = null, Words = null },
        };

        string Cause((string Name, FlyFigures Fly) of) => $"{of.Name}: {CauseSentence.Of(of.Fly.Body.Intent, of.Fly.Report.Soaked, units)}";
    }

    private static Side? Side(FlyFigures fly, string part)
    {
        int at = FlyBuilder.Names(fly.Recipe.Parts).IndexOf(part);
        return at < 0 ? null : fly.Recipe.Parts[at].Side ?? KindsOfPart.Of(fly.Recipe.Parts[at]).UsualSide;
    }

    private static string? Standing(Side side) => side switch
    {
        Recipes.Model.Side.Top => TurnedWords.Standing("side", "top"),
        Recipes.Model.Side.Under => TurnedWords.Standing("side", "under"),
        _ => null,
    };
}
