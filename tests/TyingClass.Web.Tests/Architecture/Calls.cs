using System.Reflection;
using System.Reflection.Emit;
using System.Runtime.CompilerServices;

namespace TyingClass.Web.Tests.Architecture;

/// <summary>Which members the built program refers to, read from its instructions. What only its tests use is not among them.</summary>
internal static class Calls
{
    private static readonly Dictionary<int, OpCode> Codes = typeof(OpCodes).GetFields(BindingFlags.Public | BindingFlags.Static)
        .Select(f => (OpCode)f.GetValue(null)!).ToDictionary(code => (int)(ushort)code.Value);

    // A token means the same definition wherever it stands in its module.
    private static readonly Dictionary<(Module, int), (Module, int)> Meant = [];

    private static readonly Lazy<HashSet<(Module, int)>> All = new(() =>
    [
        .. Rooms.All.Where(r => r.IsProgram).SelectMany(r => Assembly.Load(r.Name).GetTypes())
            .SelectMany(t => t.GetMethods(Assemblies.Declared).Cast<MethodBase>().Concat(t.GetConstructors(Assemblies.Declared)))
            .Where(m => !IsMadeForARecord(m))
            .SelectMany(m => From(m).Where(to => to != Key(m))),
    ]);

    public static bool Reach(MemberInfo member) => All.Value.Contains(Key(member));

    // The printing and comparing that the compiler writes for a record reads all its data.
    private static bool IsMadeForARecord(MethodBase method) =>
        method.GetCustomAttribute<CompilerGeneratedAttribute>() is not null && !method.Name.StartsWith('<') && Assemblies.IsRecord(method.DeclaringType!);

    // One key for all instances of a generic member.
    private static (Module, int) Key(MemberInfo member) => (member.Module, member.MetadataToken);

    private static IEnumerable<(Module, int)> From(MethodBase method)
    {
        if (method.GetMethodBody()?.GetILAsByteArray() is not { } il) yield break;
        Type[] ofType = method.DeclaringType!.GetGenericArguments(), ofMethod = method.IsGenericMethodDefinition ? method.GetGenericArguments() : [];
        for (int at = 0; at < il.Length;)
        {
            int value = il[at++];
            if (value == 0xFE) value = 0xFE00 | il[at++];
            OpCode code = Codes[value];
            if (code.OperandType is OperandType.InlineMethod or OperandType.InlineField or OperandType.InlineTok)
            {
                (Module, int) token = (method.Module, BitConverter.ToInt32(il, at));
                if (!Meant.TryGetValue(token, out (Module, int) meant))
                    Meant[token] = meant = Key(method.Module.ResolveMember(token.Item2, ofType, ofMethod)!);
                yield return meant;
            }

            at += code.OperandType switch
            {
                OperandType.InlineNone => 0,
                OperandType.ShortInlineBrTarget or OperandType.ShortInlineI or OperandType.ShortInlineVar => 1,
                OperandType.InlineVar => 2,
                OperandType.InlineI8 or OperandType.InlineR => 8,
                OperandType.InlineSwitch => 4 + 4 * BitConverter.ToInt32(il, at),
                _ => 4,
            };
        }
    }
}
