using System.Collections.Immutable;

namespace TyingClass.Storage.Starts;

/// <summary>How far an instructor has come in setting a class up, and what was typed on the way and not yet used.</summary>
/// <param name="Names">The list of names as typed or pasted; "" when there is none.</param>
/// <param name="LastNameFirst">How its two columns are meant, where no heading says so.</param>
/// <param name="Done">Steps that were finished or passed over, by name.</param>
public sealed record ClassStart(string ClassId, string Names, bool LastNameFirst, ImmutableArray<string> Done)
{
    /// <summary>Far more than a list of names needs, so that whatever was pasted by mistake is still there to be mended.</summary>
    public const int MostNamesLength = 1 << 20;

    /// <summary>What its columns hold, as the page that asks writes it; "" while nobody said.</summary>
    public string Columns { get; init; } = "";

    public bool IsDone(string step) => Done.Contains(step, StringComparer.Ordinal);
}
