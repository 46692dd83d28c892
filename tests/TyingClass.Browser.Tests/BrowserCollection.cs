using Xunit;

namespace TyingClass.Browser.Tests;

/// <summary>One application and one browser for all stories, one story after another: two cores are few.</summary>
[CollectionDefinition(Name)]
#pragma warning disable CA1711 // The framework's word for it.
public sealed class BrowserCollection : ICollectionFixture<RunningApp>, ICollectionFixture<Chromium>
#pragma warning restore CA1711
{
    public const string Name = "browser";
}
