using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text.Json;
using Microsoft.AspNetCore.DataProtection;
using TyingClass.Storage.Classes;

namespace TyingClass.Web.Exchange;

/// <param name="Passphrase">For the first visit; the person then chooses another.</param>
public sealed record Slip(string Name, string Passphrase);

/// <summary>What was just made, to be shown to the instructor who made it and to nobody else, for a while.</summary>
/// <param name="ClassId">Of a class that came in with them; null for people of a class that was open already.</param>
public sealed record SlipSheet(string Title, ImmutableArray<Slip> Slips, string? ClassId = null);

/// <summary>
/// Seals slips with the server's own key, so that the data file and its backups hold no passphrase that could be read, and opens them again for whoever made
/// them, for half an hour.
/// </summary>
public sealed class PassphraseSlips(SlipStore store, IDataProtectionProvider protection, TimeProvider time)
{
    public static readonly TimeSpan Kept = TimeSpan.FromMinutes(30);

    private readonly IDataProtector _seal = protection.CreateProtector("slips");

    /// <summary>To be written together with the accounts the slips are for.</summary>
    public SealedSlips Seal(string byPersonId, SlipSheet sheet) => new(
        RandomNumberGenerator.GetHexString(20, lowercase: true), byPersonId, time.GetUtcNow() + Kept, _seal.Protect(JsonSerializer.Serialize(sheet)));

    /// <returns>Null when it is gone or someone else's.</returns>
    public SlipSheet? Find(string? ticket, string? personId) =>
        ticket is not null && personId is not null && store.Find(ticket) is { } slips && slips.ByPersonId == personId ? Open(slips) : null;

    /// <summary>The ticket of the last ones this person made that are still here.</summary>
    public string? Latest(string personId) => store.LatestOf(personId)?.Ticket;

    private SlipSheet? Open(SealedSlips slips)
    {
        try
        {
            return JsonSerializer.Deserialize<SlipSheet>(_seal.Unprotect(slips.Sealed));
        }
        catch (CryptographicException)
        {
            // Sealed with a key that is gone: new ones can be made.
            return null;
        }
    }
}
