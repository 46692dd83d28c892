using TyingClass.Storage.Files;

namespace TyingClass.Storage.Editing;

/// <summary>A name that is still free: itself, or with the first number behind it that nobody has.</summary>
internal static class NumberedName
{
    /// <param name="mostLength">Of the whole, the number included; the name is cut to make room for it.</param>
    public static string FirstFree(string name, int mostLength, Func<string, bool> isFree)
    {
        string free = name;
        for (int i = 2; !isFree(free); i++)
        {
            string number = FormattableString.Invariant($" {i}");
            free = CleanText.Cut(name, mostLength - number.Length) + number;
        }

        return free;
    }
}
