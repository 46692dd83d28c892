using TyingClass.Storage.Servers;
using Xunit;

namespace TyingClass.Storage.Tests.Servers;

public sealed class RoomChoiceTests : IDisposable
{
    private readonly TempStore temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void Get_NobodyDecided_IsClosed() => Assert.Equal(new RoomChoice(false), temp.Store.RoomChoice.Get());

    [Theory]
    [InlineData("192.168.1.20", "wlan0")]
    [InlineData("class.club", null)]
    [InlineData(null, null)]
    public void Keep_Reopened_IsTheSameChoice(string? address, string? adapter)
    {
        RoomChoice choice = new(true, address, adapter);
        temp.Store.RoomChoice.Keep(new RoomChoice(false, "10.0.0.1"));
        temp.Store.RoomChoice.Keep(choice);
        temp.Reopen();
        Assert.Equal(choice, temp.Store.RoomChoice.Get());
    }
}
