using System.Globalization;
using Microsoft.AspNetCore.Http.Extensions;

namespace TyingClass.Web.Bench;

/// <summary>What travels in the bench's address.</summary>
/// <param name="R">The recipe, packed.</param>
/// <param name="H">What stood there before, packed.</param>
/// <param name="K">The version kept to compare with, packed.</param>
/// <param name="Soak">Seconds in the water; null when soaked through.</param>
/// <param name="Tip">Heel to tip it to, degrees.</param>
/// <param name="Advise">"yes" to ask for advice.</param>
/// <param name="From">The page somebody's fly came from, "/reviews/…"; null for a fly that is nobody's.</param>
public sealed record BenchAddress(string? R, string? H, string? K, double? Soak, double? Tip, string? Advise, string? From = null)
{
    /// <summary>Kestrel reads request lines up to 8 KB; a longer state stays in the answer to the post.</summary>
    public const int Longest = 6000;

    public override string ToString() => "/bench" + ToQuery();

    private QueryString ToQuery()
    {
        QueryBuilder query = [];
        void Add(string name, string? value)
        {
            if (!string.IsNullOrEmpty(value)) query.Add(name, value);
        }

        Add("r", R);
        Add("soak", Soak?.ToString(CultureInfo.InvariantCulture));
        Add("tip", Tip?.ToString(CultureInfo.InvariantCulture));
        Add("k", K);
        Add("advise", Advise);
        Add("from", From);
        Add("h", H);
        return query.ToQueryString();
    }
}
