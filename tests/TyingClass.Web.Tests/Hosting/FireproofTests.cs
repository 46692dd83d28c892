using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage.Files;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

/// <summary>A round that fails is written down and the next one comes; only an end of the program ends it.</summary>
public sealed class FireproofTests : IDisposable
{
    private static readonly TimeSpan Every = TimeSpan.FromMinutes(30);

    private readonly FakeTimeProvider _clock = new();
    private readonly LoggerFactory _logs;
    private readonly Lines _lines = new();

    public FireproofTests() => _logs = new LoggerFactory([_lines]);

    public static TheoryData<Exception> Faults =>
        [new InvalidOperationException("no such thing"), new StorageException("the disk is full"), new InvalidDataException("too much"),
        new OperationCanceledException("given up by itself")];

    [Theory, MemberData(nameof(Faults), DisableDiscoveryEnumeration = true)]
    public async Task Round_Fails_IsWrittenDownAndTheNextComes(Exception fault)
    {
        using Rounds work = new(_clock, _logs.CreateLogger("work"), round => throw (round == 1 ? fault : new InvalidOperationException("again")));
        await work.StartAsync(TestContext.Current.CancellationToken);
        await UntilAsync(() => work.Done >= 1);
        await UntilAsync(() =>
        {
            _clock.Advance(Every);
            return work.Done >= 3;
        });
        await work.StopAsync(TestContext.Current.CancellationToken);
        Assert.True(work.ExecuteTask!.IsCompleted);
        Assert.Contains(_lines.All, l => l.Contains(fault.Message, StringComparison.Ordinal) && l.Contains("tried again", StringComparison.Ordinal));
        Assert.Contains(_lines.All, l => l.Contains("again", StringComparison.Ordinal) && l.Contains(nameof(Rounds), StringComparison.Ordinal));
    }

    [Fact]
    public async Task Stop_InTheMiddleOfARound_EndsWithoutAWord()
    {
        using Rounds work = new(_clock, _logs.CreateLogger("work"), _ => { });
        work.WaitsForStop = true;
        await work.StartAsync(TestContext.Current.CancellationToken);
        await UntilAsync(() => work.Done >= 1);
        await work.StopAsync(TestContext.Current.CancellationToken);
        Assert.Empty(_lines.All);
    }

    public void Dispose() => _logs.Dispose();

    private static async Task UntilAsync(Func<bool> happened)
    {
        using CancellationTokenSource patience = new(TimeSpan.FromMinutes(1));
        while (!happened()) await Task.Delay(20, patience.Token);
    }

    private sealed class Rounds(TimeProvider time, ILogger log, Action<int> round) : Fireproof(Every, time, log)
    {
        private int _done;

        public int Done => Volatile.Read(ref _done);

        public bool WaitsForStop { get; set; }

        protected override void Round(CancellationToken stop)
        {
            int number = Interlocked.Increment(ref _done);
            if (WaitsForStop) stop.WaitHandle.WaitOne(TimeSpan.FromMinutes(1));
            stop.ThrowIfCancellationRequested();
            round(number);
        }
    }

    private sealed class Lines : ILoggerProvider, ILogger
    {
        private readonly List<string> _all = [];

        public IReadOnlyList<string> All
        {
            get
            {
                lock (_all) return [.. _all];
            }
        }

        public ILogger CreateLogger(string categoryName) => this;

        public IDisposable? BeginScope<TState>(TState state)
            where TState : notnull => null;

        public bool IsEnabled(LogLevel logLevel) => true;

        public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
        {
            lock (_all) _all.Add(formatter(state, exception));
        }

        public void Dispose()
        {
        }
    }
}
