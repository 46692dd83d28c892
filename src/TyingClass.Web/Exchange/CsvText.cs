using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using CsvHelper;

namespace TyingClass.Web.Exchange;

/// <param name="Line">Of the file, from 1.</param>
public sealed record CsvRow(long Line, ImmutableArray<string> Fields)
{
    /// <summary>Empty where the row is too short.</summary>
    public string this[int index] => index < Fields.Length ? Fields[index] : "";
}

/// <summary>Tables for spreadsheets: UTF-8 with a byte order mark, after RFC 4180, and nothing in them that a spreadsheet would run.</summary>
public static class CsvText
{
    // What makes a spreadsheet take a text for a formula.
    private const string Dangerous = "=@+-\t\r";

    private const int MostColumns = 100;

    private const char Guard = '\'';

    private const string NotUtf8 =
        "This file is not in UTF-8, so its letters cannot be read for certain. Save it from the spreadsheet as CSV, UTF-8, or type the names.";

    private static readonly UTF8Encoding Strict = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    private static readonly CsvWriterOptions Writing = new()
    {
        Injection = CsvInjection.Escape,
        InjectionCharacters = Dangerous,
        InjectionEscape = Guard,
        WriteByteOrderMark = true,
    };

    private static readonly CsvReaderOptions Reading = new()
    {
        HasHeader = false,
        TrackLineNumbers = true,
        SkipEmptyLines = true,
        TrimWhitespace = true,
        MaxRecordSize = 1 << 20,
    };

    public static byte[] Write(IEnumerable<IEnumerable<string>> rows)
    {
        ArgumentNullException.ThrowIfNull(rows);
        using MemoryStream bytes = new();
        using (CsvWriter writer = CsvWriter.Create(bytes, Writing, leaveOpen: true))
        {
            foreach (IEnumerable<string> row in rows) writer.WriteRecord([.. row.Select(Doubled)]);
        }

        return bytes.ToArray();
    }

    /// <summary>Separator found out by the library; guards put in by <see cref="Write"/> are taken out again.</summary>
    /// <returns>The rows, or what is wrong with the file.</returns>
    public static (ImmutableArray<CsvRow> Rows, string? Problem) Read(byte[] bytes)
    {
        if (!TryDecode(bytes, out _)) return ([], NotUtf8);
        try
        {
            ImmutableArray<CsvRow>.Builder rows = ImmutableArray.CreateBuilder<CsvRow>();
            using CsvReader reader = CsvReader.Create(bytes, Reading);
            while (reader.Read())
            {
                if (reader.FieldCount > MostColumns) return ([], TooWide(reader.LineNumber, reader.FieldCount));
                rows.Add(new CsvRow(reader.LineNumber, [.. Enumerable.Range(0, reader.FieldCount).Select(i => Unguarded(reader.GetString(i)))]));
            }

            return (rows.ToImmutable(), null);
        }
        catch (CsvFormatException e)
        {
            return ([], $"This is not a table that can be read: {e.Message} Save it from the spreadsheet as CSV, UTF-8.");
        }
    }

    /// <summary>Text of a file from a spreadsheet or an editor, without its byte order mark.</summary>
    /// <returns>False for bytes that are no UTF-8: letters with accents would come out broken.</returns>
    public static bool TryDecode(byte[] bytes, out string text)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        try
        {
            text = Strict.GetString(bytes).TrimStart('\uFEFF');
            return true;
        }
        catch (DecoderFallbackException)
        {
            text = "";
            return false;
        }
    }

    private static string TooWide(long line, int columns) =>
        string.Create(CultureInfo.InvariantCulture, $"Line {line} has {columns} columns; a list of names has {MostColumns} at most. Take out those that hold ")
            + "no names and no roles.";

    // A text that looks guarded already gets one more, so that reading takes off no more than writing put on.
    private static string Doubled(string field) => LooksGuarded(field) ? Guard + field : field;

    private static string Unguarded(string field) => LooksGuarded(field) ? field[1..] : field;

    private static bool LooksGuarded(string field) => field is [Guard, var next, ..] && (next == Guard || Dangerous.Contains(next));
}
