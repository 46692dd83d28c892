using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Drawing;
using TyingClass.Drawing.Plots;
using TyingClass.Storage.BenchLog;

namespace TyingClass.Web.BenchLog;

/// <param name="Way">Null when nobody looked.</param>
public sealed record ClassLogLine(LogEntry Entry, string Owner, bool? Way, ImmutableArray<AgreementRow> Rows);

/// <summary>A class's bench log against the model.</summary>
/// <param name="Words">What the figures come to, in sentences.</param>
/// <param name="Plot">Null when no drop was timed.</param>
public sealed record ClassLog(string Class, ImmutableArray<ClassLogLine> Lines, ImmutableArray<string> Words, IHtmlContent? Plot)
{
    internal static ClassLog Of(string name, ImmutableArray<ClassLogLine> lines, DrawingOptions options)
    {
        int looked = lines.Count(l => l.Way is not null), agreed = lines.Count(l => l.Way == true);
        ImmutableArray<TimedSink> drops = [.. lines
            .Where(l => l.Entry.Seen.SinkRateMS is not null && l.Entry.Foreseen.SinkRateMS > 0)
            .Select(l => new TimedSink(l.Entry.Fly.Name, l.Entry.Foreseen.SinkRateMS!.Value, l.Entry.Seen.SinkRateMS!.Value, l.Entry.Seen.State))];
        return new ClassLog(
            name, lines, ClassLogWords.Of(looked, agreed, drops),
            drops.IsEmpty ? null : new HtmlString(Curves.SinkTimedAgainstComputed("Sink rates of the class, timed against computed", drops, options)));
    }
}
