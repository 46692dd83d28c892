using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Revisions;

/// <summary>A fly with one thing changed and nothing else, for showing what that does.</summary>
/// <param name="Changed">The fly with the change made.</param>
/// <param name="Lines">The lines of the recipe that the one thing takes: what a part is made of and its mass go together.</param>
/// <param name="Settles">The change alone does what was asked; else more is needed.</param>
public sealed record OneChange(Recipe Changed, ImmutableArray<RecipeChange> Lines, bool Settles)
{
    // What changes with what: a bead of another metal or size weighs otherwise, and a body moved along the shank has two ends.
    private static readonly string[][] Together = [["material", "density", "mass", "balls", "size"], ["at", "to"]];

    // Looked at in class, not graded: a tenth of the thousand flies tells which change does most.
    private static readonly ReportOptions Quick = ReportOptions.Default with { Flies = 100 };

    // Asked of every fly where the question is no single figure's: which way up it rides turns on it.
    private const string WayUp = "keel height";

    /// <summary>The one of all differences that alone does most of what the exercise asks about.</summary>
    /// <param name="before">The fly that stays as it is.</param>
    /// <param name="after">The fly that differs from it, perhaps in many things.</param>
    /// <returns>Null where nothing differs, or where no change stands by itself.</returns>
    public static OneChange? Of(Exercise exercise, Recipe before, Recipe after)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ImmutableArray<RecipeChange> all = ChangeList.Between(before, after);
        ImmutableArray<ImmutableArray<RecipeChange>> groups = [.. all.GroupBy(GroupOf).Select(g => g.ToImmutableArray())];
        ImmutableArray<(Recipe Fly, ImmutableArray<RecipeChange> Lines)> single =
        [
            .. groups.Where(g => g[0].Path != "intent").Select(g => (Fly: With(before, after, g), Lines: g)).Where(c => c.Fly is not null)
                .Select(c => (c.Fly!, c.Lines)),
        ];
        if (single.IsEmpty) return null;
        if (groups.Length == 1) return new OneChange(single[0].Fly, single[0].Lines, true);
        Yardstick asked = new(exercise, before, after);
        (Recipe fly, ImmutableArray<RecipeChange> lines, double done) = single.Select(c => (c.Fly, c.Lines, Done: asked.Of(c.Fly))).MaxBy(c => c.Done);
        return double.IsNegativeInfinity(done) ? null : new OneChange(fly, lines, asked.Settles(fly));
    }

    private static string GroupOf(RecipeChange change)
    {
        if (change.IsWholePart) return change.Path + (change.After is null ? "-" : "+");
        int dot = change.Path.LastIndexOf('.');
        if (dot < 0) return change.Path;
        (string owner, string key) = (change.Path[..dot], change.Path[(dot + 1)..]);
        if (owner == "hook") return change.Path;
        return owner + "." + (Together.FirstOrDefault(t => t.Contains(key))?[0] ?? key);
    }

    private static Recipe? With(Recipe before, Recipe after, ImmutableArray<RecipeChange> lines)
    {
        RecipeDraft draft = lines.Aggregate(RecipeDraft.Of(before), (d, line) => line switch
        {
            { IsWholePart: true, After: null } => d.RemovePart(IndexOf(line.Path)),
            { IsWholePart: true } => d.InsertPart(Math.Min(IndexOf(line.AnswerPath), d.PartCount), RecipeDraft.Of(after).Fields(line.AnswerPath)),
            _ => d.With(line.Path, line.After),
        });
        return RecipeParser.Parse(draft).Value;
    }

    private static int IndexOf(string path) => int.Parse(path[6..^1], System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>How far a fly has come from one to the other in what is asked.</summary>
    private sealed class Yardstick
    {
        private readonly ImmutableArray<Goal> _goals = [];
        private readonly ImmutableArray<(QuantityQuery Query, double From, double To)> _figures = [];
        private readonly FlyFigures? _start;

        public Yardstick(Exercise exercise, Recipe before, Recipe after)
        {
            (_start, FlyFigures? end) = (FlyFigures.TryBuild(before, null, Quick), FlyFigures.TryBuild(after, null, Quick));
            if (_start is null || end is null) return;
            _goals = [.. exercise.Goals.Where(g => !GoalCheck.IsMet(g, _start))];
            IEnumerable<QuantityQuery> asked = _goals.IsEmpty ? [QuantityQuery.Known(exercise.Task.AskedQuantity ?? WayUp)] : _goals.Select(GoalCheck.Query);
            _figures =
            [
                .. asked.Select(q => (q, From: q.Of(_start), To: q.Of(end))).Where(f => f.From is not null && f.To is not null && f.From != f.To)
                    .Select(f => (f.q, f.From!.Value, f.To!.Value)),
            ];
        }

        /// <summary>Goals met that were not, and then shares of the way; minus infinity for a fly that cannot be built.</summary>
        public double Of(Recipe recipe)
        {
            if (FlyFigures.TryBuild(recipe, _start, Quick) is not { } fly) return double.NegativeInfinity;
            double way = _figures.Sum(f => Math.Clamp(((f.Query.Of(fly) ?? f.From) - f.From) / (f.To - f.From), -1, 1));
            return (10 * _goals.Count(g => GoalCheck.IsMet(g, fly))) + way;
        }

        public bool Settles(Recipe recipe) =>
            !_goals.IsEmpty && FlyFigures.TryBuild(recipe, _start, Quick) is { } fly && _goals.All(g => GoalCheck.IsMet(g, fly));
    }
}
