using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tying;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>One fly: what a figure would be without each thing, what a sum is made of, which error costs most.</summary>
public static class OneFlyReason
{
    // Twenty samples are tied; a few hundred flies tell which error is the worst.
    private const int FliesForErrors = 200;
    private const double NearlyAsMuch = 0.7;
    private const double LevelRad = Telling.Sentences.FlyWords.LevelDeg * Math.PI / 180;

    /// <summary>In the form that suits the quantity.</summary>
    /// <param name="highestSi">The most that was asked for: a fly over it before it has drunk is not too heavy by its water.</param>
    public static Reason Of(QuantityQuery query, FlyFigures fly, double? highestSi = null) => query.Quantity.Name switch
    {
        "mass" or "held water" or "mass with held water" or "wet weight" or "displaced volume" or "mass of" or "mass moment of" =>
            MadeOf(query, fly, highestSi),
        "rides as intended" or "leans" or "flips" => Hands(query, fly),
        "keel moment of" or "center, x of" => Told(query, query.Of(fly), ReasonForm.MadeOf,
            [new ReasonShare(PartThing(query.Part!), query.Of(fly) ?? 0, 0, query.Of(fly))]),
        "parts" or "changes" => Told(query, query.Of(fly), ReasonForm.MadeOf, []),
        "added mass" when fly.Start is { } start => ChangeReason.Of(query, start, fly),
        _ => Without(query, fly),
    };

    /// <summary>Each part taken away in turn, a bent eye straightened, a cinched knot opened, and the figure worked out anew.</summary>
    /// <param name="watch">Sees each fly that lacks something.</param>
    public static Reason Without(QuantityQuery query, FlyFigures fly, Action<Thing, FlyFigures>? watch = null)
    {
        double? now = query.Of(fly);
        List<ReasonShare> shares = [];
        bool bare = fly.Body.Parts.Length == 1;
        // Where no metal is tied on, the hook's own wire is the ballast.
        bool isOfTheHook = query.Quantity.Name == "level-line keel" && !fly.Recipe.Parts.Any(p => Recipes.Parts.KindsOfPart.Of(p).IsWeight);
        double? hookAlone = query.Of(fly.Tied(fly.Body with { Parts = [fly.Body.Parts[0]] }, fly.Start));
        foreach (BodyPart part in fly.Body.Parts)
        {
            bool isHook = !part.IsTied;
            if (isHook && query.Quantity.IsOfMass && (bare || isOfTheHook))
                // The eye has its say below, by being bent: its own wire is next to nothing.
                shares.AddRange(part.Pieces.Where(piece => PartThing(piece.Name).Kind != ThingKind.Eye)
                    .Select(piece => Share(PartThing(piece.Name), Of(PartThing(piece.Name), Lacking(fly, piece)))));
            // The hook gives a fly its shape in the water; on the scale it is one part among others.
            else if (!isHook || (query.Quantity.IsOfMass && query.Quantity.Name != "level-line keel"))
                shares.Add(Share(PartThing(part.Name), Of(PartThing(part.Name), fly.Body.Parts.Remove(part))) with
                {
                    BareSi = isHook ? null : hookAlone,
                    AloneSi = isHook ? null : query.Of(fly.Tied(fly.Body with { Parts = [fly.Body.Parts[0], part] }, fly.Start)),
                });
        }

        Thing eye = new(ThingKind.Eye);
        if (Straightened(fly.Recipe) is { } straight) shares.Add(Share(eye, Watched(eye, new FlyFigures(straight, fly.Start))));
        if (query.Knot is null && query.Quantity.Takes.HasFlag(Circumstances.Knot) && fly.Conditions.Knot == Knot.Cinched)
            shares.Add(Share(new Thing(ThingKind.Knot), (query with { Knot = Knot.Loop }).Of(fly)));
        ReasonShare[] ordered = [.. shares.OrderBy(s => s.What.Kind == ThingKind.Hook).ThenByDescending(s => s.SaySi)];
        // Where metal and dressing have much the same say in how a fly falls, the metal comes first.
        if (query.Quantity.Name == "pitch while sinking" && ordered.FirstOrDefault(s => WayOpening.IsMetal(s.What.Part)) is { } metal
            && metal.SaySi >= NearlyAsMuch * ordered[0].SaySi)
            ordered = [metal, .. ordered.Where(s => s != metal)];
        // Before a dressing is blamed: where the metal sits is the reason, if at the other end of the shank it would turn the fly round.
        if (query.Quantity.Name == "pitch while sinking" && now is { } falls && Math.Abs(falls) > LevelRad
            && ordered is [{ What: { Kind: ThingKind.Part } first }, ..] && !WayOpening.IsMetal(first.Part)
            && MendedPart.AtTheOtherEnd(fly).Select(m => m.Share(query, now)).Where(s => s.FromSi * Math.Sign(falls) < LevelRad)
                .MaxBy(s => Math.Abs(s.Si)) is { } placed)
            ordered = [placed, .. ordered.Where(s => s.What != placed.What)];
        // A part that sits crooked is why a fly leans, whatever else is on it.
        if (query.Quantity.Name == "lean" && MendedPart.Straightened(fly).ToArray() is { Length: > 0 } crooked)
        {
            ReasonShare[] set = [.. crooked.Select(m => m.Share(query, now)).OrderByDescending(s => Math.Abs(s.Si)).DistinctBy(s => s.What)];
            ordered = [.. set, .. ordered.Where(s => !set.Any(c => c.What == s.What))];
        }

        double most = ordered.Select(s => s.SaySi).DefaultIfEmpty(0).Max();
        if (AtTheLine.Of(query, fly, now, most) is { } line) ordered = [line, .. ordered];
        return Told(query, now, ReasonForm.Without, [.. ordered]);

        double? Of(Thing what, ImmutableArray<BodyPart> parts) => Watched(what, fly.Tied(fly.Body with { Parts = parts }, fly.Start));

        double? Watched(Thing what, FlyFigures lacking)
        {
            watch?.Invoke(what, lacking);
            return query.Of(lacking);
        }

        // What it would not be at all without, it owes all of it to.
        ReasonShare Share(Thing what, double? without) => new(what, now - without ?? now ?? 0, without, now);
    }

    private static Reason MadeOf(QuantityQuery query, FlyFigures fly, double? highestSi)
    {
        string name = query.Quantity.Name;
        double density = fly.Conditions.Water.DensityKgM3, soakS = query.State == WetState.Fresh ? 0 : double.PositiveInfinity;
        List<ReasonShare> shares = [];
        foreach (BodyPart part in fly.Body.Parts)
        {
            if (query.Part is { } only && !string.Equals(only, part.Name, StringComparison.OrdinalIgnoreCase)) continue;
            MassMoments moments = MassMoments.Of([part], soakS);
            // A question of held water is about what the dressing drinks: that comes before the metal, however heavy.
            if (name is "held water" or "mass with held water" && part.HeldWaterKg > 0)
                Add(new Thing(ThingKind.HeldWater, part.Name), part.HeldWaterKg);
            if (name != "held water")
                Add(PartThing(part.Name), name switch
                {
                    "wet weight" => moments.WetMassKg(density),
                    "displaced volume" => moments.VolumeM3,
                    "mass moment of" => query.Of(fly) ?? 0,
                    _ => moments.MassKg,
                });
        }

        // What is too heavy dry is so by what is tied on; the hook is given.
        bool waterFirst = name != "mass with held water" || highestSi is not { } most || MassMoments.Of(fly.Body.Parts, soakS).MassKg <= most;
        return Told(query, query.Of(fly), ReasonForm.MadeOf,
            [.. shares.OrderByDescending(s => waterFirst ? s.What.Kind == ThingKind.HeldWater : s.What.Kind == ThingKind.Part)
                .ThenByDescending(s => Math.Abs(s.Si))]);

        void Add(Thing what, double si) => shares.Add(new ReasonShare(what, si, query.Of(fly) - si, query.Of(fly)));
    }

    private static Reason Hands(QuantityQuery query, FlyFigures fly)
    {
        (double now, ImmutableArray<ErrorCost> costs) = TyingErrors.Of(
            fly.Body, query.Under(fly.Conditions), query.State, ReportOptions.Default with { Flies = FliesForErrors });
        ErrorCost[] parts = [.. costs.Where(c => c.Error is null)], errors = [.. costs.Where(c => c.Error is not null)];
        HandsError? worst = errors.Length == 0 ? null : (HandsError)(int)errors.MaxBy(e => e.AsIntended).Error!.Value;
        return Told(query, query.Of(fly), ReasonForm.Hands,
        [
            .. parts.Where(p => p.AsIntended > now).OrderByDescending(p => p.AsIntended).Select(p => new ReasonShare(
                new Thing(ThingKind.Hands, p.Part), now - p.AsIntended, p.AsIntended, now) { Error = errors.Any(e => e.Part == p.Part) ? worst : null }),
        ]);
    }

    private static Reason Told(QuantityQuery query, double? now, ReasonForm form, ImmutableArray<ReasonShare> shares) =>
        new(form, query.Quantity.Name, query.Phrase, null, now, shares) { NoticeableSi = query.Quantity.NoticeableSi, Part = query.Part };

    private static Thing PartThing(string part) => part switch
    {
        "hook" => new Thing(ThingKind.Hook),
        "hook eye" or "eye" => new Thing(ThingKind.Eye),
        _ => new Thing(ThingKind.Part, part),
    };

    // The hook without one of its pieces.
    private static ImmutableArray<BodyPart> Lacking(FlyFigures fly, BodyPart piece)
    {
        BodyPart hook = fly.Body.Parts.First(p => !p.IsTied);
        return [.. fly.Body.Parts.SelectMany(p => p == hook ? hook.Pieces.Remove(piece) : [p])];
    }

    private static Recipe? Straightened(Recipe recipe) => recipe.Hook.Eye is EyeKind.Straight
        ? null
        : recipe with { Hook = recipe.Hook with { Eye = EyeKind.Straight, EyeAngleRad = null } };
}
