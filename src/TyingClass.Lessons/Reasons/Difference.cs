using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>One thing that differs between two recipes and can be turned over by itself.</summary>
/// <param name="Turned">Every line of the recipe that changes with it.</param>
internal sealed record Difference(Thing What, ImmutableArray<TurnedLine> Turned);

/// <summary>Two recipes, and every fly in between.</summary>
internal sealed class Differences
{
    private readonly Recipe _before, _after;
    private readonly ImmutableArray<Revisions.RevisionSteps.Place> _places;
    private readonly ImmutableArray<(Difference Difference, string Group)> _all;

    private Differences(Recipe before, Recipe after)
    {
        ImmutableArray<Grading.RecipeChange> changes = Grading.ChangeList.Between(before, after);
        (_before, _after, _places) = (before, after, [.. Revisions.RevisionSteps.Places(before, after, changes)]);
        ImmutableArray<(Difference, string)>.Builder all = ImmutableArray.CreateBuilder<(Difference, string)>();
        Add(ThingKind.Intent, "intent", path => path == "intent");
        Add(ThingKind.Eye, "eye", path => path == "hook.eye");
        Add(ThingKind.Hook, "hook", path => path.StartsWith("hook.", StringComparison.Ordinal) && path != "hook.eye");
        for (int i = 0; i < _places.Length; i++)
        {
            if (_places[i].Changes.IsEmpty) continue;
            all.Add((new Difference(new Thing(ThingKind.Part, _places[i].Name), [.. _places[i].Changes.Select(Turn)]),
                i.ToString(System.Globalization.CultureInfo.InvariantCulture)));
        }

        Add(ThingKind.Water, "water", path => path == "fishing.water");
        Add(ThingKind.Leader, "leader", path => path == "fishing.leader");
        Add(ThingKind.Knot, "knot", path => path == "fishing.knot");
        Add(ThingKind.Speed, "speed", path => path == "fishing.speed");
        Add(ThingKind.Retrieve, "retrieve", path => path.StartsWith("fishing.", StringComparison.Ordinal)
            && path is not ("fishing.water" or "fishing.leader" or "fishing.knot" or "fishing.speed"));
        _all = all.ToImmutable();

        void Add(ThingKind kind, string group, Func<string, bool> mine)
        {
            if (changes.Where(c => mine(c.Path)).Select(c => Stated(Turn(c))).ToImmutableArray() is { IsEmpty: false } turned)
                all.Add((new Difference(new Thing(kind), turned), group));
        }
    }

    public ImmutableArray<Difference> All => [.. _all.Select(d => d.Difference)];

    public static Differences Between(Recipe before, Recipe after) => new(before, after);

    /// <summary>The earlier recipe with these differences turned over.</summary>
    /// <param name="turned">By their places in <see cref="All"/>.</param>
    public Recipe With(IEnumerable<int> turned)
    {
        HashSet<string> groups = [.. turned.Select(i => _all[i].Group)];
        Recipe Of(string group) => groups.Contains(group) ? _after : _before;
        return _before with
        {
            Intent = Of("intent").Intent,
            Hook = Of("hook").Hook with { Eye = Of("eye").Hook.Eye, EyeAngleRad = Of("eye").Hook.EyeAngleRad },
            Parts =
            [
                .. _places.Select((p, i) =>
                    groups.Contains(i.ToString(System.Globalization.CultureInfo.InvariantCulture)) || p.Changes.IsEmpty ? p.After : p.Before)
                .OfType<PartSpec>(),
            ],
            Fishing = _before.Fishing with
            {
                Water = Of("water").Fishing.Water,
                SalinityKgKg = Of("water").Fishing.SalinityKgKg,
                TemperatureC = Of("water").Fishing.TemperatureC,
                LeaderDiameterM = Of("leader").Fishing.LeaderDiameterM,
                LeaderStrengthN = Of("leader").Fishing.LeaderStrengthN,
                LeaderMaterial = Of("leader").Fishing.LeaderMaterial,
                Knot = Of("knot").Fishing.Knot,
                SpeedMS = Of("speed").Fishing.SpeedMS,
                Retrieve = Of("retrieve").Fishing.Retrieve,
            },
        };
    }

    // What a recipe leaves to the scale is a measure all the same: a gape can get wider than it was.
    private TurnedLine Stated(TurnedLine turned) => turned with
    {
        Before = turned.Before ?? OfScale(_before.Hook, turned.Key),
        After = turned.After ?? OfScale(_after.Hook, turned.Key),
    };

    private static string? OfScale(HookSpec hook, string key) => HookScale.TryResolve(hook, out ResolvedHook? resolved, out _)
        ? key switch
        {
            "gape" => Length(resolved.GapeM),
            "shank" => Length(resolved.ShankM),
            "wire" => Length(resolved.WireM),
            _ => null,
        }
        : null;

    private static string Length(double m) => Units.Write(m, Dimension.Length);

    private static TurnedLine Turn(Grading.RecipeChange change) =>
        new(change.IsWholePart ? "" : change.Path[(change.Path.LastIndexOf('.') + 1)..], change.Before, change.After);
}
