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
    private readonly MeterListener _listener = new();
    private int _parses, _builds, _reports;

    public WorkCount()
    {
        _listener.InstrumentPublished = (instrument, l) =>
        {
            if (instrument.Meter.Name == EngineMeter.Name) l.EnableMeasurementEvents(instrument);
        };
        _listener.SetMeasurementEventCallback<long>((instrument, count, _, _) =>
        {
            if (instrument.Name == RecipeMeter.ParsesName) Interlocked.Add(ref _parses, (int)count);
            if (instrument.Name == RecipeMeter.BuildsName) Interlocked.Add(ref _builds, (int)count);
            if (instrument.Name == EngineMeter.ReportsName) Interlocked.Add(ref _reports, (int)count);
        });
        _listener.Start();
    }

    public (int Parses, int Builds, int Reports) Take() =>
        (Interlocked.Exchange(ref _parses, 0), Interlocked.Exchange(ref _builds, 0), Interlocked.Exchange(ref _reports, 0));

    public void Dispose() => _listener.Dispose();
}
