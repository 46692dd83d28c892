using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>The buttons of the parts list. A button that no longer fits the list does nothing.</summary>
internal static class PartList
{
    public static RecipeDraft Apply(RecipeDraft draft, AnswerPost post) => Apply(draft, post.Action, post.Index, post.AddKind);

    /// <summary>Where a part of a kind is tied in: last, but what is threaded on comes before anything is tied, behind others like it.</summary>
    public static int PlaceFor(RecipeDraft draft, string kind) => IsThreaded(kind)
        ? Enumerable.Range(0, draft.PartCount).TakeWhile(i => IsThreaded(draft.Get($"parts[{i}].part"))).Count()
        : draft.PartCount;

    private static bool IsThreaded(string? kind) => KindsOfPart.Find(kind) is { TakesTheShankAlone: true };

    // Only where what is taken for an empty field is not what a tyer would do: it stands there to be seen and changed.
    private static IEnumerable<KeyValuePair<string, string>> Start(RecipeDraft draft, KindOfPart kind)
    {
        yield return KeyValuePair.Create("part", kind.Word);
        if (draft.PartCount == 0 && kind.RoomForHead is { } place) yield return KeyValuePair.Create("at", place);
        Intent intent = draft.Get("intent") == "point up" ? Intent.PointUp : Intent.PointDown;
        if (kind.SideMeant(intent) is var side && side != kind.UsualSide) yield return KeyValuePair.Create("side", side.ToString().ToLowerInvariant());
    }

    public static RecipeDraft Apply(RecipeDraft draft, string action, int index, string addKind)
    {
        bool known = index >= 0 && index < draft.PartCount;
        return action switch
        {
            "add" => draft.InsertPart(PlaceFor(draft, addKind), [.. Start(draft, KindsOfPart.Find(addKind) ?? KindsOfPart.Find(KindsOfPart.Words[0])!)]),
            "remove" when known => draft.RemovePart(index),
            "up" when known && index > 0 => draft.MovePart(index, index - 1),
            "down" when known && index < draft.PartCount - 1 => draft.MovePart(index, index + 1),
            _ => draft,
        };
    }
}
