using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class RetrieveSentenceTests
{
    private static readonly RetrievePlan Plan = new()
    {
        Round = [new(0.3, 0.5), new(0, 1.5)],
        Repeat = 1,
        CountDownS = 5,
        Line = new(1e-3, 1e-3, 300, 2),
        LineOutM = 12,
        LeaderM = 2.7,
        RodTipM = 0.1,
        BottomM = 3,
    };

    private static RetrieveReport Report { get; } = new()
    {
        Plan = Plan,
        Limit = RetrieveLimit.None,
        Path = [new(0, 0, 0, 0, 0, 1, 0), new(5, 0.2, 1, 10, 5, 0, 80), new(7, 0.6, 1.2, -30, 40, 1, 80)],
        Steps = [new(Plan.Round[0], 0, 5, 0), new(Plan.Round[1], 0, 5.5, 0.3)],
        Strips = [new(new TimedStep(Plan.Round[0], 0, 5, 0), 1, 0.82, 1.2, -30, 0.8)],
        CountedDepthM = 1,
        DeepestM = 1.2,
        ShallowestM = 0.82,
        HopM = 0.18,
        DriftM = null,
        DivePitchDeg = -30,
        Ride = new(0.5, 0.25, 0.25),
        SettleS = 0.8,
        TouchesBottom = new(6, 0.4, 3, 0, 0, 1, 0),
    };

    [Fact]
    public void Of_Everything_IsToldInTheReadersUnits()
    {
        string metric = string.Join(" ", RetrieveSentence.Of(Report, UnitSystem.Metric));
        string imperial = string.Join(" ", RetrieveSentence.Of(Report, UnitSystem.Imperial));
        Assert.Contains("Counted down for 5 s it is 1 m deep. A strip lifts it by 18 cm, and in the end it fishes between 0.82 m and 1.2 m.", metric);
        Assert.Contains("In the pause the nose goes down to 30°; a pause must be 0.8 s long for the nose to point down.", metric);
        Assert.Contains("Of the time it rides the right way up 50 %, leans 25 % and is over 25 %.", metric);
        Assert.Contains("It first touches bottom, 3 m down, 6 s after it lands", metric);
        Assert.Contains("A strip lifts it by 7.1 in", imperial);
        Assert.DoesNotContain(" cm", imperial);
    }

    [Theory]
    [InlineData(RetrieveLimit.NothingToStrip, "not enough line out")]
    [InlineData(RetrieveLimit.TooLong, "takes over 600 s")]
    [InlineData(RetrieveLimit.NotFollowed, "too wild")]
    public void Of_NoFigures_SaysWhy(RetrieveLimit limit, string says) =>
        Assert.Contains(says, Assert.Single(RetrieveSentence.Of(Report with { Limit = limit, Strips = [] }, UnitSystem.Metric)));

    [Fact]
    public void Nose_NeverDown_SaysThatNoPauseWouldDo() =>
        Assert.Contains("never points clearly down: at its lowest, nose up 40°; a pause of 10 s would not turn it down either.",
            RetrieveSentence.Nose(Report with { DivePitchDeg = 40, SettleS = null }, UnitSystem.Metric));
}
