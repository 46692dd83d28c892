using Microsoft.Extensions.Logging;
using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

public sealed class CountedLinesTests : IDisposable
{
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 1, 14, 19, 30, 0, TimeSpan.Zero));
    private readonly StringWriter _console = new();
    private readonly CountedLines _lines;

    public CountedLinesTests() => _lines = new CountedLines(_clock);

    public void Dispose() => _console.Dispose();

    [Fact]
    public void SameFault_TwentyThousandTimesInAMinute_IsOneLineAndACount()
    {
        for (int i = 0; i < 20_000; i++) Fail("Pages", new InvalidOperationException("bad"));
        Assert.Single(Lines, l => l.Contains("Pages", StringComparison.Ordinal));

        _clock.Advance(TimeSpan.FromMinutes(1));
        Fail("Pages", new InvalidOperationException("bad"));
        Assert.Contains("(19,999 more of this kind since the last line of it)", _console.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void OtherFaults_AreToldBesideIt()
    {
        Fail("Pages", new InvalidOperationException("bad"));
        Fail("Pages", new FormatException("worse"));
        Fail("Store", new InvalidOperationException("bad"));
        Fail("Store", null);
        Assert.Equal(4, Lines.Count(l => l.Contains(" error: ", StringComparison.Ordinal)));
    }

    [Fact]
    public void DamagedRecords_AreNamedOneByOne()
    {
        foreach (string record in new[] { "attempts/1", "attempts/2", "attempts/2" })
            _lines.Write(new LogEntry<string>(LogLevel.Error, "Damage", new EventId(1), record, null, (state, _) => $"Damage: {state}"), null, _console);
        Assert.Equal(2, Lines.Length);
    }

    [Fact]
    public void EndlessText_IsCut()
    {
        Fail("Pages", new InvalidOperationException(new string('x', 100_000)));
        Assert.InRange(_console.ToString().Length, CountedLines.MostLetters, CountedLines.MostLetters + 200);
    }

    [Fact]
    public void EndlessKinds_AreTold_WithoutFillingTheMemory()
    {
        for (int i = 0; i < 1000; i++) Fail($"Source {i}", null);
        Assert.Equal(1000, Lines.Length);
    }

    private string[] Lines => _console.ToString().Split(Environment.NewLine, StringSplitOptions.RemoveEmptyEntries);

    private void Fail(string category, Exception? exception) => _lines.Write(
        new LogEntry<string>(LogLevel.Error, category, new EventId(1), "It failed.", exception, (state, _) => state), null, _console);
}
