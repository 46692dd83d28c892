using System.Collections.Immutable;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Web.Editing;

namespace TyingClass.Web.Bench;

/// <summary>
/// Fields, text and sliders all say the same recipe until one of them is changed: whatever differs from what stood there before is what
/// was meant. Nothing typed is lost: where two were changed, the one not taken is the version before.
/// </summary>
/// <param name="SoakS">Null when soaked through.</param>
internal sealed record BenchMerge(Versions Versions, double? SoakS, string? Notice)
{
    private const double LongestSoakS = 86_400;

    public static BenchMerge Of(BenchPost post, BenchSolver solver, UnitSystem units)
    {
        Versions was = post.Was ?? Versions.Of(post.Text.Length > 0 ? post.Text : post.Form?.ToText() ?? BenchStart.Text);
        double? soakS = post.Number("soak-was") is { } soaked and >= 0 and < LongestSoakS ? soaked : null;
        ImmutableArray<Slider> sliders =
            solver.Built(was.Current) is { } stood ? Sliders.Of(stood.Recipe, stood.Fly, soakS ?? double.PositiveInfinity, units) : [];

        (Versions versions, string? notice) = Typing(post, was);
        versions = Sliding(post, versions, sliders);
        if (sliders.FirstOrDefault(s => s.Path == Slider.Soak) is { } soak && Asked(post, soak) is { } asked)
            soakS = asked >= soak.High ? null : Math.Max(0, Math.Round(asked));
        return new BenchMerge(Pressing(post, versions), soakS, notice);
    }

    private static (Versions, string?) Typing(BenchPost post, Versions was)
    {
        string? fields = post.Form is { } form && Typed.Split(was.Current) is { } before && !form.Equals(AsPosted(before))
            ? form.ToText() : null;
        bool textChanged = post.Field("text") is not null && Trimmed(post.Text) != Trimmed(was.Current);
        return (fields, textChanged) switch
        {
            ({ } said, true) => (was.With(said).With(post.Text), BenchDesk.BothChanged),
            (_, true) => (was.With(post.Text, post.Gesture), null),
            ({ } said, _) => (was.With(said, post.Gesture), null),
            _ => (was, null),
        };
    }

    // What a form sends of fields that nobody touched: without the empty ones, in the form's own order.
    private static RecipeDraft AsPosted(RecipeDraft shown) => RecipeDraft.FromFields(
        shown.Values.Select(v => KeyValuePair.Create(v.Key, v.Value.ReplaceLineEndings(""))));

    private const double StepM = 0.5e-3;

    private static Versions Sliding(BenchPost post, Versions versions, ImmutableArray<Slider> sliders)
    {
        RecipeDraft? draft = Typed.Split(versions.Current);
        if (draft is null) return versions;
        RecipeDraft moved =
            sliders.Where(s => s.Path != Slider.Soak).Aggregate(draft, (d, s) => Asked(post, s) is { } value && Exists(d, s) ? Sliders.Set(d, s, value) : d);
        return moved.Equals(draft) ? versions : versions.With(moved.ToText(), post.Gesture);
    }

    private static Versions Pressing(BenchPost post, Versions versions)
    {
        switch (post.Action)
        {
            case "undo": return versions.Undo();
            case "redo": return versions.Redo();
            case "take" when Packed.TryUnpack(post.Argument, AnswerLimit.MostBytes, out string? taken): return versions.With(taken);
            case "add" when Typed.Split(versions.Current) is { } draft:
                RecipeDraft added = PartList.Apply(draft, "add", -1, post.AddKind);
                return versions.With(InFreePlace(added, PartList.PlaceFor(draft, post.AddKind), versions.Current).ToText());
            case "remove" or "up" or "down" when Typed.Split(versions.Current) is { } draft:
                return versions.With(PartList.Apply(draft, post.Action, post.Index, post.AddKind).ToText());
            default: return versions;
        }
    }

    // Behind the beads and cones and clear of whatever else needs its stretch of shank, so that a part tied in can be drawn at once. Where there is no room,
    // the recipe says so.
    private static RecipeDraft InFreePlace(RecipeDraft added, int index, string text)
    {
        // Without a place it stands where the parts before it leave off; only where that is taken is another looked for.
        if (RecipeParser.Parse(added.ToText()).Success) return added;
        string path = $"parts[{index}].at";
        if (RecipeParser.Parse(text) is not { Success: true, Value: { } recipe } || !HookScale.TryResolve(recipe.Hook, out ResolvedHook? hook, out _))
            return added.With(path, "0 mm");
        double takenM = recipe.Parts.Where(p => KindsOfPart.Of(p).TakesTheShankAlone).Select(p => PartExtents.Of(p, hook).RearM).DefaultIfEmpty(0).Max();
        IEnumerable<RecipeDraft> places = Enumerable.Range((int)Math.Ceiling(takenM / StepM), Math.Max(1, (int)((hook.ShankM - takenM) / StepM)))
            .Select(step => added.With(path, $"{Slider.Text(1e3 * step * StepM)} mm"));
        return places.FirstOrDefault(d => RecipeParser.Parse(d.ToText()).Success) ?? places.First();
    }

    private static double? Asked(BenchPost post, Slider slider) => slider.Asked(post.Field(slider.RangeName), post.Field(slider.NumberName));

    // A part that went meanwhile takes its sliders with it.
    private static bool Exists(RecipeDraft draft, Slider slider) =>
        !slider.Path.StartsWith("parts[", StringComparison.Ordinal) || draft.Get(slider.Path[..slider.Path.LastIndexOf('.')] + ".part") is not null;

    private static string Trimmed(string text) => text.Trim('\n', ' ');
}

/// <summary>The bench locks nothing and allows every kind of part.</summary>
internal sealed class FreeRules : EditRules
{
    public override ImmutableArray<string> KindsToAdd => KindsOfPart.Words;

    public override bool IsLocked(string path, string value) => false;

    public override string? NoteOn(string path, string value) => null;
}
