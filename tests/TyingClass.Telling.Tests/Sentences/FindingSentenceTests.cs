using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class FindingSentenceTests
{
    private static readonly BalanceReport Report = Flies.Rides.Report;

    public static TheoryData<FindingKind> Kinds => [.. Enum.GetValues<FindingKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Of_EveryKind_IsASentenceInBothSystems(FindingKind kind)
    {
        Assert.All(Enum.GetValues<UnitSystem>(), units => Assert.EndsWith(".", FindingSentence.Of(Made(kind), Report, units), StringComparison.Ordinal));
        Assert.DoesNotMatch(@" (mm|m/s|g|g·mm)\b", FindingSentence.Of(Made(kind), Report, UnitSystem.Imperial));
    }

    [Fact]
    public void Of_BendThatTheWeightHelps_DoesNotSetANegativeAgainstIt() => Assert.Equal(
        "The bend turns it away from point up with 1.20 g·mm and the cone does nothing against it.",
        FindingSentence.Of(new BendFinding(-1.2, -0.1, ["cone"]), Report, UnitSystem.Metric));

    [Fact]
    public void Of_BendTooHeavy_SetsTheWeightAgainstIt() => Assert.Equal(
        "The bend turns it away from point up with 0.73 gr·in and the cone and wraps can set only 0.30 gr·in against it.",
        FindingSentence.Of(new BendFinding(-1.2, 0.5, ["cone", "wraps"]), Report, UnitSystem.Imperial));

    [Fact]
    public void Of_RuleOfThumb_TellsTheKeelHeightAsEverywhere() => Assert.Equal(
        "By the rule of thumb the weight lies 0.3 mm below a level line through the eye, yet the keel height is −0.06 mm: the water tilts the fly, and "
            + "with it the hinge line.",
        FindingSentence.Of(new RuleOfThumbFinding(0.31, -0.058), Report, UnitSystem.Metric));

    [Fact]
    public void Say_FlyMeantTheOtherWay_HasTheVerdictsSentenceAndItsCode()
    {
        BalanceReport report = Flies.MeantTheOtherWay.Report;
        SaidFinding first = FindingSentence.Say(report.Findings[0], report, UnitSystem.Metric);

        Assert.Equal("flips", first.Code);
        Assert.Equal(VerdictSentence.Of(report, UnitSystem.Metric), first.Text);
    }

    [Fact]
    public void Of_Cause_NamesBothSidesAndTheSum()
    {
        string cause = CauseSentence.Of(Report.Intent, Report.Soaked, UnitSystem.Imperial);

        Assert.Matches(@"^What holds it point up: .+ \+[0-9.]+ gr·in", cause);
        Assert.Matches(@"All parts together(, each figure rounded)?: \+[0-9.]+ gr·in\.$", cause);
    }

    [Fact]
    public void Of_CauseWithoutALedger_SaysSo() =>
        Assert.Equal(CauseSentence.NoClearSay, CauseSentence.Of(Report.Intent, Report.Soaked with { Ledger = [] }, UnitSystem.Metric));

    private static Finding Made(FindingKind kind) => kind switch
    {
        FindingKind.Leans or FindingKind.RidesOnItsSide or FindingKind.Flips or FindingKind.Undecided or FindingKind.Hangs or FindingKind.Floats
            or FindingKind.Tilts => new VerdictFinding(kind),
        FindingKind.TwoWaysToSink => new SinkWaysFinding([new SinkWay(0.64, -89, 180, 0.5), new SinkWay(0.31, 1, 22, 0.5)]),
        FindingKind.KnotHoldsTheNoseUp => new KnotFinding(7.2),
        FindingKind.SinksAnyWayUp => new NoSinkFinding(kind, false, 0.31),
        FindingKind.Tumbles => new NoSinkFinding(kind, true, null),
        FindingKind.BendOutweighsBead => new BendFinding(-1.2, 0.5, ["cone"]),
        FindingKind.RuleOfThumbDisagrees => new RuleOfThumbFinding(0.3, -0.2),
        FindingKind.PlanesDown => new LiftFinding(-1.2),
        FindingKind.PlanesUp => new LiftFinding(1.2),
        _ => new PlainFinding(kind),
    };
}
