using System.Diagnostics.Metrics;

namespace TyingClass.Balance.Reports;

/// <summary>
/// How often the engine is set to work, for <c>dotnet-counters monitor --counters TyingClass</c> and for the tests that hold pages to it. Costs nothing while
/// nobody listens.
/// </summary>
public static class EngineMeter
{
    public const string Name = "TyingClass";

    /// <summary>Whole reports, and reports of one attitude.</summary>
    public const string ReportsName = "tyingclass.reports";

    internal static Counter<long> Reports { get; } = new Meter(Name).CreateCounter<long>(ReportsName);
}
