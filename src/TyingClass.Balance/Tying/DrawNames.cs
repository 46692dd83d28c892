using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Tying;

/// <summary>
/// By what name each part's errors are drawn: "wing", and of two wings the one tied farther forward first, in whatever order they were written down.
/// </summary>
internal static class DrawNames
{
    public static ImmutableArray<string> Of(ImmutableArray<BodyPart> parts)
    {
        string[] names = new string[parts.Length];
        foreach (IGrouping<string, int> alike in Enumerable.Range(0, parts.Length).GroupBy(i => Kind(parts[i].Name)))
        {
            int rank = 0;
            foreach (int i in alike.OrderBy(i => Place(parts[i]).X).ThenBy(i => Place(parts[i]).Z).ThenBy(i => Place(parts[i]).Y)
                .ThenBy(i => parts[i].Masses.Sum(m => m.MassKg)))
            {
                names[i] = $"{alike.Key} {rank++}";
            }
        }

        return [.. names];
    }

    /// <summary>FNV-1a (Fowler, Noll and Vo; RFC 9923), since a string's own hash differs from run to run.</summary>
    public static int Seed(string name, int seed)
    {
        uint hash = 2166136261;
        foreach (char c in name)
        {
            hash = (hash ^ c) * 16777619;
        }

        return (int)(hash ^ (uint)seed);
    }

    // "wing 2" is a wing.
    private static string Kind(string name) => name.TrimEnd("0123456789".ToCharArray()).TrimEnd();

    private static Vector3D Place(BodyPart part) => part.Masses.IsEmpty ? default : part.Masses[0].PositionM;
}
