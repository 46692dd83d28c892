using Microsoft.Extensions.Time.Testing;
using TyingClass.Web.Security;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

public sealed class DelaysTests
{
    private static readonly DelayRule Own = new("wren from here", 5, TimeSpan.FromSeconds(30));
    private static readonly DelayRule Name = new("wren", 30, TimeSpan.FromSeconds(3));

    private readonly FakeTimeProvider _clock = new();
    private readonly Delays _delays;

    public DelaysTests() => _delays = new Delays(_clock);

    [Theory]
    [InlineData(4, 0)]
    [InlineData(5, 1)]
    [InlineData(6, 2)]
    [InlineData(9, 16)]
    [InlineData(10, 30)]
    [InlineData(500, 30)]
    public async Task Take_AfterWrongTries_WaitsLongerAndLongerUpToALimit(int wrong, int seconds)
    {
        await WrongAsync(wrong);
        Task<DelayedTry?> next = Take();
        if (seconds > 0)
        {
            _clock.Advance(TimeSpan.FromSeconds(seconds) - TimeSpan.FromMilliseconds(1));
            Assert.False(next.IsCompleted);
            _clock.Advance(TimeSpan.FromMilliseconds(1));
        }

        Assert.NotNull(await next);
    }

    [Fact]
    public async Task Take_AfterARightOne_BeginsAnew()
    {
        await WrongAsync(8);
        Task<DelayedTry?> right = Take();
        _clock.Advance(TimeSpan.FromSeconds(30));
        (await right)!.WasRight();
        Assert.True(Take().IsCompleted);
    }

    [Fact]
    public async Task Take_ManyAtOnce_CountEachOther()
    {
        for (int i = 0; i < 5; i++) Assert.True(Take().IsCompleted);
        List<Task<DelayedTry?>> waiting = [.. Enumerable.Range(0, Delays.MostWaiting).Select(_ => Take())];
        Assert.DoesNotContain(waiting, t => t.IsCompleted);
        Assert.Null(await Take());
        _clock.Advance(TimeSpan.FromSeconds(30));
        await Task.WhenAll(waiting);
        Assert.False(Take().IsCompleted);
    }

    [Fact]
    public async Task Take_OneGuessesFromElsewhere_MakesTheOtherWaitThreeSecondsAtMost()
    {
        for (int i = 0; i < 400; i++)
        {
            Task<DelayedTry?> guess = _delays.TakeAsync(Own with { Key = "wren from there" }, [Name], TestContext.Current.CancellationToken);
            _clock.Advance(TimeSpan.FromSeconds(30));
            await guess;
        }

        Task<DelayedTry?> here = Take();
        _clock.Advance(TimeSpan.FromSeconds(3));
        Assert.NotNull(await here);
    }

    [Fact]
    public async Task Take_HalfAnHourLater_IsForgotten()
    {
        await WrongAsync(12);
        _clock.Advance(TimeSpan.FromMinutes(31));
        Assert.True(Take().IsCompleted);
    }

    private Task<DelayedTry?> Take() => _delays.TakeAsync(Own, [Name], TestContext.Current.CancellationToken);

    private async Task WrongAsync(int tries)
    {
        for (int i = 0; i < tries; i++)
        {
            Task<DelayedTry?> wrong = _delays.TakeAsync(Own, [], TestContext.Current.CancellationToken);
            _clock.Advance(TimeSpan.FromSeconds(30));
            await wrong;
        }
    }
}
