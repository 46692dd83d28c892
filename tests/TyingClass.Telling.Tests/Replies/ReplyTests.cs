using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Replies;
using Xunit;

namespace TyingClass.Telling.Tests.Replies;

/// <summary>The sentence that stands first. What it says of the course's own exercises is held in the corpus of answers.</summary>
public sealed class ReplyTests
{
    [Theory]
    [InlineData(0.1, "The goal is not met: its mass center lies too far back, by 0.1 mm.")]
    [InlineData(0.004, "The goal is not met: its mass center lies too far back, by 0.004 mm.")]
    public void Missed_ByHowMuch_IsSaidHoweverSmallItIs(double overMm, string said)
    {
        AskedGoal center = new("mass center, x", "mass center, x", null, Magnitudes.Find("mass center, x"), 0, 8e-3);

        Assert.Equal(said, GoalsReply.Missed(0, 1, [MissWords.Of(center, 8e-3 + overMm * 1e-3, UnitSystem.Metric)]));
    }

    [Theory]
    [InlineData(3, 4, "Three of four goals are met. It sinks too slowly, by 5 mm/s.")]
    [InlineData(1, 2, "One of two goals is met. It sinks too slowly, by 5 mm/s.")]
    [InlineData(0, 2, "Neither goal is met: it sinks too slowly, by 5 mm/s.")]
    [InlineData(0, 3, "None of the three goals is met: it sinks too slowly, by 5 mm/s.")]
    public void Missed_OfSeveral_CountsTheGoalsThatAreMet(int met, int all, string said) =>
        Assert.Equal(said, GoalsReply.Missed(met, all, ["it sinks too slowly, by 5 mm/s"]));

    [Fact]
    public void Missed_WithMoreThanAReaderTakesIn_LeavesOutWhatComesLast()
    {
        string[] misses = ["fresh, fewer flies ride as intended than before, 71 → 0", "the share of flies tied like it that ride as intended is no better"];

        Assert.Equal("Neither goal is met: fresh, fewer flies ride as intended than before, 71 → 0.", GoalsReply.Missed(0, 2, misses));
        Assert.Equal("Neither goal is met: fresh, fewer flies ride as intended than before, 71 → 0; soaked, no better.",
            GoalsReply.Missed(0, 2, [misses[0], "soaked, no better"]));
    }

    // With both amounts the second would have twenty words.
    [Fact]
    public void Missed_WithTwoAmounts_KeepsTheSecondOnlyWhereItFits()
    {
        Assert.Equal("Neither goal is met: no flies ride as intended; it gets heavier than it may, by 0.43 g.",
            GoalsReply.Missed(0, 2, ["no flies ride as intended", "it gets heavier than it may, by 0.43 g"]));
        Assert.Equal("Neither goal is met: it sinks too slowly, by 5 mm/s; it gets heavier than it may.",
            GoalsReply.Missed(0, 2, ["it sinks too slowly, by 5 mm/s", "it gets heavier than it may, by 0.43 g"]));
    }

    [Theory]
    [InlineData("changes", 3, "it makes two changes too many")]
    [InlineData("parts", 2, "it has one part too many")]
    public void Of_ACount_SaysHowManyAreTooMany(string name, double si, string said) =>
        Assert.Equal(said, MissWords.Of(new AskedGoal(name, name, null, null, double.NegativeInfinity, 1), si, UnitSystem.Metric));

    [Theory]
    [InlineData(0.71, "only 71 flies in a hundred ride as intended")]
    [InlineData(0, "no flies ride as intended")]
    public void Of_AShare_CountsFlies(double share, string said) => Assert.Equal(
        said,
        MissWords.Of(
            new AskedGoal("rides as intended", "", null, Magnitudes.RidesAsIntended, 0.9, double.PositiveInfinity), share, UnitSystem.Metric));

    [Fact]
    public void Holds_OfAStepThatClaimsAFigure_SaysTheFigureBeforeTheWayOn()
    {
        Assert.Equal("Step 2 holds: it does fish deeper, 2.22 m against 1.68 m. Look at another step.",
            StepReply.Holds(2, StepReply.Does("deepest", larger: true, "2.22 m", "1.68 m")));
        Assert.Equal("Step 2 holds. Look at another step.", StepReply.Holds(2, null));
    }

    [Fact]
    public void Does_OfSeveralFlies_AgreesWithThem() =>
        Assert.Equal("more flies do ride as intended, 90 % against 10 %", StepReply.Does("rides as intended", larger: true, "90 %", "10 %"));

    [Theory]
    [InlineData("The wing holds it, and the water.", "The wing and the water do.", "Yours speaks of the wing and the water, and so does the model answer.")]
    [InlineData("The wing holds it.", "The wing and the knot do.", "Yours speaks of the wing; the model answer also of the knot.")]
    [InlineData("It just does.", "The wing and the knot do.", "The model answer speaks of the wing and the knot, and yours does not.")]
    public void Explained_BesideTheModelAnswer_SaysWhatIsThereAndWhatIsMissing(string text, string model, string said) =>
        Assert.Equal(said, SeenReply.Explained(text, model));

    [Theory]
    [InlineData(true, "Right, deepest first: Roach, Dace, Bleak.")]
    [InlineData(false, "Right, least deep first: Roach, Dace, Bleak.")]
    public void Right_OfAnOrder_IsSaidInTheWordsOfWhatWasAsked(bool largestFirst, string said) =>
        Assert.Equal(said, OrderReply.Right("deepest", largestFirst, ["Roach", "Dace", "Bleak"]));

    [Theory]
    [InlineData("18 cm", "18 cm", true, "Yes: 18 cm.")]
    [InlineData("18 cm", "19 cm", false, "Yes: it is 19 cm, and your 18 cm is near enough.")]
    public void Right_OfAFigure_SaysTheEnginesOwn(string answer, string key, bool same, string said) =>
        Assert.Equal(said, FigureReply.Right(answer, key, same));

    [Theory]
    [InlineData("It is twelve words long and says nothing that a reader could use 5.", true)]
    [InlineData("Step 2 holds: 1.2 m against 3/4 m.", true)]
    [InlineData("Of 100 flies 62 ride point up and 38 do not.", false)]
    public void IsShort_CountsWordsAndFiguresButNoNumberOfAStep(string said, bool isShort) => Assert.Equal(isShort, Reply.IsShort(said));
}
