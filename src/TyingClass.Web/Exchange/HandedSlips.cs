using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Security.Cryptography;

namespace TyingClass.Web.Exchange;

/// <param name="Passphrase">For the first visit; the person then chooses another.</param>
public sealed record Slip(string Name, string Passphrase);

/// <summary>What was just made, to be shown to the instructor who made it and to nobody else, for a while and from memory only.</summary>
public sealed record SlipSheet(string ByPersonId, string Title, ImmutableArray<Slip> Slips, DateTimeOffset Until);

/// <summary>Passphrases are kept nowhere: between the form that made them and the page that shows them, they are here.</summary>
public sealed class HandedSlips(TimeProvider time)
{
    public static readonly TimeSpan Kept = TimeSpan.FromMinutes(30);

    private readonly ConcurrentDictionary<string, SlipSheet> sheets = new(StringComparer.Ordinal);

    /// <returns>What to ask for them with.</returns>
    public string Lay(string byPersonId, string title, IEnumerable<Slip> slips)
    {
        DateTimeOffset now = time.GetUtcNow();
        foreach ((string old, SlipSheet sheet) in sheets) if (sheet.Until < now) sheets.TryRemove(old, out _);
        string ticket = RandomNumberGenerator.GetHexString(20, lowercase: true);
        sheets[ticket] = new SlipSheet(byPersonId, title, [.. slips], now + Kept);
        return ticket;
    }

    /// <returns>Null when it is gone or someone else's.</returns>
    public SlipSheet? Find(string? ticket, string? personId) =>
        ticket is not null && sheets.TryGetValue(ticket, out SlipSheet? sheet) && sheet.ByPersonId == personId && sheet.Until >= time.GetUtcNow() ? sheet : null;
}
