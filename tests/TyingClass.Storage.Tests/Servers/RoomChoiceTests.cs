using TyingClass.Storage.Servers;
using Xunit;

namespace TyingClass.Storage.Tests.Servers;

public sealed class RoomChoiceTests : IDisposable
{
    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Get_NobodyDecided_IsClosed() => Assert.Equal(new RoomChoice(false), _temp.Store.RoomChoice.Get());

    [Theory]
    [InlineData("192.168.1.20", "wlan0")]
    [InlineData("class.club", null)]
    [InlineData(null, null)]
    public void Keep_Reopened_IsTheSameChoice(string? address, string? adapter)
    {
        RoomChoice choice = new(true, address, adapter);
        _temp.Store.RoomChoice.Keep(new RoomChoice(false, "10.0.0.1"));
        _temp.Store.RoomChoice.Keep(choice);
        _temp.Reopen();
        Assert.Equal(choice, _temp.Store.RoomChoice.Get());
    }
}
