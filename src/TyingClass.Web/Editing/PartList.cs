using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>The buttons of the parts list. A button that no longer fits the list does nothing.</summary>
internal static class PartList
{
    public static RecipeDraft Apply(RecipeDraft draft, AnswerPost post)
    {
        bool known = post.Index >= 0 && post.Index < draft.PartCount;
        return post.Action switch
        {
            "add" => draft.AddPart(KeyValuePair.Create("part", PartWords.IsKind(post.AddKind) ? post.AddKind : PartWords.Kinds[0])),
            "remove" when known => draft.RemovePart(post.Index),
            "up" when known && post.Index > 0 => draft.MovePart(post.Index, post.Index - 1),
            "down" when known && post.Index < draft.PartCount - 1 => draft.MovePart(post.Index, post.Index + 1),
            _ => draft,
        };
    }
}
