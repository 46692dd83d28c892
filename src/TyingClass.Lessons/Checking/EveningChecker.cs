using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <summary>Whether evenings.yaml and the lessons agree, and nobody has more homework than an hour before any evening.</summary>
internal static class EveningChecker
{
    private const double MostMinutes = 60;

    // A beginner takes two to four times what a quick reader takes (what two readers of the course reckoned), and has an hour or two.
    private const double MostFirstMinutes = 30;

    /// <param name="toldOf">Whether a name is missing for a cause that is told elsewhere: a lesson that cannot be read, or an id written anew.</param>
    public static IEnumerable<AuthorError> Check(Course course, Func<string, bool> toldOf)
    {
        if (course.Evenings.IsEmpty) yield break;
        foreach (IGrouping<int, Lesson> evening in course.Lessons.Where(l => l.Evening is not null).GroupBy(l => l.Evening!.Value))
        {
            if (course.Evenings.FirstOrDefault(e => e.Number == evening.Key) is not { } plan)
            {
                yield return new AuthorError(evening.First().File, 1, 1,
                    $"It is read for evening {evening.Key}, which {EveningsReader.FileName} does not plan. "
                    + $"Add “evening: {evening.Key}” there.");
                continue;
            }

            double minutes = plan.HomeworkMinutes(evening);
            if (minutes > MostMinutes)
                yield return new AuthorError(EveningsReader.FileName, plan.Line, 1,
                    $"Evening {plan.Number} asks for {Math.Round(minutes)} minutes at home, more than {MostMinutes}. "
                    + "Name exercises under “in the room”, or move a lesson to another evening.");
            double first = plan.FirstMinutes(evening);
            if (!plan.First.IsEmpty && first > MostFirstMinutes)
                yield return new AuthorError(EveningsReader.FileName, plan.Line, 1,
                    $"What comes first at home for evening {plan.Number} takes {Math.Round(first)} minutes, more than {MostFirstMinutes}. "
                    + "Name fewer exercises under “first at home”.");
        }

        foreach (CourseEvening plan in course.Evenings)
        {
            Exercise[] those = [.. course.Lessons.Where(l => l.Evening == plan.Number).SelectMany(l => l.Exercises)];
            if (those.Length == 0 && !toldOf($"evening: {plan.Number}"))
                yield return new AuthorError(EveningsReader.FileName, plan.Line, 1,
                    $"No lesson is read for evening {plan.Number}. Give one “evening: {plan.Number}”, or take the plan out.");
            foreach ((_, AuthorError unknown) in Unknown(course, plan, toldOf)) yield return unknown;
            foreach (string id in plan.First.Where(plan.InTheRoom.Contains))
                yield return new AuthorError(EveningsReader.FileName, plan.Line, 1,
                    $"“{id}” is worked in the room and comes first at home. Take it out of one of the two.");
            foreach (CourseFly fly in plan.Flies.Where(f => f.ForTwo + f.ToShow == 0))
                yield return new AuthorError(EveningsReader.FileName, fly.Line, 1,
                    $"Nobody ties {fly.Recipe.Name} of {fly.File}. Say “for two neighbors” or “to show”, or take it out.");
            if (plan.Flies.IsEmpty) continue;
            HashSet<string> listed = [.. plan.Flies.Select(f => f.Recipe.Name)];
            foreach (Exercise test in those.Where(e => e.Kind.IsAtTheBench))
                if (test.RecipeText is { } text && RecipeParser.Parse(text).Value is { Parts.Length: > 0 } fly && !listed.Contains(fly.Name))
                    yield return new AuthorError(EveningsReader.FileName, plan.Line, 1,
                        $"Evening {plan.Number} has the tub test “{test.Id}” of {fly.Name}, which its “flies” do not list. Add it there.");
        }
    }

    /// <summary>Names under “in the room” that no exercise of the evening bears.</summary>
    public static IEnumerable<(string Id, AuthorError Error)> Unknown(Course course, CourseEvening plan, Func<string, bool> toldOf)
    {
        string[] those = [.. course.Lessons.Where(l => l.Evening == plan.Number).SelectMany(l => l.Exercises).Select(e => e.Id)];
        return plan.InTheRoom.Union(plan.First).Where(id => those.Length > 0 && !those.Contains(id) && !toldOf(id))
            .Select(id => (id, new AuthorError(EveningsReader.FileName, plan.Line, 1, $"No lesson of evening {plan.Number} has an exercise “{id}”.")));
    }
}
