using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Telling.Figures;
using TyingClass.Web.Calendar;

namespace TyingClass.Web.Evenings;

/// <summary>A fly of the evening.</summary>
/// <param name="Each">How many every student ties; a half where two neighbors tie one between them.</param>
/// <param name="Shown">How many the instructor ties to show.</param>
public sealed record EveningFly(Recipe Recipe, string RecipeText, double Each, int Shown)
{
    public string Name => Recipe.Name;

    /// <summary>For a room of so many, and to show. Who has no neighbor ties his own.</summary>
    public int Needed(int students) => (int)Math.Ceiling(Each * students) + Shown;

    /// <summary>"One each.", "One for two neighbors.", "2 each."</summary>
    public string EachInWords => Each switch
    {
        0.5 => "One for two neighbors.",
        1 => "One each.",
        _ when Each % 1 == 0 => $"{Numbers.Write(Each, 0)} each.",
        _ => $"{Numbers.Write(2 * Each, 0)} for two neighbors.",
    };
}

/// <summary>One evening as the instructor prepares and runs it.</summary>
/// <param name="Lessons">Those that name this evening.</param>
/// <param name="Flies">Tested ones first, then those the lessons only show.</param>
/// <param name="Students">How many the materials are for.</param>
public sealed record EveningView(
    ClassRoom Room, EveningPlan Plan, ImmutableArray<Lesson> Lessons, ImmutableArray<EveningFly> Flies, int Students, ClassWindows Windows)
{
    public int Number => Plan.Number;

    /// <summary>What the course plans for it; null where it plans nothing.</summary>
    public CourseEvening? Course { get; init; }

    /// <summary>The instructor's own plan, or else the course's, or else how one usually goes. Markdown.</summary>
    public string ShownPlan => Plan.Plan.Length > 0 ? Plan.Plan : Course?.Plan ?? EveningForm.UsualPlan.ReplaceLineEndings("\n");

    /// <summary>The instructor's own demonstrations, or else the course's. Markdown, may be empty.</summary>
    public string ShownDemonstrations => Plan.Demonstrations.Length > 0 ? Plan.Demonstrations : Course?.Demonstrations ?? "";

    /// <summary>Exercises that the course works together that evening.</summary>
    public IEnumerable<Exercise> Together => Lessons.SelectMany(l => l.Exercises).Where(e => Course?.InTheRoom.Contains(e.Id) == true);

    /// <summary>What students read and work at home beforehand.</summary>
    public int Minutes => Course is { } course ? (int)Math.Round(course.HomeworkMinutes(Lessons)) : Lessons.Sum(l => l.Minutes);

    /// <summary>What is left for home: all but what is worked together.</summary>
    public IEnumerable<(Lesson Lesson, Exercise Exercise)> AtHome =>
        Lessons.SelectMany(l => l.Exercises.Where(e => Course?.InTheRoom.Contains(e.Id) != true).Select(e => (l, e)));

    /// <summary>Whether the plan says what of it comes first.</summary>
    public bool SaysWhatIsFirst => Course is { First.IsEmpty: false };

    /// <summary>What is not to be left out at home; all of it where the plan draws no line.</summary>
    public IEnumerable<(Lesson Lesson, Exercise Exercise)> FirstAtHome => AtHome.Where(e => Course?.IsFirst(e.Exercise) != false);

    /// <summary>What is for who has time.</summary>
    public IEnumerable<(Lesson Lesson, Exercise Exercise)> ThenAtHome => AtHome.Where(e => Course?.IsFirst(e.Exercise) == false);

    /// <summary>Reading, and what comes first.</summary>
    public int FirstMinutes => Course is { } course ? (int)Math.Round(course.FirstMinutes(Lessons)) : Minutes;

    /// <summary>They take a vise, a tub and an evening's patience, and are counted in no minutes.</summary>
    public int TubTestsAtHome => AtHome.Count(e => e.Exercise.Kind.IsAtTheBench);

    /// <summary>What the wall asks: of a planned evening what is worked together, of another all that can be put to the room.</summary>
    public IEnumerable<Exercise> WallQuestions => Course is { InTheRoom.IsEmpty: false } ? Together.Where(e => e.Kind is IPutToRoom) : Questions;

    public IEnumerable<EveningFly> Tied => Flies.Where(f => f.Each > 0);

    public IEnumerable<EveningFly> Shown => Flies.Where(f => f.Shown > 0);

    /// <summary>What can be put to the room.</summary>
    public IEnumerable<Exercise> Questions => Lessons.SelectMany(l => l.Exercises).Where(e => e.Kind is IPutToRoom);

    public string? When => Plan.StartsLocal is { } starts ? ClassClock.Say(starts) : null;

    /// <summary>For everyone who ties and whoever shows, added up, nothing for waste.</summary>
    public ImmutableArray<Supply> Supplies => SupplyList.For(Needs, SpareNeeds);

    /// <summary>Each fly, and how many are tied of it.</summary>
    public IEnumerable<(Recipe Recipe, int Count)> Needs => Flies.Select(f => (f.Recipe, f.Needed(Students)));

    /// <summary>Each single part to have at hand besides, and how many.</summary>
    public IEnumerable<(Recipe Recipe, int Count)> SpareNeeds =>
        Course?.Spares.Select(s => (s.Recipe, (int)Math.Ceiling(s.ForTwo * Students / 2.0) + s.ToShow)) ?? [];
}

/// <param name="Lessons">As links and headings need them.</param>
public sealed record EveningLine(int Number, EveningPlan Plan, ImmutableArray<Lesson> Lessons)
{
    /// <summary>What the course calls it; null where the course has no plan of it.</summary>
    public string? Title { get; init; }

    public string? When => Plan.StartsLocal is { } starts ? ClassClock.Say(starts) : null;
}
