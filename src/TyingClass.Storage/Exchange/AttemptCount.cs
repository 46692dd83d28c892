using System.Buffers;
using System.Text.Json;

namespace TyingClass.Storage.Exchange;

/// <summary>Reads the file of a class from one end to the other without keeping it.</summary>
internal static class AttemptCount
{
    // More than one attempt at a time, less than a file.
    private const int Room = 1 << 20;

    /// <summary>How many attempts stand in it.</summary>
    /// <exception cref="IOException">It is no whole JSON text.</exception>
    public static async Task<int> OfAsync(Stream file, CancellationToken cancel)
    {
        byte[] buffer = ArrayPool<byte>.Shared.Rent(Room);
        try
        {
            Counting counting = default;
            int held = 0;
            while (true)
            {
                if (held == buffer.Length) Grow(ref buffer);
                int read = await file.ReadAsync(buffer.AsMemory(held), cancel).ConfigureAwait(false);
                held += read;
                int used = counting.Take(buffer.AsSpan(0, held), isLast: read == 0);
                if (read == 0) return counting.Attempts;
                buffer.AsSpan(used, held - used).CopyTo(buffer);
                held -= used;
            }
        }
        catch (JsonException e)
        {
            throw new IOException($"The file of the class is not whole: {e.Message}", e);
        }
        finally
        {
            ArrayPool<byte>.Shared.Return(buffer, clearArray: true);
        }
    }

    // One text longer than all the room there is.
    private static void Grow(ref byte[] buffer)
    {
        byte[] larger = ArrayPool<byte>.Shared.Rent(2 * buffer.Length);
        buffer.CopyTo(larger, 0);
        ArrayPool<byte>.Shared.Return(buffer, clearArray: true);
        buffer = larger;
    }

    private struct Counting
    {
        private JsonReaderState _state;
        private bool _inAttempts;

        public int Attempts { get; private set; }

        /// <returns>Bytes gone through.</returns>
        public int Take(ReadOnlySpan<byte> bytes, bool isLast)
        {
            Utf8JsonReader reader = new(bytes, isLast, _state);
            while (reader.Read())
            {
                if (reader is { CurrentDepth: 1, TokenType: JsonTokenType.PropertyName }) _inAttempts = reader.ValueTextEquals("attempts"u8);
                else if (_inAttempts && reader is { CurrentDepth: 2, TokenType: JsonTokenType.StartObject }) Attempts++;
            }

            _state = reader.CurrentState;
            return (int)reader.BytesConsumed;
        }
    }
}
