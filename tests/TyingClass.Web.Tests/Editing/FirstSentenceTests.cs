using TyingClass.Web.Editing;
using Xunit;

namespace TyingClass.Web.Tests.Editing;

public sealed class FirstSentenceTests
{
    private const string Goes = "The keel height goes from 0.3 mm to 0.7 mm.", First = "With the eye down, the keel height gets larger.";

    [Theory]
    [InlineData("It sinks. The bead is heavy. It is brass.", "It sinks.", "The bead is heavy. It is brass.")]
    [InlineData("It sinks at 0.3 m/s.", "It sinks at 0.3 m/s.", "")]
    [InlineData("", "", "")]
    public void Of_Told_PartsTheFirst(string told, string line, string more) => Assert.Equal((line, more), FirstSentence.Of(told));

    // What a student reads under Why, one row for each way a grader fills it.
    [Theory]
    [InlineData("Of the 3 g, the water is 1 g.", "The mass is 3 g.", First, "Of the 3 g, the water is 1 g.", "")]
    [InlineData("Which reason holds is asked next. Of the 3 g, the water is 1 g.", "The mass is 3 g.", First,
        "Which reason holds is asked next.", "Of the 3 g, the water is 1 g.")]
    [InlineData(Goes + " Which reason holds is asked next.", Goes, First, "Which reason holds is asked next.", "")]
    [InlineData(Goes + " Which reason holds is asked next. Of the 0.4 mm between them, the eye gave 0.3 mm.", Goes, First,
        "Which reason holds is asked next.", "Of the 0.4 mm between them, the eye gave 0.3 mm.")]
    [InlineData(Goes, Goes, First, First, "")]
    [InlineData(Goes + " Of the 0.4 mm between them, the eye gave 0.3 mm.", Goes, First, First, "Of the 0.4 mm between them, the eye gave 0.3 mm.")]
    [InlineData("", "It is a height.", First, First, "")]
    [InlineData(Goes + " More.", Goes, null, Goes + " More.", "")]
    public void OfWhy_ThatBeginsAsTheStepBefore_DoesNotRepeatItAndFoldsFigures(string why, string does, string? first, string line, string more) =>
        Assert.Equal((line, more), FirstSentence.OfWhy(why, does, first));
}
