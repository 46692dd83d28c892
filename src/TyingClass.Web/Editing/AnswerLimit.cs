using System.Globalization;
using System.Text;
using TyingClass.Lessons.Grading;

namespace TyingClass.Web.Editing;

/// <summary>The most an answer may hold, far above what one fly or one paragraph needs.</summary>
internal static class AnswerLimit
{
    public const int MostBytes = 64 * 1024;

    public static AnswerProblem? Check(string text)
    {
        int bytes = Encoding.UTF8.GetByteCount(text);
        if (bytes <= MostBytes) return null;
        string size = ((bytes + 1023) / 1024).ToString(CultureInfo.InvariantCulture);
        return new AnswerProblem(1, 1, null,
            $"This answer is {size} KB long; the most that can be taken is 64 KB. It stands below as you sent it: shorten it and submit again.");
    }
}
