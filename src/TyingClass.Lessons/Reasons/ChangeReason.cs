using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>From one fly to another: what each difference gave to one figure.</summary>
public static class ChangeReason
{
    // Sixteen samples of a thousand flies would take seconds; the shares are then made to sum to what the whole samples say.
    private static readonly ReportOptions Quick = ReportOptions.Default with { Flies = 100 };

    // A retrieve takes about as long as a whole report: eight flies in between are fished, not sixteen.
    private const int MostOfTheRetrieve = Shapley.Most - 1;

    public static Reason Of(QuantityQuery query, FlyFigures before, FlyFigures after)
    {
        // What is counted from the fly given is nothing there.
        if (before.Start is null) before = before.Tied(before.Body, before);
        Differences between = Differences.Between(before.Recipe, after.Recipe);
        ImmutableArray<Difference> all = between.All;
        double? from = query.Of(before), to = query.Of(after);
        bool sampled = query.Quantity.Dimension == Dimension.Share && all.Length > 1;
        Dictionary<string, double?> known = [];
        int[][] groups = Groups(all.Length, query.Quantity.IsOfTheRetrieve, Value);
        double[]? shares = groups.Length == 1 ? [to - from ?? 0] : Shapley.Of(groups.Length, mask => Value([.. groups.Where((_, i) => (mask & 1 << i) != 0)
            .SelectMany(g => g)]));
        shares ??= [.. groups.Select(g => Value([.. g]) - Value([]) ?? 0)];
        double sum = shares.Sum(), scale = sampled && Math.Abs(sum) > 1e-12 && to - from is { } whole ? whole / sum : 1;
        return new Reason(ReasonForm.Change, query.Quantity.Name, query.Phrase, from, to,
        [
            .. groups.Select((g, i) => new ReasonShare(
                g.Length == 1 ? all[g[0]].What : new Thing(ThingKind.Rest), scale * shares[i], from, to) { Turned = [.. g.SelectMany(d => all[d].Turned)] })
                .OrderByDescending(s => s.What.Kind != ThingKind.Rest).ThenByDescending(s => Math.Abs(s.Si)),
        ])
        {
            NoticeableSi = query.Quantity.NoticeableSi,
            Part = query.Part,
            LeansOver = !query.Quantity.IsOfMass && (WayReason.LeansOver(before) || WayReason.LeansOver(after)),
        };

        double? Value(int[] turned)
        {
            if (!sampled && turned.Length == 0) return from;
            if (!sampled && turned.Length == all.Length) return to;
            string key = string.Join(',', turned.Order());
            if (!known.TryGetValue(key, out double? value))
                known[key] = value =
                    FlyFigures.TryBuild(between.With(turned), before.Start ?? before, sampled ? Quick : null) is { } fly ? query.Of(fly) : null;
            return value;
        }
    }

    /// <summary>At most four, of the retrieve three: all but the last by themselves, those with the most to say, and the rest together.</summary>
    private static int[][] Groups(int count, bool isOfTheRetrieve, Func<int[], double?> value)
    {
        int most = isOfTheRetrieve ? MostOfTheRetrieve : Shapley.Most;
        int[] all = [.. Enumerable.Range(0, count)];
        if (count <= most) return [.. all.Select(i => (int[])[i])];
        double start = value([]) ?? 0, end = value(all) ?? 0;
        int[] ranked = [.. all.OrderByDescending(i => First(i) + (isOfTheRetrieve ? 0 : Last(i)))];
        return [.. ranked.Take(most - 1).Select(i => (int[])[i]), ranked[(most - 1)..]];

        double First(int i) => Math.Abs((value([i]) ?? start) - start);

        double Last(int i) => Math.Abs(end - (value([.. all.Where(j => j != i)]) ?? end));
    }
}
