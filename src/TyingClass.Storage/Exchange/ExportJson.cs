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

    /// <returns>The class, or what is wrong and where: "$.attempts[3].number: …".</returns>
    public static async Task<(ClassExport? Export, string? Problem)> ReadAsync(Stream stream, CancellationToken cancel = default)
    {
        try
        {
            ClassExport? export = await JsonSerializer.DeserializeAsync<ClassExport>(stream, Options, cancel).ConfigureAwait(false);
            if (export is null) return (null, "The file holds nothing but null.");
            // A part that is missing deep inside is read as nothing at all, and would only show when the class is to be taken out again.
            await JsonSerializer.SerializeAsync(Stream.Null, export, Options, cancel).ConfigureAwait(false);
            return (export, null);
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
            string where = e.LineNumber is { } line ? FormattableString.Invariant($"Line {line + 1}") : "The file";
            return (null, $"{where}{(e.Path is { Length: > 1 } path ? $", at {path}" : "")}: this is not a class export that can be read. {e.Message}");
        }
    }

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
