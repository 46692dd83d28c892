using TyingClass.Web.Computing;
using Xunit;

namespace TyingClass.Web.Tests.Computing;

public sealed class TurnsTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public async Task TakeAsync_OneAskerWithManyLinks_LeavesHalfTheMachineToTheOthers()
    {
        using Turns turns = new(4);
        Task<IDisposable?>[] links = [.. Enumerable.Range(0, 10).Select(_ => turns.TakeAsync("many links", Stop))];
        Assert.Equal(2, links.Count(l => l.IsCompleted));
        Task<IDisposable?> student = turns.TakeAsync("student", Stop);
        Assert.True(student.IsCompleted);
        Assert.NotNull(await student);
    }

    [Fact]
    public async Task TakeAsync_LineIsFull_SaysSoAtOnce()
    {
        using Turns turns = new(2);
        Task<IDisposable?>[] links = [.. Enumerable.Range(0, 1 + Turns.WaitingEach).Select(_ => turns.TakeAsync("many links", Stop))];
        Assert.Equal(1, links.Count(l => l.IsCompleted));
        Assert.Null(await turns.TakeAsync("many links", Stop));
    }

    [Fact]
    public async Task TakeAsync_WhoWaitedHasLeft_NextInLineIsServed()
    {
        using Turns turns = new(2);
        IDisposable? first = await turns.TakeAsync("a", Stop);
        using CancellationTokenSource leaving = new();
        Task<IDisposable?> left = turns.TakeAsync("a", leaving.Token);
        Task<IDisposable?> stays = turns.TakeAsync("a", Stop);
        await leaving.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => left);
        Assert.False(stays.IsCompleted);
        first!.Dispose();
        Assert.NotNull(await stays);
    }

    [Fact]
    public async Task TakeAsync_LeftWhileWaitingForTheMachine_OwnTurnIsFreeAgain()
    {
        using Turns turns = new(2);
        IDisposable? a = await turns.TakeAsync("a", Stop), b = await turns.TakeAsync("b", Stop);
        using CancellationTokenSource leaving = new();
        Task<IDisposable?> left = turns.TakeAsync("c", leaving.Token);
        await leaving.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => left);
        a!.Dispose();
        Assert.NotNull(await turns.TakeAsync("c", Stop));
        b!.Dispose();
    }
}
