using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Practice;

/// <summary>
/// Every fly a practice fence can draw, numbered. Each seed has flies of its own, so that no fly comes twice before the set has been gone through, at
/// whatever level.
/// </summary>
internal sealed class VariantGrid
{
    /// <summary>Problems of a set that share no fly, where its ranges give that many.</summary>
    public const int MostApart = 24;

    // Steps of a range, so that figures stay short enough to read.
    private const int Steps = 20;

    // Flies a seed should have to choose from: where nearness to a threshold matters, and where any fly will do.
    private const int ToChoose = 6, ToChooseAny = 2;

    private readonly ImmutableArray<(string Path, ImmutableArray<string> Values)> _axes;
    private readonly long _stride;

    /// <param name="choosy">Whether a problem's nearness to a threshold is chosen by level.</param>
    public VariantGrid(ImmutableArray<AllowedChange> vary, bool choosy)
    {
        _axes = [.. vary.Select(v => (v.Path, Values(v)))];
        Count = _axes.Aggregate(1L, (count, axis) => Math.Min(count * axis.Values.Length, int.MaxValue));
        Apart = (int)Math.Clamp(Count / (choosy ? ToChoose : ToChooseAny), 1, MostApart);
        _stride = Stride(Count);
    }

    /// <summary>How many flies there are.</summary>
    public long Count { get; }

    /// <summary>How many seeds running share no fly.</summary>
    public int Apart { get; }

    /// <summary>The flies of one seed, in an order of its own; each a list of paths and values.</summary>
    public IEnumerable<ImmutableArray<(string Path, string Value)>> Of(int seed, int most) => Of(seed, most, (seed - 1) % Apart, Apart);

    /// <summary>Any flies of the grid, in an order of the seed's own: for where its own were all of no use.</summary>
    public IEnumerable<ImmutableArray<(string Path, string Value)>> Any(int seed, int most) => Of(seed, most, 0, 1);

    private IEnumerable<ImmutableArray<(string Path, string Value)>> Of(int seed, int most, long first, int step)
    {
        long members = (Count - first + step - 1) / step;
        // Neighboring seeds start the generator alike; spread out, they do not.
        Random random = new(unchecked((int)((uint)seed * 2654435769u)));
        HashSet<long> met = [];
        for (int draw = 0; met.Count < Math.Min(most, members) && draw < 20 * most; draw++)
        {
            long member = random.NextInt64(members);
            if (met.Add(member)) yield return At(first + member * step);
        }
    }

    // Neighbors in number lie far apart in the grid, so that a seed's flies are no near relations.
    private ImmutableArray<(string, string)> At(long number)
    {
        ImmutableArray<(string, string)>.Builder variant = ImmutableArray.CreateBuilder<(string, string)>(_axes.Length);
        long place = (long)((Int128)number * _stride % Count);
        foreach ((string path, ImmutableArray<string> values) in _axes)
        {
            variant.Add((path, values[(int)(place % values.Length)]));
            place /= values.Length;
        }

        return variant.MoveToImmutable();
    }

    // Near the golden section of the count, and sharing no factor with it: every number is met once.
    private static long Stride(long count)
    {
        long stride = Math.Max(1, (long)(0.618 * count));
        while (Common(stride, count) != 1) stride++;
        return stride;
    }

    private static long Common(long a, long b) => b == 0 ? a : Common(b, a % b);

    private static ImmutableArray<string> Values(AllowedChange vary)
    {
        if (vary.Words.Length > 0) return vary.Words;
        string key = vary.Path[(vary.Path.LastIndexOf('.') + 1)..];
        if (!ValueRule.TryRead(vary.LowText, key, out double low) || !ValueRule.TryRead(vary.HighText, key, out double high))
            throw new InvalidOperationException("The range was checked when its lesson was loaded.");
        if (IsSold(vary.Path, key) && SoldSizes.Between(low, high) is { Length: > 1 } sold) return [.. sold.Select(size => Written(size, key))];
        return [.. Enumerable.Range(0, Steps + 1).Select(step => Written(low + (high - low) * step / Steps, key)).Distinct()];
    }

    // Nobody can buy a bead of 3.3 mm, so no problem asks about one.
    private static bool IsSold(string path, string key) => key == "size" && path.Contains("parts[", StringComparison.Ordinal);

    private static string Written(double si, string key) => ValueRule.DimensionOf(key) is { } dimension
        ? Units.Write(si, dimension)
        : Math.Round(si).ToString(CultureInfo.InvariantCulture);
}
