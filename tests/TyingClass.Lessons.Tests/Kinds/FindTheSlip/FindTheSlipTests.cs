using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.FindTheSlip;

public sealed class FindTheSlipTests
{
    private const string Text = """
        id: f-1
        kind: find the slip
        title: F
        concepts: [mass center, keel side]
        prompt: One step goes wrong.
        file: recipes/slate-minnow.fly.yaml
        change:
          parts[0].size: 4.8 mm
        steps:
          - say: A larger bead has more mass.
            claim: mass rises
          - The bead sits at the front of the shank.
          - say: So the mass center moves back.
            claim: mass center, x rises
        slip: 3
        instead: So the mass center moves forward.
        reasons:
          - Beads have no mass.
          - right: The mass is added in front of the mass center.
          - The hook is heavier.
        hints:
          - Where is the bead?
        misreadings:
          - when: answer is "step 1"
            say: More brass is more mass.
            concept: keel side
          - when: answer is "step 3" and answer is "reason 3"
            say: The hook did not change.
        """;

    private static readonly Exercise Exercise = Repo.Exercise(Text);

    [Theory]
    [InlineData("3; reason 2")]
    [InlineData("3; 2")]
    [InlineData("3 2")]
    [InlineData("3; reason B")]
    [InlineData("3b")]
    [InlineData("step 3, reason b")]
    [InlineData("Step 3, reason 2")]
    [InlineData("step: 3\nreason: 2")]
    public void Grade_StepAndReason_PassesAndTellsWhatTheStepShouldSay(string answer)
    {
        GradeResult result = Grader.Grade(Exercise, answer, 0);

        Assert.True(result.Passed);
        Assert.All(result.Feedback!.Goals, g => Assert.True(g.Met));
        Assert.Contains("The mass is added in front of the mass center.", result.Feedback.WhatItWouldDo, StringComparison.Ordinal);
        Assert.Contains("It should read: “So the mass center moves forward.”", result.Feedback.WhatItWouldDo, StringComparison.Ordinal);
        Assert.Null(result.Feedback.WhereToLook);
    }

    [Fact]
    public void Grade_RightStepWrongReason_IsToldApartFromTheWrongStep()
    {
        Feedback reason = Grader.Grade(Exercise, "3; reason 1", 0).Feedback!, step = Grader.Grade(Exercise, "2; reason 2", 0).Feedback!;

        Assert.Equal([true, false], reason.Goals.Select(g => g.Met));
        Assert.Equal([false, false], step.Goals.Select(g => g.Met));
        Assert.StartsWith("Step 3 is the one that goes wrong", reason.WhatItWouldDo, StringComparison.Ordinal);
        Assert.StartsWith("Step 2 holds", step.WhatItWouldDo, StringComparison.Ordinal);
        // The hint leads to the step: whoever has it needs another.
        Assert.Equal("Where is the bead?", step.WhereToLook);
        Assert.DoesNotContain("bead", reason.WhereToLook, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_WrongStep_GivesNeitherStepNorReasonAway()
    {
        Feedback feedback = Grader.Grade(Exercise, "2; reason 2", 0).Feedback!;
        string all = feedback.WhatItWouldDo + feedback.Why + feedback.WhereToLook + string.Concat(feedback.Goals.Select(g => g.Reached));

        Assert.DoesNotContain("step 3", all, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("in front of the mass center", all, StringComparison.Ordinal);
    }

    // However often it is missed: two are left to choose from, never one.
    [Theory]
    [InlineData("2; reason 2", "One of these two goes wrong: step 1 or step 3.")]
    [InlineData("1; reason 2", "One of these two goes wrong: step 2 or step 3.")]
    [InlineData("3; reason 1", "It is reason B or reason C.")]
    [InlineData("3; reason 3", "It is reason A or reason B.")]
    public void Grade_HintsUsedUp_LeavesTwoToChooseFrom(string answer, string expected)
    {
        foreach (int failed in (int[])[1, 2, 9])
        {
            string hint = Grader.Grade(Exercise, answer, failed).Feedback!.WhereToLook!;
            Assert.Contains(expected, hint, StringComparison.Ordinal);
            Assert.DoesNotContain("in front of the mass center", hint, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("1; reason 2", "More brass is more mass.", "keel side")]
    [InlineData("3; reason 3", "The hook did not change.", "mass center")]
    [InlineData("2; reason 3", null, null)]
    public void Grade_Misreading_MayNameStepAndReason(string answer, string? say, string? concept)
    {
        Feedback feedback = Grader.Grade(Exercise, answer, 0).Feedback!;

        Assert.Equal(say, feedback.Misreading);
        Assert.Equal(concept, feedback.MisreadConcept);
    }

    [Fact]
    public void Grade_StepWithAClaim_TellsWhatTheEngineFindsInTheReadersUnits()
    {
        Assert.Matches(@"By the engine, with the change the mass goes from [0-9.]+ g to [0-9.]+ g\.",
            Grader.Grade(Exercise, "1; reason 1", 0).Feedback!.WhatItWouldDo);
        Assert.DoesNotMatch(@"[0-9] g\b", Grader.Grade(Exercise, "1; reason 1", 0, new GradeOptions { Units = UnitSystem.Imperial }).Feedback!.WhatItWouldDo);
        Assert.Equal(["mass", "mass center, x"], Grader.Grade(Exercise, "1; reason 1", 0).Figures.Select(f => f.Quantity));
    }

    [Theory]
    [InlineData("", "step", "Choose the step that goes wrong and the reason first.")]
    [InlineData("step: 3", "reason", "Choose the reason too")]
    [InlineData("reason: 2", "step", "Choose the step that goes wrong too.")]
    [InlineData("9; reason 2", "step", "There is no step 9: the argument has 3.")]
    [InlineData("0; reason 2", "step", "There is no step 0")]
    [InlineData("3; reason 7", "reason", "There is no reason G")]
    [InlineData("the third", "step", "as in “3; reason B”")]
    [InlineData("99999999999; reason 1", "step", "as in “3; reason B”")]
    public void Grade_NoStepAndReason_IsNoAttempt(string answer, string field, string text)
    {
        AnswerProblem problem = Assert.Single(Grader.Grade(Exercise, answer, 0).Problems);

        Assert.Equal(field, problem.Path);
        Assert.Contains(text, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Key_LeftToTheEngine_IsTheOneFalseClaim()
    {
        Exercise computed = Repo.Exercise(Text.Replace("slip: 3\n", "", StringComparison.Ordinal));

        Assert.Equal("3; reason 2", computed.Kind.RightAnswer(computed));
        Assert.True(Grader.Grade(computed, "3; reason 2", 0).Passed);
    }

    [Fact]
    public void Key_AuthorAndEngineDisagree_IsNotMarked()
    {
        Exercise disputed = Repo.Exercise(Text.Replace("slip: 3", "slip: 1", StringComparison.Ordinal));

        Assert.Contains("tell your instructor", Assert.Single(Grader.Grade(disputed, "1; reason 2", 0).Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Kind_Answers_AreOneRightAndAllOthersWrong()
    {
        ExerciseKind kind = Exercise.Kind;
        string right = kind.RightAnswer(Exercise)!;
        string[] wrong = [.. kind.WrongAnswers(Exercise, right)];

        Assert.True(Grader.Grade(Exercise, right, 0).Passed);
        Assert.Equal(4, wrong.Length);
        Assert.All(wrong, w => Assert.False(Grader.Grade(Exercise, w, 0).Passed));
        Assert.Equal("Step 3: So the mass center moves back.\nReason B: The mass is added in front of the mass center.", kind.Shown(Exercise, right));
        Assert.Equal("9; reason 2", kind.Shown(Exercise, "9; reason 2"));
    }

    [Fact]
    public void Kind_PutToARoom_AsksForTheStep()
    {
        IPutToRoom kind = Assert.IsAssignableFrom<IPutToRoom>(Exercise.Kind);

        Assert.Equal("2. The bead sits at the front of the shank.", kind.RoomChoices(Exercise)[1]);
        Assert.Equal(kind.RoomChoices(Exercise)[2], kind.RoomAnswer(Exercise)!.Value.Choice);
    }

    // Counted from the fence's first line.
    [Theory]
    [InlineData("claim: mass rises", "claim: mess rises", 11, "mess")]
    [InlineData("slip: 3", "slip: 4", 15, "“slip” must be a whole number from 1 to 3")]
    [InlineData("slip: 3", "slipp: 3", 15, "Did you mean “slip”?")]
    [InlineData("- right: The mass", "- The mass", 18, "One of the reasons is the right one; none is marked.")]
    [InlineData("- Beads have no mass.", "- right: Beads have no mass.", 18, "more than one is marked")]
    [InlineData("- Beads have no mass.", "- wrong: Beads have no mass.", 18, "Write each reason as a sentence")]
    [InlineData("  - The bead sits at the front of the shank.\n", "", 10, "An argument has 3 to 8 steps; this one has 2.")]
    [InlineData("- The bead sits", "- says: The bead sits", 12, "“says” is not a key of a step. Did you mean “say”?")]
    [InlineData("parts[0].size: 4.8 mm", "parts[9].size: 4.8 mm", 8, "there is no parts[9].size")]
    [InlineData("answer is \"step 1\"", "answer is \"step 7\"", 24, "“step 7” is not one of the choices")]
    public void Read_Mistake_IsOneErrorAtItsLine(string good, string bad, int line, string text)
    {
        Assert.Contains(good, Text, StringComparison.Ordinal);

        AuthorError error = Assert.Single(Repo.Fence("exercise", Text.Replace(good, bad, StringComparison.Ordinal)).Errors);

        Assert.Contains(text, error.Text, StringComparison.Ordinal);
        Assert.Equal(line + Repo.LinesBeforeFence, error.Line);
    }

    [Fact]
    public void Read_NothingSaysWhichStep_AsksForTheSlip()
    {
        string bare = Text.Replace("slip: 3\n", "", StringComparison.Ordinal).Replace("    claim: mass rises\n", "", StringComparison.Ordinal)
            .Replace("    claim: mass center, x rises\n", "", StringComparison.Ordinal);

        Assert.StartsWith("“slip” is missing", Assert.Single(Repo.Fence("exercise", bare).Errors).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mass rises", "mass falls", "Step 1 should hold, but the engine does not find that mass falls.", 11)]
    [InlineData("mass center, x rises", "mass center, x falls", "Step 3 is the slip, yet the engine finds that mass center, x falls.", 14)]
    public void Check_ClaimAgainstTheEngine_IsRefusedAtItsLine(string good, string bad, string text, int line)
    {
        using TemporaryFolder folder = Course(Text.Replace($"claim: {good}", $"claim: {bad}", StringComparison.Ordinal));

        AuthorError error = Assert.Single(Checking(folder));

        Assert.Equal($"f-1: {text}", error.Text);
        Assert.Equal(line + Repo.LinesBeforeFence, error.Line);
    }

    [Theory]
    [InlineData("answer: 3; reason 1\n    named: reason")]
    [InlineData("answer: 1; reason 1\n    named: step")]
    [InlineData("answer: 1; reason 1\n    named: misreading 1")]
    [InlineData("answer: {step: 2, reason: 1}\n    named: step")]
    public void Check_WrongAnswerNamed_FailsForWhatItIsNamed(string wrong)
    {
        using TemporaryFolder folder = Course($"{Text}\nmodel answer: 3; reason 2\nwrong answers:\n  - {wrong}");

        Assert.Empty(Checking(folder));
    }

    [Fact]
    public void Check_ModelAnswerWithTheWrongReason_Fails()
    {
        using TemporaryFolder folder = Course($"{Text}\nmodel answer: 3; reason 1");

        Assert.Contains("The model answer fails: why it goes wrong", Assert.Single(Checking(folder)).Text, StringComparison.Ordinal);
    }

    private static ImmutableArray<AuthorError> Checking(TemporaryFolder folder) => Lessons.Checking.CourseChecker.Check(folder.Path).Errors;

    private static TemporaryFolder Course(string exercise)
    {
        TemporaryFolder folder = new();
        folder.Write("recipes/slate-minnow.fly.yaml", Repo.Recipe("recipes/slate-minnow.fly.yaml")!);
        folder.Write("01-test.md",
            $"---\ntitle: A test\nsummary: For tests.\nconcepts: [keel side, mass center]\nminutes: 3\n---\n\n```exercise\n{exercise}\n```\n");
        return folder;
    }
}
