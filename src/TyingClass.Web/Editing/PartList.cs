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

    public static RecipeDraft Apply(RecipeDraft draft, string action, int index, string addKind)
    {
        bool known = index >= 0 && index < draft.PartCount;
        return action switch
        {
            "add" =>
                draft.InsertPart(PlaceFor(draft, addKind), KeyValuePair.Create("part", KindsOfPart.Find(addKind) is null ? KindsOfPart.Words[0] : addKind)),
            "remove" when known => draft.RemovePart(index),
            "up" when known && index > 0 => draft.MovePart(index, index - 1),
            "down" when known && index < draft.PartCount - 1 => draft.MovePart(index, index + 1),
            _ => draft,
        };
    }
}
