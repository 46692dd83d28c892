using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Security.Cryptography;

namespace TyingClass.Web.Exchange;

/// <param name="Passphrase">For the first visit; the person then chooses another.</param>
public sealed record Slip(string Name, string Passphrase);

/// <summary>What was just made, to be shown to the instructor who made it and to nobody else, for a while and from memory only.</summary>
/// <param name="ClassId">Of a class that came in with them; null for people of a class that was open already.</param>
public sealed record SlipSheet(string ByPersonId, string Title, ImmutableArray<Slip> Slips, DateTimeOffset Until, string? ClassId = null);

/// <summary>Passphrases are kept nowhere: between the form that made them and the page that shows them, they are here.</summary>
public sealed class PassphraseSlips(TimeProvider time)
{
    public static readonly TimeSpan Kept = TimeSpan.FromMinutes(30);

    private readonly ConcurrentDictionary<string, SlipSheet> _sheets = new(StringComparer.Ordinal);

    /// <returns>What to ask for them with.</returns>
    /// <param name="classId">Of a class that came in with them.</param>
    public string Lay(string byPersonId, string title, IEnumerable<Slip> slips, string? classId = null)
    {
        DateTimeOffset now = time.GetUtcNow();
        foreach ((string old, SlipSheet sheet) in _sheets) if (sheet.Until < now) _sheets.TryRemove(old, out _);
        string ticket = RandomNumberGenerator.GetHexString(20, lowercase: true);
        _sheets[ticket] = new SlipSheet(byPersonId, title, [.. slips], now + Kept, classId);
        return ticket;
    }

    /// <returns>Null when it is gone or someone else's.</returns>
    public SlipSheet? Find(string? ticket, string? personId) =>
        ticket is not null && _sheets.TryGetValue(ticket, out SlipSheet? sheet) && sheet.ByPersonId == personId && sheet.Until >= time.GetUtcNow() ? sheet
        : null;

    /// <summary>The last ones this person made that are still here.</summary>
    public (string Ticket, SlipSheet Sheet)? Latest(string personId) => _sheets
        .Where(s => s.Value.ByPersonId == personId && s.Value.Until >= time.GetUtcNow())
        .OrderByDescending(s => s.Value.Until).Select(s => ((string, SlipSheet)?)(s.Key, s.Value)).FirstOrDefault();
}
