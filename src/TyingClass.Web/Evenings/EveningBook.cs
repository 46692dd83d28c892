using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Evenings;

/// <summary>The evenings of the instructor's class: what the lessons say of them, and what the instructor wrote.</summary>
public sealed class EveningBook(ICourseSource course, EveningStore eveningStore, AccountStore accountStore, ClassAccess access, ClassCalendar calendar)
{
    /// <summary>Null for someone without a class.</summary>
    public ClassRoom? Room => access.Current;

    /// <summary>Every evening that a lesson names or the instructor wrote about, and the visitor may run.</summary>
    public ImmutableArray<EveningLine> All()
    {
        if (Room is not { } room) return [];
        Dictionary<int, EveningPlan> plans = eveningStore.OfClass(room.Id).ToDictionary(p => p.Number);
        ILookup<int, Lesson> lessons = ByEvening();
        return [.. lessons.Select(l => l.Key).Union(plans.Keys).Where(access.MayRunEvening).Order().Select(n =>
            new EveningLine(n, plans.GetValueOrDefault(n) ?? new EveningPlan(room.Id, n), [.. lessons[n]]))];
    }

    /// <summary>There is such an evening, but the visitor was not asked to run it.</summary>
    public bool IsOfOthers(int number) => Room is { } room && !access.MayRunEvening(number)
        && (ByEvening().Contains(number) || eveningStore.OfClass(room.Id).Any(p => p.Number == number));

    /// <returns>Null for no class, or an evening nobody ever spoke of.</returns>
    public EveningView? Open(int number) => Room is { } room && All().FirstOrDefault(e => e.Number == number) is { } line ? View(room, line.Plan) : null;

    public EveningView View(ClassRoom room, EveningPlan plan)
    {
        ArgumentNullException.ThrowIfNull(room);
        ArgumentNullException.ThrowIfNull(plan);
        ImmutableArray<Lesson> lessons = [.. course.Current.Lessons.Where(l => l.Evening == plan.Number)];
        int students = plan.Students ?? accountStore.OfClass(room.Id).Count(p => p.Role == Role.Student);
        return new EveningView(room, plan, lessons, Flies(lessons, plan), students, calendar.Of(room))
        {
            Course = course.Current.Evenings.FirstOrDefault(e => e.Number == plan.Number),
        };
    }

    private ILookup<int, Lesson> ByEvening() => course.Current.Lessons.Where(l => l.Evening is not null).ToLookup(l => l.Evening!.Value);

    private static ImmutableArray<EveningFly> Flies(ImmutableArray<Lesson> lessons, EveningPlan plan)
    {
        Dictionary<string, FlyCount> counts = plan.Flies.GroupBy(f => f.Name).ToDictionary(g => g.Key, g => g.Last());
        IEnumerable<(string Text, bool Tested)> named = lessons.SelectMany(l => l.Exercises)
            .Where(e => e is { Kind.IsAtTheBench: true, RecipeText: not null }).Select(e => (e.RecipeText!, true))
            .Concat(lessons.SelectMany(l => l.Blocks).SelectMany(Drawn).Select(text => (text, false)));
        return [.. named.Select(n => (n.Text, n.Tested, Recipe: RecipeParser.Parse(n.Text).Value))
            // A bare hook is nothing to tie.
            .Where(n => n.Recipe is { Parts.Length: > 0 })
            .DistinctBy(n => n.Recipe!.Name)
            .Select(n => Fly(n.Recipe!, n.Text, n.Tested, counts.GetValueOrDefault(n.Recipe!.Name)))];
    }

    private static IEnumerable<string> Drawn(LessonBlock block) => block switch
    {
        FlyBlock fly => [fly.RecipeText],
        FigureBlock figure => figure.Flies.Select(f => f.Text),
        _ => [],
    };

    private static EveningFly Fly(Recipe recipe, string text, bool tested, FlyCount? count) =>
        new(recipe, text, count?.Each ?? (tested ? 1 : 0), count?.Shown ?? (tested ? 1 : 0));
}
