namespace TyingClass.Lessons.Reasons;

/// <summary>
/// What each of several differences gives to a figure: turned over one at a time in every order, and averaged. Source: L. S. Shapley, "A value for n-person
/// games", Contributions to the Theory of Games II (1953) 307.
/// </summary>
public static class Shapley
{
    /// <summary>So many differences take sixteen solutions; more are grouped first.</summary>
    public const int Most = 4;

    /// <param name="value">The figure with the differences of a bit set turned over; null where there is none.</param>
    /// <returns>One share each, summing to the whole; null where no order can be gone through without losing the figure on the way.</returns>
    public static double[]? Of(int count, Func<int, double?> value)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, Most);
        double?[] known = [.. Enumerable.Range(0, 1 << count).Select(value)];
        double[] sums = new double[count];
        int orders = 0;
        foreach (int[] order in Orders([.. Enumerable.Range(0, count)]))
        {
            if (Steps(order, known) is not { } steps) continue;
            orders++;
            for (int i = 0; i < count; i++) sums[order[i]] += steps[i];
        }

        return orders == 0 ? null : [.. sums.Select(s => s / orders)];
    }

    private static double[]? Steps(int[] order, double?[] known)
    {
        double[] steps = new double[order.Length];
        int turned = 0;
        if (known[0] is not { } here) return null;
        for (int i = 0; i < order.Length; i++)
        {
            turned |= 1 << order[i];
            if (known[turned] is not { } there) return null;
            (steps[i], here) = (there - here, there);
        }

        return steps;
    }

    private static IEnumerable<int[]> Orders(int[] items) => items.Length <= 1
        ? [items]
        : items.SelectMany(first => Orders([.. items.Where(i => i != first)]).Select(rest => (int[])[first, .. rest]));
}
