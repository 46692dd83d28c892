using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Web.Classes;
using TyingClass.Web.Editing;
using TyingClass.Web.Identity;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.BenchLog;

/// <summary>Takes observations in, each with the engine's prediction as of that day.</summary>
public sealed class LogDesk(PatternStore patternStore, BenchLogStore benchLogStore, ICourseSource course, Visitor visitor, ClassAccess access,
    ReaderUnits units)
{
    public const string NewAddress = "/bench-log/new";
    public const string StaleForm = "The form had gone stale and nothing was kept. What you typed stands below: send it again.";

    public LogForm Blank(string? patternId, string? exerciseId, string? recipe)
    {
        string fly = patternId is not null ? PatternValue(patternId, patternStore.Find(patternId)?.Revision ?? 0)
            : exerciseId is not null ? $"exercise:{exerciseId}" : "text";
        return New(LogPost.Empty with { Fly = fly, Recipe = recipe ?? "" });
    }

    /// <returns>Null for an entry this visitor did not write.</returns>
    public LogForm? Open(string entryId) => Own(entryId) is { } entry ? Correcting(entry, LogReader.Write(entry, units.Now)) : null;

    public LogResult Add(LogPost post)
    {
        ArgumentNullException.ThrowIfNull(post);
        Dictionary<string, string> errors = [];
        TiedFly? fly = FlyOf(post, errors);
        Seen? seen = LogReader.Read(post, errors);
        if (fly is null || seen is null || Foresee(fly.RecipeText, seen, errors) is not { } foreseen)
            return new LogResult(null, New(post) with { Errors = errors }, StatusCodes.Status422UnprocessableEntity);
        return Guarded(
            () => new LogResult(benchLogStore.Add(visitor.Person!.Id, access.Current?.Id, fly, seen, foreseen, post.Note), null),
            () => New(post));
    }

    public LogResult Correct(string entryId, int expected, LogPost post)
    {
        ArgumentNullException.ThrowIfNull(post);
        if (Own(entryId) is not { } entry) return new LogResult(null, null, StatusCodes.Status404NotFound);
        Dictionary<string, string> errors = [];
        LogForm again = Correcting(entry, post) with { Expected = expected };
        if (LogReader.Read(post, errors) is not { } seen || Foresee(entry.Fly.RecipeText, seen, errors) is not { } foreseen)
            return new LogResult(null, again with { Errors = errors }, StatusCodes.Status422UnprocessableEntity);
        return Guarded(
            () => benchLogStore.Correct(entryId, entry.PersonId, expected, seen, foreseen, post.Note) switch
            {
                null => new LogResult(null, null, StatusCodes.Status404NotFound),
                { Saved: true, Current: var kept } => new LogResult(kept, null),
                { Current: var now } => new LogResult(null, again with
                {
                    Expected = now.Version,
                    Meanwhile = now,
                    Notice =
                        "This entry was changed from another window or device while you were at it. Nothing was overwritten and nothing you typed is lost: "
                        + "yours stands in the form, the other one above it. Keep it again to let yours stand.",
                }, StatusCodes.Status409Conflict),
            },
            () => again);
    }

    /// <summary>The form with what was typed, nothing done.</summary>
    public LogForm? ShowAgain(string? entryId, int expected, LogPost post) =>
        entryId is null ? New(post) with { Notice = StaleForm }
        : Own(entryId) is { } entry ? Correcting(entry, post) with { Expected = expected, Notice = StaleForm } : null;

    private LogEntry? Own(string entryId) =>
        visitor.Person is { } person && benchLogStore.Find(entryId) is { TrashedAt: null } entry && entry.PersonId == person.Id ? entry : null;

    private LogForm New(LogPost post) => new()
    {
        Address = NewAddress,
        Post = post,
        Patterns = visitor.Person is { } person
            ? [.. patternStore.Of(person.Id).Select(p => new FlyChoice(PatternValue(p.Id, p.Revision), $"{p.Name}, revision {p.Revision}"))] : [],
        Exercises = [.. TubTests().Select(e => new FlyChoice($"exercise:{e.Id}", e.Title))],
    };

    private static LogForm Correcting(LogEntry entry, LogPost post) =>
        new() { Address = $"/bench-log/{entry.Id}/correct", Post = post, Expected = entry.Version, FlyName = entry.Fly.Name };

    private IEnumerable<Exercise> TubTests() =>
        course.Current.Lessons.SelectMany(l => l.Exercises).Where(e => e is { Kind.IsAtTheBench: true, RecipeText: not null });

    private TiedFly? FlyOf(LogPost post, Dictionary<string, string> errors)
    {
        string[] parts = post.Fly.Split(':');
        if (parts is ["pattern", var patternId, var number] && PatternFly(patternId, number) is { } own) return own;
        if (parts is ["exercise", var exerciseId] && TubTests().FirstOrDefault(e => e.Id == exerciseId) is { RecipeText: { } text })
            return new TiedFly(RecipeParser.Parse(text).Value?.Name ?? exerciseId, text, FlySource.Exercise, exerciseId, 0);
        if (parts is not ["text"])
        {
            errors["fly"] = "Choose which fly this was.";
            return null;
        }

        if (AnswerLimit.Check(post.Recipe) is { } tooLong) errors["recipe"] = tooLong.Text;
        else if (string.IsNullOrWhiteSpace(post.Recipe)) errors["recipe"] = "Choose a fly above, or write its recipe here.";
        else if (RecipeParser.Parse(post.Recipe) is { Success: true, Value: { } recipe }) return new TiedFly(recipe.Name, post.Recipe, FlySource.Text, null, 0);
        else errors["recipe"] = string.Join(" ", RecipeParser.Parse(post.Recipe).Errors.Take(5).Select(e => $"Line {e.Line}: {e.Text}"));
        return null;
    }

    // The revision that was tied, which need not be the latest by the time the form comes back.
    private TiedFly? PatternFly(string patternId, string number) =>
        visitor.Person is { } person && patternStore.Find(patternId) is { TrashedAt: null } pattern && pattern.OwnerId == person.Id
        && int.TryParse(number, NumberStyles.None, CultureInfo.InvariantCulture, out int revision) && patternStore.Revision(patternId, revision) is { } tied
            ? new TiedFly(RecipeParser.Parse(tied.RecipeText).Value?.Name ?? pattern.Name, tied.RecipeText, FlySource.Pattern, pattern.Id, revision)
            : null;

    private static string PatternValue(string patternId, int revision) => string.Create(CultureInfo.InvariantCulture, $"pattern:{patternId}:{revision}");

    private static Foreseen? Foresee(string recipeText, Seen seen, Dictionary<string, string> errors)
    {
        if (RecipeParser.Parse(recipeText).Value is not { } recipe) return null;
        try
        {
            FlyForecast forecast = FlyForecast.Of(recipe, seen.State, seen.WaterC);
            RetrieveReport? retrieve = seen.HopM is null && seen.NoseDownS is null ? null : Retrieved(recipe, seen);
            return new Foreseen(forecast.HangAngleRad, forecast.Way, forecast.MassKg, forecast.SinkRateMS, BalanceEngine.Version)
            {
                HopM = retrieve is { HasFigures: true } ? retrieve.HopM : null,
                NoseDownS = retrieve is { HasFigures: true } ? retrieve.SettleS : null,
            };
        }
        catch (ArgumentException e)
        {
            errors["fly"] = $"No fly can be computed from this recipe: {e.Message}";
            return null;
        }
    }

    // A fly that was soaked before has been wet for long.
    private static RetrieveReport Retrieved(Recipe recipe, Seen seen)
    {
        const double soakedS = 600;
        FishingSpec fishing = recipe.Fishing;
        if (seen.State == WetState.Soaked && fishing.Retrieve.WettedS is null)
            fishing = fishing with { Retrieve = fishing.Retrieve with { WettedS = soakedS } };
        if (seen.WaterC is { } waterC) fishing = fishing with { TemperatureC = waterC, Water = fishing.Water ?? WaterKind.Fresh };
        return SolvedFly.Solve(recipe with { Fishing = fishing }, ReportOptions.AttitudeOnly).Retrieve;
    }

    private static LogResult Guarded(Func<LogResult> keep, Func<LogForm> again)
    {
        try
        {
            return keep();
        }
        catch (StorageException)
        {
            LogForm form = again() with
            {
                Notice =
                "This could not be kept: the server could not write to its disk. Nothing you typed is lost: it stands below. Tell the instructor, then "
                + "send it again."
            };
            return new LogResult(null, form, StatusCodes.Status503ServiceUnavailable);
        }
    }
}
