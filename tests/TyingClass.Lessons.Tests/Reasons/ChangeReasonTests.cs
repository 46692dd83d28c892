using TyingClass.Lessons.Reasons;
using TyingClass.Lessons.Tests.Grading;
using TyingClass.Telling.Reasons;
using Xunit;
using static TyingClass.Lessons.Tests.Reasons.Solved;

namespace TyingClass.Lessons.Tests.Reasons;

public sealed class ChangeReasonTests
{
    [Fact]
    public void Of_EyeAndTwoParts_SharesSumToTheWhole()
    {
        Reason reason = Of("keel height", Flies.HeavierDarter.Replace("side: under", "side: top", StringComparison.Ordinal)
            .Replace("eye: straight", "eye: up 25°", StringComparison.Ordinal));

        Assert.Equal(["dumbbell eyes", "eye", "wing"], reason.Shares.Select(s => s.What.Word).Order());
        Assert.Equal(reason.ToSi!.Value - reason.FromSi!.Value, reason.Shares.Sum(s => s.Si), 9);
    }

    [Fact]
    public void Of_ChangeThatDoesNotBear_GivesItNothing()
    {
        Reason reason = Of("mass", Flies.Darter.Replace("knot: loop", "knot: cinched", StringComparison.Ordinal));

        Assert.Equal(0, reason.Top!.Si, 12);
        Assert.False(reason.IsNoticeable);
    }

    [Fact]
    public void Of_MoreThanFourDifferences_TellsThreeAndTheRest()
    {
        string many = Flies.HeavierDarter.Replace("eye: straight", "eye: up 25°", StringComparison.Ordinal)
            .Replace("knot: loop", "knot: cinched", StringComparison.Ordinal)
            .Replace("diameter: 2.4 mm", "diameter: 2.8 mm", StringComparison.Ordinal)
            .Replace("speed: 0.4 m/s", "speed: 0.5 m/s", StringComparison.Ordinal);

        Reason reason = Of("pitch", many);

        Assert.Equal(4, reason.Shares.Length);
        Assert.Equal(ThingKind.Rest, reason.Shares[^1].What.Kind);
        // A body thicker by less than half a millimeter has the least say of the five.
        Assert.DoesNotContain(reason.Shares, s => s.What.Word == "body");
        Assert.Contains(reason.Shares, s => s.What.Kind == ThingKind.Speed);
        Assert.Equal(reason.ToSi!.Value - reason.FromSi!.Value, reason.Shares.Sum(s => s.Si), 9);
    }

    private static Reason Of(string quantity, string after) => ChangeReason.Of(Query(quantity), Fly(Flies.Darter), Fly(after));
}
