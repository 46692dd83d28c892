using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds;

/// <summary>An answer in one line of a list.</summary>
public sealed class AnswerLineTests
{
    private static readonly string Given = Grading.Flies.Repair.RecipeText!;

    [Theory]
    [InlineData("parts[0].size", "5 mm", "the size of the dumbbell eyes: 4 mm → 5 mm")]
    [InlineData("hook.eye", "down 25°", "the hook's eye: straight → down 25°")]
    [InlineData("recipe", "Another name", "The same fly again")]
    public void InShort_OfARepair_IsWhatWasChanged(string path, string value, string said) =>
        Assert.Equal(said, Short(RecipeDraft.Parse(Given).Value!.With(path, value).ToText()));

    [Fact]
    public void InShort_PartTakenOutAndPutIn_IsNamed()
    {
        RecipeDraft draft = RecipeDraft.Parse(Given).Value!.RemovePart(0).AddPart(KeyValuePair.Create("part", "hackle"));
        Assert.Equal("dumbbell eyes taken out; hackle put in", Short(draft.ToText()));
    }

    [Fact]
    public void InShort_OfSomethingThatIsNoRecipe_IsEmpty() => Assert.Equal("", Short("- [ :"));

    [Fact]
    public void InShort_OfManyChanges_IsCutBetweenWords()
    {
        RecipeDraft draft = RecipeDraft.Parse(Given).Value!;
        foreach ((string path, string value) in draft.Values.Where(v => v.Key != "recipe")) draft = draft.With(path, value + "9");
        string said = Short(draft.ToText());
        Assert.InRange(said.Length, 20, 145);
    }

    private static string Short(string answer)
    {
        Exercise repair = Grading.Flies.Repair;
        return repair.Kind.InShort(repair, answer, null);
    }
}
