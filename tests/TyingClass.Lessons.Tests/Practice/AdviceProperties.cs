using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Practice;

/// <summary>Whatever the adviser proposes for a repair must pass that repair.</summary>
public sealed class AdviceProperties
{
    private const int Exercises = 120;

    [Fact]
    public void Proposals_ForRandomRepairs_AllPassTheGrader()
    {
        int proposals = 0, advised = 0;
        for (int seed = 1; seed <= Exercises; seed++)
        {
            int before = proposals;
            Exercise exercise = Random(new Random(seed));
            Recipe given = RecipeParser.Parse(exercise.RecipeText!).Value!;
            foreach (Proposal proposal in LastHint.Proposals(exercise, given))
            {
                GradeResult result = Grader.Grade(exercise, RecipeWriter.Write(proposal.Recipe), 0);
                Assert.True(result.IsAttempt, $"{proposal.Change.Kind}: {string.Join(' ', result.Problems.Select(p => p.Text))}");
                Assert.True(result.Passed, $"{proposal.Change.Kind}: {string.Join("; ", result.Feedback!.Goals.Where(g => !g.Met))}");
                proposals++;
            }

            if (proposals > before) advised++;
        }

        Assert.True(advised >= Exercises / 3, $"Only {advised} of {Exercises} exercises had any proposal: they are too hard or too easy to try the adviser.");
    }

    private static Exercise Random(Random random)
    {
        string[] eyes = ["straight", "down 25°", "up 25°"], metals = ["brass", "tungsten", "steel"], sides = ["top", "under"],
            intents = ["point up", "point down"];
        string[] goals = ["rides as intended: at least 90 %", "keel height: at least 0.3 mm", "sink rate: at least 0.6 m/s"];
        string[] allow = ["hook.eye", "parts[0].size: 2 mm … 6 mm", "parts[0].material", "parts[0].at: 1 mm … 6 mm", "parts[0].side", "parts[2].side",
            "hook.gape: 5 mm … 12 mm"];
        random.Shuffle(goals);
        random.Shuffle(allow);
        return Repo.Exercise($"""
            id: r-1
            kind: repair
            title: R
            concepts: [keel side]
            prompt: Mend it.
            recipe:
              recipe: Reed Darter
              intent: {Pick(intents)}
              hook:
                size: {random.Next(3, 9)}
                shank: {random.Next(1, 4)}XL
                eye: {Pick(eyes)}
              parts:
                - part: dumbbell eyes
                  material: {Pick(metals)}
                  size: {random.Next(28, 48) / 10.0} mm
                  at: {random.Next(2, 5)} mm
                  side: {Pick(sides)}
                - part: body
                  material: floss
                  diameter: 2.4 mm
                  at: 9 mm
                  to: 13 mm
                - part: wing
                  material: bucktail
                  length: 35 mm
                  mass: 0.06 g
                  at: 8 mm
                  side: {Pick(sides)}
              fishing:
                knot: loop
                speed: 0.4 m/s
            allow:
              - {allow[0]}
              - {allow[1]}
              - {allow[2]}
              - {allow[3]}
              - {allow[4]}
            goals:
              - {goals[0]}
              - added mass: at most 0.5 g
            model answer:
              parts[0].at: 2 mm
            """);

        string Pick(string[] from) => from[random.Next(from.Length)];
    }
}
