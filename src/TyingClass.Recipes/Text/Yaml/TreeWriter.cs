using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Yaml;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>A tree as YAML text that reads back as the same tree, whatever strings are in it.</summary>
internal static partial class TreeWriter
{
    private static readonly EmitterSettings Settings = new EmitterSettings(bestIndent: 2, bestWidth: int.MaxValue, isCanonical: false, maxSimpleKeyLength: 120)
        .WithIndentedSequences()
        .WithNewLine("\n");

    public static string Write(YamlMap root)
    {
        using StringWriter text = new() { NewLine = "\n" };
        Emitter emitter = new(text, Settings);
        emitter.Emit(new StreamStart());
        emitter.Emit(new DocumentStart(null, null, isImplicit: true));
        Emit(emitter, root);
        emitter.Emit(new DocumentEnd(isImplicit: true));
        emitter.Emit(new StreamEnd());
        return Escaped(QuotedNothing().Replace(text.ToString(), "$1 #"));
    }

    // The library writes some invisible characters as they are; they can only stand in double quotes, so an escape is right.
    private static string Escaped(string text) => text.Any(Invisible.Is)
        ? string.Concat(text.Select(c => Invisible.Is(c) ? string.Create(CultureInfo.InvariantCulture, $"\\u{(int)c:X4}") : c.ToString()))
        : text;

    private static void Emit(Emitter emitter, YamlNode node)
    {
        switch (node)
        {
            // Somebody wrote a size with “#”: it stays to be seen, and is complained about again.
            case YamlText { Value: "", Remark: { } remark }:
                emitter.Emit(new Scalar(AnchorName.Empty, TagName.Empty, "", ScalarStyle.Plain, isPlainImplicit: true, isQuotedImplicit: true));
                emitter.Emit(new Comment(remark.Trim(), isInline: true));
                break;
            case YamlText scalar:
                EmitText(emitter, scalar.Value);
                break;
            case YamlList list:
                emitter.Emit(
                    new SequenceStart(AnchorName.Empty, TagName.Empty, isImplicit: true, list.Items.IsEmpty ? SequenceStyle.Flow : SequenceStyle.Block));
                foreach (YamlNode item in list.Items) Emit(emitter, item);
                emitter.Emit(new SequenceEnd());
                break;
            case YamlMap map:
                emitter.Emit(new MappingStart(AnchorName.Empty, TagName.Empty, isImplicit: true, map.Entries.IsEmpty ? MappingStyle.Flow : MappingStyle.Block));
                foreach (YamlEntry entry in map.Entries)
                {
                    EmitText(emitter, entry.Key);
                    Emit(emitter, entry.Value);
                }

                emitter.Emit(new MappingEnd());
                break;
            default:
                throw new ArgumentException("A spoiled place cannot be written.", nameof(node));
        }
    }

    // Plain only what is plainly harmless; everything else in double quotes, where every character has an escape.
    private static void EmitText(Emitter emitter, string value)
    {
        ScalarStyle style = Harmless().IsMatch(value) && !Reserved().IsMatch(value) ? ScalarStyle.Plain : ScalarStyle.DoubleQuoted;
        emitter.Emit(new Scalar(AnchorName.Empty, TagName.Empty, value, style, isPlainImplicit: true, isQuotedImplicit: true));
    }

    [GeneratedRegex(@"\A(?:[\p{L}\p{N}]|[-+.](?=[0-9]))(?:[\p{L}\p{N} .,/°³·%()'+*-]*[\p{L}\p{N}.°³%)])?\z")]
    private static partial Regex Harmless();

    // The library writes nothing at all as '' and would hide that a remark stands in a value's place.
    [GeneratedRegex(@"^( *(?:- )?[^""\n]*:) '' #(?: $)?", RegexOptions.Multiline)]
    private static partial Regex QuotedNothing();

    [GeneratedRegex(@"\A(?:null|true|false|yes|no|on|off)\z", RegexOptions.IgnoreCase)]
    private static partial Regex Reserved();
}
