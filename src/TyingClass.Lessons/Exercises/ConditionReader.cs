using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Exercises;

internal static class ConditionReader
{
    /// <summary>Checks a condition; its mistake is reported at its own place in the file.</summary>
    public static bool Check(YamlText node, ConditionScope scope, AuthorErrors errors)
    {
        ConditionResult result = ConditionParser.Parse(node.Value, scope);
        if (result.Condition is not null) return true;
        (int line, int column) = node.IsBlock ? (node.Line + 1, 1) : (node.Line, node.Column + (node.IsQuoted ? 1 : 0) + result.Offset);
        errors.Add(line, column, result.Error);
        return false;
    }
}
