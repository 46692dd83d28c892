using System.Net;
using TyingClass.Storage.Servers;
using TyingClass.Web.Network;
using Xunit;

namespace TyingClass.Web.Tests.Network;

/// <summary>What a choice comes to on a machine's adapters.</summary>
public sealed class RoomPlanTests
{
    private static readonly AdapterAddress WiFi = new("wlan0", IPAddress.Parse("192.168.1.20"), true, true, false);
    private static readonly AdapterAddress Cable = new("eth0", IPAddress.Parse("10.0.0.5"), true, false, false);
    private static readonly AdapterAddress Container = new("docker0", IPAddress.Parse("172.17.0.1"), false, false, true);

    [Fact]
    public void Of_NotOpen_ListensNowhere() => Assert.Equal(RoomPlan.Closed, RoomPlan.Of(new RoomChoice(false, "192.168.1.20"), [WiFi]));

    [Fact]
    public void Of_NothingPicked_TakesTheLikeliest() => Assert.Equal("192.168.1.20", RoomPlan.Of(new RoomChoice(true), [WiFi, Cable]).Host);

    [Fact]
    public void Of_Picked_ListensThereOnly()
    {
        RoomPlan plan = RoomPlan.Of(new RoomChoice(true, "10.0.0.5", "eth0"), [WiFi, Cable]);
        Assert.Equal("10.0.0.5", plan.Host);
        Assert.Equal([Cable.Address], plan.Listen);
        Assert.Null(plan.Note);
    }

    [Fact]
    public void Of_PickedAdapterHasAnotherAddressNow_FollowsItAndSaysSo()
    {
        RoomPlan plan = RoomPlan.Of(new RoomChoice(true, "10.0.0.99", "eth0"), [WiFi, Cable]);
        Assert.Equal("10.0.0.5", plan.Host);
        Assert.Contains("10.0.0.99, is gone; 10.0.0.5 (eth0)", plan.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_NoNetwork_SaysWhatToDo() => Assert.Contains("on no network", RoomPlan.Of(new RoomChoice(true), []).Trouble, StringComparison.Ordinal);

    [Fact]
    public void Of_Name_IsPrintedAndHeardOnEveryRealAdapter()
    {
        RoomPlan plan = RoomPlan.Of(new RoomChoice(true, "class.club"), [WiFi, Cable, Container]);
        Assert.Equal("class.club", plan.Host);
        Assert.Equal([WiFi.Address, Cable.Address], plan.Listen);
    }

    [Fact]
    public void Of_WholeAddress_IsPrintedAsItStandsAndOpensNothing()
    {
        RoomPlan plan = RoomPlan.Of(new RoomChoice(true, "https://class.example/"), [WiFi]);
        Assert.True(plan.IsWhole);
        Assert.Equal("https://class.example", plan.Host);
        Assert.Empty(plan.Listen);
    }

    [Fact]
    public void Adapters_OfThisMachine_NameNoLoopback() => Assert.DoesNotContain(new Adapters().Find(), a => IPAddress.IsLoopback(a.Address));
}
