using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Tying;

/// <summary>What a tyer's hand gets a little wrong, in the order each fly's deviates hold them.</summary>
public enum TyingError { Aside, Clocked, Along, Mass, Air }

/// <param name="Error">Null for all of them together.</param>
/// <param name="AsIntended">Share of flies that would ride as intended with this one thing always tied right, 0 to 1.</param>
public readonly record struct ErrorCost(string Part, TyingError? Error, double AsIntended);

/// <summary>Which tying error costs most: the same flies are tied again with one thing done without any error.</summary>
public static class TyingErrors
{
    private const int PerPart = 5;

    /// <summary>The share with nothing tied right on purpose, then with each part, then with each error of the part that costs most.</summary>
    public static (double AsIntended, ImmutableArray<ErrorCost> Costs) Of(
        FlyBody body, FishingConditions conditions, WetState state, ReportOptions options)
    {
        ArgumentNullException.ThrowIfNull(body);
        double[] deviates = ThousandFlies.Deviates(body, options.Flies, options.Seed);
        Func<double[], double> share = PartialReports.AsIntended(body, conditions, state, options);
        double now = share(deviates);
        ImmutableArray<ErrorCost>.Builder costs = ImmutableArray.CreateBuilder<ErrorCost>();
        (int worst, double best) = (-1, now);
        for (int part = 0; part < body.Parts.Length; part++)
        {
            if (!body.Parts[part].IsTied) continue;
            double without = share(Without(deviates, body.Parts.Length, part, null));
            costs.Add(new ErrorCost(body.Parts[part].Name, null, without));
            if (without > best) (worst, best) = (part, without);
        }

        if (worst < 0) return (now, costs.ToImmutable());
        foreach (TyingError error in Enum.GetValues<TyingError>())
            costs.Add(new ErrorCost(body.Parts[worst].Name, error, share(Without(deviates, body.Parts.Length, worst, error))));
        return (now, costs.ToImmutable());
    }

    private static double[] Without(double[] deviates, int parts, int part, TyingError? error)
    {
        double[] mended = [.. deviates];
        for (int at = part * PerPart; at < mended.Length; at += parts * PerPart)
        {
            if (error is { } one) mended[at + (int)one] = 0;
            else mended.AsSpan(at, PerPart).Clear();
        }

        return mended;
    }
}
