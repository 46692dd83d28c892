using System.Net;
using Microsoft.AspNetCore.Mvc.Testing.Handlers;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class SignOutTests : IDisposable
{
    private readonly ClassRoom _room = new();

    public void Dispose() => _room.Dispose();

    [Fact]
    public async Task SignOut_CopyOfItsCookie_OpensNothingAndTheOtherDeviceStaysIn()
    {
        await _room.NewInstructorAsync();
        CookieContainer cookies = new();
        Browser shared = new(_room.CreateDefaultClient(new CookieContainerHandler(cookies))), phone = _room.NewBrowser();
        await (await SignInPage.OpenAsync(shared)).EnterAsync("four quiet winter trout");
        await (await SignInPage.OpenAsync(phone)).EnterAsync("four quiet winter trout");
        using HttpRequestMessage copied = new(HttpMethod.Get, new Uri("/class/people", UriKind.Relative));
        using HttpClient bare = _room.CreateDefaultClient();
        copied.Headers.Add("Cookie", cookies.GetCookieHeader(shared.Client.BaseAddress!));
        using HttpResponseMessage before = await bare.SendAsync(copied, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, before.StatusCode);

        Sheet leaving = await shared.OpenAsync("/sign-out");
        await shared.SendAsync(leaving, leaving.Form("main form"), null);

        using HttpRequestMessage again = new(HttpMethod.Get, new Uri("/class/people", UriKind.Relative));
        again.Headers.Add("Cookie", copied.Headers.GetValues("Cookie"));
        using HttpResponseMessage after = await bare.SendAsync(again, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.Redirect, after.StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await phone.OpenAsync("/class/people")).Status);
    }

    [Fact]
    public async Task PagesOfTheClass_AreNotKeptByTheBrowser()
    {
        Browser instructor = await _room.NewInstructorAsync();
        foreach (string address in (string[])["/class", "/class/people", "/class/setup", "/account"])
        {
            Assert.Contains("no-store", (await instructor.OpenAsync(address)).Response.Headers.CacheControl!.ToString(), StringComparison.Ordinal);
        }
    }
}
