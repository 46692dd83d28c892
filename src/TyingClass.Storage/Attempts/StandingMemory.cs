using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Attempts;

/// <summary>
/// People's standings as last read, so that a register of hundreds need not take twenty thousand documents apart at every opening.
/// Safe because every read and write goes through the one gate of <see cref="Database"/>, nobody else may open the folder, and a
/// database opened anew begins with an empty memory.
/// </summary>
internal static class StandingMemory
{
    private static readonly ConditionalWeakTable<OpenData, Dictionary<string, ImmutableArray<Standing>>> Kept = [];

    public static ImmutableArray<Standing> Of(OpenData db, string personId)
    {
        Dictionary<string, ImmutableArray<Standing>> kept = Kept.GetOrCreateValue(db);
        if (kept.TryGetValue(personId, out ImmutableArray<Standing> known)) return known;
        return kept[personId] = [.. StandingDocument.Standings(db).FindAll("personId = @0", personId).Select(StandingDocument.ToStanding)];
    }

    /// <summary>Before each write, so that one that fails leaves nothing wrong behind.</summary>
    public static void Forget(OpenData db, string personId) => Kept.GetOrCreateValue(db).Remove(personId);
}
