using TyingClass.Storage.Starts;
using Xunit;

namespace TyingClass.Storage.Tests.Starts;

public sealed class ClassStartStoreTests : IDisposable
{
    private readonly TempStore _temp = new();

    [Fact]
    public void KeepNames_AndSteps_AreThereAfterARestart()
    {
        _temp.Store.Starts.MarkDone("a", "who");
        _temp.Store.Starts.KeepNames("a", "Wren\nTeal", lastNameFirst: true, "plain last first");
        _temp.Store.Starts.MarkDone("a", "who");
        _temp.Reopen();
        ClassStart kept = _temp.Store.Starts.Of("a");
        Assert.Equal(("Wren\nTeal", true, "plain last first"), (kept.Names, kept.LastNameFirst, kept.Columns));
        Assert.Equal(["who"], kept.Done);
        Assert.Empty(_temp.Store.Starts.Of("b").Done);
    }

    public void Dispose() => _temp.Dispose();
}
