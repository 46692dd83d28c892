using System.Globalization;
using TyingClass.Lessons.Checking;

namespace TyingClass.CommandLine;

/// <summary>Size and reading level of each lesson, a line each.</summary>
internal static class LessonTable
{
    public static void Write(IEnumerable<LessonMeasure> measures, TextWriter output)
    {
        LessonMeasure[] all = [.. measures];
        if (all.Length == 0)
        {
            return;
        }

        int width = all.Max(m => m.File.Length);
        output.WriteLine($"{"lesson".PadRight(width)}  words  exercises  kinds  practice  grade  words a sentence");
        foreach (LessonMeasure m in all)
        {
            string remarks = m.Remarks.IsEmpty ? "" : "  note: " + string.Join("; ", m.Remarks);
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{m.File.PadRight(width)}  {m.Words,5}  {m.Exercises,9}  {m.Kinds,5}  {m.PracticeSets,8}  "
                + $"{m.Grade,5:F1}  {m.WordsPerSentence,16:F1}{remarks}"));
        }

        output.WriteLine("grade: Flesch-Kincaid grade level of the running text (Kincaid and others, 1975). Notes are advice, not mistakes.");
    }
}
