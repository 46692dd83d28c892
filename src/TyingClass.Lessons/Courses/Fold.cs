using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Courses;

/// <summary>"folded: yes" in a fence that draws: on a phone the picture waits behind its caption.</summary>
internal static class Fold
{
    public const string Key = "folded";

    public static bool Read(FieldReader fields, string caption)
    {
        if (!fields.Has(Key)) return false;
        if (fields.Text(Key) != "yes") fields.Errors.Add(fields.At(Key), "Write “folded: yes”, or leave it out.");
        if (caption.Length == 0) fields.Errors.Add(fields.At(Key), "A folded picture waits behind its caption: give it one.");
        return true;
    }
}
