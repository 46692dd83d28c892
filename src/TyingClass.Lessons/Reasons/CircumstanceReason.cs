using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>The same fly with one thing changed about it: soaked, on another knot, at another speed.</summary>
public static class CircumstanceReason
{
    /// <summary>What soaking does: the air of each part driven out by itself.</summary>
    public static Reason Soaking(QuantityQuery query, FlyFigures fly)
    {
        QuantityQuery fresh = query with { State = WetState.Fresh }, soaked = query with { State = WetState.Soaked };
        double? from = fresh.Of(fly), to = soaked.Of(fly);
        BodyPart[] airy = [.. fly.Body.Parts.Where(Leaves).OrderByDescending(p => p.Air.Sum(a => a.FreshVolumeM3)).Take(Shapley.Most)];
        double[]? shares = airy.Length == 1 ? [to - from ?? 0] : Shapley.Of(airy.Length, mask =>
            mask == 0 ? from : mask == (1 << airy.Length) - 1 ? to : fresh.Of(fly.Tied(Driven([.. airy.Where((_, i) => (mask & 1 << i) != 0)]), fly.Start)));
        return new Reason(ReasonForm.Change, query.Quantity.Name, _ => query.Quantity.Phrase, from, to,
        [
            .. airy.Select((p, i) => new ReasonShare(new Thing(ThingKind.Air, p.Name), shares?[i] ?? 0, from, to) { Turned = [Left] })
                .OrderByDescending(s => Math.Abs(s.Si)),
        ])
        {
            NoticeableSi = query.Quantity.NoticeableSi,
            Part = query.Part,
        };

        static bool Leaves(BodyPart part) => part.Air.Any(a => a.FreshVolumeM3 > 0 && double.IsFinite(a.SoakTimeS));

        FlyBody Driven(BodyPart[] parts) => fly.Body with
        {
            Parts = [.. fly.Body.Parts.Select(p => parts.Contains(p) ? p with { Air = [.. p.Air.Where(a => !double.IsFinite(a.SoakTimeS))] } : p)],
        };
    }

    /// <summary>What the knot does: from a loop to a cinched one.</summary>
    public static Reason Knotted(QuantityQuery query, FlyFigures fly) => Single(
        query, new Thing(ThingKind.Knot), new TurnedLine("knot", "loop", "cinched"),
        (query with { Knot = Knot.Loop }).Of(fly), (query with { Knot = Knot.Cinched }).Of(fly));

    /// <summary>What the speed does: from the slower asked about to the faster.</summary>
    public static Reason Sped(QuantityQuery query, double slowMS, double fastMS, FlyFigures fly) => Single(
        query, new Thing(ThingKind.Speed), new TurnedLine("speed", Speed(slowMS), Speed(fastMS)),
        (query with { SpeedMS = slowMS }).Of(fly), (query with { SpeedMS = fastMS }).Of(fly));

    private static readonly TurnedLine Left = new("air", null, null);

    private static string Speed(double speedMS) => Recipes.Text.Units.Write(speedMS, Recipes.Text.Dimension.Speed);

    private static Reason Single(QuantityQuery query, Thing what, TurnedLine turned, double? from, double? to) => new(
        ReasonForm.Change, query.Quantity.Name, _ => query.Quantity.Phrase, from, to,
        [new ReasonShare(what, to - from ?? 0, from, to) { Turned = [turned] }])
    {
        NoticeableSi = query.Quantity.NoticeableSi,
        Part = query.Part,
    };
}
