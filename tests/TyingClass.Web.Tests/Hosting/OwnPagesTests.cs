using Microsoft.Extensions.DependencyInjection;
using TyingClass.Web.Hosting;
using TyingClass.Web.Tests.Pages;
using TyingClass.Web.Tests.Work;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

[Collection(CountedCollection.Name)]
public sealed class OwnPagesTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Theory]
    [InlineData("/lessons/first-evening", 200)]
    [InlineData("/exercises/first-03", 200)]
    [InlineData("/exercises/nobody-knows-it", 404)]
    [InlineData("/class", 302)]
    public async Task Open_AsAGuestWould_IsAnsweredAndLeavesNoTrace(string address, int status)
    {
        Assert.Equal(status, await Pages.OpenAsync(address, TestContext.Current.CancellationToken));
        Assert.Empty(_room.Store.People.Guests());
    }

    [Fact]
    public async Task Open_AnExercise_SolvesItsFliesForWhoeverComesNext()
    {
        await Pages.OpenAsync("/exercises/first-03", TestContext.Current.CancellationToken);
        using WorkCount count = new();
        await ExercisePage.OpenAsync(_room.NewBrowser(), "first-03");
        Assert.Equal((0, 0, 0), count.Take());
    }

    public void Dispose() => _room.Dispose();

    private OwnPages Pages => _room.Services.GetRequiredService<OwnPages>();
}
