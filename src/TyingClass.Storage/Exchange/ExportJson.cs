using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Schema;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Exchange;

/// <summary>The file of a class export. The schema is derived from the very types that are written and read, so the two cannot differ.</summary>
public static class ExportJson
{
    public const string SchemaId = "class-export.schema.json";

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        // Named, since the schema may be asked for before anything was written.
        TypeInfoResolver = new DefaultJsonTypeInfoResolver(),
        WriteIndented = true,
        NewLine = "\n",
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        // Computed properties are for the program; the file holds what was kept.
        IgnoreReadOnlyProperties = true,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        NumberHandling = JsonNumberHandling.Strict,
        MaxDepth = 16,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <returns>How many attempts were written.</returns>
    public static async Task<int> WriteAsync(Stream stream, ClassExport export, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(export);
        int written = 0;
        IEnumerable<Attempt> counted = export.Attempts.Select(a =>
        {
            written++;
            return a;
        });
        await JsonSerializer.SerializeAsync(stream, export with { Attempts = counted }, Options, cancel).ConfigureAwait(false);
        return written;
    }

    /// <summary>Writes it down, and reads back what was written before it is called a file.</summary>
    /// <param name="path">Of the new file.</param>
    /// <exception cref="StorageException">The class could not be read, the disk failed, or what stands there is not what was written.</exception>
    public static async Task WriteFileAsync(string path, ClassExport export, CancellationToken cancel = default)
    {
        try
        {
            FileStream file = new(path, FileMode.Create, FileAccess.ReadWrite);
            await using (file.ConfigureAwait(false))
            {
                int written = await WriteAsync(file, export, cancel).ConfigureAwait(false);
                await file.FlushAsync(cancel).ConfigureAwait(false);
                file.Position = 0;
                int there = await AttemptCount.OfAsync(file, cancel).ConfigureAwait(false);
                if (there != written) throw new IOException($"It holds {there} of {written} attempts.");
            }
        }
        catch (IOException e)
        {
            throw new StorageException($"The file of the class could not be written whole to {path}: {e.Message} Is the disk full?", e);
        }
    }

    /// <summary>
    /// The attempts stay in the file: they are read from it anew each time they are gone through, one at a time, so that a large class need not fit into
    /// memory. So the stream is to stay open and at rest as long as they are wanted.
    /// </summary>
    /// <param name="stream">One that can be read again from its beginning.</param>
    /// <returns>The class, or what is wrong and where: "$.attempts[3].number: …".</returns>
    public static async Task<(ClassExport? Export, string? Problem)> ReadAsync(Stream stream, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(stream);
        using MemoryStream rest = new();
        (long Line, long LeftOut) gap = (long.MaxValue, 0);
        try
        {
            gap = ReadThrough(stream, rest, cancel);
            rest.Position = 0;
            ClassExport? export = await JsonSerializer.DeserializeAsync<ClassExport>(rest, Options, cancel).ConfigureAwait(false);
            if (export is null) return (null, "The file holds nothing but null.");
            await JsonSerializer.SerializeAsync(Stream.Null, export, Options, cancel).ConfigureAwait(false);
            return (export with { Attempts = Attempts(stream) }, null);
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or NullReferenceException or ArgumentException
            && FormatOf(stream) is { } format and not ClassExport.CurrentFormat)
        {
            return (null, ImportCheck.OtherFormat(format));
        }
        catch (Exception e) when (e is InvalidOperationException or NullReferenceException)
        {
            return (null, $"A part of the file is missing: this is not a class export that can be read. {e.Message}");
        }
        catch (ArgumentException)
        {
            return (null, "A number in the file is larger than any number can be (such as 1e999): this is not a class export that can be read.");
        }
        catch (JsonException e)
        {
            // A fault behind the attempts was found in a text without them.
            long leftOut = e is not InAttemptsException && e.LineNumber > gap.Line ? gap.LeftOut : 0;
            string where = e.LineNumber is { } line ? FormattableString.Invariant($"Line {line + leftOut + 1}") : "The file";
            return (null, $"{where}{(e.Path is { Length: > 1 } path ? $", at {path}" : "")}: this is not a class export that can be read. {Said(e)}");
        }
    }

    // A file of another version may differ in anything else: its format, which is written first, is read by itself.
    private static int? FormatOf(Stream stream)
    {
        try
        {
            stream.Position = 0;
            byte[] head = new byte[4096];
            ReadOnlySpan<byte> text = head.AsSpan(0, stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false));
            if (text.StartsWith((ReadOnlySpan<byte>)[0xEF, 0xBB, 0xBF])) text = text[3..];
            Utf8JsonReader reader = new(text, isFinalBlock: false, default);
            while (reader.Read())
            {
                if (reader.CurrentDepth == 1 && reader.TokenType == JsonTokenType.PropertyName && reader.ValueTextEquals("format"u8))
                    return reader.Read() && reader.TokenType == JsonTokenType.Number && reader.TryGetInt32(out int format) ? format : null;
            }
        }
        catch (JsonException)
        {
            // Said by whoever met it first.
        }

        return null;
    }

    // Each attempt once, for itself: a part that is missing deep inside is read as nothing at all, and would only show when the class is taken out again.
    private static (long Line, long LeftOut) ReadThrough(Stream stream, MemoryStream rest, CancellationToken cancel)
    {
        stream.Position = 0;
        using AttemptPieces pieces = new(stream, rest);
        for (int i = 0; Next(pieces, i, out Attempt? attempt); i++)
        {
            cancel.ThrowIfCancellationRequested();
            JsonSerializer.Serialize(Stream.Null, attempt, Options);
        }

        return pieces.Gap;
    }

    private static IEnumerable<Attempt> Attempts(Stream stream)
    {
        stream.Position = 0;
        using AttemptPieces pieces = new(stream);
        for (int i = 0; Next(pieces, i, out Attempt? attempt); i++) yield return attempt;
    }

    private static bool Next(AttemptPieces pieces, int i, [NotNullWhen(true)] out Attempt? attempt)
    {
        attempt = null;
        try
        {
            if (!pieces.Next(out ReadOnlySpan<byte> text)) return false;
            try
            {
                attempt = JsonSerializer.Deserialize<Attempt>(text, Options) ?? throw new JsonException("An attempt is null.");
                return true;
            }
            catch (JsonException e)
            {
                string where = FormattableString.Invariant($"$.attempts[{i}]{e.Path?.TrimStart('$')}");
                throw new InAttemptsException(Said(e), where, pieces.Line + (e.LineNumber ?? 0), e);
            }
        }
        catch (JsonException e) when (e is not InAttemptsException)
        {
            throw new InAttemptsException(Said(e), e.Path, e.LineNumber, e);
        }
    }

    // Where it is stands before it already, counted in the whole file.
    private static string Said(JsonException e) => e.Message.Split(" Path: ")[0].Split(" LineNumber: ")[0];

    private sealed class InAttemptsException(string message, string? path, long? line, Exception cause) : JsonException(message, path, line, null, cause);

    /// <summary>JSON Schema, draft 2020-12.</summary>
    public static string Schema()
    {
        JsonNode types = Options.GetJsonSchemaAsNode(typeof(ClassExport), new JsonSchemaExporterOptions { TreatNullObliviousAsNonNullable = true });
        JsonObject schema = new()
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = SchemaId,
            ["title"] = "A class of TyingClass",
        };
        foreach ((string key, JsonNode? value) in types.AsObject()) schema[key] = value?.DeepClone();
        return schema.ToJsonString(Options) + "\n";
    }
}
