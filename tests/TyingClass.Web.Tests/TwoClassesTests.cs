using Xunit;

namespace TyingClass.Web.Tests;

/// <summary>Tests each of which has the server with two classes to itself.</summary>
public abstract class TwoClassesTests : IAsyncLifetime
{
    protected TwoClasses Two { get; private set; } = null!;

    public async ValueTask InitializeAsync() => Two = await TwoClasses.OpenAsync();

    public ValueTask DisposeAsync()
    {
        Two.Dispose();
        GC.SuppressFinalize(this);
        return ValueTask.CompletedTask;
    }
}
