using Microsoft.AspNetCore.Mvc.Filters;
using TyingClass.Balance.Reports;
using TyingClass.Web.Identity;
using TyingClass.Web.Security;

namespace TyingClass.Web.Computing;

/// <summary>
/// Lets a page that computes flies wait for its turn, gives it so much time, and ends its work when its asker has left. Whoever gets no turn, or whose
/// fly takes too long, is told so on a page that holds all that was typed.
/// </summary>
internal sealed class TurnFilter : IAsyncPageFilter
{
    public Task OnPageHandlerSelectionAsync(PageHandlerSelectedContext context) => Task.CompletedTask;

    public async Task OnPageHandlerExecutionAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next)
    {
        HttpContext http = context.HttpContext;
        Turns turns = http.RequestServices.GetRequiredService<Turns>();
        using CancellationTokenSource waiting = CancellationTokenSource.CreateLinkedTokenSource(http.RequestAborted);
        waiting.CancelAfter(turns.MostWaiting);
        IDisposable? turn;
        try
        {
            turn = await turns.TakeAsync(Asker(http), waiting.Token);
        }
        catch (OperationCanceledException)
        {
            turn = null;
        }

        if (turn is null)
        {
            context.Result = BusyPage.Of(http, BusyWords.NoTurn);
            return;
        }

        using (turn) await ComputeAsync(context, next, turns.MostTime);
    }

    private static async Task ComputeAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next, TimeSpan mostTime)
    {
        using CancellationTokenSource time = CancellationTokenSource.CreateLinkedTokenSource(context.HttpContext.RequestAborted);
        time.CancelAfter(mostTime);
        using IDisposable stop = StopSignal.By(time.Token);
        PageHandlerExecutedContext done = await next();
        if (done.Exception is not OperationCanceledException || done.ExceptionHandled) return;
        done.ExceptionHandled = true;
        done.Result = BusyPage.Of(context.HttpContext, BusyWords.TooLong);
    }

    // Someone with an account is one asker on every device; the rest are told apart by where they are.
    private static string Asker(HttpContext http) => http.RequestServices.GetRequiredService<Visitor>() is { HasAccount: true, Person: { } person }
        ? "person " + person.Id
        : "address " + Doors.Network(http.Connection.RemoteIpAddress);
}
