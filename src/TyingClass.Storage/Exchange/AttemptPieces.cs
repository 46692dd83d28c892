using System.Buffers;
using System.Text.Json;

namespace TyingClass.Storage.Exchange;

/// <summary>
/// Goes through the file of a class from one end to the other, attempt by attempt, and holds no more of it than one attempt. What stands around the attempts
/// is copied to <paramref name="rest"/>, with an empty list in their place.
/// </summary>
internal sealed class AttemptPieces(Stream file, Stream? rest = null) : IDisposable
{
    /// <summary>More than any answer may hold, with all that was said about it.</summary>
    private const int MostBytes = 64 << 20;

    private static ReadOnlySpan<byte> ByteOrderMark => [0xEF, 0xBB, 0xBF];

    private byte[] _buffer = ArrayPool<byte>.Shared.Rent(1 << 20);
    private int _from;
    private int _to;
    private bool _begun;
    private bool _isLast;
    private bool _named;
    private bool _inList;
    private JsonReaderState _state;
    private long _lines;
    private long _restLines;

    /// <summary>How many lines lie before the attempt that was given last.</summary>
    public long Line { get; private set; }

    /// <summary>Where the list of attempts stands in the rest, and how many lines are left out there: for where a fault in the rest is.</summary>
    public (long Line, long LeftOut) Gap { get; private set; } = (long.MaxValue, 0);

    /// <param name="attempt">Valid until the next call.</param>
    /// <returns>False at the end of the file.</returns>
    /// <exception cref="JsonException">It is no JSON text.</exception>
    public bool Next(out ReadOnlySpan<byte> attempt)
    {
        if (!_begun) Begin();
        while (true)
        {
            if (Look(out attempt)) return true;
            if (_isLast) return false;
            Fill();
        }
    }

    public void Dispose()
    {
        ArrayPool<byte>.Shared.Return(_buffer, clearArray: true);
        _buffer = [];
    }

    private void Begin()
    {
        _begun = true;
        Fill();
        if (_buffer.AsSpan(_from, _to - _from).StartsWith(ByteOrderMark)) _from += ByteOrderMark.Length;
    }

    private bool Look(out ReadOnlySpan<byte> attempt)
    {
        ReadOnlySpan<byte> held = _buffer.AsSpan(_from, _to - _from);
        Utf8JsonReader reader = new(held, _isLast, _state);
        int used = 0;
        while (reader.Read())
        {
            bool isAttempt = _inList && reader.CurrentDepth == 2;
            int start = (int)reader.TokenStartIndex;
            // Not there to its end: begun anew from before it once there is more.
            if (isAttempt && !reader.TrySkip()) break;
            ReadOnlySpan<byte> gone = held[used..(int)reader.BytesConsumed];
            Line = _lines + held[used..start].Count((byte)'\n');
            used = (int)reader.BytesConsumed;
            _state = reader.CurrentState;
            Pass(gone, isAttempt);
            if (isAttempt)
            {
                attempt = held[start..used];
                _from += used;
                return true;
            }

            Follow(ref reader);
        }

        _from += used;
        attempt = default;
        return false;
    }

    private void Pass(ReadOnlySpan<byte> gone, bool isAttempt)
    {
        int lines = gone.Count((byte)'\n');
        _lines += lines;
        if (rest is null) return;
        if (isAttempt)
        {
            Gap = (Gap.Line, Gap.LeftOut + lines);
            return;
        }

        rest.Write(gone);
        _restLines += lines;
    }

    private void Follow(ref Utf8JsonReader reader)
    {
        if (reader.CurrentDepth != 1) return;
        switch (reader.TokenType)
        {
            case JsonTokenType.PropertyName:
                // As the rest of the file is read, large and small letters are one.
                _named = string.Equals(reader.GetString(), "attempts", StringComparison.OrdinalIgnoreCase);
                break;
            case JsonTokenType.StartArray when _named:
                _inList = true;
                Gap = (_restLines, Gap.LeftOut);
                break;
            case JsonTokenType.EndArray:
                _inList = false;
                break;
        }
    }

    private void Fill()
    {
        int held = _to - _from;
        if (held == _buffer.Length)
        {
            if (held >= MostBytes) throw new JsonException("One attempt is larger than any can be.", "$.attempts", _lines, 0);
            byte[] larger = ArrayPool<byte>.Shared.Rent(2 * held);
            _buffer.AsSpan(_from, held).CopyTo(larger);
            ArrayPool<byte>.Shared.Return(_buffer, clearArray: true);
            _buffer = larger;
        }
        else
        {
            _buffer.AsSpan(_from, held).CopyTo(_buffer);
        }

        (_from, _to) = (0, held);
        int read = file.Read(_buffer, _to, _buffer.Length - _to);
        _to += read;
        _isLast = read == 0;
    }
}
