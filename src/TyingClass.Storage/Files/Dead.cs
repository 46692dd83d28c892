using System.Collections;
using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using LiteDB;

namespace TyingClass.Storage.Files;

/// <summary>
/// Instances of LiteDB that met a broken page or a disk that failed. A transaction that was under way in one can throw when the runtime clears it away
/// (LiteDB 5.0.21, mended in later sources), and an error there ends the whole server. So it is cleared away without that last step, which only gives back
/// memory that goes with it anyway. A test holds that the fields are still called so.
/// </summary>
internal static class Dead
{
    private static readonly string[] Way = ["_engine", "_monitor", "_transactions"];

    /// <summary>To be called before the instance is disposed of.</summary>
    /// <returns>How many were under way; null when the library is built otherwise by now.</returns>
    [SuppressMessage("Usage", "CA1816", Justification = "The library's own objects are meant: their last step is what throws.")]
    public static int? Quiet(LiteDatabase file)
    {
        object? at = file;
        foreach (string field in Way) at = at?.GetType().GetField(field, BindingFlags.Instance | BindingFlags.NonPublic)?.GetValue(at);
        if (at is not IDictionary transactions) return null;
        foreach (object transaction in transactions.Values) GC.SuppressFinalize(transaction);
        return transactions.Count;
    }
}
