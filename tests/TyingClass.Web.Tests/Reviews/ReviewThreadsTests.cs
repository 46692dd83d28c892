using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Reviews;
using Xunit;

namespace TyingClass.Web.Tests.Reviews;

public sealed class ReviewThreadsTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-threads-");

    [Fact]
    public void Of_DecidedBySomeoneOfAnotherServer_SaysSo()
    {
        using ClassStore store = new(DataFolder.At(_folder.FullName), new FakeTimeProvider());
        Pattern pattern = store.Patterns.Create("wren", "Mill Candle", "recipe: Mill Candle\n");
        Review review = store.Reviews.Ask(pattern.Id, "wren", "class", "Too heavy?")!;
        store.Reviews.Decide(review.Id, "an instructor elsewhere", review.Version, new ReviewDecision(true, "Good."));
        Assert.Equal("someone no longer on this server", Assert.Single(new ReviewThreads(store.Reviews, store.People).Of(pattern.Id)).DecidedBy);
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
