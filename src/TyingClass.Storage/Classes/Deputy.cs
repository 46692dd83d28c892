using System.Collections.Immutable;

namespace TyingClass.Storage.Classes;

/// <summary>A student or mentor of a class who may run part of it for its instructor.</summary>
/// <param name="Everything">All of the class but its people, its files and its setup.</param>
/// <param name="Evenings">Single evenings, by number; nothing of anyone's work. Without meaning beside <paramref name="Everything"/>.</param>
public sealed record Deputy(string PersonId, bool Everything, ImmutableArray<int> Evenings)
{
    public bool MayRun(int evening) => Everything || Evenings.Contains(evening);

    internal bool MayNothing => !Everything && Evenings.IsEmpty;
}
