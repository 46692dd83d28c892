using System.Collections.Immutable;
using TyingClass.Storage.BenchLog;
using TyingClass.Web.BenchLog;

namespace TyingClass.Web.Reviews;

/// <summary>What a real fly of a pattern did in the tub.</summary>
/// <param name="By">The tyer's name.</param>
/// <param name="OfThis">It was tied from the very revision that is reviewed.</param>
public sealed record RealFly(LogEntry Entry, string By, bool OfThis, ImmutableArray<AgreementRow> Rows);
