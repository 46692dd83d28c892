using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
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
            new EveningLine(n, plans.GetValueOrDefault(n) ?? new EveningPlan(room.Id, n), [.. lessons[n]])
            {
                Title = course.Current.Evenings.FirstOrDefault(e => e.Number == n)?.Title,
            })];
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
        CourseEvening? planned = course.Current.Evenings.FirstOrDefault(e => e.Number == plan.Number);
        return new EveningView(room, plan, lessons, Flies(lessons, plan, planned), students, calendar.Of(room)) { Course = planned };
    }

    private ILookup<int, Lesson> ByEvening() => course.Current.Lessons.Where(l => l.Evening is not null).ToLookup(l => l.Evening!.Value);

    // What the course lists for the evening stands first, with its counts. A course without such a list has one of each tub test tied by everyone.
    private static ImmutableArray<EveningFly> Flies(ImmutableArray<Lesson> lessons, EveningPlan plan, CourseEvening? planned)
    {
        Dictionary<string, FlyCount> counts = plan.Flies.GroupBy(f => f.Name).ToDictionary(g => g.Key, g => g.Last());
        IEnumerable<EveningFly> listed = (planned?.Flies ?? []).Select(f => new EveningFly(f.Recipe, f.RecipeText, f.ForTwo / 2.0, f.ToShow));
        int ofTest = planned is { Flies.IsEmpty: false } ? 0 : 1;
        IEnumerable<EveningFly> named = lessons.SelectMany(l => l.Exercises)
            .Where(e => e is { Kind.IsAtTheBench: true, RecipeText: not null }).Select(e => (Text: e.RecipeText!, Count: ofTest))
            .Concat(lessons.SelectMany(l => l.Blocks).SelectMany(Drawn).Select(text => (Text: text, Count: 0)))
            .Select(n => (n.Text, n.Count, Recipe: RecipeParser.Parse(n.Text).Value))
            // A bare hook is nothing to tie.
            .Where(n => n.Recipe is { Parts.Length: > 0 })
            .Select(n => new EveningFly(n.Recipe!, n.Text, n.Count, n.Count));
        return [.. listed.Concat(named).DistinctBy(f => f.Name)
            .Select(f => counts.GetValueOrDefault(f.Name) is { } own ? f with { Each = own.Each, Shown = own.Shown } : f)];
    }

    private static IEnumerable<string> Drawn(LessonBlock block) => block switch
    {
        FlyBlock fly => [fly.RecipeText],
        FigureBlock figure => figure.Flies.Select(f => f.Text),
        _ => [],
    };
}
