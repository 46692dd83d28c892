using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Practice;
using TyingClass.Storage.Practice;
using TyingClass.Web.Editing;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Practice;

/// <summary>Which problem: all of it stands in the address.</summary>
/// <param name="LevelHundredths">0 plain to 100 close.</param>
public readonly record struct ProblemKey(string Slug, int Seed, int LevelHundredths)
{
    public string Address => string.Create(CultureInfo.InvariantCulture, $"/practice/{Uri.EscapeDataString(Slug)}?seed={Seed}&level={LevelHundredths}");
}

/// <summary>One practice problem as one person meets it.</summary>
/// <param name="Work">Null when the ranges gave no fair problem for this seed.</param>
/// <param name="Line">How firmly the person holds the concept now.</param>
/// <param name="Next">The next problem, at the person's own level.</param>
public sealed record PracticeView(ProblemKey Key, ExerciseView? Work, ConceptLine Line, ProblemKey Next)
{
    public string LevelWords => Key.LevelHundredths switch
    {
        < 34 => "plain",
        < 67 => "middling",
        _ => "a close call",
    };

    /// <summary>A prediction is given away by its feedback; figures and flies may be tried again.</summary>
    public bool TakesAnswers => Work is { Passed: false } work && (!work.Exercise.Kind.TellsTheAnswer || work.Attempts.IsEmpty);
}

/// <summary>Practice without end: problems of one concept by seed, steered toward four successes in five.</summary>
public sealed class PracticeDesk(PracticeSets all, PracticeStore store, Visitor visitor, AnswerDesk desk, PracticeDraws draws, ConceptBoard board)
{
    /// <summary>
    /// The person's next problem: the lowest seed above all answered before, at the level the answers so far call for. Null for a concept nobody practices.
    /// </summary>
    public ProblemKey? NextFor(string slug)
    {
        if (all.Of(slug) is not [var first, ..]) return null;
        PracticeOutcome[] mine = Mine(first.Set.Concept);
        int seed = mine.Length == 0 ? 1 : mine.Max(o => o.Seed) % int.MaxValue + 1;
        return new ProblemKey(slug, seed, Level(mine));
    }

    /// <returns>Null for a concept nobody practices.</returns>
    public PracticeView? Open(ProblemKey key) => Lay(key, work => desk.Open(work));

    public PracticeView? ShowAgain(ProblemKey key, Typed typed) => Lay(key, work => desk.ShowAgain(work, typed, AnswerDesk.StaleForm));

    /// <summary>Grades and keeps an answer, or does what another button asks of the form.</summary>
    public (DeskResult Result, PracticeView? View) Take(ProblemKey key, AnswerPost post)
    {
        if (Find(key) is not { } work) return (new DeskResult(null, null, StatusCodes.Status404NotFound), Open(key));
        DeskResult result = desk.Take(work, post);
        return (result, result.View is { } view ? Lay(key, _ => view) : null);
    }

    private PracticeView? Lay(ProblemKey key, Func<Assignment, ExerciseView> show)
    {
        ImmutableArray<(Lesson, PracticeSet Set)> sets = all.Of(key.Slug);
        if (sets.IsEmpty) return null;
        ExerciseView? view = Find(key) is { } work ? show(work) : null;
        string concept = sets[0].Set.Concept;
        PracticeOutcome[] mine = Mine(concept);
        ConceptLine line = board.Mine().Lines.First(l => l.Concept == concept);
        ProblemKey next = key with { Seed = key.Seed % int.MaxValue + 1, LevelHundredths = Level(mine) };
        DrawAhead(sets, next.Seed, mine, answered: view is { Attempts.IsEmpty: false });
        return new PracticeView(key, view, line, next);
    }

    // While the student reads: the next problem as it will be, or as it would be after either outcome.
    private void DrawAhead(ImmutableArray<(Lesson, PracticeSet Set)> sets, int seed, PracticeOutcome[] mine, bool answered)
    {
        PracticeSet set = PracticeSets.For(sets, seed).Set;
        IEnumerable<bool> so = mine.Select(o => o.Passed);
        int[] levels = answered
            ? [Level(mine)]
            : [PracticeLevel.Hundredths(PracticeLevel.After(so.Append(true))), PracticeLevel.Hundredths(PracticeLevel.After(so.Append(false)))];
        _ = draws.DrawAhead([.. levels.Select(level => (set, seed, level))]);
    }

    private Assignment? Find(ProblemKey key)
    {
        if (all.Of(key.Slug) is not { IsEmpty: false } sets) return null;
        (Lesson lesson, PracticeSet set) = PracticeSets.For(sets, key.Seed);
        if (draws.Draw(set, key.Seed, key.LevelHundredths) is not { } problem) return null;
        return new Assignment(lesson, problem, key.Address)
        {
            GoesOnFresh = false,
            ShowsTheSum = true,
            Attempts = () => visitor.Person is { } person ? [.. store.Of(person.Id, problem.Id).Select(a => a.Attempt)] : [],
            Keep = (text, grade, form) => store.Add(
                visitor.PersonOrNewGuest().Id, new PracticeProblem(problem.Id, set.Concept, key.Seed, key.LevelHundredths, problem.RecipeText ?? ""), text,
                grade, form),
        };
    }

    private PracticeOutcome[] Mine(string concept) =>
        visitor.Person is { } person ? [.. store.FirstOutcomesOf(person.Id).Where(o => o.Concept == concept)] : [];

    private static int Level(PracticeOutcome[] mine) => PracticeLevel.Hundredths(PracticeLevel.After(mine.Select(o => o.Passed)));
}
