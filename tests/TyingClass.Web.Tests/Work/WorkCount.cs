using System.Diagnostics.Metrics;
using TyingClass.Balance.Reports;
using TyingClass.Recipes;
using Xunit;

namespace TyingClass.Web.Tests.Work;

/// <summary>Tests that count what the whole process does: nothing else may run beside them.</summary>
[CollectionDefinition(Name, DisableParallelization = true)]
#pragma warning disable CA1711 // The framework's word for it.
public sealed class CountedCollection
#pragma warning restore CA1711
{
    public const string Name = "counted";
}

/// <summary>Texts read, flies built and reports worked out since it was made or last asked.</summary>
internal sealed class WorkCount : IDisposable
{
    private readonly MeterListener listener = new();
    private int parses, builds, reports;

    public WorkCount()
    {
        listener.InstrumentPublished = (instrument, l) =>
        {
            if (instrument.Meter.Name == EngineMeter.Name) l.EnableMeasurementEvents(instrument);
        };
        listener.SetMeasurementEventCallback<long>((instrument, count, _, _) =>
        {
            if (instrument.Name == RecipeMeter.ParsesName) Interlocked.Add(ref parses, (int)count);
            if (instrument.Name == RecipeMeter.BuildsName) Interlocked.Add(ref builds, (int)count);
            if (instrument.Name == EngineMeter.ReportsName) Interlocked.Add(ref reports, (int)count);
        });
        listener.Start();
    }

    public (int Parses, int Builds, int Reports) Take() => (Interlocked.Exchange(ref parses, 0), Interlocked.Exchange(ref builds, 0), Interlocked.Exchange(ref reports, 0));

    public void Dispose() => listener.Dispose();
}
