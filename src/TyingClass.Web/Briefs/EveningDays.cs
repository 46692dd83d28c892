using System.Collections.Immutable;
using TyingClass.Storage.Classes;
using TyingClass.Web.Calendar;
using TyingClass.Web.Evenings;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Briefs;

/// <summary>Which evening was the last, and which is to be prepared.</summary>
public sealed class EveningDays(EveningBook book, ReaderUnits units, TimeProvider time)
{
    // An evening goes on being tonight's for a while after it has begun.
    private static readonly TimeSpan EveningLasts = TimeSpan.FromHours(3);

    public DateTimeOffset Now => time.GetUtcNow();

    /// <summary>By the dates of the evenings; without dates the first is the next.</summary>
    public EveningsNow Of(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        DateTimeOffset now = Now;
        ImmutableArray<EveningLine> all = book.All();
        ImmutableArray<(int Number, DateTimeOffset At)> dated = Dated(room, all), held = [.. dated.Where(e => e.At + EveningLasts <= now)];
        int? next = dated.Length == 0 ? all.Select(e => (int?)e.Number).FirstOrDefault()
            : dated.Where(e => e.At + EveningLasts > now).Select(e => (int?)e.Number).FirstOrDefault();
        return held.Length == 0 ? new EveningsNow(null, null, next) : new EveningsNow(held[^1].Number, held[^1].At, next);
    }

    /// <summary>Those that are over, the first first, each with the day of the one that came or comes after it.</summary>
    public ImmutableArray<HeldEvening> Held(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        DateTimeOffset now = Now;
        ImmutableArray<(int Number, DateTimeOffset At)> dated = Dated(room, book.All());
        return
        [
            .. dated.Select((e, i) => new HeldEvening(e.Number, e.At, i + 1 < dated.Length && dated[i + 1].At <= now ? dated[i + 1].At : null))
                .Where(e => e.At + EveningLasts <= now),
        ];
    }

    private static ImmutableArray<(int Number, DateTimeOffset At)> Dated(ClassRoom room, ImmutableArray<EveningLine> all)
    {
        ClassClock clock = new(room);
        return
        [
            .. all.Where(e => e.Plan.StartsLocal is not null).Select(e => (e.Number, At: clock.Opening(e.Plan.StartsLocal!.Value))).OrderBy(e => e.At),
        ];
    }

    /// <summary>What an evening asks of whoever prepares it.</summary>
    /// <returns>Null for an evening nobody ever spoke of.</returns>
    public NextEvening? Prepare(int number) => NextEvening.Of(book, number, units.Now);
}
