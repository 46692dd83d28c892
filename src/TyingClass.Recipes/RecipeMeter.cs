using System.Diagnostics.Metrics;
using TyingClass.Balance.Reports;

namespace TyingClass.Recipes;

/// <summary>How often recipe text is read and a fly is built, beside <see cref="EngineMeter"/>.</summary>
public static class RecipeMeter
{
    /// <summary>Recipe texts read.</summary>
    public const string ParsesName = "tyingclass.parses";

    /// <summary>Bodies built of recipes.</summary>
    public const string BuildsName = "tyingclass.builds";

    private static readonly Meter Meter = new(EngineMeter.Name);

    internal static Counter<long> Parses { get; } = Meter.CreateCounter<long>(ParsesName);

    internal static Counter<long> Builds { get; } = Meter.CreateCounter<long>(BuildsName);
}
