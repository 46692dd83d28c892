using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Storage.BenchLog;

namespace TyingClass.Web.BenchLog;

/// <param name="Index">In the recipe, from 0.</param>
public sealed record AirPart(int Index, string Name);

/// <summary>One entry beside the prediction.</summary>
/// <param name="IsMine">Only the tyer corrects, photographs or takes over.</param>
/// <param name="Owner">The tyer's name.</param>
/// <param name="PatternRevision">The latest revision of the pattern it was tied from; 0 when a take-over would make a new pattern.</param>
/// <param name="AirParts">Where sealed air may be taken over; empty without a timed drop.</param>
public sealed record LogView(
    LogEntry Entry, bool IsMine, string Owner, IHtmlContent? Picture, ImmutableArray<AgreementRow> Rows, int PatternRevision, ImmutableArray<AirPart> AirParts)
{
    public bool MayTakeMass => IsMine && Entry.Seen.MassKg is not null;

    public bool MayTakeAir => IsMine && !AirParts.IsEmpty;
}

/// <param name="PatternId">Where it was saved; null when it was not.</param>
/// <param name="Revision">The new revision.</param>
/// <param name="Said">What was done, or why not.</param>
public sealed record TakeOverResult(string? PatternId, int Revision, string Said, int Status = StatusCodes.Status200OK);
