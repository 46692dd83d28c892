using System.Collections.Immutable;

namespace TyingClass.Web.Editing;

/// <summary>A fly of one's own: nothing is locked, every kind of part may be added.</summary>
internal sealed class FreeRules : EditRules
{
    public override ImmutableArray<string> KindsToAdd => PartWords.Kinds;

    public override bool IsLocked(string path, string value) => false;

    public override string? NoteOn(string path, string value) => null;
}
