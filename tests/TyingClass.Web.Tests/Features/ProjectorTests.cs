using System.Net;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class ProjectorTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Fact]
    public async Task Projector_OfALesson_ShowsOneLargeDrawingAndTheWayOn()
    {
        Browser browser = _room.NewBrowser();
        Sheet lesson = await browser.OpenAsync("/lessons/first-evening");
        int drawings = lesson.All(".lesson > figure.plate").Count();
        Sheet wall = await browser.OpenAsync(lesson.Find("a[href$='/projector']").GetAttribute("href")!);
        Assert.Single(wall.All("svg.fly-plate, svg.fly-curve"));
        Assert.True(wall.Has(".fly-large"));
        Assert.Contains($"1 of {drawings}", wall.Text(), StringComparison.Ordinal);
        Assert.False(wall.Has("a[rel=prev]"));
        Assert.Equal("/lessons/first-evening", wall.Find("a[rel=up]").GetAttribute("href"));
    }

    [Theory, InlineData(0), InlineData(99), InlineData(-3)]
    public async Task Projector_StepThatIsNotThere_ShowsTheNearest(int step)
    {
        Sheet wall = await _room.NewBrowser().OpenAsync($"/lessons/first-evening/projector?step={step}");
        Assert.Equal(HttpStatusCode.OK, wall.Status);
        Assert.Single(wall.All(".wall-plate svg"));
    }

    [Fact]
    public async Task Projector_NoSuchLesson_IsNotFound() =>
        Assert.Equal(HttpStatusCode.NotFound, (await _room.NewBrowser().OpenAsync("/lessons/nothing/projector")).Status);

    public void Dispose() => _room.Dispose();
}
