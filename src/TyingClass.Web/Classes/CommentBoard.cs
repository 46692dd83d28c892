using System.Collections.Immutable;
using TyingClass.Storage.Comments;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <summary>What was written to the visitor.</summary>
public sealed class CommentBoard(CommentStore store, Visitor visitor)
{
    /// <param name="exerciseId">Only about this exercise; blank for all.</param>
    public ImmutableArray<Comment> Unseen(string exerciseId) => visitor.PersonIfReadable is { } me
        ? [.. store.UnseenBy(me.Id).Where(c => exerciseId.Length == 0 || c.ExerciseId == exerciseId)]
        : [];
}
