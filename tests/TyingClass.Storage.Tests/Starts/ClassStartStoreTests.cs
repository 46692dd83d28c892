using TyingClass.Storage.Starts;
using Xunit;

namespace TyingClass.Storage.Tests.Starts;

public sealed class ClassStartStoreTests : IDisposable
{
    private readonly TempStore temp = new();

    [Fact]
    public void KeepNames_AndSteps_AreThereAfterARestart()
    {
        temp.Store.Starts.MarkDone("a", "who");
        temp.Store.Starts.KeepNames("a", "Wren\nTeal", lastNameFirst: true);
        temp.Store.Starts.MarkDone("a", "who");
        temp.Reopen();
        ClassStart kept = temp.Store.Starts.Of("a");
        Assert.Equal(("Wren\nTeal", true), (kept.Names, kept.LastNameFirst));
        Assert.Equal(["who"], kept.Done);
        Assert.Empty(temp.Store.Starts.Of("b").Done);
    }

    public void Dispose() => temp.Dispose();
}
